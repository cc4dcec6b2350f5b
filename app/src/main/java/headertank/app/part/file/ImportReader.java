package headertank.app.part.file;

import headertank.app.csv.Csv;
import headertank.app.field.FieldText;
import headertank.app.field.FieldValues;
import headertank.app.field.TypedField;
import headertank.app.part.Catalogue;
import headertank.app.part.PartContent;
import headertank.app.part.PartKind;
import headertank.app.part.PartLine;
import headertank.app.part.form.PartForm;
import headertank.app.part.form.PartFormView;
import headertank.app.part.form.PartReader;
import headertank.app.stored.Sha256;
import headertank.calc.carspec.BuildField;
import headertank.calc.quantity.Provenance;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;

/**
 * Compares a file with the catalogue, without changing anything. A part is known by its kind and name. A column that the file
 * does not have leaves what is there; an empty cell empties it.
 */
@Component
class ImportReader {

    static final int MOST_LINES = 2000;
    static final int MOST_BYTES = 512 * 1024;
    private static final int MOST_FAULTS = 200;

    private final Catalogue catalogue;
    private final PartReader reader;
    private final PartFormView forms;
    private final FieldText text;
    private final MessageSource messages;

    ImportReader(Catalogue catalogue, PartReader reader, PartFormView forms, FieldText text, MessageSource messages) {
        this.catalogue = catalogue;
        this.reader = reader;
        this.forms = forms;
        this.text = text;
        this.messages = messages;
    }

    ImportPlan plan(String text) {
        List<ImportPlan.Fault> faults = new ArrayList<>();
        List<Csv.Line> read;
        try {
            read = Csv.read(text);
        } catch (Csv.BrokenException e) {
            return refused(new ImportPlan.Fault(e.line(), "", "", message("part.file.quotes")));
        }
        if (read.size() < 2) {
            return refused(new ImportPlan.Fault(1, "", "", message("part.file.empty")));
        }
        if (read.size() > MOST_LINES + 1) {
            return refused(new ImportPlan.Fault(MOST_LINES + 2, "", "", message("part.file.lines", MOST_LINES)));
        }
        List<String> header = read.get(0).cells().stream().map(String::strip).toList();
        header(header, faults);
        if (!faults.isEmpty()) {
            return new ImportPlan(List.of(), faults, "");
        }
        Map<String, PartLine> known = catalogue.all().stream()
                .collect(Collectors.toMap(p -> key(p.kind().name(), p.name()), p -> p, (a, b) -> a));
        String currency = catalogue.usualCurrency();
        Set<String> seen = new HashSet<>();
        List<ImportPlan.Line> lines = new ArrayList<>();
        for (Csv.Line line : read.subList(1, read.size())) {
            if (line.cells().size() > header.size()) {
                faults.add(new ImportPlan.Fault(line.number(), "", "", message("part.file.cells", header.size())));
                continue;
            }
            Map<String, String> cells = cells(header, line);
            String key = key(cells.get("kind"), cells.get("name"));
            if (!seen.add(key)) {
                faults.add(new ImportPlan.Fault(line.number(), "name", cells.get("name"), message("part.file.twice")));
                continue;
            }
            line(line.number(), cells, Optional.ofNullable(known.get(key)), currency, faults)
                    .ifPresent(lines::add);
        }
        List<ImportPlan.Fault> shown = faults.stream().limit(MOST_FAULTS).toList();
        return new ImportPlan(lines, shown, fingerprint(lines));
    }

    private static ImportPlan refused(ImportPlan.Fault fault) {
        return new ImportPlan(List.of(), List.of(fault), "");
    }

    private void header(List<String> header, List<ImportPlan.Fault> faults) {
        Set<String> allowed = new HashSet<>(PartFile.COLUMNS);
        PartFile.fields().forEach(f -> {
            allowed.add(f.key());
            allowed.add(f.key() + TypedField.FROM);
        });
        Set<String> seen = new HashSet<>();
        for (String column : header) {
            if (!allowed.contains(column)) {
                faults.add(new ImportPlan.Fault(1, column, "", message("part.file.column")));
            } else if (!seen.add(column)) {
                faults.add(new ImportPlan.Fault(1, column, "", message("part.file.column.twice")));
            }
        }
        for (String needed : List.of("kind", "name")) {
            if (!seen.contains(needed)) {
                faults.add(new ImportPlan.Fault(1, needed, "", message("part.file.column.missing")));
            }
        }
    }

    private static Map<String, String> cells(List<String> header, Csv.Line line) {
        Map<String, String> cells = new HashMap<>();
        for (int i = 0; i < header.size(); i++) {
            cells.put(
                    header.get(i), i < line.cells().size() ? line.cells().get(i).strip() : "");
        }
        return cells;
    }

    private static String key(String kind, String name) {
        return kind + "\n" + name.toLowerCase(Locale.ROOT);
    }

    private Optional<ImportPlan.Line> line(
            int number,
            Map<String, String> cells,
            Optional<PartLine> saved,
            String currency,
            List<ImportPlan.Fault> faults) {
        int before = faults.size();
        PartForm base = saved.map(forms::of).orElseGet(() -> PartForm.blank(cells.get("kind"), currency));
        Map<BuildField, TypedField> fields = fields(number, cells, base, faults);
        String retired = cells.getOrDefault("retired", "");
        if (!List.of("", "yes", "no").contains(retired)) {
            faults.add(new ImportPlan.Fault(number, "retired", retired, message("part.file.yes-no")));
        }
        PartForm form = new PartForm(
                cells.get("kind"),
                cells.get("name"),
                cells.getOrDefault("reference", base.reference()),
                cells.getOrDefault("price", base.price()),
                currency(cells, base, currency),
                cells.getOrDefault("stock", base.stock()),
                fields,
                base.version());
        PartReader.Reading reading =
                reader.read(form, saved.map(p -> p.content().values()).orElseGet(FieldValues::none));
        reading.faults().forEach((column, sentence) -> faults.add(fault(number, column, form, sentence)));
        if (faults.size() > before) {
            return Optional.empty();
        }
        boolean was = saved.map(PartLine::retired).orElse(false);
        boolean gone = cells.containsKey("retired") ? retired.equals("yes") : was;
        return Optional.of(compared(number, reading.content().orElseThrow(), saved, was, gone));
    }

    private static String currency(Map<String, String> cells, PartForm base, String usual) {
        String written = cells.getOrDefault("currency", base.currency()).toUpperCase(Locale.ROOT);
        return written.isEmpty() && !cells.containsKey("currency") ? usual : written;
    }

    private Map<BuildField, TypedField> fields(
            int number, Map<String, String> cells, PartForm base, List<ImportPlan.Fault> faults) {
        Map<BuildField, TypedField> fields = new EnumMap<>(BuildField.class);
        List<BuildField> ofKind =
                PartKind.of(cells.get("kind")).map(PartKind::fields).orElse(List.of());
        for (BuildField field : PartFile.fields()) {
            TypedField was = base.field(field);
            String text = cells.getOrDefault(field.key(), was.text());
            if (!ofKind.contains(field)) {
                if (!text.isEmpty() && !ofKind.isEmpty()) {
                    faults.add(new ImportPlan.Fault(
                            number, field.key(), text, message("part.file.not-of-kind", cells.get("kind"))));
                }
                continue;
            }
            String column = field.key() + TypedField.FROM;
            String from = cells.getOrDefault(column, "");
            Optional<Provenance> stated = TypedField.provenance(from);
            if (stated.isEmpty() && !from.isEmpty()) {
                faults.add(new ImportPlan.Fault(
                        number, column, from, message("part.file.one-of", names(Provenance.values()))));
            }
            fields.put(
                    field,
                    new TypedField(text, stated.orElse(text.equals(was.text()) ? was.from() : PartForm.usual(field))));
        }
        return fields;
    }

    private ImportPlan.Fault fault(int number, String column, PartForm form, String sentence) {
        Optional<BuildField> field = BuildField.ofKey(column);
        String value = field.map(f -> form.field(f).text()).orElseGet(() -> switch (column) {
            case "kind" -> form.kind();
            case "name" -> form.name();
            case "reference" -> form.reference();
            case "price" -> form.price();
            case "currency" -> form.currency();
            default -> form.stock();
        });
        String said = field.filter(BuildField::isChoice)
                .map(f -> message("part.file.one-of", String.join(", ", text.options(f))))
                .orElse(sentence);
        return new ImportPlan.Fault(number, column, value.length() > 60 ? value.substring(0, 60) + "…" : value, said);
    }

    private ImportPlan.Line compared(
            int number, PartContent content, Optional<PartLine> saved, boolean was, boolean gone) {
        if (saved.isEmpty()) {
            return new ImportPlan.Line(number, ImportPlan.Deed.ADD, null, null, content, List.of(), gone, false);
        }
        List<String> changed = differences(saved.get().content(), content);
        if (was != gone) {
            changed.add("retired");
        }
        return new ImportPlan.Line(
                number,
                changed.isEmpty() ? ImportPlan.Deed.NOTHING : ImportPlan.Deed.CHANGE,
                saved.get().id(),
                saved.get().version(),
                content,
                changed,
                gone,
                was);
    }

    /** Columns in which two contents differ. */
    private static List<String> differences(PartContent a, PartContent b) {
        List<String> changed = new ArrayList<>();
        add(changed, "name", a.name(), b.name());
        add(changed, "reference", a.reference(), b.reference());
        add(changed, "price", a.price(), b.price());
        add(changed, "stock", a.stock(), b.stock());
        for (BuildField field : a.kind().fields()) {
            boolean same = Objects.equals(
                            a.values().entries().get(field),
                            b.values().entries().get(field))
                    && Objects.equals(
                            a.values().typed().get(field), b.values().typed().get(field));
            if (!same) {
                changed.add(field.key());
            }
        }
        return changed;
    }

    private static void add(List<String> changed, String column, Object a, Object b) {
        if (!a.equals(b)) {
            changed.add(column);
        }
    }

    private static String fingerprint(List<ImportPlan.Line> lines) {
        return Sha256.hex(lines.stream()
                .map(l -> l.deed() + " " + l.id() + " " + l.version() + " " + l.number())
                .collect(Collectors.joining("\n")));
    }

    private static String names(Enum<?>[] constants) {
        return Arrays.stream(constants).map(Enum::name).collect(Collectors.joining(", "));
    }

    private String message(String key, Object... arguments) {
        return messages.getMessage(key, arguments, LocaleContextHolder.getLocale());
    }
}
