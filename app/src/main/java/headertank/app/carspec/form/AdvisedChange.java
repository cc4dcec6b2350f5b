package headertank.app.carspec.form;

import headertank.app.carspec.Revision;
import headertank.app.field.FieldText;
import headertank.app.field.TypedField;
import headertank.calc.Rater;
import headertank.calc.carspec.BuildField;
import headertank.calc.quantity.Chosen;
import headertank.calc.quantity.Entry;
import headertank.calc.quantity.Provenance;
import headertank.calc.result.Plan;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
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
     */
    record Typed(String what, List<Line> fields) {}

    /** @param id of the field on the page */
    record Line(String id, String label, String value) {}

    /** The form with the change in it. */
    record Filled(SpecForm form, Typed typed) {}

    private final Supplier<Rater> rater;
    private final FieldText text;

    AdvisedChange(Supplier<Rater> rater, FieldText text) {
        this.rater = rater;
        this.text = text;
    }

    /** @return the form of a car's newest revision with an improvement typed in; empty when the car has no use for it */
    Optional<Filled> improvement(Revision newest, SpecForm form, String id) {
        return rater.get().plan(newest.spec().build(), id).map(plan -> filled(form, plan));
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
                                .toList()));
    }

    /** @return the form with a field that is about to be measured: whatever is typed there counts as measured */
    Optional<SpecForm> measurement(SpecForm form, String field) {
        return BuildField.ofKey(field).map(f -> {
            Map<BuildField, TypedField> fields = copy(form);
            fields.put(f, new TypedField(form.field(f).text(), Provenance.MEASURED));
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
