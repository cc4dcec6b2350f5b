package headertank.app.account.guard;

import jakarta.servlet.http.Cookie;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Base64;
import java.util.Optional;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseCookie;
import org.springframework.security.web.savedrequest.RequestCache;
import org.springframework.security.web.savedrequest.SavedRequest;
import org.springframework.security.web.savedrequest.SimpleSavedRequest;

/** Remembers in a cookie which page a stranger wanted to open: path and query, never a host. */
public final class WayBack implements RequestCache {

    private static final String NAME = "headertank-to";
    private static final int LONGEST = 1_000;
    private static final long SECONDS = 900;

    @Override
    public void saveRequest(HttpServletRequest request, HttpServletResponse response) {
        boolean isPage = request.getMethod().equals("GET") && request.getHeader("HX-Request") == null;
        String query = request.getQueryString() == null ? "" : "?" + request.getQueryString();
        String path = request.getRequestURI().substring(request.getContextPath().length()) + query;
        if (isPage && isOwn(path)) {
            String value =
                    Base64.getUrlEncoder().withoutPadding().encodeToString(path.getBytes(StandardCharsets.UTF_8));
            set(request, response, value, SECONDS);
        }
    }

    @Override
    public SavedRequest getRequest(HttpServletRequest request, HttpServletResponse response) {
        return path(request).map(SimpleSavedRequest::new).orElse(null);
    }

    @Override
    public HttpServletRequest getMatchingRequest(HttpServletRequest request, HttpServletResponse response) {
        return null;
    }

    @Override
    public void removeRequest(HttpServletRequest request, HttpServletResponse response) {
        if (path(request).isPresent()) {
            set(request, response, "", 0);
        }
    }

    private static Optional<String> path(HttpServletRequest request) {
        Cookie[] cookies = request.getCookies();
        try {
            return Arrays.stream(cookies == null ? new Cookie[0] : cookies)
                    .filter(c -> c.getName().equals(NAME))
                    .findFirst()
                    .map(c -> new String(Base64.getUrlDecoder().decode(c.getValue()), StandardCharsets.UTF_8))
                    .filter(WayBack::isOwn);
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** Whether it leads to a page of ours, however a browser reads it. */
    private static boolean isOwn(String path) {
        return path.length() <= LONGEST && path.matches("/(?![/\\\\])[\\x21-\\x5B\\x5D-\\x7E]*");
    }

    private static void set(HttpServletRequest request, HttpServletResponse response, String value, long seconds) {
        response.addHeader(
                HttpHeaders.SET_COOKIE,
                ResponseCookie.from(NAME, value)
                        .path("/")
                        .httpOnly(true)
                        .sameSite("Lax")
                        .secure(request.isSecure())
                        .maxAge(seconds)
                        .build()
                        .toString());
    }
}
