package headertank.app.check.stored;

import com.fasterxml.jackson.annotation.JsonFormat;
import headertank.calc.quantity.Spread;
import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;
import tools.jackson.databind.JsonNode;

/**
 * What went into a check, defaults included, as stored. Format 1. All numbers in SI.
 *
 * @param carClass class of car that chose the defaults
 * @param fields value of each field by its key
 * @param duties the duties as they were defined on that day
 */
public record CheckInput(
        long revisionId,
        int revisionNumber,
        String calcCoreVersion,
        @JsonFormat(shape = JsonFormat.Shape.STRING) long seed,
        int samples,
        String carClass,
        SortedMap<String, Value> fields,
        JsonNode duties) {

    /** Number of the format that is written today. */
    public static final int FORMAT = 1;

    public CheckInput {
        fields = Collections.unmodifiableSortedMap(new TreeMap<>(fields));
    }

    /**
     * A field as the rating used it.
     *
     * @param value the expected number [SI]; NaN for a choice or a number that stays unknown
     * @param stated the number as somebody stated it [SI]; NaN when nobody did
     * @param token the option, empty for a number
     * @param from where it comes from, {@code ASSUMED} when nobody stated it
     * @param spread how far a number may be off
     */
    public record Value(double value, double stated, String token, String from, Spread spread) {}
}
