package headertank.calc.radiator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import headertank.calc.choice.TankPlacement;
import headertank.calc.fluid.Figures;
import headertank.calc.quantity.Note;
import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.TubeRegime;
import java.util.List;
import org.junit.jupiter.api.Test;

class CorrelationTest {

    @Test
    void louveredFrictionJoinsAt130And230() {
        for (Figures.Row r : Figures.read(getClass(), "louvered-fin.csv")) {
            LouveredFins fins = LouveredFinsPublishedTest.fins(r);
            for (double re : new double[] {60, 130, 230, 4000}) {
                assertThat(fins.friction(re + 1e-7)).isCloseTo(fins.friction(re - 1e-7), withPercentage(1e-5));
                assertThat(fins.colburn(re + 1e-7)).isCloseTo(fins.colburn(re - 1e-7), withPercentage(1e-5));
            }
            assertThat(fins.colburn(10)).isEqualTo(fins.colburn(60));
            assertThat(fins.friction(9000)).isEqualTo(fins.friction(4000));
        }
    }

    @Test
    void louveredFinsJudgeTheirRange() {
        assertThat(louvered(0.0254, 27).geometryNotes()).isEmpty();
        assertThat(louvered(0.0528, 27).geometryNotes())
                .singleElement()
                .extracting(Note::widening)
                .isEqualTo(1.25);
        assertThat(louvered(0.059, 27).geometryNotes())
                .singleElement()
                .extracting(Note::widening)
                .isEqualTo(1.5);
        assertThatThrownBy(() -> louvered(0.065, 27)).isInstanceOf(OutOfRangeException.class);
        assertThat(louvered(LouveredFins.RATED_DEPTH_M.min(), 27).geometryNotes())
                .hasSize(1);
        assertThat(louvered(LouveredFins.RATED_DEPTH_M.max(), 27).geometryNotes())
                .hasSize(1);
        assertThat(louvered(LouveredFins.COVERED_DEPTH_M.max(), 27).geometryNotes())
                .isEmpty();
        assertThatThrownBy(() -> louvered(0.026, 45)).isInstanceOf(OutOfRangeException.class);
        assertThat(louvered(0.026, 27).flowNotes(414)).isEmpty();
        assertThat(louvered(0.026, 27).flowNotes(80))
                .singleElement()
                .extracting(Note::action)
                .isEqualTo(Note.Action.WIDENED);
        assertThat(louvered(0.026, 27).flowNotes(5000))
                .singleElement()
                .extracting(Note::action)
                .isEqualTo(Note.Action.CLAMPED);
    }

    private static LouveredFins louvered(double depth, double angle) {
        return new LouveredFins(0.00127, 0.008, depth, 0.0011, angle, 0.0068, 0.00008, 0.002, 0.0020578);
    }

    @Test
    void plainFinsTendToFullyDevelopedFlow() {
        PlainFins fins = new PlainFins(0.0025, 0.00005, 0.5);
        assertThat(fins.nusselt(1, 0.7)).isCloseTo(7.54, withPercentage(0.02));
        assertThat(fins.friction(10) * 10).as("ruffles included").isCloseTo(1.3 * 24, withPercentage(2));
        double last = 0;
        for (double re = 10; re < 2300; re += 10) {
            double h = fins.colburn(re, 0.7) * re;
            assertThat(h).isGreaterThan(last);
            last = h;
        }
        assertThat(fins.flowNotes(2500)).hasSize(1);
        assertThat(fins.flowNotes(500)).isEmpty();
    }

    @Test
    void tubeFlowJoinsWhereTheRegimesMeet() {
        for (boolean turbulated : new boolean[] {false, true}) {
            TubeFlow flow = new TubeFlow(0.055, 1 / 245.0, turbulated);
            for (double re : new double[] {1000, 2300, 2500, 4000}) {
                for (double pr : new double[] {1.4, 7, 40}) {
                    assertThat(flow.nusselt(re + 1e-7, pr))
                            .isCloseTo(flow.nusselt(re - 1e-7, pr), withPercentage(1e-6));
                }
                assertThat(flow.friction(re + 1e-7)).isCloseTo(flow.friction(re - 1e-7), withPercentage(1e-6));
            }
        }
    }

    @Test
    void nusseltRisesWithReynolds() {
        for (double pr : new double[] {1.4, 3, 7, 15, 40}) {
            for (boolean turbulated : new boolean[] {false, true}) {
                TubeFlow flow = new TubeFlow(0.055, 1 / 245.0, turbulated);
                double last = 0;
                for (double re = 5; re < 20000; re *= 1.01) {
                    double nu = flow.nusselt(re, pr);
                    assertThat(nu).as("Re %s Pr %s", re, pr).isGreaterThan(last);
                    last = nu;
                }
            }
        }
    }

    @Test
    void regimesHaveTheirLimits() {
        TubeFlow smooth = new TubeFlow(0.055, 0.004, false);
        assertThat(List.of(smooth.regime(2300), smooth.regime(3000), smooth.regime(4000)))
                .containsExactly(TubeRegime.LAMINAR, TubeRegime.TRANSITION, TubeRegime.TURBULENT);
        assertThat(new TubeFlow(0.055, 0.004, true).regime(2600)).isEqualTo(TubeRegime.TURBULENT);
    }

    /** Independent prototype of the same equations. */
    @Test
    void laminarBoundsOfAFlatTube() {
        double a = 1.4 / 25.4;
        assertThat(TubeFlow.laminarNusselt(a)).isCloseTo(6.57, withPercentage(0.5));
        assertThat(TubeFlow.gnielinski(8000, 6)).isCloseTo(60.874, withPercentage(0.01));
    }

    /** Independent prototype of the same equations. */
    @Test
    void finEfficiencyOfTheRoadCore() {
        double m = Math.sqrt(2 * 199.8 / (180 * 0.00008) * (1 + 0.00008 / 0.026));
        double eta = FinEfficiency.ofProduct(m * (0.008 / 2 - 0.00008));
        assertThat(eta).isCloseTo(0.8782, withPercentage(0.05));
        CoreAreas a = CoreAreas.of(Cores.road(), TankPlacement.SIDES, true);
        assertThat(FinEfficiency.ofSurface(a.air().finAreaM2() / a.air().areaM2(), eta))
                .isCloseTo(0.8937, withPercentage(0.05));
        assertThat(FinEfficiency.ofProduct(1e-3 + 1e-12))
                .isCloseTo(FinEfficiency.ofProduct(1e-3 - 1e-12), within(1e-12));
        assertThat(FinEfficiency.ofProduct(0)).isEqualTo(1);
    }
}
