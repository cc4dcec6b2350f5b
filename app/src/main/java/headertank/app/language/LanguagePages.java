package headertank.app.language;

import headertank.app.problem.NotFoundException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestParam;

/** Changes the language and leads back to where the reader was. */
@Controller
class LanguagePages {

    private static final Pattern URL =
            Pattern.compile("https?://[^/?#\\\\]+(?<path>/(?:[\\w.~%-]+/?)*)(?<query>\\?[\\w.~%=&+-]*)?");

    private final PageLanguage pages;

    LanguagePages(PageLanguage pages) {
        this.pages = pages;
    }

    @PostMapping("/language")
    String choose(
            @RequestParam String code,
            @RequestHeader(value = HttpHeaders.REFERER, required = false) String from,
            HttpServletRequest request,
            HttpServletResponse response) {
        Language language = Language.ofCode(code).orElseThrow(() -> new NotFoundException("language", code));
        pages.choose(language, request, response);
        return "redirect:" + ownPath(from, request.getContextPath());
    }

    /** The path and query of the page that somebody came from; nothing in it leads to another host. */
    static String ownPath(String from, String contextPath) {
        Matcher url = URL.matcher(from == null ? "" : from);
        if (!url.matches() || !url.group("path").startsWith(contextPath + "/")) {
            return "/";
        }
        return url.group("path").substring(contextPath.length())
                + (url.group("query") == null ? "" : url.group("query"));
    }
}
