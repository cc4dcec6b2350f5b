package headertank.app.check.figure;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.app.MessageSources;
import headertank.app.chart.Scale;
import headertank.app.unit.UnitSystem;
import java.time.Instant;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.context.i18n.LocaleContextHolder;

/** Figures as a shop reads them. */
public class FigureTextTest {

    public static FigureText in(UnitSystem system) {
        return new FigureText(
                system, MessageSources.all(), MessageSources.modelWords(), Instant::toString, Locale.ENGLISH);
    }

    private final FigureText metric = in(UnitSystem.METRIC);
    private final FigureText us = in(UnitSystem.US);

    @Test
    void aDifferenceIsNoTemperature() {
        assertThat(metric.figure(10, "K")).isEqualTo("+10.0\u00a0K");
        assertThat(us.figure(10, "K")).isEqualTo("+18\u00a0°F");
        assertThat(us.figure(273.15, "K absolute")).isEqualTo("32\u00a0°F");
        assertThat(metric.difference(-3.21)).isEqualTo("−3.2\u00a0K");
    }

    @Test
    void whatHasNoNumberHasAWord() {
        assertThat(metric.margin(Double.NEGATIVE_INFINITY)).isEqualTo("no balance");
        assertThat(metric.day(Double.POSITIVE_INFINITY)).isEqualTo("no day reaches it");
        assertThat(metric.temperature(Double.NaN)).isEqualTo("–");
        assertThat(metric.figure(Double.NaN, "Pa")).isEqualTo("–");
    }

    @Test
    void noneFoundAmongTheSamplesIsNotNone() {
        assertThat(metric.probability(0, 256)).isEqualTo("under 1 %");
        assertThat(metric.probability(1, 256)).isEqualTo("over 99 %");
        assertThat(metric.probability(0.25, 256)).isEqualTo("25\u00a0% \u00b1 3\u00a0%");
        assertThat(metric.probability(Double.NaN, 0)).isEqualTo("not computed");
        LocaleContextHolder.setLocale(Locale.GERMAN);
        try {
            assertThat(metric.probability(0.0042, 1024)).isEqualTo("0,4\u00a0% \u00b1 0,2\u00a0%");
        } finally {
            LocaleContextHolder.resetLocaleContext();
        }
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void scalesAreRoundInTheShopsUnit(UnitSystem system) {
        FigureText shown = in(system);
        assertThat(shown.temperatureTicks(new Scale(340, 400, 200, 0)))
                .hasSizeBetween(2, 8)
                .allSatisfy(t -> assertThat(Double.parseDouble(t.text()) % 5).isZero());
    }

    @Test
    void aScaleKeepsWhatLiesBeyondItAtItsEnd() {
        Scale scale = new Scale(0, 10, 100, 200);
        assertThat(scale.at(5)).isEqualTo(150);
        assertThat(scale.at(Double.POSITIVE_INFINITY)).isEqualTo(200);
        assertThat(scale.at(Double.NEGATIVE_INFINITY)).isEqualTo(100);
    }
}
