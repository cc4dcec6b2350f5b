package headertank.app.check.stored;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import headertank.app.check.Drifter;
import headertank.app.check.figure.FigureText;
import headertank.app.check.figure.FigureTextTest;
import headertank.app.check.snapshot.Snapshot;
import headertank.app.check.stored.StoredMessage.Amount;
import headertank.app.check.stored.StoredMessage.AmountKind;
import headertank.app.unit.UnitSystem;
import headertank.calc.Rater;
import headertank.calc.Rating;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import headertank.calc.duty.Duty;
import headertank.calc.quantity.Stated;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** What is stored of a check, today and for ever. */
class CheckFormatTest {

    private static final JsonMapper JSON = JsonMapper.builder().build();

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

    /** A sample of format 1. It stays as it is for ever; each newer format has a sample of its own. */
    @Test
    void theSampleOfFormatOneStaysReadableInItsOwnWords() throws IOException {
        CheckResult result = CheckFormat.readResult(1, sample("result-format-1.json"));
        assertThat(result.calcCoreVersion()).isEqualTo("0.1.0");
        assertThat(result.duties()).extracting(DutyResult::id).containsExactly("drift", "street");
        DutyResult drift = result.duty("drift").orElseThrow();
        assertThat(drift.verdict()).isEqualTo(StoredVerdict.GO_WITH_CONDITIONS);
        assertThat(drift.run().orElseThrow().curves().timeS()).hasSizeGreaterThan(20);
        assertThat(drift.whatIf(WhatIf.Kind.SWITCH)).isPresent();
        assertThat(drift.points()).allSatisfy(p -> assertThat(p.working()).hasSizeGreaterThan(4));
        assertThat(result.plugIns()).extracting(CheckResult.PlugInLine::id).contains("standard-policy");
        assertThat(drift.findings().get(0).figure()).isEqualTo(new Amount(0.125, AmountKind.PROBABILITY));
        assertThat(drift.findings().get(0).doThis())
                .isEqualTo(
                        StoredMessage.plain(
                                "Watch the gauge in each run, end the run at the limit and let the fans bring it down before the next."));
        CheckResult.FlagLine relay = result.flags().get(0);
        assertThat(relay.reason()).extracting(StoredMessage::code).isEqualTo(StoredMessage.PLAIN);
        assertThat(relay.consequences().get(0).figure()).isEqualTo(new Amount(52.8, AmountKind.CURRENT));
        assertThat(relay.consequences())
                .filteredOn(c -> c.figure().kind() == AmountKind.CHARGE)
                .hasSize(1)
                .allSatisfy(c -> assertThat(c.figure().si())
                        .isEqualTo(3600 * drift.run().orElseThrow().batteryAmpereHours()));
        assertThat(result.slowCoolant().orElseThrow().duty()).isEqualTo("drift");
        assertThat(result.slowCoolant().orElseThrow().point()).isEqualTo("run");
        assertThat(result.conditions())
                .extracting(CheckResult.Condition::key)
                .startsWith("drift.COOLANT_PROBABILITY.0");
        assertThat(CheckFormat.readResult(2, CheckFormat.write(result))).isEqualTo(result);
    }

    /** A sample of format 2, likewise for ever. */
    @Test
    void theSampleOfFormatTwoStaysReadable() throws IOException {
        String text = sample("result-format-2.json");
        CheckResult result = CheckFormat.readResult(2, text);
        assertThat(result.duties()).extracting(DutyResult::id).containsExactly("drift", "street");
        assertThat(CheckFormat.write(result)).isEqualTo(text);
    }

    /** A sample of format 3, likewise for ever. */
    @Test
    void theSampleOfFormatThreeStaysReadable() throws IOException {
        String text = sample("result-format-3.json");
        CheckResult result = CheckFormat.readResult(3, text);
        CheckResult.HowKnown known = result.known().orElseThrow();
        assertThat(known.how()).isEqualTo("FROM_A_RUN");
        assertThat(known.evidence()).containsEntry("LOG", 1).containsEntry("SETTLED", 1);
        assertThat(CheckFormat.write(result)).isEqualTo(text);
    }

    @Test
    void theSampleOfTheInputsOfFormatTwoStaysReadable() throws IOException {
        String text = sample("input-format-2.json");
        CheckInput.LearnedFrom learned =
                CheckFormat.readInput(2, text).learned().orElseThrow();
        assertThat(learned.pieces()).extracting(CheckInput.LearnedPiece::kind).containsExactly("LOG", "SETTLED");
        assertThat(learned.factors()).isNotEmpty();
        assertThat(CheckFormat.write(CheckFormat.readInput(2, text))).isEqualTo(text);
    }

    /** What was known of a car is no field of the formats before it was kept. */
    @Test
    void whatIsKnownIsRefusedInOlderFormats() throws IOException {
        assertThatThrownBy(() -> CheckFormat.readResult(2, sample("result-format-3.json")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("known");
        assertThatThrownBy(() -> CheckFormat.readInput(1, sample("input-format-2.json")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("learned");
    }

    @Test
    void theSampleOfTheInputsOfFormatOneStaysReadable() throws IOException {
        String text = sample("input-format-1.json");
        CheckInput input = CheckFormat.readInput(1, text);
        assertThat(input.duties()).extracting(CheckInput.RatedDuty::id).containsExactly("street", "track", "drift");
        assertThat(CheckFormat.write(input)).isEqualTo(text);
    }

    /** A field that would be lost stops the reading. */
    @ParameterizedTest
    @ValueSource(strings = {"result-format-1.json", "result-format-2.json", "result-format-3.json"})
    void aFieldThatTheFormatDoesNotHaveIsRefused(String sample) throws IOException {
        int format = Integer.parseInt(sample.replaceAll("\\D", ""));
        for (String at : List.of("", "/duties/0", "/duties/0/findings/0", "/duties/0/run/settled", "/flags/0")) {
            ObjectNode tree = (ObjectNode) JSON.readTree(sample(sample));
            ((ObjectNode) tree.at(at)).put("somethingNew", 1);
            assertThatThrownBy(() -> CheckFormat.readResult(format, tree.toString()))
                    .as(at)
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("format " + format)
                    .hasMessageContaining("somethingNew");
        }
    }

    private static String sample(String name) throws IOException {
        try (var sample = CheckFormatTest.class.getResourceAsStream(name)) {
            return new String(sample.readAllBytes(), StandardCharsets.UTF_8).strip();
        }
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
        JsonNode tree = JSON.readTree(text);
        ObjectNode drift = (ObjectNode) tree.get("duties").get(0);
        ((ObjectNode) tree).remove(List.of("slowCoolant", "known"));
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
        DutyResult read = CheckFormat.readResult(2, tree.toString()).duties().get(0);
        assertThat(read.run().orElseThrow().curves().none()).isTrue();
        assertThat(read.run().orElseThrow().peakCoolantK())
                .isEqualTo(Drifter.run().peakCoolantK());
        assertThat(read.run().orElseThrow().burnsAtTouch()).isFalse();
        assertThat(read.whatIfs()).isEmpty();
        assertThat(read.judgement()).isEmpty();
    }

    @Test
    void theHottestDayIsKeptAndACheckOfBeforeReadsWithoutIt() {
        DutyResult drift = Drifter.drift();
        assertThat(drift.hottestDay().orElseThrow().byRun()).isEqualTo(drift.decidedByRun());
        assertThat(Math.signum(drift.hottestDay().orElseThrow().ambientK() - Drifter.RESULT.designAmbientK()))
                .isEqualTo(Math.signum(drift.coolantMarginK()));
        JsonNode tree = JSON.readTree(CheckFormat.write(Drifter.RESULT));
        ((ObjectNode) tree).remove("known");
        ((ObjectNode) tree.get("duties").get(0)).remove("hottestDay");
        DutyResult before = CheckFormat.readResult(2, tree.toString()).duties().get(0);
        assertThat(before.hottestDay()).isEmpty();
        FigureText shown = FigureTextTest.in(UnitSystem.METRIC);
        assertThat(shown.hottestDay(before))
                .as("an endless stay says nothing of a run")
                .isEqualTo(drift.decidedByRun() ? "not computed" : shown.hottestDay(drift));
    }

    @Test
    void bothMarginsOfADutyAreKeptAndTheSmallerThatCountsDecides() {
        DutyResult.Judgement j = Drifter.drift().judgement().orElseThrow();
        assertThat(j.judged()).isEqualTo(DutyResult.JudgedBy.RUN_AND_IDLE);
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
        assertThatThrownBy(() -> CheckFormat.readResult(CheckResult.FORMAT + 1, "{}"))
                .hasMessageContaining("newer");
    }
}
