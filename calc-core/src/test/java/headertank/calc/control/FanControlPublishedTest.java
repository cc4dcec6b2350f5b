package headertank.calc.control;

import static headertank.calc.published.Check.check;

import headertank.calc.published.Check;
import headertank.calc.published.PublishedTestBase;
import headertank.calc.quantity.Physics;
import java.util.List;

/** The ramp against what the trade says of it. */
public class FanControlPublishedTest extends PublishedTestBase {

    private static final String TRADE = "common practice, no source";

    public FanControlPublishedTest() {}

    @Override
    public String subject() {
        return "Fan control";
    }

    @Override
    public List<Check> checks() {
        FanControlSpec ramp = FanControlSpec.Ramp.to(Physics.kelvin(85));
        return List.of(check("temperature at which a ramp starts the fans", "set point 358.15 K", "K")
                .ours(() -> ramp.startK().orElseThrow())
                .published(343.15)
                .withinAbsolute(0.5, "said of it is about 70 deg C")
                .source(TRADE));
    }
}
