package headertank.calc.whatif;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.Builds;
import headertank.calc.Rater;
import headertank.calc.Rating;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.choice.FanControlKind;
import headertank.calc.choice.SensorPlacement;
import headertank.calc.choice.YesNo;
import headertank.calc.duty.Duty;
import headertank.calc.duty.StandardDuties;
import headertank.calc.population.CarPark;
import headertank.calc.quantity.Physics;
import headertank.calc.quantity.Provenance;
import headertank.calc.quantity.Stated;
import headertank.calc.result.Distribution;
import headertank.calc.verdict.DrivenAgain;
import headertank.calc.verdict.DrivenAgain.Kind;
import headertank.calc.verdict.DutyOutcome;
import headertank.calc.verdict.DutyVerdict;
import headertank.calc.verdict.StandardPolicy;
import headertank.calc.verdict.Threshold;
import headertank.calc.verdict.Verdict;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The same car has the same verdict, whichever way it is asked for. */
class WhatIfVerdictTest {

    private static final Rater RATER = Rater.standard();
    private static final int SAMPLES = 64;

    @ParameterizedTest
    @EnumSource(names = {"HEALTHY_MODERN_STREET", "WELL_BUILT_DRIFT", "HOPELESS_BLOCKED", "HOPELESS_SMALL_CORE"})
    void theCarAsItStandsHasTheVerdictAndTheMarginOfItsRating(CarPark.Group group) {
        for (CarPark.Car car : CarPark.cars(group, 1, CarPark.SEED)) {
            for (Build build : List.of(
                    car.build(),
                    car.build().change().seen(BuildField.AS_BUILT, YesNo.YES).build())) {
                Rating rating = RATER.rate(build, List.of(group.duty()), SAMPLES);
                DutyVerdict verdict = rating.duties().get(0);
                assertThat(RATER.whatIfs(rating, verdict.outcome()))
                        .filteredOn(DrivenAgain::asIs)
                        .hasSize(1)
                        .allSatisfy(row -> {
                            assertThat(row.verdict()).isEqualTo(verdict.verdict());
                            assertThat(row.marginK())
                                    .isEqualTo(verdict.outcome().coolantMarginK());
                        });
            }
        }
    }

    /** A car that is changed as a row says, and then rated, has what the row says; but for the luck of the samples near a turn. */
    @Test
    void aRowSaysWhatARatingOfTheChangedCarWouldSay() {
        List<String> against = new ArrayList<>();
        Set<Verdict> seen = EnumSet.noneOf(Verdict.class);
        int compared = 0;
        for (Duty duty : List.of(StandardDuties.STREET, StandardDuties.DRIFT)) {
            for (double celsius : new double[] {22, 34, 42}) {
                Build build = switched(Builds.drift().inAir(Physics.kelvin(celsius)));
                Rating rating = RATER.rate(build, List.of(duty), SAMPLES);
                for (DrivenAgain row :
                        RATER.whatIfs(rating, rating.duties().get(0).outcome())) {
                    Optional<Build> changed = changed(build, row);
                    if (changed.isEmpty()) {
                        continue;
                    }
                    DutyVerdict other = RATER.rate(changed.get(), List.of(duty), SAMPLES)
                            .duties()
                            .get(0);
                    compared++;
                    seen.add(other.verdict());
                    assertThat(row.marginK())
                            .as(row.kind() + " at " + celsius)
                            .isCloseTo(other.outcome().coolantMarginK(), within(0.02));
                    if (row.verdict() != other.verdict() && !nearATurn(other.outcome())) {
                        against.add(duty.id() + " at " + celsius + " " + row.kind() + ": " + row.verdict() + ", rated "
                                + other.verdict() + " with " + other.outcome().probabilityTooHot());
                    }
                }
            }
        }
        assertThat(against).isEmpty();
        assertThat(compared).isGreaterThan(20);
        assertThat(seen).hasSizeGreaterThanOrEqualTo(2);
    }

    /** With a fan gone the car never does better than as it stands. */
    @Test
    void nothingThatBreaksEarnsABetterVerdict() {
        for (double celsius = 22; celsius < 46; celsius += 6) {
            Build build = switched(Builds.drift().inAir(Physics.kelvin(celsius)));
            Rating rating = RATER.rate(build, List.of(StandardDuties.DRIFT), SAMPLES);
            DutyVerdict verdict = rating.duties().get(0);
            assertThat(RATER.whatIfs(rating, verdict.outcome()))
                    .filteredOn(row -> row.kind() == Kind.ONE_FAN_OUT || row.kind() == Kind.NEVER_START)
                    .hasSize(2)
                    .allSatisfy(row -> {
                        assertThat(row.marginK()).isLessThan(verdict.outcome().coolantMarginK());
                        assertThat(row.verdict()).isGreaterThanOrEqualTo(verdict.verdict());
                    });
        }
    }

    private static Build switched(Build build) {
        return build.change()
                .seen(BuildField.CONTROL_KIND, FanControlKind.SWITCH)
                .set(BuildField.CONTROL_SET, Stated.measured(Physics.kelvin(92)))
                .seen(BuildField.FAN_SENSOR, SensorPlacement.BLOCK)
                .build();
    }

    /** Empty for a row that no value of a car says, or that this car already is. */
    private static Optional<Build> changed(Build build, DrivenAgain row) {
        Build.Builder change = build.change();
        switch (row.kind()) {
            case RAMP -> change.seen(BuildField.CONTROL_KIND, FanControlKind.RAMP);
            case HOSE_SENSOR -> change.seen(BuildField.FAN_SENSOR, SensorPlacement.RADIATOR_HOSE);
            case SET_5_LOWER, SET_10_LOWER ->
                change.set(BuildField.CONTROL_SET, new Stated(row.setK(), Provenance.MEASURED, null));
            default -> {
                return Optional.empty();
            }
        }
        return Optional.of(change.build());
    }

    private static boolean nearATurn(DutyOutcome outcome) {
        Distribution oil = outcome.oilSamples().orElseThrow();
        double damagedK = -Threshold.OIL_OVER_CAUTION_K.standard();
        return new StandardPolicy()
                .turns().stream()
                        .anyMatch(t -> Math.abs(outcome.probabilityTooHot() - t) < 3 * outcome.errorTooHot()
                                || isNear(oil.probabilityBelow(0), t)
                                || isNear(oil.probabilityBelow(damagedK), t));
    }

    private static boolean isNear(double probability, double turn) {
        return Math.abs(probability - turn) < 3 * Distribution.standardError(probability, SAMPLES);
    }
}
