package headertank.app.part;

import headertank.app.field.FieldValues;
import java.util.Optional;

/**
 * What a part consists of, checked.
 *
 * @param reference the maker's, may be empty
 * @param stock note about the stock, may be empty
 */
public record PartContent(
        PartKind kind, String name, String reference, FieldValues values, Optional<Price> price, String stock) {}
