package headertank.calc.rating;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.calc.Builds;
import headertank.calc.Rater;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.ModelFactor;
import headertank.calc.carspec.Resolved;
import headertank.calc.choice.FanDrive;
import headertank.calc.choice.SensorPlacement;
import headertank.calc.choice.YesNo;
import headertank.calc.duty.Duty;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.result.Balance;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** What physics demands of any car, on seeded random builds. The seed of a failing build is in the message. */
class SteadyPropertiesTest {

    private static final Rater RATER = Rater.standard();
    private static final long FIRST_SEED = 4_711;

    /** How many builds; {@code -Dheadertank.builds=100000} runs the long version. */
    private static final int BUILDS = Integer.getInteger("headertank.builds", 1000);

    /**
     * What a hotter core outlet may cost through the density of the air in exit and fan, as a share of the difference between
     * coolant and ambient: second order, and the only thing that may run against these rules.
     */
    private static final double DENSITY_SHARE = 0.002;

    private static final double SOLVER_K = 0.01;

    @Test
    void everyBuildBalancesOrSaysWhyNot() {
        List<String> refused = new ArrayList<>();
        for (long seed = FIRST_SEED; seed < FIRST_SEED + BUILDS; seed++) {
            Plant plant;
            try {
                plant = Plant.of(RATER.resolve(Builds.random(seed)));
            } catch (OutOfRangeException typed) {
                refused.add(seed + ": " + typed.getMessage());
                continue;
            }
            for (Duty duty : RATER.duties().values()) {
                for (OperatingPoint p : duty.points()) {
                    String who = "seed " + seed + " " + duty.id() + " " + p.id();
                    Balance balance = new SteadySolver(plant, p).solve();
                    if (balance instanceof Balance.Steady s) {
                        assertThat(s.engineOutK()).as(who).isBetween(200.0, 600.0);
                        boolean colderThanTheDay = s.engineOutK() <= s.ambientK() + 0.5 + 1e-9;
                        assertThat(Math.abs(s.residuals().heatShare()) < 1e-6 || colderThanTheDay)
                                .as(who + " residual " + s.residuals().heatShare())
                                .isTrue();
                        assertThat(List.of(
                                        s.oil().oilK(),
                                        s.air().outK(),
                                        s.coolant().radiatorOutK(),
                                        s.air().massKgPerS(),
                                        s.coolant().pumpInletMarginPa(),
                                        s.electrics().loadA()))
                                .as(who)
                                .noneMatch(v -> v.isNaN() || v.isInfinite());
                        assertThat(s.residuals().evaluations()).as(who).isLessThan(120);
                    } else {
                        assertThat(((Balance.None) balance).explanation().code())
                                .as(who)
                                .isNotBlank();
                    }
                }
            }
        }
        assertThat(refused).as("builds that a model refuses").isEmpty();
    }

    @Test
    void aCoolerDayNeverHeats() {
        neverHotter(regulatedByCoolant(), r -> r.with(BuildField.AMBIENT, r.value(BuildField.AMBIENT) - 5));
    }

    @Test
    void aLighterCarNeverHeats() {
        neverHotter(any(), r -> r.with(BuildField.CAR_MASS, 0.9 * r.value(BuildField.CAR_MASS)));
    }

    @Test
    void lessDemandNeverHeats() {
        neverHotter(any(), r -> r, lessDemand());
    }

    @Test
    void moreCoreNeverHeats() {
        neverHotter(regulatedByCoolant(), r -> r.with(BuildField.CORE_BLOCKED, 0.5 * r.value(BuildField.CORE_BLOCKED)));
    }

    @Test
    void lessFoulingNeverHeats() {
        neverHotter(regulatedByCoolant(), r -> r.with(BuildField.CORE_FOULING, 0.3 * r.value(BuildField.CORE_FOULING)));
    }

    /** With current to spare: where the voltage sags, one more fan slows the others down. */
    @Test
    void moreFansNeverHeat() {
        neverHotter(
                regulatedByCoolant().andThen(r -> r.with(BuildField.FAN_CURRENT, 1)
                        .with(BuildField.ALTERNATOR, 400)
                        .with(BuildField.BASE_LOAD, 3)),
                r -> r.with(BuildField.FAN_COUNT, r.value(BuildField.FAN_COUNT) + 1));
    }

    @Test
    void aLargerPumpNeverHeats() {
        neverHotter(regulatedByCoolant(), r -> r.with(BuildField.PUMP_FLOW, 1.2 * r.value(BuildField.PUMP_FLOW)));
    }

    private static ModelFactors lessDemand() {
        double[] deviations = new double[ModelFactor.values().length];
        deviations[ModelFactor.DEMAND.ordinal()] = -1;
        return ModelFactors.at(deviations);
    }

    private static Function<Resolved, Resolved> any() {
        return Function.identity();
    }

    /**
     * Without the feedbacks that may run against these rules in a real car: a clutch fan follows the air behind the core, a
     * fan sensor in hose or tank follows what the radiator does, and hot air runs back beside a small shroud.
     */
    private static Function<Resolved, Resolved> regulatedByCoolant() {
        return r -> (r.is(BuildField.FAN_DRIVE, FanDrive.CLUTCH) ? r.with(BuildField.FAN_DRIVE, FanDrive.ELECTRIC) : r)
                .with(BuildField.FAN_SENSOR, SensorPlacement.BLOCK)
                .with(BuildField.FAN_FLAPS, YesNo.YES);
    }

    private static void neverHotter(Function<Resolved, Resolved> scope, UnaryOperator<Resolved> better) {
        neverHotter(scope, better, ModelFactors.NOMINAL);
    }

    /**
     * The change must not make any operating point hotter than before, at the same engine speed: a car that holds a higher gear
     * turns its pump slower.
     */
    private static void neverHotter(
            Function<Resolved, Resolved> scope, UnaryOperator<Resolved> better, ModelFactors factors) {
        for (long seed = FIRST_SEED; seed < FIRST_SEED + Math.min(BUILDS, 400); seed++) {
            Plant before;
            Plant after;
            try {
                Resolved car = scope.apply(RATER.resolve(Builds.random(seed)));
                before = Plant.of(car);
                after = Plant.of(better.apply(car), factors);
            } catch (OutOfRangeException typed) {
                continue;
            }
            for (Duty duty : RATER.duties().values()) {
                for (OperatingPoint p : duty.points()) {
                    String who = "seed " + seed + " " + duty.id() + " " + p.id();
                    SteadySolver now = new SteadySolver(before, p);
                    SteadySolver then = new SteadySolver(after, p);
                    if (then.load().engineSpeedPerS() == now.load().engineSpeedPerS()
                            && now.solve() instanceof Balance.Steady was
                            && radiatorHelps(now, before.surfaceWPerK(p.roadSpeedMPerS()), was)) {
                        Balance is = then.solve();
                        assertThat(is).as(who).isInstanceOf(Balance.Steady.class);
                        assertThat(((Balance.Steady) is).engineOutK())
                                .as(who)
                                .isLessThanOrEqualTo(was.engineOutK()
                                        + DENSITY_SHARE * (was.engineOutK() - was.ambientK())
                                        + SOLVER_K);
                    }
                }
            }
        }
    }

    /**
     * Whether a watt more from the radiator cools the car at all. It warms the air under the hood, taken as the mean of the air
     * before and behind the core, by (1/2 + r/(1 - r))/C_a, r the share of it that runs back, and the block's surface gives off
     * UA_s times that less. With little air (thermostat shut, fans off, a few g/s) that is more than the watt, and the model has
     * a larger pump heat the car by a tenth of a degree. A limit of the model, not of the solver: such a hood also breathes
     * through its gaps, which the steady balance leaves out.
     */
    private static boolean radiatorHelps(SteadySolver car, double surfaceWPerK, Balance.Steady at) {
        double airWPerK = at.core().heatW() / (at.air().outK() - at.air().inK());
        double cameBackW =
                airWPerK * (at.air().inK() - at.ambientK()) - car.load().upstreamW();
        double cameBackShare = Math.max(0, cameBackW / at.core().heatW());
        return surfaceWPerK * (0.5 + cameBackShare) < airWPerK;
    }
}
