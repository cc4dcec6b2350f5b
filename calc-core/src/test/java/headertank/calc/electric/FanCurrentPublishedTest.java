package headertank.calc.electric;

import static headertank.calc.published.Check.check;

import headertank.calc.published.Check;
import headertank.calc.published.PublishedTestBase;
import java.util.List;

/** Fan current against what the trade says of it. */
public class FanCurrentPublishedTest extends PublishedTestBase {

    private static final String TRADE = "common practice, no source";

    public FanCurrentPublishedTest() {}

    @Override
    public String subject() {
        return "Fan current at the start";
    }

    @Override
    public List<Check> checks() {
        return List.of(
                check("one big fan, abrupt start", "25 A running", "A")
                        .ours(() -> ElectricBalance.startA(25, FanStart.ABRUPT))
                        .published(30)
                        .within(1e-12, "the factor 1.2 is this figure")
                        .source(TRADE),
                check("two big fans, abrupt start", "25 A running each", "A")
                        .ours(() -> ElectricBalance.startA(2 * 25, FanStart.ABRUPT))
                        .published(60)
                        .within(1e-12, "the factor 1.2 is this figure")
                        .source(TRADE));
    }
}
