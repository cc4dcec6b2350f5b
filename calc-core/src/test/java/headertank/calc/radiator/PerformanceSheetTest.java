package headertank.calc.radiator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.choice.TankPlacement;
import headertank.calc.fluid.Coolant;
import headertank.calc.fluid.GlycolKind;
import headertank.calc.quantity.OutOfRangeException;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class PerformanceSheetTest {

    private final Coolant coolant = Coolant.of(GlycolKind.ETHYLENE, 0.5);
    private final RadiatorSpec spec = new RadiatorSpec(Cores.road(), TankPlacement.SIDES, 1, 0, true);

    private PerformanceSheet sheet(RadiatorFactors truth, double scale) {
        Radiator r = new Radiator(spec, truth);
        List<PerformanceSheet.Point> points = Stream.of(0.8, 1.2, 1.7, 2.4)
                .map(m -> new PerformanceSheet.Point(
                        m,
                        303.15,
                        0.002,
                        363.15,
                        scale
                                * r.heat(m, 303.15, 101325, 0.002, coolant, 363.15)
                                        .heatW()))
                .toList();
        return new PerformanceSheet(coolant, points);
    }

    @Test
    void findsTheFactorBehindASheet() {
        PerformanceSheet.Fit air = sheet(new RadiatorFactors(0.83, 1, 1), 1).fit(spec, PerformanceSheet.Side.AIR);
        assertThat(air.factors().airSide()).isCloseTo(0.83, within(1e-6));
        assertThat(air.residualShare()).isLessThan(1e-6);
        PerformanceSheet.Fit tube = sheet(new RadiatorFactors(1, 1, 1.6), 1).fit(spec, PerformanceSheet.Side.TUBE);
        assertThat(tube.factors().tubeSide()).isCloseTo(1.6, within(1e-5));
    }

    @Test
    void reportsWhatOneFactorCannotExplain() {
        PerformanceSheet.Fit fit = sheet(new RadiatorFactors(1, 1, 0.5), 1).fit(spec, PerformanceSheet.Side.AIR);
        assertThat(fit.factors().airSide()).isLessThan(1);
        assertThat(fit.residualShare()).isBetween(0.001, 0.1);
        assertThat(fit.worstShare()).isGreaterThanOrEqualTo(fit.residualShare());
    }

    @Test
    void refusesAnImpossibleSheet() {
        assertThatThrownBy(() -> sheet(RadiatorFactors.NOMINAL, 5).fit(spec, PerformanceSheet.Side.AIR))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> new PerformanceSheet(coolant, List.of())).isInstanceOf(OutOfRangeException.class);
    }
}
