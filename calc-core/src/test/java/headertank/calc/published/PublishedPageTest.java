package headertank.calc.published;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.calc.coolant.HeadWallPublishedTest;
import headertank.calc.coolant.ThermostatPublishedTest;
import headertank.calc.electric.AlternatorPublishedTest;
import headertank.calc.engine.IdleFuelPublishedTest;
import headertank.calc.fluid.AirPublishedTest;
import headertank.calc.fluid.FuelPublishedTest;
import headertank.calc.fluid.GlycolPublishedTest;
import headertank.calc.fluid.WaterPublishedTest;
import headertank.calc.radiator.EffectivenessPublishedTest;
import headertank.calc.radiator.LouveredFinsPublishedTest;
import headertank.calc.radiator.TubeSidePublishedTest;
import headertank.calc.rating.OldCarsPublishedTest;
import headertank.calc.transients.MeasuredCarPublishedTest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * Keeps {@code docs/published-checks.md} equal to the rows that the tests run. Write it anew with
 * {@code mvn -pl calc-core test -Dtest=PublishedPageTest -Dheadertank.docs.write=true}.
 */
class PublishedPageTest {

    private static final Path PAGE = Path.of("..", "docs", "published-checks.md");

    /** All subjects, in the order of the page. */
    private static final List<PublishedTestBase> SUBJECTS = List.of(
            new WaterPublishedTest(),
            new GlycolPublishedTest(),
            new AirPublishedTest(),
            new FuelPublishedTest(),
            new EffectivenessPublishedTest(),
            new TubeSidePublishedTest(),
            new LouveredFinsPublishedTest(),
            new HeadWallPublishedTest(),
            new IdleFuelPublishedTest(),
            new AlternatorPublishedTest(),
            new ThermostatPublishedTest(),
            new OldCarsPublishedTest(),
            new MeasuredCarPublishedTest());

    @Test
    void pageShowsWhatTheTestsCompare() throws IOException {
        String now = page();
        if (Boolean.getBoolean("headertank.docs.write")) {
            Files.createDirectories(PAGE.getParent());
            Files.writeString(PAGE, now);
        }
        assertThat(PAGE).exists();
        assertThat(Files.readString(PAGE)).isEqualTo(now);
    }

    private static String page() {
        StringBuilder out = new StringBuilder();
        out.append("# Published checks\n\n");
        Map<Check.Kind, Long> counts = SUBJECTS.stream()
                .flatMap(s -> s.checks().stream())
                .collect(Collectors.groupingBy(
                        Check::kind, () -> new EnumMap<>(Check.Kind.class), Collectors.counting()));
        out.append("| kind of row | what it says | rows |\n|---|---|---|\n");
        counts.forEach((kind, n) -> out.append("| ")
                .append(kind.label())
                .append(" | ")
                .append(kind.says())
                .append(" | ")
                .append(n)
                .append(" |\n"));
        out.append(
                "\nOnly the first kind says anything of reality. **One car is compared with logs of others, a few of the thirties with\n");
        out.append(
                "their maker's reports and three in their fuel at idle, with what the papers do not say guessed; no core, fan or pump is compared\n");
        out.append(
                "with a bench of its own**: no open table of measurements with its geometry could be read. Looked for on 2026-11-27: of bench tests of\n");
        out.append(
                "nine car radiators (Ng, Johnson, Watkins 2005: an unfitted model within +24 and -10 %), a formula student car's (Int. J. of Heat and\n");
        out.append(
                "Technology 39 (2021) 1667), 13 radiators of 1921 to 1926 (NACA Report 261) and cores of 1923 (SAE 230012) only abstracts could be\n");
        out.append(
                "had; fan tables with pressure and current only of fans for cabinets. Every rating carries that as model\n");
        out.append("uncertainty. The calc-core tests run and write this page; do not\n");
        out.append("edit it by hand.\n");
        for (PublishedTestBase subject : SUBJECTS) {
            out.append("\n## ").append(subject.subject()).append("\n\n");
            out.append(
                    "| kind | quantity | inputs | unit | ours | published | difference | tolerance | why | source |\n");
            out.append("|---|---|---|---|---|---|---|---|---|---|\n");
            for (Check c : subject.checks()) {
                out.append(String.format(
                        Locale.ROOT,
                        "| %s | %s | %s | %s | %.6g | %.9g | %s | %s | %s | %s |%n",
                        c.kind().label(),
                        c.quantity(),
                        c.inputs(),
                        c.unit(),
                        c.ours().getAsDouble(),
                        c.published(),
                        difference(c, c.difference()),
                        difference(c, c.tolerance()),
                        c.why(),
                        c.source()));
            }
        }
        return out.toString().replace("\r\n", "\n");
    }

    private static String difference(Check c, double d) {
        double shown = Math.abs(d) < 5e-13 ? 0.0 : d;
        return c.relative()
                ? String.format(Locale.ROOT, "%.3g %%", 100 * shown)
                : String.format(Locale.ROOT, "%.3g", shown);
    }
}
