package headertank.calc.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.fluid.Fuel;
import headertank.calc.quantity.InputException;
import headertank.calc.quantity.OutOfRangeException;
import java.util.List;
import java.util.OptionalDouble;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** Figures without a named source are our own, unchanged; those of the wall heat at rated power met an independent prototype. */
class EngineHeatTest {

    private static final Percentage HALF_PERCENT = Percentage.withPercentage(0.5);
    private static final EngineSpec ROAD =
            EngineSpec.of(EngineClass.PETROL_NATURAL, 2.4e-3, 4, 150e3, 100, 850 / 60.0, Fuel.PETROL_E10);
    private static final EngineSpec EIGHT =
            EngineSpec.of(EngineClass.PETROL_NATURAL, 6.2e-3, 8, 450e3, 6800 / 60.0, 15, Fuel.PETROL_E10);

    @Test
    void fullPowerOfTheRoadEngine() {
        HeatSplit h = new EngineHeat(ROAD, EngineFactors.NOMINAL).at(150e3, 100);
        assertThat(h.fuelW()).isCloseTo(551.97e3, HALF_PERCENT);
        assertThat(h.frictionW()).isCloseTo(37.43e3, HALF_PERCENT);
        assertThat(h.coolantW()).isCloseTo(91.56e3, HALF_PERCENT);
        assertThat(h.oilW()).isCloseTo(15.886e3, HALF_PERCENT);
        assertThat(h.miscW()).isCloseTo(32.865e3, HALF_PERCENT);
        assertThat(h.unburntW()).isCloseTo(65.13e3, HALF_PERCENT);
        assertThat(h.exhaustW()).isCloseTo(196.69e3, HALF_PERCENT);
        assertThat(h.brakeW() / h.fuelW()).isCloseTo(0.2718, HALF_PERCENT);
        assertThat(h.chargeMassKgPerS()).isCloseTo(0.1812, HALF_PERCENT);
        assertThat(h.notes()).isEmpty();
    }

    @Test
    void partLoadAndIdle() {
        EngineHeat engine = new EngineHeat(ROAD, EngineFactors.NOMINAL);
        HeatSplit part = engine.at(30e3, 50);
        assertThat(part.coolantW()).isCloseTo(29.886e3, HALF_PERCENT);
        assertThat(part.oilW()).isCloseTo(4.884e3, HALF_PERCENT);
        assertThat(part.fuelW()).isCloseTo(110.53e3, HALF_PERCENT);
        HeatSplit idle = engine.at(2e3, ROAD.idleSpeedPerS());
        assertThat(idle.coolantW()).isCloseTo(5.598e3, HALF_PERCENT);
        assertThat(idle.oilW()).isCloseTo(0.9046e3, HALF_PERCENT);
        assertThat(idle.fuelW()).isCloseTo(12.989e3, HALF_PERCENT);
        assertThat(idle.throttlingW()).isCloseTo(1.263e3, HALF_PERCENT);
    }

    @Test
    void alcoholGainsAtEqualPowerAndLosesItToMorePower() {
        double petrol = new EngineHeat(EIGHT, EngineFactors.NOMINAL)
                .at(450e3, EIGHT.ratedSpeedPerS())
                .coolantW();
        EngineHeat e85 = new EngineHeat(on(Fuel.E85, EIGHT), EngineFactors.NOMINAL);
        assertThat(e85.at(450e3, EIGHT.ratedSpeedPerS()).coolantW() / petrol).isCloseTo(0.959, within(5e-4));
        assertThat(e85.at(450e3 * 1.05, EIGHT.ratedSpeedPerS()).coolantW() / petrol)
                .isCloseTo(0.985, within(5e-4));
        assertThat(e85.at(450e3 * 1.08, EIGHT.ratedSpeedPerS()).coolantW() / petrol)
                .isCloseTo(1.0006, within(5e-4));
    }

    @Test
    void meanOverModesLiesBelowTheHeatAtMeanLoad() {
        EngineHeat engine = new EngineHeat(EIGHT, EngineFactors.NOMINAL);
        HeatSplit mean = engine.meanOver(List.of(
                new EngineMode(0.25, 0.95, 0.92), new EngineMode(0.40, 0.30, 0.80), new EngineMode(0.35, 0, 0.62)));
        assertThat(mean.coolantW()).isCloseTo(125.73e3, HALF_PERCENT);
        double meanSpeed = 0.25 * 0.92 + 0.40 * 0.80 + 0.35 * 0.62;
        double atMean = engine.at(450e3 * (0.25 * 0.95 + 0.40 * 0.30), meanSpeed * EIGHT.ratedSpeedPerS())
                .coolantW();
        assertThat(atMean).isBetween(1.10 * mean.coolantW(), 1.20 * mean.coolantW());
        assertThat(mean.residualW() / mean.fuelW()).isCloseTo(0, within(1e-12));
    }

    @Test
    void timeSharesNeedNotSumToOne() {
        EngineHeat engine = new EngineHeat(ROAD, EngineFactors.NOMINAL);
        HeatSplit once = engine.meanOver(List.of(new EngineMode(1, 0.5, 0.8)));
        HeatSplit half = engine.meanOver(List.of(new EngineMode(0.5, 0.5, 0.8)));
        assertThat(half.coolantW()).isCloseTo(once.coolantW(), within(1e-9));
        assertThatThrownBy(() -> engine.meanOver(List.of(new EngineMode(0, 0.5, 0.8))))
                .isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void overrunIsFrictionOnly() {
        HeatSplit h = new EngineHeat(ROAD, EngineFactors.NOMINAL).overrun(60);
        assertThat(h.fuelW()).isZero();
        double thousands = 3.6;
        double rubs = (0.97 + 0.15 * thousands) / (0.97 + 0.15 * thousands + 0.05 * thousands * thousands);
        assertThat(h.coolantW()).isCloseTo(0.30 * rubs * h.frictionW(), within(1e-9));
        assertThat(h.oilW()).isCloseTo(0.45 * rubs * h.frictionW(), within(1e-9));
        assertThat(h.residualW()).isCloseTo(0, within(1e-9));
    }

    @Test
    void ratedPowerStandsAtRatedSpeedOnTheTorqueCurve() {
        for (EngineClass kind : EngineClass.values()) {
            Fuel fuel = kind.isDiesel() ? Fuel.DIESEL : Fuel.PETROL_E10;
            EngineHeat engine =
                    new EngineHeat(EngineSpec.of(kind, 2e-3, 4, 100e3, 80, 14, fuel), EngineFactors.NOMINAL);
            assertThat(engine.fullLoadPowerW(80)).isCloseTo(100e3, within(1e-6));
            assertThat(engine.fullLoadPowerW(60)).isBetween(60e3, 100e3);
        }
    }

    @Test
    void measuredEfficiencyIsReturnedAtRatedPower() {
        EngineSpec measured = new EngineSpec(
                EngineClass.PETROL_TURBO, 2.2e-3, 4, 300e3, 7000 / 60.0, 15, Fuel.E85, OptionalDouble.of(0.29));
        HeatSplit h = new EngineHeat(measured, new EngineFactors(1, 1.1, 1, 0)).at(300e3, 7000 / 60.0);
        assertThat(h.brakeW() / h.fuelW()).isCloseTo(0.29, within(1e-12));
    }

    @Test
    void anImpossibleMeasuredEfficiencyLeavesANote() {
        EngineSpec measured = new EngineSpec(
                EngineClass.PETROL_NATURAL, 2.4e-3, 4, 150e3, 100, 15, Fuel.PETROL_E10, OptionalDouble.of(0.45));
        HeatSplit h = new EngineHeat(measured, EngineFactors.NOMINAL).at(150e3, 100);
        assertThat(h.notes()).extracting("field").contains("measuredBrakeEfficiency");
        assertThat(h.exhaustW()).isPositive();
    }

    @Test
    void anEngineThatStandsGivesNoHeat() {
        EngineHeat engine = new EngineHeat(ROAD, EngineFactors.NOMINAL);
        assertThat(engine.at(0, 0).coolantW()).isZero();
        assertThatThrownBy(() -> engine.at(1, 0)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> engine.at(Double.NaN, 50)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> engine.at(226e3, 100)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> engine.at(10e3, 131)).isInstanceOf(OutOfRangeException.class);
    }

    private static EngineSpec on(Fuel fuel, EngineSpec e) {
        return EngineSpec.of(
                e.engineClass(),
                e.displacementM3(),
                e.cylinders(),
                e.ratedPowerW(),
                e.ratedSpeedPerS(),
                e.idleSpeedPerS(),
                fuel);
    }

    @Test
    void dieselAndSparkIgnitionFuelsDoNotMix() {
        assertThatThrownBy(() -> on(Fuel.DIESEL, ROAD)).isInstanceOf(InputException.class);
    }

    @Test
    void taylorAndToongLieNearTheBalance() {
        TaylorCrossCheck check = TaylorCrossCheck.of(0.091, 4, 0.1812, 370);
        assertThat(check.reynolds()).isCloseTo(16253, HALF_PERCENT);
        assertThat(check.heatW()).isCloseTo(138.0e3, HALF_PERCENT);
        EngineHeat engine = new EngineHeat(ROAD, EngineFactors.NOMINAL);
        HeatSplit h = engine.at(150e3, 100);
        double possible = engine.mostToCoolantAndOilW(h);
        TaylorCrossCheck own = TaylorCrossCheck.of(ROAD, h, 370);
        assertThat(own.difference(h, possible)).isCloseTo(0.29, within(0.01));
        assertThat(TaylorCrossCheck.notes(engine, h, 370)).isEmpty();
        assertThat(new TaylorCrossCheck(1, 2 * (h.coolantW() + h.oilW())).notes(h, possible))
                .hasSize(1);
    }

    /** At idle the correlation would leave next to nothing for work and exhaust, which the balance of energy denies. */
    @Test
    void secondWayIsNotAskedForHeatThatIsNotThere() {
        EngineHeat engine = new EngineHeat(ROAD, EngineFactors.NOMINAL);
        HeatSplit idle = engine.at(700, 650 / 60.0);
        TaylorCrossCheck asked = TaylorCrossCheck.of(ROAD, idle, 370);
        assertThat(asked.heatW()).isGreaterThan(1.4 * (idle.coolantW() + idle.oilW()));
        assertThat(engine.mostToCoolantAndOilW(idle)).isBetween(idle.coolantW() + idle.oilW(), 0.75 * idle.releasedW());
        assertThat(TaylorCrossCheck.notes(engine, idle, 370)).isEmpty();
    }

    /** Six times the air that burns is no charge of 890 K. */
    @Test
    void secondWaySaysNothingOfAnIdlingDiesel() {
        EngineSpec diesel = new EngineSpec(
                EngineClass.DIESEL_TURBO, 2e-3, 4, 100e3, 4000 / 60.0, 800 / 60.0, Fuel.DIESEL, OptionalDouble.empty());
        EngineHeat engine = new EngineHeat(diesel, EngineFactors.NOMINAL);
        HeatSplit idle = engine.at(1500, 800 / 60.0);
        assertThat(TaylorCrossCheck.of(diesel, idle, 370).heatW()).isGreaterThan(idle.fuelW());
        assertThat(TaylorCrossCheck.notes(engine, idle, 370)).isEmpty();
    }

    @Test
    void workingShowsTheResult() {
        EngineHeat engine = new EngineHeat(ROAD, EngineFactors.NOMINAL);
        HeatSplit h = engine.at(150e3, 100);
        assertThat(engine.working(h))
                .anySatisfy(line -> {
                    assertThat(line.symbol()).isEqualTo("Q_cool");
                    assertThat(line.value()).isEqualTo(h.coolantW());
                })
                .allSatisfy(line -> assertThat(line.value()).isFinite());
    }
}
