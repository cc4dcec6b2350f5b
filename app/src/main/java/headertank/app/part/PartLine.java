package headertank.app.part;

import java.time.Instant;

/**
 * A part of the catalogue, to read.
 *
 * @param valuesHash SHA-256 of the stored values in hexadecimal
 * @param cars how many cars have it in their newest revision
 */
public record PartLine(
        long id, PartContent content, String valuesHash, boolean retired, Instant changedAt, int version, int cars) {

    public PartKind kind() {
        return content.kind();
    }

    public String name() {
        return content.name();
    }

    public String price() {
        return content.price().map(Price::shown).orElse("");
    }

    public PartRef ref() {
        return new PartRef(id, valuesHash);
    }
}
