package headertank.app.check.stored;

import com.fasterxml.jackson.annotation.JsonInclude;
import headertank.app.stored.CanonicalJson;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.exc.UnrecognizedPropertyException;
import tools.jackson.databind.json.JsonMapper;

/**
 * Stored checks as canonical JSON text, so that equal checks have equal hashes. Numbers that are none or infinite stand as {@code "NaN"}, {@code "Infinity"}, {@code "-Infinity"}. A new format gets a reader of its own; what is
 * stored is never rewritten.
 */
public final class CheckFormat {

    private static final JsonMapper MAPPER = JsonMapper.builder()
            .changeDefaultPropertyInclusion(i -> i.withValueInclusion(JsonInclude.Include.NON_ABSENT))
            .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .build();

    private CheckFormat() {}

    public static String write(CheckResult result) {
        return canonical(result);
    }

    public static String write(CheckInput input) {
        return canonical(input);
    }

    /** Any record, map or list in the one form in which it is stored and hashed. */
    public static String canonical(Object value) {
        return CanonicalJson.write(writable(MAPPER.convertValue(value, Object.class)));
    }

    private static Object writable(Object value) {
        if (value instanceof Map<?, ?> map) {
            Map<Object, Object> copy = new LinkedHashMap<>();
            map.forEach((k, v) -> copy.put(k, writable(v)));
            return copy;
        }
        if (value instanceof List<?> list) {
            return list.stream().map(CheckFormat::writable).toList();
        }
        return value instanceof Double d && !Double.isFinite(d) ? d.toString() : value;
    }

    /**
     * @throws IllegalArgumentException for a format that this version does not know, and for a field that the format does not have:
     *     what cannot be shown is not left out in silence
     */
    public static CheckResult readResult(int format, String text) {
        return switch (format) {
            case 1 ->
                read("result", 1, FormatOne.upgraded(without(tree(text), "result", 1, "known")), CheckResult.class);
            case 2 -> read("result", 2, without(tree(text), "result", 2, "known"), CheckResult.class);
            case 3 -> read("result", 3, tree(text), CheckResult.class);
            default -> throw new IllegalArgumentException("result format " + format + " is newer than this program");
        };
    }

    /** @throws IllegalArgumentException for a format that this version does not know, and for a field that it does not have */
    public static CheckInput readInput(int format, String text) {
        return switch (format) {
            case 1 -> read("input", 1, without(tree(text), "input", 1, "learned"), CheckInput.class);
            case 2 -> read("input", 2, tree(text), CheckInput.class);
            default -> throw new IllegalArgumentException("input format " + format + " is newer than this program");
        };
    }

    /** The same; refused when it has a field that came with a later format. */
    private static JsonNode without(JsonNode tree, String what, int format, String later) {
        if (tree.has(later)) {
            throw new IllegalArgumentException("a stored " + what + " of format " + format
                    + " has a field that the format does not have: " + later);
        }
        return tree;
    }

    private static JsonNode tree(String text) {
        return MAPPER.readTree(text);
    }

    private static <T> T read(String what, int format, JsonNode tree, Class<T> type) {
        try {
            return MAPPER.treeToValue(tree, type);
        } catch (UnrecognizedPropertyException e) {
            throw new IllegalArgumentException(
                    "a stored " + what + " of format " + format + " has a field that the format does not have: "
                            + e.getPathReference(),
                    e);
        } catch (JacksonException e) {
            throw new IllegalArgumentException(
                    "a stored " + what + " of format " + format + " cannot be read: " + e.getOriginalMessage(), e);
        }
    }
}
