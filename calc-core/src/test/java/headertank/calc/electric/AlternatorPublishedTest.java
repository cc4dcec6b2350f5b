package headertank.calc.electric;

import static headertank.calc.published.Check.check;

import headertank.calc.published.Check;
import headertank.calc.published.PublishedTestBase;
import java.util.List;
import java.util.Locale;

/**
 * The shape of the alternator's output over speed against a maker's output test at 13.5 V: 16, 41 and 48 A hot at 1300, 2500
 * and 5000 rev/min of the alternator, 24 and 50 A cold at the first two. 1300 rev/min are taken as its speed at idle (730
 * rev/min of that engine) and 50 A as its rating.
 */
public class AlternatorPublishedTest extends PublishedTestBase {

    private static final String MANUAL =
            "technical manual of a small marine diesel, charging system, output test, from memory";

    public AlternatorPublishedTest() {}

    @Override
    public String subject() {
        return "Alternator output by speed";
    }

    @Override
    public List<Check> checks() {
        return List.of(
                at(1300, "between hot and cold")
                        .published((16 + 24) / 2.0 / 50)
                        .withinAbsolute(
                                0.08, "hot 0.32 and cold 0.48 are as far apart as that; ours is a guess of 20 %")
                        .source(MANUAL),
                at(2500, "hot")
                        .published(41 / 50.0)
                        .withinAbsolute(0.08, "one alternator; cold it gives its rating here")
                        .source(MANUAL),
                at(5000, "hot")
                        .published(48 / 50.0)
                        .withinAbsolute(0.03, "whole amperes, and what its rating means hot")
                        .source(MANUAL));
    }

    private static Check.Draft at(double alternatorPerMinute, String state) {
        return check(
                        "output over rating",
                        String.format(Locale.ROOT, "%.0f rev/min, %s", alternatorPerMinute, state),
                        "-")
                .ours(() -> AlternatorSpec.of(100, 0).outputA(alternatorPerMinute / 1300) / 100);
    }
}
