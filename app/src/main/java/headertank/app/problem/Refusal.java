package headertank.app.problem;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.context.MessageSource;
import org.springframework.context.MessageSourceResolvable;
import org.springframework.context.support.DefaultMessageSourceResolvable;

/**
 * One thing in a request that cannot be taken.
 *
 * @param field its name, or what part of the request it is
 * @param value what was sent, shortened and readable
 * @param allowed what is taken instead
 */
public record Refusal(String field, String value, MessageSourceResolvable allowed) {

    private static final String ATTRIBUTE = Refusal.class.getName();
    private static final int LONGEST_SHOWN = 80;
    private static final Pattern HIDDEN = Pattern.compile("[\\p{Cntrl}\\p{Cs}\\p{Cf}]");

    public Refusal {
        field = readable(field);
        value = readable(value);
    }

    /** @param allowedKey of the sentence that says what is allowed */
    public static Refusal of(String field, String value, String allowedKey, Object... arguments) {
        return new Refusal(field, value, text(allowedKey, arguments));
    }

    /** What is taken for a value of this type, in words. */
    public static MessageSourceResolvable allowed(Class<?> type) {
        if (type.isEnum()) {
            String names = Stream.of(type.getEnumConstants())
                    .map(c -> ((Enum<?>) c).name())
                    .collect(Collectors.joining(", "));
            return text("refused.allowed.one-of", names);
        }
        String kind =
                switch (type.getSimpleName()) {
                    case "int", "Integer" -> "refused.allowed.int";
                    case "long", "Long" -> "refused.allowed.long";
                    case "boolean", "Boolean" -> "refused.allowed.boolean";
                    case "UUID" -> "refused.allowed.key";
                    case "LocalDate" -> "refused.allowed.date";
                    case "Instant" -> "refused.allowed.instant";
                    case "MultipartFile" -> "refused.allowed.file";
                    default -> "refused.allowed.other";
                };
        return text(kind);
    }

    private static MessageSourceResolvable text(String key, Object... arguments) {
        return new DefaultMessageSourceResolvable(new String[] {key}, arguments, key);
    }

    /** Leaves it with the request, for the page that tells about it. */
    void leaveWith(HttpServletRequest request) {
        request.setAttribute(ATTRIBUTE, this);
    }

    static Refusal leftWith(HttpServletRequest request) {
        return (Refusal) request.getAttribute(ATTRIBUTE);
    }

    String sentence(MessageSource messages, Locale locale) {
        return messages.getMessage("refused.value", new Object[] {field, value, allowed}, locale);
    }

    /** A value as pages and logs may show it: short, and every sign that is not seen as a box. */
    public static String readable(String sent) {
        if (sent == null) {
            return "";
        }
        String shown = HIDDEN.matcher(sent.length() > LONGEST_SHOWN ? sent.substring(0, LONGEST_SHOWN) : sent)
                .replaceAll("\u25a1");
        return sent.length() > LONGEST_SHOWN ? shown + "\u2026" : shown;
    }
}
