package headertank.app.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PriceTest {

    @ParameterizedTest
    @CsvSource({
        "149.90,EUR,14990",
        "'149,9',EUR,14990",
        "0,EUR,0",
        "1500,JPY,1500",
        "1.234,KWD,1234",
        "999999999,USD,99999999900"
    })
    void anAmountIsKeptInTheSmallestUnit(String amount, String currency, long minor) throws Exception {
        assertThat(Price.read(amount, currency)).contains(new Price(minor, currency));
    }

    @Test
    void itReadsBackAsItIsShown() throws Exception {
        Price price = new Price(14990, "EUR");
        assertThat(price.shown()).isEqualTo("149.90 EUR");
        assertThat(Price.read(price.amount(), "EUR")).contains(price);
        assertThat(Price.read("", "")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "'1,234',EUR,AMOUNT",
        "1.5,JPY,AMOUNT",
        "-1,EUR,AMOUNT",
        "a lot,EUR,AMOUNT",
        "1000000000,EUR,AMOUNT",
        "1,EURO,CURRENCY",
        "1,XXX,CURRENCY"
    })
    void whatIsNoPriceIsRefused(String amount, String currency, Price.Fault fault) {
        assertThatThrownBy(() -> Price.read(amount, currency))
                .isInstanceOfSatisfying(Price.UnreadableException.class, e -> assertThat(e.fault())
                        .isEqualTo(fault));
    }
}
