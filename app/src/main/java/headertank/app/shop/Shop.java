package headertank.app.shop;

import headertank.app.unit.UnitSystem;
import headertank.calc.carspec.BuildField;
import headertank.calc.verdict.Thresholds;
import java.time.ZoneId;
import java.util.Map;
import java.util.TreeMap;

/**
 * A shop and what its owner decided for it.
 *
 * @param invented true for the demo shop
 * @param language of its pages by default, {@code en} or {@code de}
 * @param timeZone that days and times are shown in, a name of the IANA time zone database
 * @param recheckDays after how many days a check asks to be made again
 * @param thresholdsText what differs from the usual thresholds of a verdict, empty for nothing
 * @param figuresText the shop's own figures for fields that a car leaves open, empty for none
 * @param settingsVersion rises with each change
 */
public record Shop(
        long id,
        String name,
        UnitSystem unitSystem,
        boolean invented,
        String language,
        Paper paper,
        String timeZone,
        int recheckDays,
        String thresholdsText,
        String figuresText,
        int settingsVersion) {

    /** After how many days a check asks to be made again, until the owner says otherwise (modelling choice). */
    static final int USUAL_RECHECK_DAYS = 30;

    public ZoneId zone() {
        return ZoneId.of(timeZone);
    }

    /** What verdicts are judged by here. */
    public Thresholds thresholds() {
        return Thresholds.read(thresholdsText);
    }

    /** The shop's own figures for fields that a car leaves open [SI]. */
    public Map<BuildField, Double> figures() {
        Map<BuildField, Double> figures = new TreeMap<>();
        for (String item : figuresText.isEmpty() ? new String[0] : figuresText.split(" ")) {
            String[] parts = item.split("=", 2);
            figures.put(BuildField.ofKey(parts[0]).orElseThrow(), Double.valueOf(parts[1]));
        }
        return figures;
    }
}
