package headertank.app.account.guard;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.security.web.csrf.CookieCsrfTokenRepository;
import org.springframework.security.web.csrf.CsrfToken;
import org.springframework.security.web.csrf.CsrfTokenRepository;
import org.springframework.security.web.csrf.HttpSessionCsrfTokenRepository;

/**
 * Tokens of forms: in the session of whoever has one, in a cookie for strangers, so that looking at the page for signing in makes
 * no session. A stranger's fragment, a preview of a page whose session has ended, sets no cookie: it would take the place of the one that
 * the page for signing in has set at the same time.
 */
public final class StrangersTokens implements CsrfTokenRepository {

    private final HttpSessionCsrfTokenRepository session = new HttpSessionCsrfTokenRepository();
    private final CookieCsrfTokenRepository cookie = new CookieCsrfTokenRepository();

    public StrangersTokens() {
        cookie.setCookieName("headertank-form");
        cookie.setHeaderName("X-CSRF-TOKEN");
        cookie.setCookieCustomizer(c -> c.httpOnly(true).sameSite("Strict").path("/"));
    }

    private CsrfTokenRepository of(HttpServletRequest request) {
        return request.getSession(false) == null ? cookie : session;
    }

    @Override
    public CsrfToken generateToken(HttpServletRequest request) {
        return of(request).generateToken(request);
    }

    @Override
    public void saveToken(CsrfToken token, HttpServletRequest request, HttpServletResponse response) {
        CsrfTokenRepository tokens = of(request);
        if (tokens == session || request.getHeader("HX-Request") == null || request.getHeader("HX-Boosted") != null) {
            tokens.saveToken(token, request, response);
        }
    }

    @Override
    public CsrfToken loadToken(HttpServletRequest request) {
        return of(request).loadToken(request);
    }
}
