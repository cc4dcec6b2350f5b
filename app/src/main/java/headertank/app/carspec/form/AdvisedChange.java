package headertank.app.carspec.form;

import headertank.app.carspec.Revision;
import headertank.app.carspec.Spec;
import headertank.app.field.FieldText;
import headertank.app.field.TypedField;
import headertank.app.part.PartKind;
import headertank.calc.Rater;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.FieldGroup;
import headertank.calc.quantity.Chosen;
import headertank.calc.quantity.Entry;
import headertank.calc.quantity.Provenance;
import headertank.calc.result.Plan;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Component;

/**
 * Types what a check advises into the form, so that it can be looked at and saved: a change that would buy margin, or where a
 * value comes from that somebody is about to measure. Nothing is kept.
 */
@Component
class AdvisedChange {

    /**
     * @param what to change, in words
     * @param fields what was typed in
     * @param again whether this is what the car had before, with what was known of it then
     */
    record Typed(String what, List<Line> fields, boolean again) {}

    /** @param id of the field on the page */
    record Line(String id, String label, String value) {}

    /** The form with the change in it. */
    record Filled(SpecForm form, Typed typed) {}

    private final FieldText text;

    AdvisedChange(FieldText text) {
        this.text = text;
    }

    /**
     * @param rater with what is known of the car by its evidence
     * @return the form of a car's newest revision with an improvement typed in; empty when the car has no use for it
     */
    Optional<Filled> improvement(Revision newest, SpecForm form, String id, Rater rater) {
        return rater.plan(newest.spec().build(), id).map(plan -> filled(form, plan));
    }

    private Filled filled(SpecForm form, Plan plan) {
        Map<BuildField, TypedField> fields = copy(form);
        plan.entries().forEach((field, entry) -> fields.put(field, TypedField.unsaid(typed(field, entry))));
        String what = text.said(plan.label());
        return new Filled(
                form.with(fields, form.parts()).because(what),
                new Typed(
                        what,
                        plan.entries().entrySet().stream()
                                .map(e -> new Line(
                                        e.getKey().name(), text.label(e.getKey()), text.show(e.getKey(), e.getValue())))
                                .toList(),
                        false));
    }

    /**
     * Puts a part back to what it was in an earlier revision, with what was known of it then, and its place in the catalogue.
     *
     * @param form of the car's newest revision
     * @param part that goes back
     * @param earlier revision that it is taken from
     */
    Filled back(SpecForm form, FieldGroup part, Revision earlier) {
        Spec then = earlier.spec();
        Map<BuildField, TypedField> fields = copy(form);
        List<Line> lines = new ArrayList<>();
        for (BuildField field : BuildField.values()) {
            if (field.group() != part) {
                continue;
            }
            TypedField was = then.build()
                    .entry(field)
                    .map(e -> new TypedField(text.prefill(then.values(), field), e.from()))
                    .orElse(TypedField.unsaid(""));
            if (!was.equals(form.field(field))) {
                fields.put(field, was);
                lines.add(new Line(
                        field.name(),
                        text.label(field),
                        was.text().isEmpty() ? text.message("spec.unknown", "") : text.show(then.values(), field)));
            }
        }
        Map<PartKind, SpecForm.Slot> slots = new EnumMap<>(PartKind.class);
        slots.putAll(form.parts());
        for (PartKind kind : PartKind.values()) {
            if (Fitting.anchor(kind).group() == part) {
                slots.remove(kind);
                Optional.ofNullable(then.parts().get(kind)).ifPresent(ref -> slots.put(kind, SpecForm.Slot.of(ref)));
            }
        }
        String what = text.message("spec.back", "", text.group(part), earlier.number());
        return new Filled(form.with(fields, slots).because(what), new Typed(what, lines, true));
    }

    /**
     * @return the form with an empty field that is about to be measured: whatever is typed there counts as measured. A value that
     *     stands there already keeps its own source, for nobody has measured that one
     */
    Optional<SpecForm> measurement(SpecForm form, String field) {
        return BuildField.ofKey(field)
                .filter(f -> form.field(f).text().isEmpty())
                .map(f -> {
                    Map<BuildField, TypedField> fields = copy(form);
                    fields.put(f, new TypedField("", Provenance.MEASURED));
                    return form.with(fields, form.parts());
                });
    }

    private static Map<BuildField, TypedField> copy(SpecForm form) {
        Map<BuildField, TypedField> fields = new EnumMap<>(BuildField.class);
        fields.putAll(form.fields());
        return fields;
    }

    private String typed(BuildField field, Entry entry) {
        return entry instanceof Chosen chosen ? chosen.token() : text.show(field, entry);
    }
}
