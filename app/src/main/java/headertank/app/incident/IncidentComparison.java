package headertank.app.incident;

import headertank.app.check.stored.CheckLine;
import headertank.app.check.stored.DutyResult;
import headertank.calc.risk.Flag;
import java.util.List;
import java.util.Optional;

/**
 * A report beside the last good check, or beside the first revision when there is none.
 *
 * @param dutyId the duty for which both are compared
 * @param good the last good check
 * @param predicted what that check said of the duty
 * @param baseNumber number of the revision that the changes are counted from
 * @param predictedCoolantK coolant that the good check expects at worst [K]
 * @param predictedReadingK what a gauge at the report's place would then show [K]
 * @param beforeK margin of the base [K]
 * @param afterK margin of the car as it was that day [K]
 * @param expectedReadingK what the gauge should have shown that day [K]
 * @param expectedFromK 5 % of the cars that this one may be show less [K]; infinite where some have no balance
 * @param expectedToK 5 % show more [K]
 * @param changes what changed since by parts, costliest first
 * @param flags risky choices on the car that day
 * @param ambientUsed whether the air of that day went into the comparison
 */
public record IncidentComparison(
        String dutyId,
        Optional<CheckLine> good,
        Optional<DutyResult> predicted,
        int baseNumber,
        double predictedCoolantK,
        double predictedReadingK,
        double beforeK,
        double afterK,
        double expectedReadingK,
        double expectedFromK,
        double expectedToK,
        List<PartLine> changes,
        List<Flag> flags,
        boolean ambientUsed) {

    public IncidentComparison {
        changes = List.copyOf(changes);
        flags = List.copyOf(flags);
    }

    /**
     * Everything that changed of one part of the car.
     *
     * @param label name of the part, or of the only change
     * @param fields what changed of it
     * @param shareK its share in the change of margin, negative when it cost margin [K]
     * @param aloneK its effect alone on the car before [K]
     * @param undoneK margin that undoing it alone gains [K]
     * @param isWeather whether it is the air of the day rather than a part of the car
     */
    public record PartLine(
            String label, List<FieldLine> fields, double shareK, double aloneK, double undoneK, boolean isWeather) {
        public PartLine {
            fields = List.copyOf(fields);
        }
    }

    /**
     * One field of a part.
     *
     * @param shareK its own share in the change of margin [K]; NaN where it changes with the field before it
     */
    public record FieldLine(String label, String before, String after, double shareK) {

        public boolean counts() {
            return !Double.isNaN(shareK);
        }
    }

    /** Where a reading lies against what was to be expected. */
    public enum Standing {
        BELOW,
        WITHIN,
        ABOVE
    }

    /** Where the reading lies against the range in which it was to be expected. */
    public Standing standing(double readingK) {
        return readingK > expectedToK ? Standing.ABOVE : readingK < expectedFromK ? Standing.BELOW : Standing.WITHIN;
    }

    /** Change of margin by everything that changed [K]; negative when it cost margin. */
    public double changeK() {
        return afterK - beforeK;
    }
}
