package headertank.app.language;

import headertank.app.account.Accounts;
import headertank.app.shop.CurrentUser;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import java.util.Locale;
import java.util.Optional;
import org.springframework.stereotype.Component;
import org.springframework.web.servlet.LocaleResolver;

/**
 * The language of a page: what was chosen in this session, else what the account remembers, else the shop's; before anybody
 * has signed in, what the browser asks for, else English.
 */
@Component("localeResolver")
public class PageLanguage implements LocaleResolver {

    private static final String CHOSEN = "headertank.language";

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

    /** Sets the language of this session, and of the account when somebody has signed in. */
    public void choose(Language language, HttpServletRequest request) {
        request.getSession().setAttribute(CHOSEN, language.code());
        user.member().ifPresent(m -> accounts.choose(language.code()));
    }

    @Override
    public void setLocale(HttpServletRequest request, HttpServletResponse response, Locale locale) {
        throw new UnsupportedOperationException("the language is set on its own route");
    }
}
