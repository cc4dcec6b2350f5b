package headertank.calc.carspec;

import headertank.calc.quantity.Entry;
import headertank.calc.quantity.Stated;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** What differs between two builds, field by field, in the order of {@link BuildField}. */
public final class BuildDifference {

    private BuildDifference() {}

    /** @return the fields whose value, provenance or presence differs */
    public static List<FieldChange> between(Build before, Build after) {
        List<FieldChange> changes = new ArrayList<>();
        for (BuildField field : BuildField.values()) {
            var was = before.entry(field);
            var is = after.entry(field);
            if (was.isEmpty() && is.isEmpty()) {
                continue;
            }
            boolean sameValue = was.isPresent() && is.isPresent() && Entry.sameValue(was.get(), is.get());
            if (!(sameValue && was.get().equals(is.get()))) {
                if (sameValue && sameStanding(was.get(), is.get())) {
                    continue;
                }
                changes.add(new FieldChange(field, was, is, sameValue));
            }
        }
        return List.copyOf(changes);
    }

    private static boolean sameStanding(Entry a, Entry b) {
        if (a instanceof Stated x && b instanceof Stated y) {
            return x.from() == y.from() && Objects.equals(x.spread(), y.spread());
        }
        return a.from() == b.from();
    }
}
