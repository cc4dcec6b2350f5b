package headertank.calc.judged;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.Builds;
import headertank.calc.Rater;
import headertank.calc.Rating;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import headertank.calc.choice.YesNo;
import headertank.calc.duty.Duty;
import headertank.calc.duty.StandardDuties;
import headertank.calc.population.CarPark;
import headertank.calc.quantity.Physics;
import headertank.calc.quantity.Stated;
import headertank.calc.result.HottestDay;
import headertank.calc.verdict.DutyOutcome;
import headertank.calc.verdict.DutyVerdict;
import headertank.calc.verdict.Verdict;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The hottest day that a duty holds, as the duty is judged. */
class HottestDayTest {

    private static final Rater RATER = Rater.standard();
    private static final List<Duty> DUTIES = List.copyOf(RATER.duties().values());

    /** A margin is shown by tenths: closer to 0 than this it has no sign to contradict. */
    private static final double SHOWN_K = 0.05;

    private final Rating drift = RATER.preview(Builds.drift(), DUTIES);

    @Test
    void onThatDayThePeakOfTheRunIsAtTheLimit() {
        DutyOutcome outcome = drift.duty("drift").outcome();
        HottestDay day = RATER.hottestDay(drift, outcome);
        assertThat(day.byRun()).isTrue();
        DutyOutcome there = RATER.preview(Builds.drift().inAir(day.ambientK()), List.of(StandardDuties.DRIFT))
                .duty("drift")
                .outcome();
        assertThat(there.decidedByRun()).isTrue();
        assertThat(there.coolantMarginK()).isCloseTo(0, within(0.05));
        assertThat(there.run().orElseThrow().peaks().coolantK())
                .isCloseTo(drift.resolved().value(BuildField.COOLANT_LIMIT), within(0.05));
    }

    @Test
    void aDutyJudgedByItsRunDoesNotShowTheDayOfAnEndlessStay() {
        DutyOutcome outcome = drift.duty("drift").outcome();
        double endless = outcome.deciding().figures().orElseThrow().limitingAmbientK();
        assertThat(RATER.hottestDay(drift, outcome).ambientK()).isGreaterThan(endless + 5);
    }

    @Test
    void aDutyJudgedByItsSteadyStatesShowsTheirs() {
        DutyOutcome outcome = drift.duty("track").outcome();
        HottestDay day = RATER.hottestDay(drift, outcome);
        assertThat(day.byRun()).isFalse();
        assertThat(day.decidingPointId()).isEqualTo("laps");
        assertThat(day.ambientK())
                .isCloseTo(outcome.deciding().figures().orElseThrow().limitingAmbientK(), within(0.3));
    }

    @Test
    void aCarThatNeverHoldsAndOneThatAlwaysDoesHaveNoSuchDay() {
        Build none = Build.forCar(CarClass.TRACK)
                .seen(BuildField.FAN_DRIVE, "NONE")
                .set(BuildField.ENGINE_POWER, Stated.measured(9e5))
                .set(BuildField.CORE_WIDTH, Stated.measured(0.15))
                .set(BuildField.CORE_HEIGHT, Stated.measured(0.10))
                .build();
        assertThat(day(none, StandardDuties.TRACK).ambientK()).isEqualTo(Double.NEGATIVE_INFINITY);
        Build much = Builds.road()
                .change()
                .set(BuildField.ENGINE_POWER, Stated.measured(40e3))
                .set(BuildField.ENGINE_DISPLACEMENT, Stated.measured(1.2e-3))
                .build();
        assertThat(day(much, StandardDuties.TRACK).ambientK()).isEqualTo(Double.POSITIVE_INFINITY);
    }

    private static HottestDay day(Build build, Duty duty) {
        Rating rating = RATER.preview(build, List.of(duty));
        return RATER.hottestDay(rating, rating.duties().get(0).outcome());
    }

    /** Cars of every kind that shops see, with what is known beside their values. */
    @ParameterizedTest
    @EnumSource
    void neverContradictsTheMarginOfACarOfThePark(CarPark.Group group) {
        for (CarPark.Car car : CarPark.cars(group, 3, CarPark.SEED)) {
            Build.Builder known = car.build().change();
            if (car.asBuilt()) {
                known.seen(BuildField.AS_BUILT, YesNo.YES);
            }
            car.notHotUpToK().ifPresent(k -> known.set(BuildField.NOT_HOT_DAY, Stated.measured(k)));
            agrees(RATER.rate(known.build(), List.of(group.duty()), 24), group + " " + car.build());
        }
    }

    @Test
    void neverContradictsTheMarginOfAnyCar() {
        for (long seed = 20_261; seed < 20_341; seed++) {
            agrees(RATER.preview(Builds.random(seed), DUTIES), "seed " + seed);
        }
    }

    @Test
    void neverContradictsTheMarginCloseToTheLimit() {
        for (double celsius = 20; celsius < 55; celsius += 0.5) {
            Build build = Builds.drift().inAir(Physics.kelvin(celsius));
            agrees(RATER.preview(build, List.of(StandardDuties.DRIFT)), celsius + " deg C");
        }
    }

    private static void agrees(Rating rating, String who) {
        double ambient = rating.resolved().value(BuildField.AMBIENT);
        List<String> against = new ArrayList<>();
        for (DutyVerdict verdict : rating.duties()) {
            DutyOutcome o = verdict.outcome();
            double more = RATER.hottestDay(rating, o).ambientK() - ambient;
            if (Math.abs(o.coolantMarginK()) > SHOWN_K && Math.signum(more) != Math.signum(o.coolantMarginK())) {
                against.add(o.duty().id() + ": margin " + o.coolantMarginK() + " K, hottest day " + more
                        + " K above the day that was rated");
            }
            if (more < -SHOWN_K && verdict.verdict() != Verdict.NO_GO) {
                against.add(o.duty().id() + ": " + verdict.verdict() + " though the day is too hot by " + -more + " K");
            }
        }
        assertThat(against).as(who).isEmpty();
    }
}
