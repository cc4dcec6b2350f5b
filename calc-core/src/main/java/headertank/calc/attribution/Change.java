package headertank.calc.attribution;

import headertank.calc.build.Build;
import headertank.calc.build.BuildDifference;
import headertank.calc.build.BuildField;
import headertank.calc.build.FieldChange;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One difference between two builds that can be made by itself.
 *
 * @param key the field's key, or {@code carClass}
 * @param field the field and its two entries; empty for the class of car
 */
public record Change(String key, Optional<FieldChange> field) {

    /** Key of a change of the class of car. */
    public static final String CAR_CLASS = "carClass";

    /** @return every difference of the two builds, in the order of the fields */
    public static List<Change> between(Build before, Build after) {
        List<Change> changes = new ArrayList<>();
        if (before.carClass() != after.carClass()) {
            changes.add(new Change(CAR_CLASS, Optional.empty()));
        }
        for (FieldChange f : BuildDifference.between(before, after)) {
            changes.add(new Change(f.field().key(), Optional.of(f)));
        }
        return List.copyOf(changes);
    }

    /** @return {@code build} with this difference as it is in {@code other} */
    public Build apply(Build build, Build other) {
        if (field.isEmpty()) {
            return build.withClass(other.carClass());
        }
        BuildField f = field.get().field();
        return build.withFieldOf(other, f);
    }
}
