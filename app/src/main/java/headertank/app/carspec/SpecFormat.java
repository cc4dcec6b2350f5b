package headertank.app.carspec;

import headertank.app.part.PartValues;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import headertank.calc.quantity.Chosen;
import headertank.calc.quantity.Entry;
import headertank.calc.quantity.Provenance;
import headertank.calc.quantity.Spread;
import headertank.calc.quantity.Stated;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Component;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectReader;
import tools.jackson.databind.json.JsonMapper;

/**
 * A spec as canonical JSON text and back. Stored text is never rewritten: when the format changes, its number rises and a
 * reader for the old one stays here.
 *
 * <pre>{"carClass":"DRIFT","duties":["drift"],"fields":{"radiator.coreWidthM":{"as":"650 mm","from":"MEASURED","si":0.65},
 * "thermostat.state":{"from":"MEASURED","option":"REMOVED"}},"format":1}</pre>
 */
@Component
public final class SpecFormat {

    /** The format that is written. */
    public static final int FORMAT = 1;

    private static final ObjectReader READER = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build()
            .readerFor(JsonNode.class);

    /** Text that is no spec of a known format. */
    public static final class UnreadableException extends RuntimeException {
        UnreadableException(String why, Throwable cause) {
            super(why, cause);
        }
    }

    public String write(Spec spec) {
        return CanonicalJson.write(Map.of(
                "format",
                FORMAT,
                "carClass",
                spec.build().carClass().name(),
                "duties",
                spec.dutyIds(),
                "fields",
                fields(spec.build().entries(), spec.typed())));
    }

    /** Values of fields without a car, in the form in which a spec holds them. */
    String write(PartValues values) {
        return CanonicalJson.write(Map.of("format", FORMAT, "fields", fields(values.entries(), values.typed())));
    }

    /** @throws UnreadableException when the text holds no values in a known format */
    PartValues readValues(String text) {
        JsonNode root = root(text);
        Map<BuildField, Entry> entries = new EnumMap<>(BuildField.class);
        Map<BuildField, String> typed = new EnumMap<>(BuildField.class);
        fields(root, entries, typed);
        return new PartValues(entries, typed);
    }

    private static Map<String, Object> fields(Map<BuildField, Entry> entries, Map<BuildField, String> typed) {
        Map<String, Object> fields = new LinkedHashMap<>();
        entries.forEach((field, entry) -> fields.put(field.key(), entry(field, entry, typed)));
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

    /** @throws UnreadableException when the text is no spec of a known format */
    public Spec read(String text) {
        try {
            return first(root(text));
        } catch (JacksonException | IllegalArgumentException e) {
            throw new UnreadableException("not a spec: " + e.getMessage(), e);
        }
    }

    private static JsonNode root(String text) {
        try {
            JsonNode root = READER.readValue(text);
            int format = root.path("format").asInt(0);
            if (format != FORMAT) {
                throw new UnreadableException("spec format " + format + " is not known here", null);
            }
            return root;
        } catch (JacksonException e) {
            throw new UnreadableException("not a spec: " + e.getMessage(), e);
        }
    }

    private static Spec first(JsonNode root) {
        Map<BuildField, Entry> entries = new EnumMap<>(BuildField.class);
        Map<BuildField, String> typed = new EnumMap<>(BuildField.class);
        fields(root, entries, typed);
        List<String> duties = new ArrayList<>();
        root.path("duties").forEach(d -> duties.add(d.asString()));
        CarClass carClass = CarClass.valueOf(root.path("carClass").asString());
        return new Spec(new Build(carClass, entries), duties, typed);
    }

    private static void fields(JsonNode root, Map<BuildField, Entry> entries, Map<BuildField, String> typed) {
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
