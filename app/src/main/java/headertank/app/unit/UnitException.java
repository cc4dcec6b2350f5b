package headertank.app.unit;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Text that cannot be read as a quantity. The code says why; pages translate it with {@link #messageKey()}. */
public final class UnitException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /** Why a text was refused. */
    public enum Code {
        EMPTY,
        NOT_A_NUMBER,
        AMBIGUOUS_COMMA,
        AMBIGUOUS_SHARE,
        UNKNOWN_UNIT,
        BELOW_ABSOLUTE_ZERO
    }

    private static final Set<Code> NAMES_UNITS = EnumSet.of(Code.EMPTY, Code.NOT_A_NUMBER, Code.UNKNOWN_UNIT);

    private final Code code;
    private final String text;
    private final Dimension dimension;

    UnitException(Code code, String text, Dimension dimension) {
        super(code + ": '" + text + "' as " + dimension);
        this.code = code;
        this.text = text;
        this.dimension = dimension;
    }

    public Code code() {
        return code;
    }

    /** What was typed. */
    public String text() {
        return text;
    }

    /** Symbols of the units that are accepted here. */
    public List<String> accepted() {
        return dimension.units().stream()
                .map(Unit::symbol)
                .filter(s -> !s.isEmpty())
                .toList();
    }

    /** Key in the message files; argument 0 is the text, argument 1 the accepted units, where there are any. */
    public String messageKey() {
        String key = "unit." + code.name().toLowerCase(Locale.ROOT).replace('_', '-');
        return NAMES_UNITS.contains(code) && accepted().isEmpty() ? key + ".bare" : key;
    }

    public Object[] messageArguments() {
        return new Object[] {text, String.join(", ", accepted())};
    }
}
