package headertank.app.duty.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headertank.app.MessageSources;
import headertank.app.duty.DutyFault;
import headertank.app.duty.DutyText;
import headertank.calc.duty.LoggedLap.Sample;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.springframework.context.support.ResourceBundleMessageSource;

/** Logs as loggers write them: separators, units, lines before the headings. */
public class LogTextTest {

    private static final double RATED_RAD_PER_S = 7000 * Math.PI / 30;

    @Test
    void unitsComeFromTheHeadings() {
        List<Sample> samples = read(log("Time [s],Speed [km/h],Engine RPM,Engine load (%)"), f -> f);
        assertThat(samples).hasSize(600);
        assertThat(samples.get(1).timeS()).isCloseTo(0.1, within(1e-12));
        assertThat(samples.get(0).roadSpeedMPerS()).isCloseTo(50, within(1e-12));
        assertThat(samples.get(0).engineSpeedShare()).isCloseTo(6300.0 / 7000, within(1e-12));
        assertThat(samples.get(0).powerShare()).isCloseTo(0.95 * 0.9, within(1e-12));
    }

    @Test
    void aLineOfUnitsLinesBeforeTheHeadingsAndSemicolonsAreUnderstood() {
        String text = "Logger 7\nDriver;Jo Example\n\n"
                + log("Time;GPS Speed;RPM;TPS", ';')
                        .replaceFirst("\n", "\ns;mph;1/min;%\n")
                        .replace('.', ',');
        List<Sample> samples = read(text, f -> f);
        assertThat(samples).hasSize(600);
        assertThat(samples.get(0).roadSpeedMPerS()).isCloseTo(180 * 0.44704, within(1e-9));
        assertThat(samples.get(1).timeS()).isCloseTo(0.1, within(1e-12));
    }

    @Test
    void aSeparatorInsideQuotesPartsNothing() {
        List<Sample> samples = read(
                log("Time [s],\"Speed, by satellite\",\"RPM\",\"Load [%]\""),
                f -> new LogForm(
                        f.log(),
                        "",
                        "",
                        "",
                        "",
                        LogForm.Meaning.POWER,
                        "Time [s]",
                        "s",
                        "Speed, by satellite",
                        "km/h",
                        "RPM",
                        "Load [%]",
                        "%"));
        assertThat(samples).hasSize(600);
        assertThat(samples.get(0).roadSpeedMPerS()).isCloseTo(50, within(1e-12));
    }

    @Test
    void headingsAndUnitsMayBeChosenInTheForm() {
        String text = log("ch1,ch2,ch3,ch4").replace("0.0,", "0,");
        List<Sample> samples = read(
                text,
                f -> new LogForm(
                        f.log(), "", "", "", "", LogForm.Meaning.POWER, "ch1", "ms", "ch2", "m/s", "ch3", "ch4", "%"));
        assertThat(samples).isEmpty();
        assertThat(faults).allMatch(f -> f.place().equals("ch2") && f.allowed().equals("0 to 90 m/s"));
        assertThat(faults.get(0)).isEqualTo(new DutyFault(2, "ch2", "180", "0 to 90 m/s"));
    }

    @Test
    void aHeadingWithoutAUnitAndOneThatIsMissingAreNamed() {
        assertThat(read(log("Time,Speed [km/h],RPM,Boost"), f -> f)).isEmpty();
        assertThat(faults).extracting(DutyFault::place).containsExactly("time", "load");
        assertThat(faults.get(0).allowed()).contains("unit");
        assertThat(faults.get(1).allowed()).contains("Time, Speed [km/h], RPM, Boost");
        assertThat(read("nothing of the kind\n1,2,3", f -> f)).isEmpty();
        assertThat(faults).singleElement().extracting(DutyFault::place).isEqualTo("headings");
        assertThat(read(log("Time [furlong],Speed [km/h],RPM,Load [%]"), f -> f))
                .isEmpty();
        assertThat(faults.get(0).allowed()).contains("ms");
    }

    @Test
    void aCellOutOfItsRangeIsNamedWithItsLine() {
        String text = log("Time [s],Speed [km/h],RPM,Load [%]")
                .replace("\n1.0,180,6300,95", "\n1.0,180,9000,95")
                .replace("\n2.0,180,6300,95", "\n1.95,180,6300,150");
        assertThat(read(text, f -> f)).isEmpty();
        assertThat(faults)
                .containsExactly(
                        new DutyFault(12, "RPM", "9000", "0 to 8400 rpm"),
                        new DutyFault(22, "Load [%]", "150", "-10 to 110 %"));
    }

    private List<DutyFault> faults;

    private List<Sample> read(String log, UnaryOperator<LogForm> as) {
        LogText text = new LogText(
                as.apply(LogForm.blank("").with(log)),
                RATED_RAD_PER_S,
                new DutyText(messages(), MessageSources.modelWords()));
        List<Sample> samples = text.read();
        faults = text.faults();
        return samples;
    }

    private static ResourceBundleMessageSource messages() {
        ResourceBundleMessageSource source = new ResourceBundleMessageSource();
        source.setBasenames("messages/duty");
        source.setDefaultEncoding("UTF-8");
        source.setAlwaysUseMessageFormat(true);
        source.setFallbackToSystemLocale(false);
        return source;
    }

    public static String log(String headings) {
        return log(headings, ',');
    }

    /** A minute at ten lines a second: a straight of 40 s at 180, a corner of 20 s at 80 with the throttle shut. */
    private static String log(String headings, char separator) {
        StringBuilder text = new StringBuilder(headings).append('\n');
        for (int i = 0; i < 600; i++) {
            String line = String.format(Locale.ROOT, "%.1f,%s", i / 10.0, i < 400 ? "180,6300,95" : "80,4200,0");
            text.append(line.replace(',', separator)).append('\n');
        }
        return text.toString();
    }
}
