package headertank.app.account;

import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletRequest;
import java.net.URI;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.springframework.http.HttpMethod;

/**
 * What somebody had filled in when their session ended: it travels through signing in as hidden fields of the page and is sent
 * again by hand. Only a form of our own pages is kept, and no password.
 *
 * @param path where the form was to be sent
 * @param fields what was filled in, by name
 * @param file whether a file was sent along, which cannot be kept
 */
record KeptForm(String path, Map<String, List<String>> fields, boolean file) {

    private static final String PATH = "kept.path";
    private static final String FILE = "kept.file";
    private static final String FIELD = "kept:";

    /** Whether a browser says that one of our own pages has sent this. */
    static boolean isFromOurPage(HttpServletRequest request) {
        String site = request.getHeader("Sec-Fetch-Site");
        if (site != null) {
            return site.equals("same-origin");
        }
        String origin = request.getHeader("Origin");
        try {
            return origin != null
                    && URI.create(origin).getRawAuthority() != null
                    && URI.create(origin).getRawAuthority().equals(request.getHeader("Host"));
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    /** Whether this is a page's form that waits for an answer as a page; a script says by itself what is to be done. */
    static boolean isPageForm(HttpServletRequest request) {
        boolean fragment = request.getHeader("HX-Request") != null && request.getHeader("HX-Boosted") == null;
        return request.getMethod().equals("POST")
                && !fragment
                && request.getHeader("X-Handover") == null
                && isFromOurPage(request)
                && isKnown(path(request));
    }

    private static String path(HttpServletRequest request) {
        Object forwarded = request.getAttribute(RequestDispatcher.FORWARD_REQUEST_URI);
        String uri = forwarded == null ? request.getRequestURI() : forwarded.toString();
        return uri.substring(request.getContextPath().length());
    }

    private static boolean isKnown(String path) {
        return RouteRights.deciding(HttpMethod.POST, path).isPresent();
    }

    /** Whether a form travels along with signing in. */
    static boolean travelsIn(HttpServletRequest request) {
        return request.getParameter(PATH) != null;
    }

    /** The form that travels along with signing in, else the one that has just been refused. */
    static Optional<KeptForm> of(HttpServletRequest request) {
        boolean travels = travelsIn(request);
        String path = travels ? request.getParameter(PATH) : path(request);
        Map<String, List<String>> fields = new TreeMap<>();
        request.getParameterMap().forEach((name, values) -> {
            String plain = !travels ? name : name.startsWith(FIELD) ? name.substring(FIELD.length()) : "";
            if (!plain.isEmpty() && isKept(plain)) {
                fields.put(plain, List.of(values));
            }
        });
        String type = request.getContentType();
        boolean file = travels ? request.getParameter(FILE) != null : type != null && type.startsWith("multipart/");
        return isKnown(path) ? Optional.of(new KeptForm(path, fields, file)) : Optional.empty();
    }

    private static boolean isKept(String name) {
        String plain = name.toLowerCase(java.util.Locale.ROOT);
        return !plain.equals("_csrf") && !plain.contains("password") && !plain.equals("old");
    }
}
