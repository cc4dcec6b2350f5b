package headertank.app.carspec.history;

import headertank.app.carspec.Spec;
import headertank.app.field.FieldText;
import headertank.calc.carspec.Assumption;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildDifference;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import headertank.calc.carspec.Change;
import headertank.calc.carspec.FieldChange;
import headertank.calc.quantity.Entry;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Component;

/** What differs between two specs, in words. */
@Component
public class Differences {

    /**
     * One difference.
     *
     * @param key the field's key, {@link Change#CAR_CLASS}, or {@code duties}
     * @param before in words, empty when it was unknown
     * @param beforeStandIn what stood in while it was unknown, empty when nothing did
     * @param beforeFrom provenance in words, empty for an unknown value
     * @param onlyProvenance whether the value stayed
     */
    public record Line(
            String key,
            String label,
            String before,
            String beforeStandIn,
            String beforeFrom,
            String after,
            String afterStandIn,
            String afterFrom,
            boolean onlyProvenance) {}

    private final FieldText text;
    private final StandIns standIns;

    Differences(FieldText text, StandIns standIns) {
        this.text = text;
        this.standIns = standIns;
    }

    /** Every difference, the class of car and the duties first, then by part. */
    public List<Line> between(Spec before, Spec after) {
        List<Line> lines = new ArrayList<>();
        if (before.build().carClass() != after.build().carClass()) {
            lines.add(new Line(
                    Change.CAR_CLASS,
                    text.message("spec.class", "class of car"),
                    text.carClass(before.build().carClass()),
                    "",
                    "",
                    text.carClass(after.build().carClass()),
                    "",
                    "",
                    false));
        }
        if (!before.dutyIds().equals(after.dutyIds())) {
            lines.add(new Line(
                    "duties",
                    text.message("spec.duties", "duties"),
                    duties(before),
                    "",
                    "",
                    duties(after),
                    "",
                    "",
                    false));
        }
        Map<BuildField, Assumption> stoodIn = standIns.of(before);
        Map<BuildField, Assumption> standsIn = standIns.of(after);
        for (FieldChange change : BuildDifference.between(before.build(), after.build())) {
            BuildField field = change.field();
            lines.add(new Line(
                    field.key(),
                    text.label(field),
                    text.show(before.values(), field),
                    standIn(change.before(), stoodIn.get(field)),
                    from(change.before()),
                    text.show(after.values(), field),
                    standIn(change.after(), standsIn.get(field)),
                    from(change.after()),
                    change.onlyProvenance()));
        }
        return lines;
    }

    /** What a first spec says: as differences from nothing. */
    public List<Line> fromNothing(Spec spec) {
        CarClass carClass = spec.build().carClass();
        return between(new Spec(Build.of(carClass), spec.dutyIds()), spec);
    }

    private String duties(Spec spec) {
        return String.join(", ", spec.dutyIds().stream().map(text::duty).toList());
    }

    private String standIn(Optional<Entry> entry, Assumption assumption) {
        return entry.isPresent() || assumption == null ? "" : standIns.show(assumption);
    }

    private String from(Optional<Entry> entry) {
        return entry.map(e -> text.provenance(e.from())).orElse("");
    }
}
