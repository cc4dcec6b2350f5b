package headertank.app.language;

import headertank.app.account.Accounts;
import headertank.app.shop.CurrentUser;
import jakarta.servlet.http.Cookie;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import java.util.Locale;
import java.util.Optional;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseCookie;
import org.springframework.stereotype.Component;
import org.springframework.web.servlet.LocaleResolver;
import org.springframework.web.util.WebUtils;

/**
 * The language of a page: what was chosen in this session, else what the account remembers, else the shop's; before anybody
 * has signed in, what the browser asks for, else English.
 */
@Component("localeResolver")
public class PageLanguage implements LocaleResolver {

    private static final String CHOSEN = "headertank.language";
    private static final String COOKIE = "headertank-language";

    private final CurrentUser user;
    private final Accounts accounts;

    PageLanguage(CurrentUser user, Accounts accounts) {
        this.user = user;
        this.accounts = accounts;
    }

    @Override
    public Locale resolveLocale(HttpServletRequest request) {
        HttpSession session = request.getSession(false);
        Optional<Language> chosen =
                session == null ? Optional.empty() : Language.ofCode((String) session.getAttribute(CHOSEN));
        return chosen.or(() -> remembered(session))
                .or(() -> ofStranger(request))
                .orElseGet(() -> Language.asked(request))
                .locale();
    }

    private Optional<Language> remembered(HttpSession session) {
        if (user.member().isEmpty()) {
            return Optional.empty();
        }
        Optional<Language> found = accounts.language().flatMap(Language::ofCode);
        if (session != null) {
            found.ifPresent(l -> session.setAttribute(CHOSEN, l.code()));
        }
        return found;
    }

    /** A stranger has no session to remember anything in. */
    private static Optional<Language> ofStranger(HttpServletRequest request) {
        Cookie cookie = WebUtils.getCookie(request, COOKIE);
        return cookie == null ? Optional.empty() : Language.ofCode(cookie.getValue());
    }

    /** Sets the language of this session and of the account when somebody has signed in, else of this browser. */
    public void choose(Language language, HttpServletRequest request, HttpServletResponse response) {
        if (user.member().isPresent()) {
            request.getSession().setAttribute(CHOSEN, language.code());
            accounts.choose(language.code());
        } else {
            response.addHeader(
                    HttpHeaders.SET_COOKIE,
                    ResponseCookie.from(COOKIE, language.code())
                            .path("/")
                            .httpOnly(true)
                            .sameSite("Lax")
                            .secure(request.isSecure())
                            .build()
                            .toString());
        }
    }

    @Override
    public void setLocale(HttpServletRequest request, HttpServletResponse response, Locale locale) {
        throw new UnsupportedOperationException("the language is set on its own route");
    }
}
