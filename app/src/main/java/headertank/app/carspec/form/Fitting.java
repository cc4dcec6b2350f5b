package headertank.app.carspec.form;

import headertank.app.field.FieldReader;
import headertank.app.field.FieldText;
import headertank.app.field.FieldValues;
import headertank.app.field.TypedField;
import headertank.app.part.Catalogue;
import headertank.app.part.FittedParts;
import headertank.app.part.PartKind;
import headertank.app.part.PartLine;
import headertank.app.part.PartRef;
import headertank.calc.carspec.BuildField;
import headertank.calc.quantity.Entry;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.springframework.stereotype.Component;

/**
 * Parts of the catalogue on the form of a spec. Choosing one fills its values in; a value that is changed afterwards stays as
 * typed, and the part keeps its place with a mark: the car has that part, only not quite as the catalogue describes it.
 */
@Component("fitting")
class Fitting {

    private static final int LONGEST_NOTE = 40;

    record Option(String value, String label, boolean chosen) {}

    /**
     * One slot on the form.
     *
     * @param name of the choice in the form
     * @param fitted the part whose values the form holds, as it is sent back; empty for none
     * @param partId of that part, null for none
     * @param notes what differs from the catalogue, in words
     * @param asInCatalogue whether every value of the part stands in the form
     */
    record Row(
            String name,
            PartKind kind,
            List<Option> options,
            String fitted,
            Long partId,
            List<String> notes,
            boolean asInCatalogue) {}

    private final Catalogue catalogue;
    private final FittedParts parts;
    private final FieldReader reader;
    private final FieldText text;

    Fitting(Catalogue catalogue, FittedParts parts, FieldReader reader, FieldText text) {
        this.catalogue = catalogue;
        this.parts = parts;
        this.reader = reader;
        this.text = text;
    }

    /** The field before which a kind's slot stands: the first of those that matter most, else the first of all. */
    static BuildField anchor(PartKind kind) {
        return kind.fields().stream().filter(BuildField::essential).findFirst().orElseGet(() -> kind.fields()
                .get(0));
    }

    /** The slots for which the shop has parts or the form holds one, by the name of the field before which they stand. */
    public Map<String, Row> byField(SpecForm form) {
        Map<String, Row> byField = new HashMap<>();
        rows(form).forEach(row -> byField.put(anchor(row.kind()).name(), row));
        return byField;
    }

    private List<Row> rows(SpecForm form) {
        List<PartLine> choices = catalogue.choices();
        List<Row> rows = new ArrayList<>();
        for (PartKind kind : PartKind.values()) {
            SpecForm.Slot slot = form.slot(kind);
            List<PartLine> ofKind =
                    choices.stream().filter(p -> p.kind() == kind).toList();
            if (!ofKind.isEmpty() || slot.fitted() != null) {
                rows.add(row(kind, slot, ofKind, form));
            }
        }
        return rows;
    }

    private Row row(PartKind kind, SpecForm.Slot slot, List<PartLine> ofKind, SpecForm form) {
        Optional<PartRef> fitted = slot.settled();
        List<Option> options = new ArrayList<>();
        ofKind.forEach(p -> options.add(option(p, slot)));
        List<String> notes = new ArrayList<>();
        boolean same = false;
        if (fitted.isPresent()) {
            PartLine now = catalogue.part(fitted.get().partId());
            if (now.retired()) {
                options.add(option(now, slot));
            }
            FieldValues said = parts.valuesOf(fitted.get()).orElse(now.content().values());
            List<BuildField> changed = FittedParts.changed(kind, said, entries(kind, form, said));
            same = changed.isEmpty();
            if (!same) {
                notes.add(text.message("part.fit.changed", "", labels(changed)));
            }
            List<BuildField> left = kind.fields().stream()
                    .filter(f -> !said.entries().containsKey(f)
                            && !form.field(f).text().isEmpty())
                    .toList();
            if (!left.isEmpty()) {
                notes.add(text.message("part.fit.left", "", labels(left)));
            }
            if (!now.ref().equals(fitted.get())) {
                notes.add(text.message("part.fit.newer", ""));
            }
        }
        return new Row(
                SpecForm.slotName(kind),
                kind,
                options,
                slot.fitted() == null ? "" : slot.fitted().toString(),
                fitted.map(PartRef::partId).orElse(null),
                notes,
                same);
    }

    private Option option(PartLine part, SpecForm.Slot slot) {
        String id = Long.toString(part.id());
        String stock = part.content().stock();
        String shown = part.retired()
                ? text.message("part.fit.retired", part.name(), part.name())
                : stock.isEmpty() ? part.name() : part.name() + " · " + shortened(stock);
        return new Option(id, shown, id.equals(slot.chosen()));
    }

    private static String shortened(String note) {
        return note.length() <= LONGEST_NOTE ? note : note.substring(0, LONGEST_NOTE - 1) + "…";
    }

    private String labels(List<BuildField> fields) {
        return String.join(", ", fields.stream().map(text::label).toList());
    }

    /** What the form states of the part's fields; what cannot be read counts as unknown. */
    private Map<BuildField, Entry> entries(PartKind kind, SpecForm form, FieldValues before) {
        Map<BuildField, TypedField> typed = new EnumMap<>(BuildField.class);
        fieldsOf(kind).forEach(f -> typed.put(f, form.field(f)));
        return reader.read(typed, before).values().entries();
    }

    private static Set<BuildField> fieldsOf(PartKind kind) {
        Set<BuildField> fields = new LinkedHashSet<>(kind.fields());
        fields.addAll(kind.implied().keySet());
        return fields;
    }

    /**
     * Puts the values of newly chosen parts into the form. What the part before had brought along goes with it; all else stays.
     *
     * @param pressed token of a kind whose part is taken over even if it was chosen before; may be null
     * @throws headertank.app.problem.NotFoundException when the shop has no such part
     */
    SpecForm takeOver(SpecForm form, String pressed) {
        Map<BuildField, TypedField> fields = new EnumMap<>(BuildField.class);
        fields.putAll(form.fields());
        Map<PartKind, SpecForm.Slot> slots = new EnumMap<>(PartKind.class);
        slots.putAll(form.parts());
        form.parts().forEach((kind, slot) -> {
            boolean again = kind.name().equals(pressed) && !slot.chosen().isEmpty();
            if (slot.chosen().isEmpty()) {
                slots.remove(kind);
            } else if (slot.pending() || again) {
                chosen(kind, slot)
                        .ifPresentOrElse(part -> fill(kind, slot, part, form, fields, slots), () -> slots.remove(kind));
            }
        });
        return form.with(fields, slots);
    }

    private Optional<PartLine> chosen(PartKind kind, SpecForm.Slot slot) {
        return Optional.of(slot.chosen())
                .filter(id -> id.matches("[1-9]\\d{0,17}"))
                .map(id -> catalogue.part(Long.parseLong(id)))
                .filter(part -> part.kind() == kind);
    }

    private void fill(
            PartKind kind,
            SpecForm.Slot slot,
            PartLine part,
            SpecForm form,
            Map<BuildField, TypedField> fields,
            Map<PartKind, SpecForm.Slot> slots) {
        Optional.ofNullable(slot.fitted()).flatMap(parts::valuesOf).ifPresent(old -> {
            List<BuildField> changed = old.differing(entries(kind, form, old));
            old.entries().keySet().stream().filter(f -> !changed.contains(f)).forEach(fields::remove);
        });
        FieldValues brought = FittedParts.withImplied(kind, part.content().values());
        brought.entries()
                .forEach((field, entry) ->
                        fields.put(field, new TypedField(text.prefill(brought, field), entry.from())));
        slots.put(kind, SpecForm.Slot.of(part.ref()));
    }
}
