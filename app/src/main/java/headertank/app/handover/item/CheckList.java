package headertank.app.handover.item;

import headertank.app.check.stored.CheckInput;
import headertank.app.check.stored.CheckResult;
import headertank.app.check.stored.CheckResult.FlagLine;
import headertank.calc.carspec.BuildField;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Makes a car's check list from what was rated and what came out of it. Pure. */
public final class CheckList {

    private CheckList() {}

    /** The items that apply, in the order of the work; risky choices come with the cold ones, to be looked at first. */
    public static List<CheckItem> of(CheckInput input, CheckResult result) {
        CarFacts facts = new CarFacts(input);
        Stream<CheckItem> flagged = result.flags().stream()
                .filter(f -> f.weight() != CheckResult.Weight.REMARK)
                .map(CheckList::flagged);
        Stream<CheckItem> usual = Arrays.stream(ChecklistTask.values())
                .filter(w -> w.applies(facts))
                .map(w -> usual(w, facts));
        return Stream.concat(flagged, usual).toList();
    }

    private static CheckItem usual(ChecklistTask work, CarFacts facts) {
        Optional<BuildField> field = work.field();
        return new CheckItem(
                work.key(),
                work.stage(),
                "handover.item." + work.key(),
                work.quantity(),
                field.map(BuildField::key).orElse(""),
                field.map(facts::token).orElse(""),
                work == ChecklistTask.FANS_START
                        ? facts.fansStartK()
                        : field.map(facts::value).orElse(Double.NaN),
                field.map(facts::assumed).orElse(false),
                work.cautions(),
                Optional.empty());
    }

    private static CheckItem flagged(FlagLine flag) {
        return new CheckItem(
                "flag-" + flag.rule(),
                WarmUpStage.COLD,
                "handover.item.flag",
                Optional.empty(),
                "",
                "",
                Double.NaN,
                false,
                List.of(Caution.HOT_SYSTEM, Caution.FANS),
                Optional.of(flag));
    }
}
