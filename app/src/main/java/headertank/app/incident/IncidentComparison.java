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
 * @param changes what changed since, costliest first
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
        List<ChangeLine> changes,
        List<Flag> flags,
        boolean ambientUsed) {

    public IncidentComparison {
        changes = List.copyOf(changes);
        flags = List.copyOf(flags);
    }

    /**
     * One thing that changed.
     *
     * @param shareK its share in the change of margin, negative when it cost margin [K]
     * @param aloneK its effect alone on the car before [K]
     * @param undoneK margin that undoing it alone gains [K]
     * @param isWeather whether it is the air of the day rather than a part of the car
     */
    public record ChangeLine(
            String label,
            String before,
            String after,
            double shareK,
            double aloneK,
            double undoneK,
            boolean isWeather) {}

    /** Change of margin by everything that changed [K]; negative when it cost margin. */
    public double changeK() {
        return afterK - beforeK;
    }
}
