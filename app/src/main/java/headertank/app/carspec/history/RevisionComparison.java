package headertank.app.carspec.history;

import headertank.app.carspec.Spec;
import headertank.app.field.FieldText;
import headertank.calc.Rater;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildDifference;
import headertank.calc.carspec.Change;
import headertank.calc.carspec.FieldChange;
import headertank.calc.duty.Duty;
import headertank.calc.quantity.InputException;
import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Provenance;
import headertank.calc.result.Attribution;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;

/** How many degrees of margin each difference of two specs cost or gained, for each duty of either. */
@Component
public class RevisionComparison {

    /** More differences than this are not told apart: each would cost seconds and mean nothing. */
    static final int MOST_CHANGES = 24;

    /** An effect below this is shown as none [K]. */
    private static final double NOTHING_K = 0.05;

    /** Half the width of the bar chart. */
    private static final double HALF_BAR = 100;

    /**
     * One duty.
     *
     * @param problem why there are no figures, empty when there are
     * @param parts what each part cost or gained, costliest first; they sum to the whole difference
     * @param withoutEffect labels of changes that do nothing for this duty
     * @param cautions sentences on how far to trust the figures
     */
    public record DutyCost(
            String dutyId,
            String label,
            String problem,
            double beforeK,
            double afterK,
            List<PartCost> parts,
            List<String> withoutEffect,
            List<String> cautions) {}

    /**
     * Everything that changed of one part, as a row of the table and a bar of the chart.
     *
     * @param part token of the part, empty for what is none
     * @param label name of the part, or of the only change
     * @param undoneK what putting it back gains [K]
     * @param barX left end of the bar on a scale of 0 to 200 with zero effect at 100
     */
    public record PartCost(
            String part,
            String label,
            List<Effect> effects,
            double shareK,
            double aloneK,
            double undoneK,
            double barX,
            double barWidth) {

        public boolean costs() {
            return shareK <= -NOTHING_K;
        }

        public boolean gains() {
            return shareK >= NOTHING_K;
        }

        /** What names it to whoever wants it back: the part, else the only field that changed. */
        public String token() {
            return part.isEmpty() ? lines().get(0).key() : part;
        }

        /** Fields that changed. */
        public List<Differences.Line> lines() {
            return effects.stream().flatMap(e -> e.lines().stream()).toList();
        }
    }

    /**
     * One change within a part.
     *
     * @param lines its fields
     */
    public record Effect(List<Differences.Line> lines, double shareK, double undoneK) {}

    private final FieldText text;
    private final Differences differences;

    RevisionComparison(FieldText text, Differences differences) {
        this.text = text;
        this.differences = differences;
    }

    /**
     * One answer for each installed duty of either spec.
     *
     * @param rater with what is known of the car by its evidence
     */
    public List<DutyCost> between(Spec before, Spec after, Rater rater) {
        Map<String, Differences.Line> lines = differences.between(before, after).stream()
                .collect(Collectors.toMap(Differences.Line::key, Function.identity(), (a, b) -> a, LinkedHashMap::new));
        Set<String> ids = new TreeSet<>(before.dutyIds());
        ids.addAll(after.dutyIds());
        return ids.stream()
                .filter(id -> rater.duties().containsKey(id))
                .map(id -> duty(rater.duties().get(id), before.build(), after.build(), lines, rater))
                .toList();
    }

    private DutyCost duty(Duty duty, Build before, Build after, Map<String, Differences.Line> lines, Rater rater) {
        Build telling = withoutSilentChanges(before, after);
        int changes = Change.between(before, telling).size();
        if (changes > MOST_CHANGES) {
            return failed(duty, text.message("compare.too-many", ""));
        }
        try {
            return cost(duty, before, telling, lines, rater);
        } catch (InputException | OutOfRangeException e) {
            return failed(duty, text.message("compare.impossible", "", text.why(e)));
        }
    }

    private DutyCost failed(Duty duty, String problem) {
        return new DutyCost(
                duty.id(), text.duty(duty.id()), problem, Double.NaN, Double.NaN, List.of(), List.of(), List.of());
    }

    /** A value that only changed its source weighs the same as before, unless an advertisement is involved: no need to rate it. */
    private static Build withoutSilentChanges(Build before, Build after) {
        Build telling = after;
        for (FieldChange change : BuildDifference.between(before, after)) {
            boolean advertised = change.before()
                            .filter(e -> e.from() == Provenance.ADVERTISED)
                            .isPresent()
                    || change.after()
                            .filter(e -> e.from() == Provenance.ADVERTISED)
                            .isPresent();
            if (change.onlyProvenance() && !advertised) {
                telling = telling.withFieldOf(before, change.field());
            }
        }
        return telling;
    }

    private DutyCost cost(Duty duty, Build before, Build after, Map<String, Differences.Line> lines, Rater rater) {
        Attribution found = rater.compare(before, after, duty);
        double widest = found.parts().stream()
                .mapToDouble(p -> Math.abs(p.shareK()))
                .max()
                .orElse(0);
        Map<String, Differences.Line> silent = new LinkedHashMap<>(lines);
        silent.remove("duties");
        List<PartCost> parts = new ArrayList<>();
        for (Attribution.PartEffect p : found.parts()) {
            if (matters(p)) {
                List<Effect> effects = p.effects().stream()
                        .map(e -> new Effect(taken(e.change(), silent), e.shareK(), e.undoneK()))
                        .toList();
                double width = widest == 0 ? 0 : HALF_BAR * Math.abs(p.shareK()) / widest;
                parts.add(new PartCost(
                        p.part().map(Enum::name).orElse(""),
                        p.part()
                                .map(text::group)
                                .orElse(effects.get(0).lines().get(0).label()),
                        effects,
                        p.shareK(),
                        p.aloneK(),
                        p.undoneK(),
                        p.shareK() < 0 ? HALF_BAR - width : HALF_BAR,
                        width));
            }
        }
        return new DutyCost(
                duty.id(),
                text.duty(duty.id()),
                "",
                found.beforeK(),
                found.afterK(),
                parts,
                silent.values().stream().map(Differences.Line::label).toList(),
                cautions(duty, before, after, found, rater));
    }

    private static boolean matters(Attribution.PartEffect part) {
        return Math.abs(part.shareK()) >= NOTHING_K
                || Math.abs(part.aloneK()) >= NOTHING_K
                || Math.abs(part.undoneK()) >= NOTHING_K
                || part.effects().stream().anyMatch(e -> Math.abs(e.shareK()) >= NOTHING_K);
    }

    /** The lines of a change, which then are not without effect. */
    private static List<Differences.Line> taken(Change change, Map<String, Differences.Line> silent) {
        return Stream.concat(Stream.of(change.key()), change.with().stream().map(f -> f.field()
                        .key()))
                .map(silent::remove)
                .filter(Objects::nonNull)
                .toList();
    }

    private List<String> cautions(Duty duty, Build before, Build after, Attribution found, Rater rater) {
        List<String> cautions = new ArrayList<>();
        if (duty.schedule().isPresent()) {
            cautions.add(text.message("compare.by-run", ""));
        }
        if (rater.isBound(before, duty)) {
            cautions.add(text.message("compare.bound.before", ""));
        }
        if (rater.isBound(after, duty)) {
            cautions.add(text.message("compare.bound.after", ""));
        }
        if (!found.exact()) {
            cautions.add(text.message("compare.sampled", ""));
        }
        boolean assumed = found.effects().stream()
                .flatMap(e -> e.change().field().stream())
                .anyMatch(f -> f.before().isEmpty() || f.after().isEmpty());
        if (assumed) {
            cautions.add(text.message("compare.assumed", ""));
        }
        cautions.add(text.message("compare.expected", ""));
        return cautions;
    }
}
