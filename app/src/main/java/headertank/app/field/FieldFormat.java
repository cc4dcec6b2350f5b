package headertank.app.field;

import headertank.app.stored.CanonicalJson;
import headertank.calc.carspec.BuildField;
import headertank.calc.quantity.Chosen;
import headertank.calc.quantity.Entry;
import headertank.calc.quantity.Provenance;
import headertank.calc.quantity.Spread;
import headertank.calc.quantity.Stated;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectReader;
import tools.jackson.databind.json.JsonMapper;

/**
 * Values of fields as canonical JSON text and back. Stored text is never rewritten: when the format changes, its number rises
 * and a reader for the old one stays here.
 *
 * <pre>{"fields":{"radiator.coreWidthM":{"as":"650 mm","from":"MEASURED","si":0.65},
 * "thermostat.state":{"from":"MEASURED","option":"REMOVED"}},"format":1}</pre>
 */
public final class FieldFormat {

    /** The format that is written. */
    public static final int FORMAT = 1;

    private static final ObjectReader READER = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build()
            .readerFor(JsonNode.class);

    private FieldFormat() {}

    /** Text that holds no values in a known format. */
    public static final class UnreadableException extends RuntimeException {
        private static final long serialVersionUID = 1L;

        public UnreadableException(String why, Throwable cause) {
            super(why, cause);
        }
    }

    /** Values alone, as the catalogue keeps them. */
    public static String write(FieldValues values) {
        return CanonicalJson.write(Map.of("format", FORMAT, "fields", fields(values)));
    }

    /** @throws UnreadableException when the text holds no values in a known format */
    public static FieldValues read(String text) {
        try {
            return values(root(text));
        } catch (JacksonException | IllegalArgumentException e) {
            throw new UnreadableException("no values of fields: " + e.getMessage(), e);
        }
    }

    /** What stands under {@code fields} in a larger text. */
    public static Map<String, Object> fields(FieldValues values) {
        Map<String, Object> fields = new LinkedHashMap<>();
        values.entries().forEach((field, entry) -> fields.put(field.key(), entry(field, entry, values.typed())));
        return fields;
    }

    private static Map<String, Object> entry(BuildField field, Entry entry, Map<BuildField, String> typed) {
        Map<String, Object> written = new LinkedHashMap<>();
        written.put("from", entry.from().name());
        if (entry instanceof Chosen chosen) {
            written.put("option", chosen.token());
        } else if (entry instanceof Stated stated) {
            written.put("si", stated.si());
            if (typed.containsKey(field)) {
                written.put("as", typed.get(field));
            }
            if (stated.spread() != null) {
                Spread s = stated.spread();
                written.put(
                        "spread", Map.of("sigma", s.sigma(), "relative", s.relative(), "meanFactor", s.meanFactor()));
            }
        }
        return written;
    }

    /**
     * The whole of a stored text whose number of format is known.
     *
     * @throws UnreadableException when it is no JSON, or of a format that is not known
     */
    public static JsonNode root(String text) {
        try {
            JsonNode root = READER.readValue(text);
            int format = root.path("format").asInt(0);
            if (format != FORMAT) {
                throw new UnreadableException("format " + format + " is not known here", null);
            }
            return root;
        } catch (JacksonException e) {
            throw new UnreadableException("not JSON: " + e.getMessage(), e);
        }
    }

    /**
     * What stands under {@code fields} of a stored text.
     *
     * @throws IllegalArgumentException when a field, an option or a provenance is not known
     */
    public static FieldValues values(JsonNode root) {
        Map<BuildField, Entry> entries = new EnumMap<>(BuildField.class);
        Map<BuildField, String> typed = new EnumMap<>(BuildField.class);
        for (Map.Entry<String, JsonNode> item : root.path("fields").properties()) {
            BuildField field = BuildField.ofKey(item.getKey())
                    .orElseThrow(() -> new IllegalArgumentException("no field " + item.getKey()));
            JsonNode node = item.getValue();
            Provenance from = Provenance.valueOf(node.path("from").asString());
            if (field.isChoice()) {
                entries.put(field, new Chosen(node.path("option").asString(), from));
            } else {
                entries.put(field, new Stated(node.required("si").doubleValue(), from, spread(node.path("spread"))));
                if (node.has("as")) {
                    typed.put(field, node.path("as").asString());
                }
            }
        }
        return new FieldValues(entries, typed);
    }

    private static Spread spread(JsonNode node) {
        return node.isMissingNode()
                ? null
                : new Spread(
                        node.required("sigma").doubleValue(),
                        node.required("relative").booleanValue(),
                        node.required("meanFactor").doubleValue());
    }
}
