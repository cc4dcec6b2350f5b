package headertank.app.part;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A part as a spec names it.
 *
 * @param partId of the part in the catalogue
 * @param valuesHash SHA-256 of the catalogue's values at the time it was chosen, in hexadecimal
 */
public record PartRef(long partId, String valuesHash) {

    private static final Pattern TEXT = Pattern.compile("([1-9]\\d{0,17}):([0-9a-f]{64})");

    /** Reads what {@link #toString()} wrote; empty for anything else. */
    public static Optional<PartRef> of(String text) {
        Matcher m = TEXT.matcher(text);
        return m.matches() ? Optional.of(new PartRef(Long.parseLong(m.group(1)), m.group(2))) : Optional.empty();
    }

    @Override
    public String toString() {
        return partId + ":" + valuesHash;
    }
}
