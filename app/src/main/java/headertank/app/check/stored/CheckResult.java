package headertank.app.check.stored;

import com.fasterxml.jackson.annotation.JsonFormat;
import headertank.app.check.stored.StoredMessage.Amount;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What a check found, as stored: pages and paper are drawn from this and from nothing else. Format 3. All numbers in SI.
 *
 * @param calcCoreVersion version of the physics
 * @param seed seed of the sampling
 * @param samples number of samples, 0 when the uncertainty was not computed
 * @param coolantLimitK hottest coolant allowed [K]
 * @param oilLimitK hottest oil allowed [K]
 * @param designAmbientK hottest day that the car is to hold on [K]
 * @param gaugePlace where the gauge's sensor sits, a token of the field
 * @param duties one for each duty asked for
 * @param flags risky choices, weightiest first
 * @param improvements changes that would buy margin, the best first
 * @param assumptions what nobody had stated
 * @param notes where a model was used beyond its source's range
 * @param plugIns what took part in the rating
 * @param conditions what whoever signs has to accept or clear up
 * @param slowCoolant whether coolant must pass this radiator slowly, where the first duty is decided
 * @param turns probabilities of passing the coolant limit at which a verdict turned that day, the smallest first [-]; empty in a
 *     check of before it was kept
 * @param known how well the car was known, and by what; absent in a check of before evidence counted
 */
public record CheckResult(
        String calcCoreVersion,
        @JsonFormat(shape = JsonFormat.Shape.STRING) long seed,
        int samples,
        double coolantLimitK,
        double oilLimitK,
        double designAmbientK,
        String gaugePlace,
        List<DutyResult> duties,
        List<FlagLine> flags,
        List<ImprovementLine> improvements,
        List<AssumedValue> assumptions,
        List<NoteLine> notes,
        List<PlugInLine> plugIns,
        List<Condition> conditions,
        Optional<SlowCoolantAnswer> slowCoolant,
        Optional<List<Double>> turns,
        Optional<HowKnown> known) {

    /** Number of the format that is written today. */
    public static final int FORMAT = 3;

    public CheckResult {
        duties = List.copyOf(duties);
        flags = List.copyOf(flags);
        improvements = List.copyOf(improvements);
        assumptions = List.copyOf(assumptions);
        notes = List.copyOf(notes);
        plugIns = List.copyOf(plugIns);
        conditions = List.copyOf(conditions);
        slowCoolant = slowCoolant == null ? Optional.empty() : slowCoolant;
        turns = turns == null ? Optional.empty() : turns.map(List::copyOf);
        known = known == null ? Optional.empty() : known;
    }

    /**
     * How well a car was known.
     *
     * @param how in one of four words
     * @param evidence how many pieces it was learned from, by their kind
     * @param strain how far all together moved over how far such evidence moves them [-]; beyond what is believable, the evidence does not
     *     fit the car
     * @param doubted whether it is beyond that
     */
    public record HowKnown(String how, SortedMap<String, Integer> evidence, double strain, boolean doubted) {
        public HowKnown {
            evidence = Collections.unmodifiableSortedMap(new TreeMap<>(evidence));
        }
    }

    /**
     * Heat against coolant flow at one operating point, see {@link headertank.calc.result.SlowCoolant}.
     *
     * @param duty id of the duty
     * @param point id of the point
     * @param flowNowM3PerS flow through the radiator there [m3/s]
     * @param againstFlow slowest first
     * @param words the answer, one entry for each paragraph
     */
    public record SlowCoolantAnswer(
            String duty, String point, double flowNowM3PerS, List<FlowLine> againstFlow, List<StoredMessage> words) {
        public SlowCoolantAnswer {
            againstFlow = List.copyOf(againstFlow);
            words = List.copyOf(words);
        }
    }

    /** The radiator at one flow of coolant; {@code tubeRegime} says how the coolant flows in its tubes. */
    public record FlowLine(
            double flowM3PerS,
            double heatW,
            double coolantDropK,
            double pressureDropPa,
            double tubeReynolds,
            String tubeRegime) {}

    /** How much a flag matters. */
    public enum Weight {
        REMARK,
        CONDITION,
        STOP
    }

    /** A risky choice, see {@link headertank.calc.risk.Flag}. */
    public record FlagLine(
            String rule,
            String version,
            StoredMessage title,
            Weight weight,
            StoredMessage reason,
            List<Consequence> consequences,
            StoredMessage advice,
            StoredMessage tradeSays,
            StoredMessage caution,
            String source) {
        public FlagLine {
            consequences = List.copyOf(consequences);
        }
    }

    /**
     * What a flag means for this car.
     *
     * @param what what the figure is
     * @param duty id of the duty, empty for none in particular
     */
    public record Consequence(StoredMessage what, String duty, Amount figure) {}

    /** A change that would buy margin, with what it buys in each duty. */
    public record ImprovementLine(String id, StoredMessage label, List<Gain> gains) {
        public ImprovementLine {
            gains = List.copyOf(gains);
        }

        /** Margin gained in a duty [K], 0 when it was not rated. */
        public double gainK(String dutyId) {
            return gains.stream()
                    .filter(g -> g.duty().equals(dutyId))
                    .mapToDouble(Gain::gainK)
                    .findFirst()
                    .orElse(0);
        }
    }

    /** Margin that a change buys in a duty [K]. */
    public record Gain(String duty, double gainK) {}

    /**
     * A value that was assumed.
     *
     * @param field key of the field
     * @param value the number [SI], NaN for a choice
     * @param token the option, empty for a number
     */
    public record AssumedValue(String field, double value, String token, StoredMessage why) {}

    /** A model beyond its source's range. */
    public record NoteLine(
            String field, double value, double min, double max, String action, double widening, StoredMessage why) {}

    /** A rule, policy or supply of data; {@code problem} is empty when it gave its answer. */
    public record PlugInLine(String kind, String id, String version, String source, String problem) {}

    /**
     * Something to accept or clear up before the car leaves.
     *
     * @param key stable name within this check
     * @param duty id of the duty, empty for none in particular
     * @param subject what it is about, or title of a flag
     * @param text what to do
     */
    public record Condition(String key, String duty, StoredMessage subject, StoredMessage text) {

        /** What a condition that comes from a finding is about. */
        public static StoredMessage subject(String findingCode) {
            return new StoredMessage("condition." + findingCode, List.of());
        }
    }

    /** The duty with this id, if it was rated. */
    public Optional<DutyResult> duty(String id) {
        return duties.stream().filter(d -> d.id().equals(id)).findFirst();
    }

    /** The duties, that with the worst verdict first, of two alike that with the smaller margin. */
    public List<DutyResult> worstFirst() {
        return duties.stream()
                .sorted(Comparator.comparing(DutyResult::verdict)
                        .reversed()
                        .thenComparingDouble(DutyResult::coolantMarginK))
                .toList();
    }

    /** The duties that have a run over time, the worst first. */
    public List<DutyResult> withRun() {
        return worstFirst().stream().filter(d -> d.run().isPresent()).toList();
    }

    /** The duties for which the car was refused. */
    public List<DutyResult> refused() {
        return duties.stream().filter(DutyResult::isRefused).toList();
    }

    /** Flags that say the car is not to leave like this. */
    public List<FlagLine> stops() {
        return flags.stream().filter(f -> f.weight() == Weight.STOP).toList();
    }
}
