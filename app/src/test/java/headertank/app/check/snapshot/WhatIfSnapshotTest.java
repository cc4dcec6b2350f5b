package headertank.app.check.snapshot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import headertank.app.check.Drifter;
import headertank.app.check.chart.WhatIfChart;
import headertank.app.check.figure.FigureText;
import headertank.app.check.figure.FigureTextTest;
import headertank.app.check.stored.DutyResult;
import headertank.app.check.stored.StoredVerdict;
import headertank.app.check.stored.WhatIf;
import headertank.app.check.stored.WhatIf.Kind;
import headertank.app.unit.UnitSystem;
import headertank.calc.Rater;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import headertank.calc.quantity.Stated;
import headertank.calc.verdict.StandardPolicy;
import headertank.calc.verdict.Threshold;
import headertank.calc.verdict.Thresholds;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The same run with other fans. */
class WhatIfSnapshotTest {

    private final DutyResult drift = Drifter.drift();

    @Test
    void aCarOnARampIsDrivenEveryWay() {
        assertThat(drift.whatIfs())
                .extracting(WhatIf::kind)
                .containsExactly(
                        Kind.SWITCH,
                        Kind.RAMP,
                        Kind.HOSE_SENSOR,
                        Kind.ONE_FAN_OUT,
                        Kind.NEVER_START,
                        Kind.SET_5_LOWER,
                        Kind.SET_10_LOWER);
        assertThat(drift.whatIfs())
                .filteredOn(WhatIf::asIs)
                .extracting(WhatIf::kind)
                .containsExactly(Kind.RAMP);
    }

    @Test
    void theCarAsItIsRunsAsItsDutyDoes() {
        assertThat(of(Kind.RAMP).run().peakCoolantK()).isEqualTo(Drifter.run().peakCoolantK());
        assertThat(of(Kind.RAMP).fanStarts()).isEqualTo(Drifter.run().fanStarts());
    }

    @Test
    void theSwitchSawsAndJoltsAndTheRampDoesNot() {
        assertThat(of(Kind.SWITCH).stay().orElseThrow().swingK()).isGreaterThan(3);
        assertThat(of(Kind.RAMP).stay().orElseThrow().swingK()).isLessThan(1);
        assertThat(of(Kind.SWITCH).current().peakFanA()).isCloseTo(60, within(1.0));
        assertThat(of(Kind.RAMP).current().peakFanA()).isCloseTo(50, within(1.0));
        assertThat(of(Kind.SWITCH).fanStarts()).isGreaterThan(of(Kind.RAMP).fanStarts());
    }

    @Test
    void theShopsThresholdsJudgeTheseRunsToo() {
        Rater strict = Drifter.RATER.with(new StandardPolicy(Thresholds.of(Map.of(Threshold.GO_MARGIN_K, 30.0))));
        DutyResult strictly = Snapshot.result(
                        strict.preview(
                                Drifter.builder().build(),
                                List.of(Drifter.RATER.duties().get("drift"))),
                        strict)
                .duty("drift")
                .orElseThrow();
        assertThat(of(Kind.SET_5_LOWER).verdict()).isEqualTo(StoredVerdict.GO);
        assertThat(strictly.whatIfs())
                .filteredOn(w -> w.kind() == Kind.SET_5_LOWER)
                .extracting(WhatIf::verdict)
                .containsExactly(StoredVerdict.GO_WITH_CONDITIONS);
    }

    @Test
    void deadFansHeatTheCar() {
        assertThat(of(Kind.ONE_FAN_OUT).run().peakCoolantK())
                .isGreaterThan(of(Kind.RAMP).run().peakCoolantK() + 1);
        assertThat(of(Kind.NEVER_START).verdict()).isEqualTo(StoredVerdict.NO_GO);
        assertThat(of(Kind.NEVER_START).boils()).isTrue();
        assertThat(of(Kind.NEVER_START).run().firstAboveLimitS()).isPresent();
        assertThat(of(Kind.NEVER_START).current().peakFanA()).isZero();
    }

    @Test
    void aLowerSetPointCostsChargeAndCools() {
        assertThat(of(Kind.SET_5_LOWER).setK()).isCloseTo(358.15, within(1e-9));
        assertThat(of(Kind.SET_10_LOWER).fanAmpereHours())
                .isGreaterThan(of(Kind.SET_5_LOWER).fanAmpereHours())
                .isGreaterThan(of(Kind.RAMP).fanAmpereHours());
        assertThat(of(Kind.SET_10_LOWER).run().peakCoolantK())
                .isLessThan(of(Kind.RAMP).run().peakCoolantK());
        assertThat(of(Kind.SET_10_LOWER).window().secondsBelow())
                .isGreaterThan(of(Kind.RAMP).window().secondsBelow());
    }

    @Test
    void theMarginOfTheCarAsItIsIsThatOfItsDutyAndWhatBreaksMovesItByItsPeaks() {
        assertThat(of(Kind.RAMP).marginK()).isEqualTo(drift.coolantMarginK());
        assertThat(of(Kind.RAMP).verdict()).isEqualTo(drift.verdict());
        assertThat(of(Kind.NEVER_START).marginK())
                .isCloseTo(drift.coolantMarginK() + peak(of(Kind.RAMP)) - peak(of(Kind.NEVER_START)), within(1e-9));
    }

    private static double peak(WhatIf w) {
        return Math.max(w.run().peakCoolantK(), w.stay().orElseThrow().peakCoolantK());
    }

    @Test
    void whatDoesNotApplyIsNotDriven() {
        DutyResult single = Drifter.check(
                        Drifter.builder()
                                .set(BuildField.FAN_COUNT, Stated.measured(1))
                                .seen(BuildField.FAN_SENSOR, "RADIATOR_HOSE")
                                .seen(BuildField.CONTROL_KIND, "SWITCH")
                                .build(),
                        "drift")
                .duty("drift")
                .orElseThrow();
        assertThat(single.whatIfs())
                .extracting(WhatIf::kind)
                .contains(Kind.BLOCK_SENSOR, Kind.NEVER_START)
                .doesNotContain(Kind.ONE_FAN_OUT, Kind.HOSE_SENSOR);
        assertThat(single.whatIfs())
                .filteredOn(WhatIf::asIs)
                .extracting(WhatIf::kind)
                .containsExactly(Kind.SWITCH);
        DutyResult clutch = Drifter.check(
                        headertank.calc.carspec.Build.forCar(CarClass.OLD_STREET)
                                .seen(BuildField.FAN_DRIVE, "CLUTCH")
                                .build(),
                        "drift")
                .duty("drift")
                .orElseThrow();
        assertThat(clutch.whatIfs()).isEmpty();
        assertThat(clutch.run()).isPresent();
    }

    @Test
    void thePageSaysBothTradeAndModel() {
        FigureText shown = FigureTextTest.in(UnitSystem.METRIC);
        WhatIfChart drawn =
                WhatIfChart.of(drift, Drifter.RESULT.coolantLimitK(), shown).orElseThrow();
        double less = of(Kind.SWITCH).stay().orElseThrow().swingK()
                - of(Kind.RAMP).stay().orElseThrow().swingK();
        assertThat(drawn.words().swing()).contains("smaller by " + shown.span(less));
        assertThat(drawn.words().findings()).hasSize(4).allSatisfy(f -> assertThat(f.trade())
                .contains("common practice, no source"));
        assertThat(drawn.words().alternative())
                .contains(shown.temperature(of(Kind.ONE_FAN_OUT).run().peakCoolantK()));
        assertThat(drawn.runs().panels().get(0).curves()).hasSize(7);
        assertThat(drawn.runs().panels().get(0).curves())
                .extracting(c -> c.line().dash() + c.line().width())
                .doesNotHaveDuplicates();
        assertThat(drawn.needle()).isPresent();
    }

    private WhatIf of(Kind kind) {
        return drift.whatIf(kind).orElseThrow();
    }
}
