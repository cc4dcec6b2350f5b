package headertank.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.FieldGroup;
import headertank.calc.carspec.HowKnown;
import headertank.calc.carspec.Learned;
import headertank.calc.carspec.ModelFactor;
import headertank.calc.carspec.Resolved;
import headertank.calc.choice.CoolantBase;
import headertank.calc.duty.Duty;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.duty.StandardDuties;
import headertank.calc.evidence.CoreSheet;
import headertank.calc.evidence.FanSheet;
import headertank.calc.evidence.NeverHot;
import headertank.calc.evidence.PumpSheet;
import headertank.calc.evidence.SettledReading;
import headertank.calc.evidence.WorkshopReadings;
import headertank.calc.fluid.Coolant;
import headertank.calc.fluid.GlycolKind;
import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Physics;
import headertank.calc.quantity.Stated;
import headertank.calc.radiator.Radiator;
import headertank.calc.radiator.RadiatorFactors;
import headertank.calc.rating.Plant;
import headertank.calc.result.Distribution;
import headertank.calc.result.IdleExpectation.Figure;
import headertank.calc.result.NextEvidence;
import headertank.calc.uncertainty.ModelSpread;
import headertank.calc.uncertainty.Sampling;
import headertank.calc.verdict.DutyOutcome;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

/** What is learned of a car, through the door. */
class LearnTest {

    private static final Rater RATER = Rater.standard();
    private static final Build CAR = Builds.drift();
    private static final Duty TRACK = StandardDuties.TRACK;
    private static final OperatingPoint LAPS = TRACK.point("laps");
    private static final int SAMPLES = 256;

    /** The gauge as the car is expected to stand on the track, so much hotter. */
    private static SettledReading reading(double hotterK) {
        double ambient = Physics.kelvin(25);
        double expected = RATER.at(CAR.inAir(ambient), LAPS).coolantMarginK();
        double limit = RATER.resolve(CAR).value(BuildField.COOLANT_LIMIT);
        return new SettledReading(LAPS, ambient, limit - expected + hotterK, 1, Optional.empty());
    }

    private static Distribution margin(Learned learned) {
        return outcome(RATER.knowing(learned)).marginSpread().orElseThrow();
    }

    private static DutyOutcome outcome(Rater rater) {
        return rater.rate(CAR, List.of(TRACK), SAMPLES).duty("track").outcome();
    }

    private static double width(Distribution d) {
        return d.high() - d.low();
    }

    @Test
    void aSettledReadingNarrowsTheMarginAndMovesIt() {
        Distribution before = margin(Learned.NOTHING);
        Distribution asExpected = margin(RATER.learn(CAR, reading(0)));
        Distribution hotter = margin(RATER.learn(CAR, reading(12)));
        assertThat(width(asExpected)).isLessThan(0.5 * width(before));
        assertThat(hotter.median()).isLessThan(asExpected.median() - 6);
        assertThat(RATER.knowing(RATER.learn(CAR, reading(12))).marginK(CAR, TRACK))
                .isLessThan(RATER.marginK(CAR, TRACK) - 6);
    }

    @Test
    void theSameEvidenceGivesTheSameDigits() {
        Learned once = RATER.learn(CAR, reading(5));
        Learned again = Rater.standard().learn(CAR, reading(5));
        assertThat(again).isEqualTo(once);
        assertThat(margin(again)).isEqualTo(margin(once));
    }

    @Test
    void nothingLearnedChangesNothing() {
        DutyOutcome before = outcome(RATER);
        DutyOutcome forgotten =
                outcome(RATER.knowing(RATER.learn(CAR, reading(5))).knowing(Learned.NOTHING));
        assertThat(forgotten.marginSpread()).isEqualTo(before.marginSpread());
        assertThat(forgotten.coolantMarginK()).isEqualTo(before.coolantMarginK());
        assertThat(forgotten.probabilityTooHot()).isEqualTo(before.probabilityTooHot());
        assertThatThrownBy(() -> RATER.learn(CAR)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void whatNobodyBelievesIsSaid() {
        Learned learned = RATER.learn(CAR, reading(53));
        assertThat(learned.strain()).isGreaterThan(Learned.CREDIBLE);
        assertThat(learned.isBeyondBelief()).isTrue();
        assertThat(RATER.learn(CAR, reading(5)).isBeyondBelief()).isFalse();
        assertThat(Learned.NOTHING.isBeyondBelief()).isFalse();
    }

    /** A pump that makes a fifth of the head is not the pump of this car, and the factor says so by name, the furthest first. */
    @Test
    void aFactorThatNobodyBelievesIsNamed() {
        double flow = RATER.resolve(CAR).value(BuildField.PUMP_FLOW);
        double head = RATER.resolve(CAR).value(BuildField.PUMP_HEAD);
        Learned learned = RATER.learn(CAR, pump(flow, 0.2 * head));
        assertThat(learned.isBeyondBelief()).isTrue();
        assertThat(learned.beyondBelief())
                .isNotEmpty()
                .allMatch(f -> Math.abs(f.moved()) > Learned.CREDIBLE && f.part() == FieldGroup.PUMP)
                .isSortedAccordingTo(Comparator.comparingDouble((Learned.Factor f) -> -Math.abs(f.moved())));
        assertThat(RATER.learn(CAR, pump(flow, 0.9 * head)).beyondBelief()).isEmpty();
    }

    private static PumpSheet pump(double flow, double head) {
        return new PumpSheet(
                0.03, List.of(new PumpSheet.Point(1, 0, head), new PumpSheet.Point(1, 0.5 * flow, 0.75 * head)));
    }

    /** Through the door: of a new radiator nothing is known, of the engine behind it everything that was, and the old one back is known again. */
    @Test
    void aNewPartIsRatedAsUnknownAndTheOldOneBackAsKnown() {
        Rater known = RATER.knowing(RATER.learn(CAR, reading(12)));
        Build radiator =
                CAR.change().set(BuildField.CORE_WIDTH, Stated.measured(0.75)).build();
        double asKnown = known.marginK(CAR, TRACK);
        assertThat(known.marginK(radiator, TRACK) - RATER.marginK(radiator, TRACK))
                .as("the engine's share of what was learned stays")
                .isLessThan(-1);
        Build again = radiator.change()
                .set(BuildField.CORE_WIDTH, CAR.entry(BuildField.CORE_WIDTH).orElseThrow())
                .build();
        assertThat(known.marginK(again, TRACK)).isEqualTo(asKnown);
    }

    @Test
    void aChangedPartGetsItsPriorBack() {
        Learned learned = RATER.learn(CAR, reading(12));
        Build radiator =
                CAR.change().set(BuildField.CORE_WIDTH, Stated.measured(0.75)).build();
        Learned after = learned.after(radiator);
        assertThat(after.factors()).noneMatch(f -> f.part() == FieldGroup.RADIATOR);
        assertThat(after.factor(ModelFactor.COOLANT_HEAT.key()))
                .isEqualTo(learned.factor(ModelFactor.COOLANT_HEAT.key()))
                .isPresent();
        Resolved known = RATER.knowing(learned).resolve(radiator);
        Resolved unknown = RATER.resolve(radiator);
        assertThat(known.value(BuildField.CORE_DEPTH)).isEqualTo(unknown.value(BuildField.CORE_DEPTH));
        assertThat(known.value(BuildField.ENGINE_POWER)).isNotEqualTo(unknown.value(BuildField.ENGINE_POWER));
        Learned hotDay = learned.after(CAR.inAir(Physics.kelvin(20)));
        assertThat(hotDay.factor(ModelFactor.DEMAND.key())).isPresent();
    }

    @Test
    void aSheetOfFourPointsPinsTheCore() {
        Plant asModelled = Plant.of(RATER.resolve(CAR));
        Radiator truth = new Radiator(asModelled.radiator().spec(), new RadiatorFactors(0.8, 1, 1));
        CoreSheet sheet = new CoreSheet(
                CoolantBase.WATER,
                0,
                0.02,
                DoubleStream.of(0.8, 1.4, 2.0, 2.6)
                        .mapToObj(air -> new CoreSheet.Point(air, 303.15, 1.5e-3, 363.15, heat(truth, air)))
                        .toList());
        Learned learned = RATER.learn(CAR, sheet);
        Plant known = Plant.of(RATER.knowing(learned).resolve(CAR));
        assertThat(heat(known.radiator(), 1.4)).isCloseTo(heat(truth, 1.4), within(0.01 * heat(truth, 1.4)));
        double[] sampled = new Sampling(RATER.knowing(learned).resolve(CAR), 256, 3)
                        .each(car -> Math.log(heat(
                                car.at(ModelSpread.of(
                                                RATER.resolve(CAR), RATER.at(CAR, StandardDuties.STREET.point("hill"))))
                                        .radiator(),
                                1.4)))
                        .stream()
                        .mapToDouble(d -> d)
                        .toArray();
        assertThat(width(Distribution.of(sampled))).isLessThan(0.037);
        assertThat(RATER.knowing(learned).marginK(CAR, TRACK)).isLessThan(RATER.marginK(CAR, TRACK) - 1);
        assertThat(learned.factor(ModelFactor.METAL_MASS.key()).orElseThrow().left())
                .isCloseTo(1, within(1e-9));
    }

    @Test
    void aSheetOfTheFanMovesItsCurveAndItsCurrent() {
        double flow = RATER.resolve(CAR).value(BuildField.FAN_FLOW);
        double rise = RATER.resolve(CAR).value(BuildField.FAN_SHUT_OFF);
        FanSheet sheet = new FanSheet(
                1.2,
                0.03,
                List.of(new FanSheet.Point(0, 0.85 * rise, 13, Double.NaN), new FanSheet.Point(0.9 * flow, 0, 13, 25)));
        Learned learned = RATER.learn(CAR, sheet);
        Resolved known = RATER.knowing(learned).resolve(CAR);
        assertThat(known.value(BuildField.FAN_SHUT_OFF)).isBetween(0.8 * rise, 0.97 * rise);
        assertThat(known.value(BuildField.FAN_FLOW)).isLessThan(0.98 * flow);
        assertThat(known.value(BuildField.FAN_CURRENT)).isBetween(22.2, 25.0);
        assertThat(learned.factor(BuildField.FAN_SHUT_OFF.key()).orElseThrow().left())
                .isLessThan(0.95);
        assertThat(RATER.knowing(learned).marginK(CAR, TRACK)).isLessThan(RATER.marginK(CAR, TRACK));
        Build clutch = CAR.change().seen(BuildField.FAN_DRIVE, "CLUTCH").build();
        assertThatThrownBy(() -> RATER.learn(clutch, sheet)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new FanSheet(1.2, 0.03, List.of())).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void aSheetOfThePumpMovesItsCurve() {
        double flow = RATER.resolve(CAR).value(BuildField.PUMP_FLOW);
        double head = RATER.resolve(CAR).value(BuildField.PUMP_HEAD);
        PumpSheet sheet = new PumpSheet(
                0.03,
                List.of(
                        new PumpSheet.Point(1, 0, 0.9 * head),
                        new PumpSheet.Point(1, 0.5 * flow, 0.6 * head),
                        new PumpSheet.Point(0.5, 0.3 * flow, 0.1 * head)));
        Resolved known = RATER.knowing(RATER.learn(CAR, sheet)).resolve(CAR);
        assertThat(known.value(BuildField.PUMP_HEAD)).isLessThan(0.97 * head);
        assertThat(known.value(BuildField.PUMP_FLOW)).isLessThan(flow);
        assertThatThrownBy(() -> new PumpSheet.Point(1, 0, 2e6)).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void howWellACarIsKnown() {
        assertThat(Learned.NOTHING.known()).isEqualTo(HowKnown.FROM_THE_SHEET);
        Learned read = RATER.learn(CAR, reading(2));
        assertThat(read.known()).isEqualTo(HowKnown.FROM_ONE_READING);
        assertThat(read.confirmed().known()).as("no run, nothing to confirm").isEqualTo(HowKnown.FROM_ONE_READING);
        assertThat(RATER.learn(CAR, new NeverHot(300, 1)).known()).isEqualTo(HowKnown.FROM_ONE_READING);
    }

    /** On a drift car of which nothing is known a logged drive tells most, and after one the next tells less. */
    @Test
    void aLoggedDriveIsWorthMost() {
        List<NextEvidence> next = RATER.nextEvidence(CAR, List.of(TRACK));
        assertThat(next)
                .isSortedAccordingTo(
                        Comparator.comparingDouble(NextEvidence::inAllK).reversed());
        assertThat(next.get(0).deed()).isEqualTo(NextEvidence.Deed.LOGGED_DRIVE);
        assertThat(next.get(0).deed().minutes()).isPositive();
        assertThat(next.get(0).deed().tools()).containsExactly(NextEvidence.Tool.LOGGER);
        double before = next.get(0).narrowsK().get("track");
        assertThat(before).isBetween(0.3 * width(margin(Learned.NOTHING)), width(margin(Learned.NOTHING)));
        double after = RATER.knowing(RATER.learn(CAR, reading(0))).nextEvidence(CAR, List.of(TRACK)).stream()
                .mapToDouble(n -> n.narrowsK().get("track"))
                .max()
                .orElse(0);
        assertThat(after).isLessThan(0.6 * before);
        assertThatThrownBy(() -> RATER.nextEvidence(CAR, List.of())).isInstanceOf(IllegalArgumentException.class);
    }

    private static double heat(Radiator core, double airKgPerS) {
        return core.heat(
                        airKgPerS, 303.15, Physics.STANDARD_PRESSURE_PA, 1.5e-3, Coolant.of(GlycolKind.NONE, 0), 363.15)
                .heatW();
    }

    @Test
    void aSlowWarmUpIsHeavyMetalOrLittleHeat() {
        Build road = Builds.road();
        double ambient = Physics.kelvin(20);
        double expected = RATER.idleInWorkshop(road, ambient)
                .bands()
                .get(Figure.FROM_40_TO_80_S)
                .expected();
        Learned learned =
                RATER.learn(road, new WorkshopReadings(ambient, Map.of(Figure.FROM_40_TO_80_S, 1.2 * expected)));
        assertThat(learned.factor(ModelFactor.METAL_MASS.key()).orElseThrow().moved())
                .isGreaterThan(0.1);
        double known = RATER.knowing(learned)
                .idleInWorkshop(road, ambient)
                .bands()
                .get(Figure.FROM_40_TO_80_S)
                .expected();
        assertThat(known).isCloseTo(1.2 * expected, within(0.03 * expected));
    }

    @Test
    void neverHotSaysTheSameAsTheFieldsOfTheCar() {
        Build stated = CAR.change()
                .set(BuildField.NOT_HOT_DAY, Stated.measured(Physics.kelvin(34)))
                .set(BuildField.NOT_HOT_SUMMERS, Stated.measured(2))
                .build();
        Distribution byField = RATER.rate(stated, List.of(TRACK), 128)
                .duty("track")
                .outcome()
                .marginSpread()
                .orElseThrow();
        Learned learned = RATER.learn(CAR, new NeverHot(Physics.kelvin(34), 2));
        Distribution byEvidence = RATER.knowing(learned)
                .rate(CAR, List.of(TRACK), 128)
                .duty("track")
                .outcome()
                .marginSpread()
                .orElseThrow();
        assertThat(byEvidence).isEqualTo(byField);
    }

    @Test
    void refusesWhatNobodyCouldHaveSeen() {
        assertThatThrownBy(() -> new SettledReading(LAPS, 300, 500, 1, Optional.empty()))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> new CoreSheet(CoolantBase.WATER, 0, 0.02, List.of()))
                .isInstanceOf(OutOfRangeException.class);
    }
}
