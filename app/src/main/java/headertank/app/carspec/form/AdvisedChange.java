package headertank.app.carspec.form;

import headertank.app.carspec.Revision;
import headertank.app.carspec.Spec;
import headertank.app.field.FieldText;
import headertank.app.field.TypedField;
import headertank.app.part.PartKind;
import headertank.calc.Rater;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import headertank.calc.carspec.Change;
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
import java.util.function.Supplier;
import java.util.stream.Stream;
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
     * Puts something back to what it was in an earlier revision, with what was known of it then: a part with its place in the
     * catalogue, a field that belongs to no part, or the class of the car.
     *
     * @param form of the car's newest revision
     * @param what token of the part, key of the field, or {@link Change#CAR_CLASS}
     * @param earlier asks for the revision that it is taken from
     * @return empty when it names nothing of a car
     */
    Optional<Filled> back(SpecForm form, String what, Supplier<Revision> earlier) {
        if (what.equals(Change.CAR_CLASS)) {
            return Optional.of(classBack(form, earlier.get()));
        }
        Optional<FieldGroup> part = Stream.of(FieldGroup.values())
                .filter(g -> g.name().equals(what))
                .findFirst();
        List<BuildField> fields = part.map(p -> Stream.of(BuildField.values())
                        .filter(f -> f.group() == p)
                        .toList())
                .orElseGet(() -> BuildField.ofKey(what).stream().toList());
        return fields.isEmpty() ? Optional.empty() : Optional.of(back(form, fields, part, earlier.get()));
    }

    private Filled classBack(SpecForm form, Revision earlier) {
        CarClass was = earlier.spec().build().carClass();
        String name = text.message("spec.class", "");
        String what = text.message("spec.back", "", name, earlier.number());
        return new Filled(
                form.ofClass(was.name()).because(what),
                new Typed(what, List.of(new Line("carClass-help", name, text.carClass(was))), true));
    }

    private Filled back(SpecForm form, List<BuildField> some, Optional<FieldGroup> part, Revision earlier) {
        Spec then = earlier.spec();
        Map<BuildField, TypedField> fields = copy(form);
        List<Line> lines = new ArrayList<>();
        for (BuildField field : some) {
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
            if (part.equals(Optional.of(Fitting.anchor(kind).group()))) {
                slots.remove(kind);
                Optional.ofNullable(then.parts().get(kind)).ifPresent(ref -> slots.put(kind, SpecForm.Slot.of(ref)));
            }
        }
        String what = text.message(
                "spec.back", "", part.map(text::group).orElseGet(() -> text.label(some.get(0))), earlier.number());
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
