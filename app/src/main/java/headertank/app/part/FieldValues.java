package headertank.app.part;

import headertank.calc.carspec.BuildField;
import headertank.calc.quantity.Provenance;
import java.util.List;
import java.util.Map;

/**
 * Reads and writes values of fields just as the spec of a car does, so that a value copied from the catalogue to a car reads the
 * same on both. The spec, which lies above this package, brings the only implementation.
 */
public interface FieldValues {

    /** What somebody wrote for a field: a number with its unit or the token of an option; empty when unknown. */
    record Typed(String text, Provenance from) {}

    /** @param faults a sentence for each field that could not be read; those fields are not among the values */
    record Reading(PartValues values, Map<BuildField, String> faults) {}

    /** @param before what was there; a field that still reads as it did keeps its exact value */
    Reading read(Map<BuildField, Typed> typed, PartValues before);

    /** What a form shows for the field: as it was typed, or the option's token; empty when unknown. */
    String text(PartValues values, BuildField field);

    /** The value in words and in the shop's units; empty when unknown. */
    String show(PartValues values, BuildField field);

    /** Tokens of a choice. */
    List<String> options(BuildField field);

    /** Canonical JSON. */
    String write(PartValues values);

    /** Reads what {@link #write} wrote, now or in an earlier version. */
    PartValues read(String stored);
}
