package headertank.app.carspec.form;

import headertank.app.field.CoreSize;
import headertank.app.field.FieldText;
import headertank.app.field.FieldUnit;
import headertank.app.field.TypedField;
import headertank.calc.Rater;
import headertank.calc.carspec.Assumption;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import headertank.calc.carspec.FieldGroup;
import headertank.calc.quantity.Entry;
import headertank.calc.quantity.Provenance;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;

/** Lays the form out: the essential fields first, the rest by part. */
@Component
class FormView {

    /** A choice of a select, a radio button or a check box. */
    record Choice(String value, String label, boolean chosen) {}

    /**
     * One field on the page.
     *
     * @param id name for labels and for the fragment that renews the hint
     * @param unit what a bare number means
     * @param choices options, empty for a number
     * @param from where the value may come from: first what was said of this very value, which holds while it stays; the empty
     *     one while nobody has said
     * @param unsaid whether there is a value of which nobody has said where it comes from
     * @param shown the value in the shop's unit where it was typed in another, or why it cannot be read; else empty
     * @param unread whether {@code shown} says why it cannot be read
     * @param meant what a bare number that makes no sense was probably meant as, empty otherwise
     * @param sizes ids of the fields over which a size in three parts is spread, empty for most
     * @param assumed what stands in while it is unknown, empty when nothing does
     * @param fault sentence, empty when there is none
     * @param theirs what somebody else saved where both changed it, empty otherwise
     */
    record Row(
            String id,
            String key,
            String label,
            String hint,
            boolean choice,
            String unit,
            List<Choice> choices,
            String text,
            List<Choice> from,
            boolean unsaid,
            String shown,
            boolean unread,
            String meant,
            String sizes,
            String assumed,
            String fault,
            String theirs) {}

    /** @param open whether something in it needs to be seen */
    record FormPart(String label, List<Row> rows, long filled, boolean open) {}

    record Page(List<Choice> classes, List<Choice> duties, List<Row> essential, List<FormPart> parts) {
        /** Every field, wherever it stands. */
        public List<Row> rows() {
            List<Row> all = new ArrayList<>(essential);
            parts.forEach(p -> all.addAll(p.rows()));
            return all;
        }

        /** Name of the first faulty field as the page has them, {@code none} without a fault. */
        String firstFault(Map<String, String> faults) {
            return Stream.of(Stream.of("carClass", "duties"), rows().stream().map(Row::key), Stream.of("reason"))
                    .flatMap(names -> names)
                    .filter(faults::containsKey)
                    .findFirst()
                    .orElse("none");
        }
    }

    private static final String SIZES =
            CoreSize.FIELDS.stream().skip(1).map(BuildField::name).collect(Collectors.joining(" "));

    private final Supplier<Rater> rater;
    private final FieldText text;

    FormView(Supplier<Rater> rater, FieldText text) {
        this.rater = rater;
        this.text = text;
    }

    /**
     * @param reading of the form
     * @param faults those to show at the fields
     * @param theirs what somebody else saved, by the name of the field, where both changed it
     */
    Page page(
            SpecForm form,
            SpecReader.Reading reading,
            Preview.Draft draft,
            Map<String, String> faults,
            Map<String, String> theirs) {
        List<Row> essential = new ArrayList<>();
        Map<FieldGroup, List<Row>> parts = new LinkedHashMap<>();
        for (BuildField field : BuildField.values()) {
            Row row = row(field, form, reading, draft, faults, theirs);
            if (field.essential()) {
                essential.add(row);
            } else {
                parts.computeIfAbsent(field.group(), g -> new ArrayList<>()).add(row);
            }
        }
        return new Page(
                Arrays.stream(CarClass.values())
                        .map(c ->
                                new Choice(c.name(), text.carClass(c), c.name().equals(form.carClass())))
                        .toList(),
                duties(form),
                essential,
                parts.entrySet().stream()
                        .map(e -> part(e.getKey(), e.getValue(), form))
                        .toList());
    }

    private FormPart part(FieldGroup group, List<Row> rows, SpecForm form) {
        long filled = rows.stream().filter(r -> !r.text().isEmpty()).count();
        boolean open =
                rows.stream().anyMatch(r -> !r.fault().isEmpty() || !r.theirs().isEmpty())
                        || form.parts().keySet().stream()
                                .anyMatch(kind -> !Fitting.anchor(kind).essential()
                                        && Fitting.anchor(kind).group() == group);
        return new FormPart(text.group(group), List.copyOf(rows), filled, open);
    }

    private List<Choice> duties(SpecForm form) {
        Set<String> installed = rater.get().duties().keySet();
        Set<String> ids = new TreeSet<>(installed);
        ids.addAll(form.duties());
        return ids.stream()
                .map(id -> new Choice(
                        id,
                        installed.contains(id) ? text.duty(id) : text.message("spec.duties.off", id, id),
                        form.duties().contains(id)))
                .toList();
    }

    private Row row(
            BuildField field,
            SpecForm form,
            SpecReader.Reading reading,
            Preview.Draft draft,
            Map<String, String> faults,
            Map<String, String> theirs) {
        String fault = faults.getOrDefault(field.key(), "");
        String unread = fault.isEmpty() ? reading.faults().getOrDefault(field.key(), "") : "";
        TypedField typed = form.field(field);
        return new Row(
                field.name(),
                field.key(),
                text.label(field),
                text.hint(field),
                field.isChoice(),
                field.isChoice() ? "" : text.unit(field),
                choices(field, typed.text()),
                typed.text(),
                sources(typed),
                !typed.said() && !typed.text().isEmpty(),
                unread.isEmpty() ? shown(field, typed, reading) : unread,
                !unread.isEmpty(),
                reading.meant().getOrDefault(field, ""),
                field == CoreSize.FIELDS.get(0) ? SIZES : "",
                assumed(field, draft),
                fault,
                theirs.getOrDefault(field.key(), ""));
    }

    private List<Choice> sources(TypedField typed) {
        List<Choice> sources = new ArrayList<>();
        boolean ofThisValue = typed.said() && !typed.text().isEmpty();
        if (ofThisValue) {
            String from = mark(typed.from()) + " " + text.provenance(typed.from());
            sources.add(new Choice(typed.kept(), text.message("spec.from.kept", "", from), true));
        }
        sources.add(new Choice("", text.message("spec.from.unsaid", ""), !typed.said()));
        for (Provenance p : Provenance.values()) {
            boolean announced = typed.said() && !ofThisValue && p == typed.from();
            sources.add(new Choice(p.name(), mark(p) + " " + text.provenance(p), announced));
        }
        return sources;
    }

    /** The key that says where a value comes from while its field has the focus; no number and no unit holds it. */
    static String mark(Provenance from) {
        return switch (from) {
            case MEASURED -> "=";
            case DATASHEET -> "#";
            case ADVERTISED -> "!";
            case GUESSED -> "?";
        };
    }

    /** What was typed short or in another unit than the shop's, as it was read. */
    private String shown(BuildField field, TypedField typed, SpecReader.Reading reading) {
        Entry entry = reading.values().entries().get(field);
        if (field.isChoice() || entry == null || FieldUnit.isPlain(field, typed.text(), text.system())) {
            return "";
        }
        String value = text.show(field, entry);
        return text.message("spec.shown", value, value);
    }

    private List<Choice> choices(BuildField field, String chosen) {
        List<String> tokens = new ArrayList<>(text.options(field));
        if (field.isChoice() && !chosen.isEmpty() && !tokens.contains(chosen)) {
            tokens.add(chosen);
        }
        return tokens.stream()
                .map(t -> new Choice(t, text.option(field, t), t.equals(chosen)))
                .toList();
    }

    private String assumed(BuildField field, Preview.Draft draft) {
        Assumption a = draft.assumed().get(field);
        if (a == null) {
            return "";
        }
        String value = field.isChoice() ? text.option(field, a.token()) : text.show(field, a.value());
        return text.message("spec.assumed", value, value);
    }
}
