package headertank.app.problem;

import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.webmvc.error.ErrorController;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.RequestMapping;

/** The last stop of whatever no controller answered: a plain page for people, a problem detail for programs. */
@Controller
class ErrorPages implements ErrorController {

    private static final Logger LOG = LoggerFactory.getLogger("headertank.problem");

    private static final int MOST_FIELDS = 100;

    /** Longest text of a field that is shown again [characters]. */
    private static final int LONGEST = 20_000;

    private final MessageSource messages;

    ErrorPages(MessageSource messages) {
        this.messages = messages;
    }

    @RequestMapping("${spring.web.error.path:/error}")
    Object error(HttpServletRequest request, HttpServletResponse response, Model model) {
        HttpStatus status = status(request);
        Throwable cause = cause(request);
        if (status.is5xxServerError() && cause != null) {
            Object path = request.getAttribute(RequestDispatcher.ERROR_REQUEST_URI);
            LOG.error("request {}: {} failed", RequestId.of(request), path, cause);
        }
        if (Problems.isForProgram(request)) {
            return ResponseEntity.status(status).body(Problems.detail(status, null, request));
        }
        response.setStatus(status.value());
        String kind = kind(status);
        model.addAttribute("kind", kind);
        model.addAttribute("status", status.value());
        model.addAttribute("requestId", RequestId.of(request));
        model.addAttribute("detail", detail(cause, kind));
        Refusal refusal = Refusal.leftWith(request);
        model.addAttribute(
                "refusal", refusal == null ? "" : refusal.sentence(messages, LocaleContextHolder.getLocale()));
        boolean away = status == HttpStatus.SERVICE_UNAVAILABLE;
        model.addAttribute("typed", status.is4xxClientError() || away ? typed(request) : Map.of());
        model.addAttribute("again", away ? SendAgain.of(request) : null);
        return "error/page";
    }

    /** What stood in the fields of a refused form, without what is secret, so that nobody types it again. */
    private static Map<String, String> typed(HttpServletRequest request) {
        Map<String, String> typed = new TreeMap<>();
        if (!"POST".equals(request.getAttribute(RequestDispatcher.ERROR_METHOD))) {
            return typed;
        }
        try {
            request.getParameterMap().forEach((name, values) -> {
                String value = String.join(", ", values);
                if (!isSecret(name) && !value.isBlank() && typed.size() < MOST_FIELDS) {
                    typed.put(Refusal.readable(name), value.length() > LONGEST ? value.substring(0, LONGEST) : value);
                }
            });
        } catch (IllegalStateException e) {
            return typed;
        }
        return typed;
    }

    private static boolean isSecret(String name) {
        String plain = name.toLowerCase(Locale.ROOT);
        return plain.equals("_csrf")
                || plain.equals("key")
                || plain.equals("version")
                || plain.equals("old")
                || SendAgain.isSecret(name);
    }

    private String detail(Throwable cause, String kind) {
        String usual = messages.getMessage("error." + kind + ".text", null, LocaleContextHolder.getLocale());
        return cause instanceof ConflictException c
                ? messages.getMessage(c.messageKey(), c.arguments(), usual, LocaleContextHolder.getLocale())
                : usual;
    }

    private static Throwable cause(HttpServletRequest request) {
        Throwable cause = (Throwable) request.getAttribute(RequestDispatcher.ERROR_EXCEPTION);
        if (cause == null) {
            cause = (Throwable) request.getAttribute("org.springframework.web.servlet.DispatcherServlet.EXCEPTION");
        }
        return cause;
    }

    private static HttpStatus status(HttpServletRequest request) {
        Object code = request.getAttribute(RequestDispatcher.ERROR_STATUS_CODE);
        HttpStatus status = code instanceof Integer i ? HttpStatus.resolve(i) : null;
        return status != null ? status : code == null ? HttpStatus.NOT_FOUND : HttpStatus.INTERNAL_SERVER_ERROR;
    }

    private static String kind(HttpStatus status) {
        return switch (status) {
            case FORBIDDEN, UNAUTHORIZED -> "forbidden";
            case NOT_FOUND, METHOD_NOT_ALLOWED -> "not-found";
            case CONFLICT -> "conflict";
            case SERVICE_UNAVAILABLE -> "away";
            default -> status.is4xxClientError() ? "bad-request" : "server";
        };
    }
}
