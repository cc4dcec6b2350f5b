package headertank.calc.coolant;

import static headertank.calc.published.Check.check;

import headertank.calc.published.Check;
import headertank.calc.published.PublishedTestBase;
import java.util.List;

/** How far above its opening a thermostat is fully open, against what makers ask of theirs. */
public class ThermostatPublishedTest extends PublishedTestBase {

    private static final String WHY =
            "makers state the lift, at least 8 mm, not the flow area; another maker says 15 to 20 K above the mark";

    public ThermostatPublishedTest() {}

    @Override
    public String subject() {
        return "Thermostat opening";
    }

    @Override
    public List<Check> checks() {
        return List.of(
                width("opens at 80 to 84 C, 8 mm or more at 95 C")
                        .published(95 - 82)
                        .withinAbsolute(2, WHY)
                        .source("repair manual of a 3.0 litre V6 of 2006, thermostat specifications, from memory"),
                width("opens at 76 to 80 C, 8 mm or more at 91 C")
                        .published(91 - 78)
                        .withinAbsolute(2, WHY)
                        .source("repair manual, thermostat of a cylinder block, from memory"));
    }

    private static Check.Draft width(String inputs) {
        return check("fully open less opening", inputs, "K").ours(() -> {
            ThermostatSpec usual = ThermostatSpec.fitted(355.15);
            return usual.fullOpenK() - usual.openingK();
        });
    }
}
