package headertank.app.check.chart;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.app.check.Drifter;
import headertank.app.check.figure.FigureTextTest;
import headertank.app.unit.UnitSystem;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.springframework.context.i18n.LocaleContextHolder;

/** A curve that leaves its scale names what it reaches, whatever sign the reader writes before decimals. */
class WhatIfChartTest {

    @AfterEach
    void forget() {
        LocaleContextHolder.resetLocaleContext();
    }

    @Test
    void aGermanReaderSeesHowHotFansThatNeverStartMakeIt() {
        LocaleContextHolder.setLocale(Locale.GERMAN);
        var chart = WhatIfChart.of(Drifter.drift(), 383.15, FigureTextTest.in(UnitSystem.METRIC))
                .orElseThrow();
        var panel = chart.runs().panels().get(0);
        assertThat(panel.labels()).anyMatch(l -> l.text().matches("never start ↑ \\d{3}.°C"));
        assertThat(panel.ticks()).allMatch(t -> t.text().matches("\\d+"));
        assertThat(panel.curves()).allMatch(c -> c.points().matches("[\\d., -]+"));
    }
}
