package headertank.calc.coolant;

import static headertank.calc.published.Check.check;

import headertank.calc.published.Check;
import headertank.calc.published.PublishedTestBase;
import java.util.List;

/** The film coefficient of the head's jacket against a textbook tube. */
public class HeadWallPublishedTest extends PublishedTestBase {

    private static final String SOURCE =
            "F. P. Incropera, D. P. DeWitt, Fundamentals of Heat and Mass Transfer, Example 11.1, from memory";

    public HeadWallPublishedTest() {}

    @Override
    public String subject() {
        return "Film coefficient in the head";
    }

    @Override
    public List<Check> checks() {
        String tube = "water 0.2 kg/s, tube 25 mm, Re 14050, Pr 4.85";
        return List.of(
                check("Nusselt number, turbulent tube", tube, "-")
                        .ours(() -> HeadWall.nusselt(14050, 4.85))
                        .published(90)
                        .within(0.006, "printed to two digits")
                        .source(SOURCE),
                check("film coefficient", tube + ", k 0.625 W/mK", "W/m2K")
                        .ours(() -> HeadWall.nusselt(14050, 4.85) * 0.625 / 0.025)
                        .published(2250)
                        .within(0.003, "printed to three digits")
                        .source(SOURCE));
    }
}
