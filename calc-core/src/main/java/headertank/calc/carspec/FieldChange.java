package headertank.calc.carspec;

import headertank.calc.quantity.Entry;
import java.util.Optional;

/**
 * A field that differs between two builds.
 *
 * @param field which field
 * @param before as it was stated before, empty when nobody had
 * @param after as it is stated after, empty when nobody has
 * @param onlyProvenance whether the value stayed and only its provenance or spread changed
 */
public record FieldChange(BuildField field, Optional<Entry> before, Optional<Entry> after, boolean onlyProvenance) {}
