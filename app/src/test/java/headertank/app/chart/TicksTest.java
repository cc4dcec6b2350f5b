package headertank.app.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headertank.app.chart.CurveChart.Tick;
import headertank.app.unit.Dimension;
import headertank.app.unit.UnitSystem;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Marks are round where they are read, and stand where their number says. */
class TicksTest {

    private static final Scale PANEL = new Scale(353.15, 393.15, 250, 30);

    private static List<String> texts(List<Tick> ticks) {
        return ticks.stream().map(Tick::text).toList();
    }

    @Test
    void temperaturesAreRoundInTheUnitOfTheReader() {
        assertThat(texts(Ticks.of(PANEL, Dimension.TEMPERATURE, UnitSystem.METRIC, 5, 7)))
                .containsExactly("80", "90", "100", "110", "120");
        assertThat(texts(Ticks.of(PANEL, Dimension.TEMPERATURE, UnitSystem.US, 10, 7)))
                .containsExactly("180", "200", "220", "240");
    }

    @Test
    void aMarkStandsWhereItsNumberSays() {
        for (Tick t : Ticks.of(PANEL, Dimension.TEMPERATURE, UnitSystem.US, 10, 7)) {
            double kelvin = (Double.parseDouble(t.text()) + 459.67) * 5 / 9;
            assertThat(t.at()).isCloseTo(PANEL.at(kelvin), within(0.11));
        }
    }

    @Test
    void differencesCarryTheirSign() {
        Scale margins = new Scale(-10, 30, 22, 356);
        assertThat(texts(Ticks.signed(Ticks.of(margins, Dimension.TEMPERATURE_DIFFERENCE, UnitSystem.METRIC, 5, 7))))
                .containsExactly("−10", "0", "+10", "+20", "+30");
    }

    @Test
    void timeIsDividedAsPeopleDivideHours() {
        assertThat(texts(Ticks.minutes(new Scale(0, 90, 0, 100), 8))).containsExactly("0", "0.5", "1", "1.5");
        assertThat(texts(Ticks.minutes(new Scale(0, 1080, 0, 100), 10)))
                .containsExactly("0", "2", "4", "6", "8", "10", "12", "14", "16", "18");
        assertThat(texts(Ticks.minutes(new Scale(0, 5400, 0, 100), 8)))
                .containsExactly("0", "15", "30", "45", "60", "75", "90");
    }

    @Test
    void anyScaleHasAFewDifferentMarksInsideIt() {
        long seed = new Random().nextLong();
        Random random = new Random(seed);
        for (int n = 0; n < 2000; n++) {
            double to = Math.pow(10, -3 + 8 * random.nextDouble());
            Scale scale = new Scale(0, to, 250, 30);
            List<Tick> ticks =
                    Ticks.of(scale, Dimension.POWER, random.nextBoolean() ? UnitSystem.US : UnitSystem.METRIC, 0, 6);
            assertThat(ticks).as("seed %d, to %s", seed, to).hasSizeBetween(3, 7);
            assertThat(texts(ticks)).as("seed %d, to %s", seed, to).doesNotHaveDuplicates();
            assertThat(ticks).allMatch(t -> t.at() >= 30 && t.at() <= 250);
        }
    }
}
