package headertank.calc.fluid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Percentage.withPercentage;

import headertank.calc.quantity.Note;
import headertank.calc.quantity.OutOfRangeException;
import org.junit.jupiter.api.Test;

class EngineOilTest {

    private final EngineOil oil = EngineOil.multigrade();

    /** Independent prototype of the same equations. */
    @Test
    void prototypeValues() {
        double t = 373.15;
        assertThat(oil.densityKgPerM3(t)).isCloseTo(801.5, withPercentage(0.1));
        assertThat(oil.heatCapacityJPerKgK(t)).isCloseTo(2214, withPercentage(0.1));
        assertThat(oil.viscosityPaS(t)).isCloseTo(1.162e-2, withPercentage(0.1));
        assertThat(oil.conductivityWPerMK(t)).isCloseTo(0.1295, withPercentage(0.1));
    }

    @Test
    void passesThroughItsDataSheet() {
        assertThat(oil.viscosityPaS(313.15) / oil.densityKgPerM3(313.15)).isCloseTo(100e-6, withPercentage(1e-6));
        assertThat(oil.viscosityPaS(373.15) / oil.densityKgPerM3(373.15)).isCloseTo(14.5e-6, withPercentage(1e-6));
        double last = Double.POSITIVE_INFINITY;
        for (double t = 313.15; t <= 433.15; t += 1) {
            assertThat(oil.viscosityPaS(t)).isLessThan(last);
            last = oil.viscosityPaS(t);
        }
    }

    @Test
    void clampsAndWarns() {
        assertThat(oil.notes(373.15)).isEmpty();
        assertThat(oil.notes(425)).singleElement().extracting(Note::action).isEqualTo(Note.Action.WIDENED);
        assertThat(oil.notes(440)).singleElement().extracting(Note::action).isEqualTo(Note.Action.CLAMPED);
        assertThat(oil.viscosityPaS(260)).isEqualTo(oil.viscosityPaS(313.15));
        assertThatThrownBy(() -> new EngineOil(100e-6, 120e-6, 855)).isInstanceOf(OutOfRangeException.class);
    }
}
