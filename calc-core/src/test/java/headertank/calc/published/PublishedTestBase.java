package headertank.calc.published;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Runs each published check of a subject as a test of its own; {@link PublishedPageTest} prints the same rows. */
public abstract class PublishedTestBase {

    /** @return heading of the subject's section on the page */
    public abstract String subject();

    /** @return the rows, in the order of the page */
    public abstract List<Check> checks();

    @TestFactory
    Stream<DynamicTest> publishedValues() {
        return checks().stream()
                .map(c -> DynamicTest.dynamicTest(c.toString(), () -> assertThat(c.holds())
                        .as(
                                "%s: ours %s %s, published %s, difference %s, tolerance %s (%s), source: %s",
                                c,
                                c.ours().getAsDouble(),
                                c.unit(),
                                c.published(),
                                c.difference(),
                                c.tolerance(),
                                c.why(),
                                c.source())
                        .isTrue()));
    }
}
