package headertank.app.check;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/**
 * Stored checks as JSON text, keys in alphabetical order so that equal checks have equal hashes. Numbers that are none or
 * infinite stand as {@code "NaN"}, {@code "Infinity"}, {@code "-Infinity"}. A new format gets a reader of its own; what is
 * stored is never rewritten.
 */
public final class CheckFormat {

    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
            .enable(SerializationFeature.ORDER_MAP_ENTRIES_BY_KEYS)
            .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .build();

    private CheckFormat() {}

    /** The mapper of this format, not that of the web interface. */
    static JsonMapper mapper() {
        return MAPPER;
    }

    public static String write(CheckResult result) {
        return MAPPER.writeValueAsString(result);
    }

    public static String write(CheckInput input) {
        return MAPPER.writeValueAsString(input);
    }

    /** @throws IllegalArgumentException for a format that this version does not know */
    public static CheckResult readResult(int format, String text) {
        return switch (format) {
            case 1 -> MAPPER.readValue(text, CheckResult.class);
            default -> throw new IllegalArgumentException("result format " + format + " is newer than this program");
        };
    }

    /** @throws IllegalArgumentException for a format that this version does not know */
    public static CheckInput readInput(int format, String text) {
        return switch (format) {
            case 1 -> MAPPER.readValue(text, CheckInput.class);
            default -> throw new IllegalArgumentException("input format " + format + " is newer than this program");
        };
    }

    /** SHA-256 of the text in UTF-8. */
    public static byte[] sha256(String text) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
