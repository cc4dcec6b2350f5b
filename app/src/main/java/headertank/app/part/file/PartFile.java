package headertank.app.part.file;

import headertank.app.csv.Csv;
import headertank.app.field.FieldText;
import headertank.app.field.TypedField;
import headertank.app.part.PartContent;
import headertank.app.part.PartKind;
import headertank.app.part.PartLine;
import headertank.app.part.Price;
import headertank.app.unit.DecimalSign;
import headertank.calc.carspec.BuildField;
import headertank.calc.quantity.Entry;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.springframework.stereotype.Component;

/** The catalogue as comma-separated text. docs/parts-files.md says how it is written. */
@Component
public class PartFile {

    static final List<String> COLUMNS = List.of("kind", "name", "reference", "price", "currency", "stock", "retired");

    private final FieldText text;

    public PartFile(FieldText text) {
        this.text = text;
    }

    /** Columns of the fields that parts can state. */
    public static List<BuildField> fields() {
        return Arrays.stream(PartKind.values())
                .flatMap(k -> k.fields().stream())
                .toList();
    }

    /** Every part with the fields that any of them states. */
    String write(List<PartLine> parts) {
        Set<BuildField> stated = new TreeSet<>();
        parts.forEach(p -> stated.addAll(p.content().values().entries().keySet()));
        List<BuildField> fields = fields().stream().filter(stated::contains).toList();
        List<String> header = new ArrayList<>(COLUMNS);
        fields.forEach(f -> {
            header.add(f.key());
            header.add(f.key() + TypedField.FROM);
        });
        StringBuilder file = new StringBuilder(Csv.write(header));
        parts.forEach(p -> file.append(Csv.write(cells(p, fields))));
        return file.toString();
    }

    private List<String> cells(PartLine part, List<BuildField> fields) {
        PartContent content = part.content();
        List<String> cells = new ArrayList<>(List.of(
                content.kind().name(),
                content.name(),
                content.reference(),
                content.price().map(Price::amount).orElse(""),
                content.price().map(Price::currency).orElse(""),
                content.stock(),
                part.retired() ? "yes" : "no"));
        for (BuildField field : fields) {
            Entry entry = content.values().entries().get(field);
            cells.add(DecimalSign.inFile(text.prefill(content.values(), field)));
            cells.add(entry == null ? "" : entry.from().name());
        }
        return cells;
    }
}
