package headertank.app.duty.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headertank.app.MessageSources;
import headertank.app.duty.DutyFault;
import headertank.app.duty.DutyText;
import headertank.app.log.file.LogLimits;
import headertank.app.log.file.LogSource;
import headertank.app.log.read.LogReader;
import headertank.app.log.read.LogSummary;
import headertank.app.log.view.MappingForm;
import headertank.calc.duty.LoggedLap.Sample;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.springframework.context.support.ResourceBundleMessageSource;

/** What a duty takes from a log: which columns, in which units, and what it leaves out. */
public class LapReadingTest {

    private static final double RATED_RAD_PER_S = 7000 * Math.PI / 30;

    private LapReading reading;

    @Test
    void aLapIsReadInTheUnitsOfItsHeadings() throws IOException {
        List<Sample> samples =
                read(log("Time [s],Speed [km/h],Engine RPM,Engine load (%)"), LogForm.Meaning.LOAD, Map.of());
        assertThat(samples).hasSize(600);
        assertThat(samples.get(1).timeS()).isCloseTo(0.1, within(1e-12));
        assertThat(samples.get(0).roadSpeedMPerS()).isCloseTo(50, within(1e-12));
        assertThat(samples.get(0).engineSpeedShare()).isCloseTo(6300.0 / 7000, within(1e-12));
        assertThat(samples.get(0).powerShare()).isCloseTo(0.95 * 0.9, within(1e-12));
    }

    @Test
    void aThrottleStandsInForALoadThatIsNotThere() throws IOException {
        List<Sample> samples = read(log("Time,GPS speed [mph],RPM,TPS"), LogForm.Meaning.LOAD, Map.of());
        assertThat(samples).hasSize(600);
        assertThat(samples.get(0).roadSpeedMPerS()).isCloseTo(180 * 0.44704, within(1e-9));
        assertThat(samples.get(0).powerShare()).isCloseTo(0.95 * 0.9, within(1e-12));
    }

    @Test
    void columnsMayBeChosen() throws IOException {
        Map<String, String> said = Map.of(
                "column-TIME", "0",
                "unit-TIME", "s",
                "writing-TIME", "NUMBER",
                "column-ROAD_SPEED", "1",
                "unit-ROAD_SPEED", "mph",
                "column-ENGINE_SPEED", "2",
                "unit-ENGINE_SPEED", "rpm",
                "column-POWER", "3",
                "unit-POWER", "%");
        String text = log("ch1,ch2,ch3,ch4");
        assertThat(read(text, LogForm.Meaning.POWER, Map.of())).isEmpty();
        assertThat(reading.faults()).extracting(DutyFault::place).containsExactly("road speed", "engine speed", "load");
        List<Sample> samples = read(text, LogForm.Meaning.POWER, said);
        assertThat(samples).hasSize(600);
        assertThat(samples.get(0).roadSpeedMPerS()).isCloseTo(180 * 0.44704, within(1e-9));
        assertThat(samples.get(0).powerShare()).isCloseTo(0.95, within(1e-12));
    }

    @Test
    void whatIsSaidOfOtherColumnsSaysNothingOfThese() throws IOException {
        String text = log("Time [s],Speed [km/h],RPM,Load [%]");
        Map<String, String> said = Map.of("column-ROAD_SPEED", "2", "columnSet", "of another file");
        List<Sample> samples = read(text, LogForm.Meaning.LOAD, said);
        assertThat(samples.get(0).roadSpeedMPerS()).isCloseTo(50, within(1e-12));
    }

    @Test
    void aRowOutOfItsRangeIsLeftOutAndAColumnOfThemIsRefused() throws IOException {
        String good = log("Time [s],Speed [km/h],RPM,Load [%]");
        List<Sample> samples =
                read(good.replace("\n1.0,180,6300,95", "\n1.0,180,9000,95"), LogForm.Meaning.LOAD, Map.of());
        assertThat(samples).hasSize(600);
        assertThat(samples.get(10).engineSpeedShare()).isCloseTo(6300.0 / 7000, within(1e-12));
        assertThat(reading.leftOut()).isEqualTo(1);
        assertThat(read(good.replace(",6300,", ",9000,"), LogForm.Meaning.LOAD, Map.of()))
                .isEmpty();
        assertThat(reading.faults()).containsExactly(new DutyFault(0, "RPM", "9000.00", "0 to 8400 rpm"));
    }

    @Test
    void theLongestStretchIsTaken() throws IOException {
        String text = "Time [s],Speed [km/h],RPM,Load [%]\n0,1,900,5\n1,1,900,5\n2,1,900,5\n"
                + log("Time [s],Speed [km/h],RPM,Load [%]");
        assertThat(read(text, LogForm.Meaning.LOAD, Map.of())).hasSize(600).allMatch(s -> s.roadSpeedMPerS() > 10);
    }

    @Test
    void tooFewRowsAreTold() throws IOException {
        String text = log("Time [s],Speed [km/h],RPM,Load [%]").substring(0, 100);
        assertThat(read(text.substring(0, text.lastIndexOf('\n') + 1), LogForm.Meaning.LOAD, Map.of()))
                .isEmpty();
        assertThat(reading.faults())
                .singleElement()
                .extracting(DutyFault::place)
                .isEqualTo("lines");
    }

    private List<Sample> read(String text, LogForm.Meaning meaning, Map<String, String> said) throws IOException {
        LogSource source = LogSource.of(text);
        LogSummary summary = LogReader.survey(source, LogLimits.USUAL);
        Map<String, String> parameters = new TreeMap<>(said);
        parameters.putIfAbsent("columnSet", summary.head().columnSet());
        reading = new LapReading(new DutyText(messages(), MessageSources.modelWords()));
        reading.read(source, summary, MappingForm.of(parameters), meaning, RATED_RAD_PER_S);
        return reading.samples();
    }

    private static ResourceBundleMessageSource messages() {
        ResourceBundleMessageSource source = new ResourceBundleMessageSource();
        source.setBasenames("messages/duty");
        source.setDefaultEncoding("UTF-8");
        source.setAlwaysUseMessageFormat(true);
        source.setFallbackToSystemLocale(false);
        return source;
    }

    /** A minute at ten lines a second: a straight of 40 s at 180, a corner of 20 s at 80 with the throttle shut. */
    public static String log(String headings) {
        StringBuilder text = new StringBuilder(headings).append('\n');
        for (int i = 0; i < 600; i++) {
            String row = i < 400 ? "180,6300,95" : "80,4200,0";
            text.append(String.format(Locale.ROOT, "%.1f,%s", i / 10.0, row)).append('\n');
        }
        return text.toString();
    }
}
