package headertank.app.part.form;

import headertank.app.field.CoreSize;
import headertank.app.field.TypedField;
import headertank.app.part.PartKind;
import headertank.calc.carspec.BuildField;
import headertank.calc.quantity.Provenance;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import org.springframework.util.MultiValueMap;

/**
 * What stands in the form of a part, or in a line of a file, word for word.
 *
 * @param kind token of the kind
 * @param reference the maker's
 * @param price amount alone
 * @param currency code after ISO 4217
 * @param stock note about the stock
 * @param fields what was sent for fields; others are unknown
 * @param version of the record that the form was filled from; null for a new part
 */
public record PartForm(
        String kind,
        String name,
        String reference,
        String price,
        String currency,
        String stock,
        Map<BuildField, TypedField> fields,
        Integer version) {

    public PartForm {
        fields = Collections.unmodifiableMap(fields);
    }

    public static PartForm blank(String kind, String currency) {
        return new PartForm(kind, "", "", "", currency, "", Map.of(), null);
    }

    static PartForm sent(MultiValueMap<String, String> sent) {
        Map<BuildField, TypedField> fields = new EnumMap<>(BuildField.class);
        for (BuildField field : BuildField.values()) {
            if (sent.containsKey(field.key())) {
                fields.put(field, TypedField.sent(sent, field, usual(field)));
            }
        }
        String version = first(sent, "version");
        return new PartForm(
                first(sent, "kind"),
                first(sent, "name"),
                first(sent, "reference"),
                first(sent, "price"),
                first(sent, "currency").toUpperCase(Locale.ROOT),
                first(sent, "stock"),
                CoreSize.spread(fields),
                version.matches("\\d{1,9}") ? Integer.valueOf(version) : null);
    }

    PartForm withVersion(int newVersion) {
        return new PartForm(kind, name, reference, price, currency, stock, fields, newVersion);
    }

    PartForm withCurrency(String other) {
        return new PartForm(kind, name, reference, price, other, stock, fields, version);
    }

    PartForm withKind(PartKind other) {
        return new PartForm(other.name(), name, reference, price, currency, stock, fields, version);
    }

    public TypedField field(BuildField field) {
        return fields.getOrDefault(field, new TypedField("", usual(field)));
    }

    /** Where a value of a part usually comes from: the flow of a fan is an advertisement until somebody shows a curve. */
    public static Provenance usual(BuildField field) {
        return field == BuildField.FAN_FLOW ? Provenance.ADVERTISED : Provenance.DATASHEET;
    }

    private static String first(MultiValueMap<String, String> sent, String name) {
        String value = sent.getFirst(name);
        return value == null ? "" : value.strip();
    }
}
