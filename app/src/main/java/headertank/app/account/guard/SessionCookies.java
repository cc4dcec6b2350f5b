package headertank.app.account.guard;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import org.springframework.session.web.http.CookieSerializer;
import org.springframework.session.web.http.DefaultCookieSerializer;
import org.springframework.stereotype.Component;

/**
 * The cookie of a session. Over https its name begins with {@code __Host-}, so that no browser takes it from another host, another
 * path or without encryption; over plain http, as the demo runs, a browser would refuse such a name.
 */
@Component
class SessionCookies implements CookieSerializer {

    private static final String PLAIN = "headertank";
    private static final String STRICT = "__Host-headertank";

    /** What it may be called. */
    static final List<String> NAMES = List.of(PLAIN, STRICT);

    private final DefaultCookieSerializer plain = named(PLAIN, false);
    private final DefaultCookieSerializer strict = named(STRICT, true);

    private static DefaultCookieSerializer named(String name, boolean secure) {
        DefaultCookieSerializer cookie = new DefaultCookieSerializer();
        cookie.setCookieName(name);
        cookie.setCookiePath("/");
        cookie.setUseHttpOnlyCookie(true);
        cookie.setSameSite("Lax");
        cookie.setUseSecureCookie(secure);
        return cookie;
    }

    private DefaultCookieSerializer of(HttpServletRequest request) {
        return request.isSecure() ? strict : plain;
    }

    @Override
    public void writeCookieValue(CookieValue value) {
        of(value.getRequest()).writeCookieValue(value);
    }

    @Override
    public List<String> readCookieValues(HttpServletRequest request) {
        return of(request).readCookieValues(request);
    }
}
