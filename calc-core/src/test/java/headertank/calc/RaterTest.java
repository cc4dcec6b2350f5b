package headertank.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import headertank.calc.choice.CoolantBase;
import headertank.calc.choice.FanMounting;
import headertank.calc.coreclass.StandardCoreClasses;
import headertank.calc.duty.Duty;
import headertank.calc.duty.StandardDuties;
import headertank.calc.fluid.Fuel;
import headertank.calc.quantity.Stated;
import headertank.calc.result.BalanceText;
import headertank.calc.result.Distribution;
import headertank.calc.risk.Flag;
import headertank.calc.risk.PushingFan;
import headertank.calc.risk.RiskContext;
import headertank.calc.risk.RiskRule;
import headertank.calc.verdict.DutyOutcome;
import headertank.calc.verdict.DutyVerdict;
import headertank.calc.verdict.Finding;
import headertank.calc.verdict.StandardPolicy;
import headertank.calc.verdict.Verdict;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class RaterTest {

    private static final Rater RATER = Rater.standard();
    private static final List<Duty> ALL = List.of(StandardDuties.STREET, StandardDuties.TRACK, StandardDuties.DRIFT);

    @Test
    void theSameBuildGivesTheSameRatingToTheLastBit() {
        Rating first = RATER.rate(Builds.track(), ALL, 32);
        Rating second = Rater.standard().rate(Builds.track(), ALL, 32);
        assertThat(second.duties()).isEqualTo(first.duties());
        assertThat(second.flags()).isEqualTo(first.flags());
        assertThat(second.seed()).isEqualTo(first.seed());
    }

    @Test
    void whatIsMeasuredNarrowsTheAnswer() {
        Build guessed = Build.forCar(CarClass.TRACK)
                .seen(BuildField.ENGINE_CLASS, "PETROL_TURBO")
                .set(BuildField.ENGINE_POWER, Stated.guessed(300e3))
                .build();
        assertThat(width(RATER.rate(Builds.track(), List.of(StandardDuties.TRACK), 64)))
                .isLessThan(width(RATER.rate(guessed, List.of(StandardDuties.TRACK), 64)));
    }

    @Test
    void hotterDaysMakeItLikelierToFail() {
        double before = -1;
        for (double ambient : new double[] {293.15, 303.15, 313.15, 323.15}) {
            Build build = Builds.drift()
                    .change()
                    .set(BuildField.AMBIENT, Stated.measured(ambient))
                    .build();
            double p = RATER.rate(build, List.of(StandardDuties.TRACK), 64)
                    .duty("track")
                    .outcome()
                    .probabilityTooHot();
            assertThat(p).isGreaterThanOrEqualTo(before);
            before = p;
        }
        assertThat(before).isGreaterThan(0.9);
    }

    @Test
    void driftIsJudgedByItsRunAndShowsTheEndlessRunBeside() {
        DutyOutcome drift = RATER.preview(Builds.drift(), ALL).duty("drift").outcome();
        assertThat(drift.decidedByRun()).isTrue();
        assertThat(drift.decidingPointId()).isEqualTo("run");
        assertThat(drift.run()).isPresent();
        assertThat(drift.point("run").coolantMarginK()).isLessThan(drift.coolantMarginK() - 15);
    }

    @Test
    void aCarThatCannotHoldIsRefusedWithTheReason() {
        Build tiny = Builds.drift()
                .change()
                .set(BuildField.CORE_WIDTH, Stated.measured(0.2))
                .set(BuildField.CORE_HEIGHT, Stated.measured(0.15))
                .build();
        DutyVerdict v = RATER.rate(tiny, List.of(StandardDuties.TRACK), 16).duty("track");
        assertThat(v.verdict()).isEqualTo(Verdict.NO_GO);
        assertThat(v.findings().get(0).text().code()).isEqualTo(BalanceText.HEAT_EXCEEDS_COOLING.code());
    }

    @Test
    void theVerdictIsTheWorstThatAnyFindingAllows() {
        for (Build build : List.of(Builds.road(), Builds.track(), Builds.drift())) {
            for (DutyVerdict v : RATER.rate(build, ALL, 32).duties()) {
                assertThat(v.findings().get(0).verdict()).isEqualTo(v.verdict());
                assertThat(v.findings()).allSatisfy(f -> assertThat(f.verdict().ordinal())
                        .isLessThanOrEqualTo(v.verdict().ordinal()));
            }
        }
    }

    @Test
    void aRuleThatThrowsIsNamedAndTheRestGoesOn() {
        Rater rater = Rater.with(
                List.of(new Broken(), new PushingFan()),
                List.of(new StandardPolicy()),
                List.of(new StandardDuties()),
                List.of(new StandardCoreClasses()));
        Build pushing = Builds.road()
                .change()
                .seen(BuildField.FAN_MOUNTING, FanMounting.PUSHING)
                .build();
        Rating r = rater.preview(pushing, List.of(StandardDuties.STREET));
        assertThat(r.flags()).extracting(Flag::ruleId).containsExactly("pushing-fan");
        assertThat(r.plugIns())
                .filteredOn(p -> p.id().equals("broken"))
                .singleElement()
                .satisfies(
                        p -> assertThat(p.problem()).contains("gave no answer").contains("on purpose"));
    }

    @Test
    void coolantThatFreezesStopsTheCarWhateverItsMargins() {
        Build winter = Builds.road()
                .change()
                .seen(BuildField.COOLANT_BASE, CoolantBase.WATER)
                .unknown(BuildField.COOLANT_GLYCOL)
                .set(BuildField.LOWEST_AMBIENT, Stated.measured(258.15))
                .build();
        assertThat(RATER.preview(winter, ALL).duties()).allSatisfy(v -> {
            assertThat(v.verdict()).isEqualTo(Verdict.NO_GO);
            assertThat(v.findings()).extracting(Finding::code).contains(Finding.Code.RISK_FLAG);
        });
    }

    @Test
    void twoRulesOfOneNameAreRefused() {
        assertThatThrownBy(() -> Rater.with(
                        List.of(new Broken(), new Broken()),
                        List.of(new StandardPolicy()),
                        List.of(new StandardDuties()),
                        List.of(new StandardCoreClasses())))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("broken");
    }

    @Test
    void versionIsTheProjectsVersion() {
        assertThat(Version.CALC_CORE).isEqualTo(System.getProperty("headertank.version", Version.CALC_CORE));
        assertThat(RATER.preview(Builds.road(), List.of(StandardDuties.STREET)).version())
                .isEqualTo(Version.CALC_CORE);
    }

    @Test
    void alcoholRunsCoolerAtEqualPower() {
        double e10 = RATER.marginK(Builds.drift(), StandardDuties.TRACK);
        double e85 = RATER.marginK(
                Builds.drift().change().seen(BuildField.FUEL, Fuel.E85).build(), StandardDuties.TRACK);
        double methanol = RATER.marginK(
                Builds.drift().change().seen(BuildField.FUEL, Fuel.METHANOL).build(), StandardDuties.TRACK);
        // independent prototype of the same equations: 2.8 and 8.3 K
        assertThat(e85 - e10).isCloseTo(2.8, within(0.6));
        assertThat(methanol - e10).isCloseTo(8.3, within(1.0));
    }

    private static double width(Rating r) {
        Distribution spread = r.duty("track").outcome().marginSpread().orElseThrow();
        return 0.5 * (spread.high() - spread.low());
    }

    /** A rule with a fault. */
    private static final class Broken implements RiskRule {
        @Override
        public String id() {
            return "broken";
        }

        @Override
        public String version() {
            return "1";
        }

        @Override
        public String source() {
            return "test";
        }

        @Override
        public Optional<Flag> examine(RiskContext car) {
            throw new IllegalStateException("on purpose");
        }
    }
}
