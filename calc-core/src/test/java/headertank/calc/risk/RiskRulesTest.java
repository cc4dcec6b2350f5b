package headertank.calc.risk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.Builds;
import headertank.calc.Rater;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import headertank.calc.choice.AirExit;
import headertank.calc.choice.CoolantBase;
import headertank.calc.choice.FanControlKind;
import headertank.calc.choice.FanDrive;
import headertank.calc.choice.FanMounting;
import headertank.calc.choice.OilCooling;
import headertank.calc.choice.SensorPlacement;
import headertank.calc.choice.ThermostatFitting;
import headertank.calc.duty.StandardDuties;
import headertank.calc.fluid.Fuel;
import headertank.calc.quantity.Physics;
import headertank.calc.quantity.Stated;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Each rule on a car that has the choice, and on the same car without it. */
class RiskRulesTest {

    private static final Rater RATER = Rater.standard();

    @Test
    void aSoundCarRaisesNothingThatStopsIt() {
        Build sound = Builds.road()
                .change()
                .set(BuildField.ALTERNATOR, Stated.measured(160))
                .set(BuildField.AMBIENT, Stated.measured(Physics.kelvin(35)))
                .set(BuildField.LOWEST_AMBIENT, Stated.measured(Physics.kelvin(-20)))
                .build();
        assertThat(RATER.preview(sound, List.of(StandardDuties.STREET)).flags())
                .extracting(Flag::weight)
                .doesNotContain(Flag.Weight.STOP);
    }

    @Test
    void thermostatRemoved() {
        Flag f = flagged(
                "thermostat-removed", Builds.road().change().seen(BuildField.THERMOSTAT, ThermostatFitting.REMOVED));
        double without = value(f, RuleText.THERMOSTAT_REMOVED_COOLANT_WITHOUT);
        double with = value(f, RuleText.THERMOSTAT_REMOVED_COOLANT_WITH);
        assertThat(Physics.celsius(with)).isGreaterThan(75);
        assertThat(without).isLessThan(with - 25);
        assertThat(f.tradeSays()).isEqualTo(RuleText.THERMOSTAT_REMOVED_TRADE.with());
        absent("thermostat-removed", Builds.road().change());
    }

    @Test
    void sensorInHoseMisleadsOnceTheFlowStops() {
        Flag f = flagged(
                "sensor-in-hose", Builds.road().change().seen(BuildField.GAUGE_SENSOR, SensorPlacement.RADIATOR_HOSE));
        assertThat(value(f, RuleText.SENSOR_IN_HOSE_ERROR_FLOWING)).isCloseTo(0, within(1.0));
        assertThat(value(f, RuleText.SENSOR_IN_HOSE_ERROR_STANDING)).isLessThan(-10);
        absent("sensor-in-hose", Builds.road().change().seen(BuildField.GAUGE_SENSOR, SensorPlacement.HEAD));
    }

    @Test
    void setupFromAlcoholCar() {
        Flag f = flagged(
                "setup-from-alcohol-car", Builds.drift().change().seen(BuildField.FUEL_OF_DONOR, Fuel.METHANOL));
        assertThat(gain(f)).isBetween(1.0, 15.0);
        assertThat(value(f, RuleText.SETUP_FROM_ALCOHOL_CAR_WALL_HEAT_RATIO)).isCloseTo(0.869, within(0.01));
        absent("setup-from-alcohol-car", Builds.drift().change().seen(BuildField.FUEL_OF_DONOR, Fuel.PETROL_E10));
        absent("setup-from-alcohol-car", Builds.drift().change());
    }

    @Test
    void clutchFanBehindATiltedCore() {
        Build.Builder clutch = Build.forCar(CarClass.OLD_STREET)
                .seen(BuildField.FAN_DRIVE, FanDrive.CLUTCH)
                .set(BuildField.CORE_TILT, Stated.measured(Math.toRadians(20)));
        assertThat(gain(flagged("clutch-fan-tilted", clutch))).isPositive();
        absent("clutch-fan-tilted", clutch.set(BuildField.CORE_TILT, Stated.measured(0)));
    }

    @Test
    void pushingFan() {
        assertThat(gain(flagged(
                        "pushing-fan", Builds.drift().change().seen(BuildField.FAN_MOUNTING, FanMounting.PUSHING))))
                .isPositive();
        absent("pushing-fan", Builds.drift().change());
    }

    /** Two big fans at an abrupt start ask 60 A at once: common practice, no source. */
    @Test
    void abruptFanStart() {
        Build.Builder two = Builds.drift()
                .change()
                .seen(BuildField.CONTROL_KIND, FanControlKind.SWITCH)
                .set(BuildField.FAN_CURRENT, Stated.measured(25));
        Flag f = flagged("abrupt-fan-start", two);
        assertThat(value(f, RuleText.ABRUPT_FAN_START_ALL_FANS_STARTING)).isCloseTo(60, within(1e-9));
        absent("abrupt-fan-start", two.seen(BuildField.CONTROL_KIND, FanControlKind.RAMP));
    }

    @Test
    void capTooWeak() {
        Flag f = flagged("cap-too-weak", Builds.drift().change().set(BuildField.CAP_PRESSURE, Stated.measured(0)));
        assertThat(value(f, RuleText.CAP_TOO_WEAK_PRESSURE_NEEDED)).isBetween(3e4, 1.5e5);
        absent("cap-too-weak", Builds.road().change());
    }

    @Test
    void noShroud() {
        flagged("no-shroud", Builds.drift().change().set(BuildField.FAN_COVER, Stated.measured(0.45)));
        absent("no-shroud", Builds.drift().change());
    }

    @Test
    void noWayOut() {
        Build.Builder closed = Builds.drift()
                .change()
                .seen(BuildField.AIR_EXIT, AirExit.NO_WAY_OUT)
                .set(BuildField.AIR_EXIT_AREA, Stated.measured(0.06));
        assertThat(gain(flagged("no-way-out", closed))).isGreaterThan(5);
        absent("no-way-out", Builds.drift().change());
    }

    @Test
    void coolantFreezes() {
        Build.Builder winter =
                Builds.road().change().set(BuildField.LOWEST_AMBIENT, Stated.measured(Physics.kelvin(-10)));
        absent("coolant-freezes", winter);
        Flag f = flagged(
                "coolant-freezes",
                winter.seen(BuildField.COOLANT_BASE, CoolantBase.WATER).unknown(BuildField.COOLANT_GLYCOL));
        assertThat(f.weight()).isEqualTo(Flag.Weight.STOP);
        assertThat(value(f, RuleText.COOLANT_FREEZES_FREEZING_POINT)).isCloseTo(273.15, within(0.1));
    }

    @Test
    void aColdestDayThatNobodyNamedAsksAndHoldsNothingBack() {
        Build.Builder thin = Builds.drift()
                .change()
                .unknown(BuildField.LOWEST_AMBIENT)
                .seen(BuildField.COOLANT_BASE, CoolantBase.ETHYLENE_GLYCOL)
                .set(BuildField.COOLANT_GLYCOL, Stated.measured(0.2));
        Flag asked = flagged("coolant-freezes", thin);
        assertThat(asked.weight()).isEqualTo(Flag.Weight.REMARK);
        assertThat(asked.title()).isEqualTo(RuleText.COOLANT_FREEZES_ASK_TITLE_CLOSE.with());
        double assumed = value(asked, RuleText.COOLANT_FREEZES_ASSUMED_DAY);

        assertThat(flagged("coolant-freezes", thin.set(BuildField.LOWEST_AMBIENT, Stated.guessed(assumed)))
                        .weight())
                .as("the same day, named by somebody")
                .isEqualTo(Flag.Weight.CONDITION);

        Flag water = flagged(
                "coolant-freezes",
                thin.unknown(BuildField.LOWEST_AMBIENT)
                        .seen(BuildField.COOLANT_BASE, CoolantBase.WATER)
                        .unknown(BuildField.COOLANT_GLYCOL));
        assertThat(water.weight()).isEqualTo(Flag.Weight.REMARK);
        assertThat(water.title()).isEqualTo(RuleText.COOLANT_FREEZES_ASK_TITLE.with());
    }

    @Test
    void impossibleFanClaim() {
        Build.Builder claimed = Builds.drift()
                .change()
                .set(BuildField.FAN_DIAMETER, Stated.measured(0.40))
                .set(BuildField.FAN_CURRENT, Stated.measured(25))
                .set(BuildField.FAN_FLOW, Stated.advertised(1.89));
        Flag f = flagged("impossible-fan-claim", claimed);
        assertThat(value(f, RuleText.IMPOSSIBLE_FAN_CLAIM_JET_POWER))
                .isGreaterThan(value(f, RuleText.IMPOSSIBLE_FAN_CLAIM_ELECTRIC_POWER));
        assertThat(f.weight()).isEqualTo(Flag.Weight.CONDITION);
        assertThat(value(f, RuleText.IMPOSSIBLE_FAN_CLAIM_POSSIBLE_FLOW)).isLessThan(1.4);
        absent("impossible-fan-claim", claimed.set(BuildField.FAN_FLOW, Stated.advertised(0.9)));
    }

    @Test
    void aDoubtfulFanClaimIsRemarkedWithoutCallingItImpossible() {
        double doubted = 1.38;
        Flag f = flagged(
                "impossible-fan-claim",
                Builds.drift()
                        .change()
                        .set(BuildField.FAN_DIAMETER, Stated.measured(0.40))
                        .set(BuildField.FAN_CURRENT, Stated.measured(25))
                        .set(BuildField.FAN_FLOW, Stated.advertised(doubted)));
        assertThat(f.weight()).isEqualTo(Flag.Weight.REMARK);
        assertThat(f.title()).isEqualTo(RuleText.IMPOSSIBLE_FAN_CLAIM_DOUBTFUL_TITLE.with());
        double share = value(f, RuleText.IMPOSSIBLE_FAN_CLAIM_JET_POWER)
                / value(f, RuleText.IMPOSSIBLE_FAN_CLAIM_ELECTRIC_POWER);
        assertThat(share).isBetween(0.35, 0.45);
        assertThat(value(f, RuleText.IMPOSSIBLE_FAN_CLAIM_USUAL_FLOW)).isLessThan(0.9 * doubted);
        assertThat(f.consequences())
                .extracting(Flag.Consequence::what)
                .doesNotContain(
                        RuleText.IMPOSSIBLE_FAN_CLAIM_POSSIBLE_FLOW.with(),
                        RuleText.IMPOSSIBLE_FAN_CLAIM_GAIN_AT_POSSIBLE.with());
    }

    /** What the rating assumed, or somebody guessed, proves nothing against what a fan is said to deliver. */
    @Test
    void anAssumedOrGuessedCurrentMakesNoFanClaimImpossible() {
        Build.Builder claimed = Builds.drift()
                .change()
                .set(BuildField.FAN_DIAMETER, Stated.measured(0.40))
                .set(BuildField.FAN_FLOW, Stated.advertised(1.6));
        for (Build.Builder car : List.of(
                claimed.build().change().unknown(BuildField.FAN_CURRENT),
                claimed.build().change().set(BuildField.FAN_CURRENT, Stated.guessed(25)),
                claimed.build()
                        .change()
                        .set(BuildField.FAN_CURRENT, Stated.measured(25))
                        .set(BuildField.FAN_DIAMETER, Stated.guessed(0.40)),
                claimed.build()
                        .change()
                        .set(BuildField.FAN_CURRENT, Stated.measured(25))
                        .unknown(BuildField.FAN_DIAMETER))) {
            Flag f = flagged("impossible-fan-claim", car);
            assertThat(f.weight()).isEqualTo(Flag.Weight.REMARK);
            assertThat(f.title()).isEqualTo(RuleText.IMPOSSIBLE_FAN_CLAIM_UNPROVEN_TITLE.with());
            assertThat(f.consequences())
                    .extracting(c -> c.what().code())
                    .doesNotContain(RuleText.IMPOSSIBLE_FAN_CLAIM_ELECTRIC_POWER.code());
            double least = value(f, RuleText.IMPOSSIBLE_FAN_CLAIM_LEAST_CURRENT);
            Build enough = car.build();
            double d = RATER.resolve(enough).value(BuildField.FAN_DIAMETER);
            Build.Builder vouched = enough.change().set(BuildField.FAN_DIAMETER, Stated.measured(d));
            assertThat(find("impossible-fan-claim", vouched.set(BuildField.FAN_CURRENT, Stated.measured(0.98 * least)))
                            .orElseThrow()
                            .weight())
                    .isEqualTo(Flag.Weight.CONDITION);
            assertThat(find("impossible-fan-claim", vouched.set(BuildField.FAN_CURRENT, Stated.measured(1.02 * least)))
                            .orElseThrow()
                            .weight())
                    .isEqualTo(Flag.Weight.REMARK);
        }
    }

    @Test
    void aMeasuredFlowThatCannotBeIsFlaggedLikeAnAdvertisedOne() {
        Build.Builder measured = Builds.drift()
                .change()
                .set(BuildField.FAN_DIAMETER, Stated.measured(0.40))
                .set(BuildField.FAN_CURRENT, Stated.measured(25))
                .set(BuildField.FAN_FLOW, Stated.measured(1.89));
        Flag f = flagged("impossible-fan-claim", measured);
        assertThat(f.weight()).isEqualTo(Flag.Weight.CONDITION);
        assertThat(f.title()).isEqualTo(RuleText.IMPOSSIBLE_FAN_CLAIM_MEASURED_TITLE.with());
        assertThat(f.caution().isEmpty()).isFalse();
        absent("impossible-fan-claim", measured.set(BuildField.FAN_FLOW, Stated.measured(1.38)));
    }

    @Test
    void fanSetBelowThermostat() {
        Build.Builder low = Builds.road()
                .change()
                .seen(BuildField.CONTROL_KIND, FanControlKind.SWITCH)
                .set(BuildField.CONTROL_SET, Stated.measured(Physics.kelvin(80)));
        assertThat(flagged("fan-set-below-thermostat", low).weight()).isEqualTo(Flag.Weight.REMARK);
        absent("fan-set-below-thermostat", low.set(BuildField.CONTROL_SET, Stated.measured(Physics.kelvin(100))));
    }

    @Test
    void oilOverTarget() {
        Flag f = flagged("oil-over-target", Builds.drift().change().seen(BuildField.OIL_COOLER, OilCooling.NONE));
        assertThat(f.weight()).isEqualTo(Flag.Weight.STOP);
    }

    @Test
    void bargainCore() {
        Build.Builder bargain = Builds.track().change().seen(BuildField.CORE_CLASS, "bargain-aluminium");
        assertThat(gain(flagged("bargain-core", bargain))).isPositive();
        absent("bargain-core", Builds.track().change());
    }

    private static Optional<Flag> find(String rule, Build.Builder car) {
        return RATER
                .preview(car.build(), List.of(StandardDuties.STREET, StandardDuties.TRACK, StandardDuties.DRIFT))
                .flags()
                .stream()
                .filter(f -> f.ruleId().equals(rule))
                .findFirst();
    }

    private static Flag flagged(String rule, Build.Builder car) {
        Flag f = find(rule, car).orElseThrow(() -> new AssertionError(rule + " was not raised"));
        assertThat(f.reason().isEmpty()).isFalse();
        assertThat(f.advice().isEmpty()).isFalse();
        assertThat(f.source()).isNotBlank();
        assertThat(f.consequences()).isNotEmpty().allSatisfy(c -> assertThat(c.value())
                .isFinite());
        return f;
    }

    private static void absent(String rule, Build.Builder car) {
        assertThat(find(rule, car)).as(rule).isEmpty();
    }

    private static double value(Flag f, RuleText what) {
        return f.consequences().stream()
                .filter(c -> c.what().code().equals(what.code()))
                .findFirst()
                .orElseThrow(() -> new AssertionError(what + " is not among " + f.consequences()))
                .value();
    }

    /** Largest margin gained in any duty [K]. */
    private static double gain(Flag f) {
        return f.consequences().stream()
                .filter(c -> c.what().code().contains(".gain"))
                .mapToDouble(Flag.Consequence::value)
                .max()
                .orElseThrow();
    }
}
