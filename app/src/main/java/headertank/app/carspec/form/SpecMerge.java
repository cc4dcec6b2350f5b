package headertank.app.carspec.form;

import headertank.app.carspec.Spec;
import headertank.app.part.PartKind;
import headertank.app.part.PartRef;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import headertank.calc.quantity.Entry;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * Two specs made from the same one, joined field by field: where only one of the two changed something, the change is taken;
 * where both did, mine stands and the field is marked.
 *
 * @param spec the joined spec
 * @param contested fields that both changed, each to something else
 * @param classContested whether both chose another class of car
 */
record SpecMerge(Spec spec, Set<BuildField> contested, boolean classContested) {

    /** @param parent what both were made from; empty when the car had no spec */
    static SpecMerge of(Optional<Spec> parent, Spec theirs, Spec mine) {
        Map<BuildField, Entry> entries = new EnumMap<>(BuildField.class);
        Map<BuildField, String> typed = new EnumMap<>(BuildField.class);
        Set<BuildField> contested = new HashSet<>();
        for (BuildField field : BuildField.values()) {
            Entry was = parent.map(p -> p.build().entries().get(field)).orElse(null);
            Entry their = theirs.build().entries().get(field);
            Entry my = mine.build().entries().get(field);
            boolean takeTheirs = Objects.equals(my, was) || Objects.equals(my, their);
            if (!takeTheirs && !Objects.equals(their, was)) {
                contested.add(field);
            }
            Spec source = takeTheirs ? theirs : mine;
            Entry taken = takeTheirs ? their : my;
            if (taken != null) {
                entries.put(field, taken);
                Optional.ofNullable(source.typed().get(field)).ifPresent(t -> typed.put(field, t));
            }
        }
        CarClass was = parent.map(p -> p.build().carClass()).orElse(null);
        CarClass their = theirs.build().carClass();
        CarClass my = mine.build().carClass();
        boolean classContested = my != was && their != was && my != their;
        Build build = new Build(my == was ? their : my, entries);
        return new SpecMerge(
                new Spec(build, duties(parent, theirs, mine), typed, parts(parent, theirs, mine)),
                Set.copyOf(contested),
                classContested);
    }

    private static Map<PartKind, PartRef> parts(Optional<Spec> parent, Spec theirs, Spec mine) {
        Map<PartKind, PartRef> joined = new EnumMap<>(PartKind.class);
        for (PartKind kind : PartKind.values()) {
            PartRef was = parent.map(p -> p.parts().get(kind)).orElse(null);
            PartRef my = mine.parts().get(kind);
            PartRef taken = Objects.equals(my, was) ? theirs.parts().get(kind) : my;
            if (taken != null) {
                joined.put(kind, taken);
            }
        }
        return joined;
    }

    private static List<String> duties(Optional<Spec> parent, Spec theirs, Spec mine) {
        Set<String> all = new HashSet<>(theirs.dutyIds());
        all.addAll(mine.dutyIds());
        List<String> joined = new ArrayList<>();
        for (String duty : all) {
            boolean was = parent.map(p -> p.dutyIds().contains(duty)).orElse(false);
            boolean my = mine.dutyIds().contains(duty);
            if (my != was ? my : theirs.dutyIds().contains(duty)) {
                joined.add(duty);
            }
        }
        return joined.isEmpty() ? mine.dutyIds() : joined;
    }
}
