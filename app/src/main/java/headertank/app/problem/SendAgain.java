package headertank.app.problem;

import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;

/**
 * A form that could not be taken now, for reasons that pass. The page that says so sends it again as it is: its key makes one
 * record of both sendings.
 *
 * @param path where it goes
 */
public record SendAgain(String path, List<Map.Entry<String, String>> fields) {

    private static final String RETRY_S = "5";

    /** Longest form that travels in a page [characters]; modelling choice. */
    private static final int LONGEST = 1_000_000;

    /** To be followed by a forward to the page of errors: what was asked for cannot be reached now. */
    public static void after(HttpServletRequest request, HttpServletResponse response) {
        int status = HttpStatus.SERVICE_UNAVAILABLE.value();
        request.setAttribute(RequestDispatcher.ERROR_STATUS_CODE, status);
        request.setAttribute(RequestDispatcher.ERROR_REQUEST_URI, request.getRequestURI());
        request.setAttribute(RequestDispatcher.ERROR_METHOD, request.getMethod());
        response.setStatus(status);
        response.setHeader(HttpHeaders.RETRY_AFTER, RETRY_S);
        response.setHeader(HttpHeaders.CACHE_CONTROL, "no-store");
    }

    /** What the page may send again; null where nothing was sent, or where files or secrets were, which no page repeats. */
    static SendAgain of(HttpServletRequest request) {
        String type = request.getContentType();
        if (!"POST".equals(request.getAttribute(RequestDispatcher.ERROR_METHOD))
                || type == null
                || !type.toLowerCase(Locale.ROOT).startsWith("application/x-www-form-urlencoded")) {
            return null;
        }
        List<Map.Entry<String, String>> fields = request.getParameterMap().entrySet().stream()
                .flatMap(e -> Arrays.stream(e.getValue()).map(v -> Map.entry(e.getKey(), v)))
                .toList();
        boolean secret = fields.stream().anyMatch(f -> isSecret(f.getKey()));
        int length = fields.stream()
                .mapToInt(f -> f.getKey().length() + f.getValue().length())
                .sum();
        return secret || length > LONGEST
                ? null
                : new SendAgain(
                        request.getAttribute(RequestDispatcher.ERROR_REQUEST_URI)
                                .toString()
                                .replaceFirst("^[/\\\\]+", "/"),
                        fields);
    }

    /** Whether a field of this name holds a password or a passphrase, which no page repeats. */
    static boolean isSecret(String field) {
        return field.toLowerCase(Locale.ROOT).contains("pass");
    }
}
