package headertank.calc.carspec;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One difference between two builds that can be made by itself. Fields that only make sense together change together: a
 * thermostat that goes or comes takes its bypass and its opening with it, and the rows of a fan table are one table.
 *
 * @param key the field's key, or {@code carClass}
 * @param field the field that names the change and its two entries; empty for the class of car
 * @param with what changes with it; empty when the field stands alone
 */
public record Change(String key, Optional<FieldChange> field, List<FieldChange> with) {

    /** Key of a change of the class of car. */
    public static final String CAR_CLASS = "carClass";

    private static final Set<BuildField> WITH_THE_THERMOSTAT =
            Set.of(BuildField.THERMOSTAT_OPENING, BuildField.THERMOSTAT_BYPASS);

    private static final Set<FieldGroup> NO_PARTS = Set.of(FieldGroup.USE, FieldGroup.LIMIT);

    private static final Set<BuildField> ROWS = ControlTable.ROWS.stream()
            .flatMap(r -> Stream.of(r.temperature(), r.duty()))
            .collect(Collectors.toUnmodifiableSet());

    public Change {
        with = List.copyOf(with);
    }

    /** @return every difference of the two builds, in the order of the fields that name them */
    public static List<Change> between(Build before, Build after) {
        List<Change> changes = new ArrayList<>();
        if (before.carClass() != after.carClass()) {
            changes.add(new Change(CAR_CLASS, Optional.empty(), List.of()));
        }
        List<FieldChange> left = new ArrayList<>(BuildDifference.between(before, after));
        while (!left.isEmpty()) {
            FieldChange first = left.remove(0);
            Set<BuildField> together = together(first);
            List<FieldChange> with =
                    left.stream().filter(f -> together.contains(f.field())).toList();
            left.removeAll(with);
            changes.add(new Change(first.field().key(), Optional.of(first), with));
        }
        return List.copyOf(changes);
    }

    private static Set<BuildField> together(FieldChange first) {
        if (first.field() == BuildField.THERMOSTAT && !first.onlyProvenance()) {
            return WITH_THE_THERMOSTAT;
        }
        return ROWS.contains(first.field()) ? ROWS : Set.of();
    }

    /** @return the part of the car that it belongs to; empty for what is none: the class of car, how it is used, its limits */
    public Optional<FieldGroup> part() {
        return field.map(f -> f.field().group()).filter(g -> !NO_PARTS.contains(g));
    }

    /** @return {@code build} with this difference as it is in {@code other} */
    public Build apply(Build build, Build other) {
        if (field.isEmpty()) {
            return build.withClass(other.carClass());
        }
        Build changed = build.withFieldOf(other, field.get().field());
        for (FieldChange f : with) {
            changed = changed.withFieldOf(other, f.field());
        }
        return changed;
    }
}
