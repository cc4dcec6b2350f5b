package headertank.app.part;

import headertank.app.unit.DecimalSign;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What a part costs.
 *
 * @param minor amount in the currency's smallest unit, such as cents
 * @param currency code after ISO 4217
 */
public record Price(long minor, String currency) {

    private static final Pattern AMOUNT = Pattern.compile("\\d{1,9}([.,]\\d{1,3})?");

    /** Why a price was not understood. */
    public enum Fault {
        AMOUNT,
        CURRENCY
    }

    /** A price that was not understood. */
    public static final class UnreadableException extends Exception {
        private static final long serialVersionUID = 1L;

        private final transient Fault fault;

        public UnreadableException(Fault fault) {
            super(fault.name());
            this.fault = fault;
        }

        public Fault fault() {
            return fault;
        }
    }

    /** Reads an amount such as {@code 149.90} or {@code 149,90}; no text means no price. */
    public static Optional<Price> read(String amount, String code) throws UnreadableException {
        if (amount.isEmpty()) {
            return Optional.empty();
        }
        int digits = digits(code).orElseThrow(() -> new UnreadableException(Fault.CURRENCY));
        String plain = amount.replace(',', '.');
        int decimals = plain.contains(".") ? plain.length() - plain.indexOf('.') - 1 : 0;
        if (!AMOUNT.matcher(amount).matches() || decimals > digits) {
            throw new UnreadableException(Fault.AMOUNT);
        }
        return Optional.of(
                new Price(new BigDecimal(plain).movePointRight(digits).longValueExact(), code));
    }

    /** Decimals of a currency; empty for a code that is none. */
    static Optional<Integer> digits(String code) {
        try {
            return Optional.of(Currency.getInstance(code).getDefaultFractionDigits())
                    .filter(d -> d >= 0 && d <= 3);
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** The amount alone, as {@link #read} takes it. */
    public String amount() {
        return BigDecimal.valueOf(minor, digits(currency).orElse(2)).toPlainString();
    }

    /** Amount and currency, as the reader of the page writes them. */
    public String shown() {
        return DecimalSign.in(amount()) + " " + currency;
    }
}
