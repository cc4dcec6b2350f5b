package headertank.app.check.stored;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import headertank.app.check.Drifter;
import headertank.app.check.snapshot.Snapshot;
import headertank.calc.Rater;
import headertank.calc.Rating;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import headertank.calc.duty.Duty;
import headertank.calc.quantity.Stated;
import headertank.calc.verdict.Verdict;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** What is stored of a check, today and for ever. */
class CheckFormatTest {

    private final Rater rater = Rater.standard();
    private final List<Duty> everyDuty = List.copyOf(rater.duties().values());

    @Test
    void whatIsWrittenReadsBackTheSame() {
        CheckResult result = Snapshot.result(rater.rate(Build.of(CarClass.DRIFT), everyDuty, 16), rater);
        String text = CheckFormat.write(result);
        assertThat(CheckFormat.readResult(CheckResult.FORMAT, text)).isEqualTo(result);
        assertThat(CheckFormat.write(CheckFormat.readResult(CheckResult.FORMAT, text)))
                .isEqualTo(text);
    }

    @Test
    void aCarWithoutABalanceReadsBackWithItsInfiniteMargin() {
        Build hopeless = Build.forCar(CarClass.TRACK)
                .seen(BuildField.FAN_DRIVE, "NONE")
                .set(BuildField.ENGINE_POWER, Stated.measured(9e5))
                .set(BuildField.CORE_WIDTH, Stated.measured(0.15))
                .set(BuildField.CORE_HEIGHT, Stated.measured(0.10))
                .build();
        CheckResult result = Snapshot.result(rater.rate(hopeless, everyDuty, 8), rater);
        CheckResult back = CheckFormat.readResult(CheckResult.FORMAT, CheckFormat.write(result));
        assertThat(back).isEqualTo(result);
        assertThat(back.refused()).isNotEmpty();
        assertThat(back.duty("track").orElseThrow().coolantMarginK()).isEqualTo(Double.NEGATIVE_INFINITY);
    }

    @Test
    void equalRatingsGiveEqualText() {
        assertThat(CheckFormat.write(Snapshot.result(rater.rate(Build.of(CarClass.TRACK), everyDuty, 16), rater)))
                .isEqualTo(
                        CheckFormat.write(Snapshot.result(rater.rate(Build.of(CarClass.TRACK), everyDuty, 16), rater)));
    }

    @Test
    void inputsKeepEveryFieldWithItsOriginAndReadBack() {
        Build build = Build.forCar(CarClass.TRACK)
                .set(BuildField.FAN_FLOW, Stated.advertised(1.0))
                .build();
        Rating rating = rater.rate(build, everyDuty, 8);
        CheckInput input = Snapshot.input(rating, 7, 3);
        CheckInput back = CheckFormat.readInput(CheckInput.FORMAT, CheckFormat.write(input));
        assertThat(back.fields()).isEqualTo(input.fields());
        assertThat(back.seed()).isEqualTo(rating.seed());
        CheckInput.Value flow = back.fields().get(BuildField.FAN_FLOW.key());
        assertThat(flow.from()).isEqualTo("ADVERTISED");
        assertThat(flow.stated()).isEqualTo(1.0);
        assertThat(flow.value())
                .isEqualTo(rating.resolved().value(BuildField.FAN_FLOW))
                .isLessThan(1.0);
        assertThat(back.fields().get(BuildField.CORE_WIDTH.key()).from()).isEqualTo(Snapshot.ASSUMED);
        assertThat(back.fields()).hasSizeGreaterThan(40);
        assertThat(back.duties().size()).isEqualTo(everyDuty.size());
    }

    /** A sample of format 1. It stays as it is for ever; a newer format gets a sample of its own. */
    @Test
    void theSampleOfFormatOneStaysReadable() throws IOException {
        String text;
        try (var sample = getClass().getResourceAsStream("result-format-1.json")) {
            text = new String(sample.readAllBytes(), StandardCharsets.UTF_8).strip();
        }
        CheckResult result = CheckFormat.readResult(1, text);
        assertThat(result.calcCoreVersion()).isEqualTo("0.1.0");
        assertThat(result.duties()).extracting(DutyResult::id).containsExactly("drift", "street");
        DutyResult drift = result.duty("drift").orElseThrow();
        assertThat(drift.verdict()).isIn((Object[]) Verdict.values());
        assertThat(drift.run().orElseThrow().curves().timeS()).hasSizeGreaterThan(20);
        assertThat(drift.whatIf(WhatIf.Kind.SWITCH)).isPresent();
        assertThat(drift.points()).allSatisfy(p -> assertThat(p.working()).hasSizeGreaterThan(4));
        assertThat(result.plugIns()).extracting(CheckResult.PlugInLine::id).contains("standard-policy");
        assertThat(CheckFormat.write(result)).isEqualTo(text);
    }

    @Test
    void aCheckStaysOfModerateSize() {
        CheckResult result = Snapshot.result(rater.rate(Build.of(CarClass.DRIFT), everyDuty, 16), rater);
        assertThat(CheckFormat.write(result).length()).isLessThan(300_000);
    }

    /** What was stored before runs were kept whole. */
    @Test
    void aCheckWithoutCurvesWhatIfsAndJudgementStaysReadable() {
        String text = CheckFormat.write(Drifter.RESULT);
        JsonNode tree = CheckFormat.mapper().readTree(text);
        ObjectNode drift = (ObjectNode) tree.get("duties").get(0);
        ((ObjectNode) tree).remove("slowCoolant");
        drift.remove(List.of("whatIfs", "judgement"));
        ((ObjectNode) drift.get("run"))
                .remove(List.of(
                        "curves",
                        "phases",
                        "sensors",
                        "settled",
                        "window",
                        "current",
                        "hood",
                        "numerics",
                        "firstAboveLimitS"));
        DutyResult read = CheckFormat.readResult(1, tree.toString()).duties().get(0);
        assertThat(read.run().orElseThrow().curves().none()).isTrue();
        assertThat(read.run().orElseThrow().peakCoolantK())
                .isEqualTo(Drifter.run().peakCoolantK());
        assertThat(read.run().orElseThrow().burnsAtTouch()).isFalse();
        assertThat(read.whatIfs()).isEmpty();
        assertThat(read.judgement()).isEmpty();
    }

    @Test
    void bothMarginsOfADutyAreKeptAndTheSmallerThatCountsDecides() {
        DutyResult.Judgement j = Drifter.drift().judgement().orElseThrow();
        assertThat(j.judged()).isEqualTo(Duty.Judged.RUN_AND_IDLE);
        assertThat(j.steadyPoint()).isEqualTo("queue");
        assertThat(j.runMarginK())
                .isEqualTo(Drifter.RESULT.coolantLimitK() - Drifter.run().peakCoolantK());
        CheckResult whole = Snapshot.result(rater.preview(Build.of(CarClass.DRIFT), everyDuty), rater);
        assertThat(whole.duties()).allSatisfy(d -> {
            DutyResult.Judgement of = d.judgement().orElseThrow();
            double decides = of.countsRun() ? Math.min(of.steadyMarginK(), of.runMarginK()) : of.steadyMarginK();
            assertThat(d.coolantMarginK()).isEqualTo(decides);
            assertThat(d.decidedByRun()).isEqualTo(of.countsRun() && of.runMarginK() <= of.steadyMarginK());
        });
    }

    @Test
    void aNewerFormatIsRefused() {
        assertThatThrownBy(() -> CheckFormat.readResult(2, "{}")).hasMessageContaining("newer");
    }
}
