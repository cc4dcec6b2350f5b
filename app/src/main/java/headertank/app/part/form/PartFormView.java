package headertank.app.part.form;

import headertank.app.field.FieldText;
import headertank.app.field.TypedField;
import headertank.app.part.PartContent;
import headertank.app.part.PartKind;
import headertank.app.part.PartLine;
import headertank.app.part.Price;
import headertank.calc.carspec.BuildField;
import headertank.calc.quantity.Provenance;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Component;

/** Lays the form of a part out, and finds what somebody else saved where it differs from what stands there. */
@Component
public class PartFormView {

    /**
     * One value of the part.
     *
     * @param kept what the choice of a source sends while nobody touches it; empty without a value
     * @param options tokens of a choice, empty for a number
     */
    record Row(
            BuildField field,
            String text,
            Provenance from,
            String kept,
            List<String> options,
            List<Provenance> sources,
            String fault,
            String theirs) {}

    private final FieldText text;

    public PartFormView(FieldText text) {
        this.text = text;
    }

    List<Row> rows(PartKind kind, PartForm form, Map<String, String> faults, Map<String, String> theirs) {
        return kind.fields().stream()
                .map(f -> new Row(
                        f,
                        form.field(f).text(),
                        form.field(f).from(),
                        form.field(f).text().isEmpty() ? "" : form.field(f).kept(),
                        text.options(f),
                        Arrays.asList(Provenance.values()),
                        faults.getOrDefault(f.key(), ""),
                        theirs.getOrDefault(f.key(), "")))
                .toList();
    }

    /** A form filled from the catalogue. */
    public PartForm of(PartLine part) {
        Map<BuildField, TypedField> fields = new LinkedHashMap<>();
        PartContent content = part.content();
        content.values()
                .entries()
                .forEach((field, entry) ->
                        fields.put(field, new TypedField(text.prefill(content.values(), field), entry.from())));
        return new PartForm(
                content.kind().name(),
                content.name(),
                content.reference(),
                content.price().map(Price::amount).orElse(""),
                content.price().map(Price::currency).orElse(""),
                content.stock(),
                fields,
                part.version());
    }

    /** What is saved now, by the name of the field, where the form says something else. */
    Map<String, String> theirs(PartForm mine, PartLine saved) {
        PartForm their = of(saved);
        Map<String, String> differing = new LinkedHashMap<>();
        put(differing, "name", mine.name(), their.name());
        put(differing, "reference", mine.reference(), their.reference());
        put(differing, "price", mine.price(), their.price());
        put(differing, "currency", mine.currency(), their.currency());
        put(differing, "stock", mine.stock(), their.stock());
        for (BuildField field : saved.kind().fields()) {
            TypedField my = mine.field(field);
            TypedField now = their.field(field);
            boolean same = my.text().equals(now.text()) && (my.text().isEmpty() || my.from() == now.from());
            if (!same) {
                differing.put(field.key(), text.show(saved.content().values(), field));
            }
        }
        differing.replaceAll((name, value) -> value.isEmpty() ? "–" : value);
        return differing;
    }

    private static void put(Map<String, String> differing, String name, String mine, String theirs) {
        if (!mine.equals(theirs)) {
            differing.put(name, theirs);
        }
    }
}
