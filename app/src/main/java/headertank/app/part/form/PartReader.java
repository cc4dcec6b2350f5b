package headertank.app.part.form;

import headertank.app.field.FieldReader;
import headertank.app.field.FieldValues;
import headertank.app.field.TypedField;
import headertank.app.part.PartContent;
import headertank.app.part.PartKind;
import headertank.app.part.Price;
import headertank.calc.carspec.BuildField;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;

/** Turns what was typed about a part into its content, or into a sentence for each fault: all of them at once. */
@Component
public class PartReader {

    static final int LONGEST_NAME = 120;
    static final int LONGEST_STOCK = 500;

    /**
     * What came of a form.
     *
     * @param content empty when there are faults
     * @param faults a sentence for each faulty field, by its name in the form
     */
    public record Reading(Optional<PartContent> content, Map<String, String> faults) {}

    private final FieldReader fields;
    private final MessageSource messages;

    public PartReader(FieldReader fields, MessageSource messages) {
        this.fields = fields;
        this.messages = messages;
    }

    /** @param before what the catalogue says now; a field that still reads as it did there keeps its exact value */
    public Reading read(PartForm form, FieldValues before) {
        Map<String, String> faults = new LinkedHashMap<>();
        Optional<PartKind> kind = PartKind.of(form.kind());
        if (kind.isEmpty()) {
            faults.put("kind", message("part.fault.kind", form.kind(), kinds()));
        }
        if (form.name().isEmpty()) {
            faults.put("name", message("part.fault.name"));
        }
        line("name", form.name(), LONGEST_NAME, faults);
        line("reference", form.reference(), LONGEST_NAME, faults);
        line("stock", form.stock(), LONGEST_STOCK, faults);
        Optional<Price> price = price(form, faults);
        FieldReader.Reading read = fields.read(ofKind(kind, form), before);
        read.faults().forEach((field, fault) -> faults.put(field.key(), fault));
        return faults.isEmpty()
                ? new Reading(
                        Optional.of(new PartContent(
                                kind.orElseThrow(), form.name(), form.reference(), read.values(), price, form.stock())),
                        faults)
                : new Reading(Optional.empty(), faults);
    }

    private static Map<BuildField, TypedField> ofKind(Optional<PartKind> kind, PartForm form) {
        Map<BuildField, TypedField> fields = new EnumMap<>(BuildField.class);
        kind.ifPresent(k -> k.fields().forEach(f -> fields.put(f, form.field(f))));
        return fields;
    }

    private Optional<Price> price(PartForm form, Map<String, String> faults) {
        try {
            return Price.read(form.price(), form.currency());
        } catch (Price.UnreadableException e) {
            if (e.fault() == Price.Fault.CURRENCY) {
                faults.put("currency", message("part.fault.currency", form.currency()));
            } else {
                faults.put("price", message("part.fault.price", form.price()));
            }
            return Optional.empty();
        }
    }

    /** One line of storable text. */
    private void line(String name, String text, int longest, Map<String, String> faults) {
        boolean plain = text.codePoints().noneMatch(c -> c < 0x20 || c >= 0xD800 && c <= 0xDFFF);
        if (text.length() > longest || !plain) {
            faults.put(name, message("part.fault.text", longest));
        }
    }

    private static String kinds() {
        return String.join(
                ", ", Arrays.stream(PartKind.values()).map(Enum::name).toList());
    }

    private String message(String key, Object... arguments) {
        Locale locale = LocaleContextHolder.getLocale();
        return messages.getMessage(key, arguments, locale);
    }
}
