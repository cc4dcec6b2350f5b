package headertank.app.account;

import headertank.app.shop.CurrentUser;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.PostMapping;

/** Where a form goes whose session has ended: sign in here, then send it again. The security filters lead here. */
@Controller
class GoOnPages {

    /** Attribute of a request whose login and password nobody has looked at, for its token was renewed meanwhile. */
    static final String NOT_TRIED = GoOnPages.class.getName() + ".NOT_TRIED";

    private final CurrentUser user;

    GoOnPages(CurrentUser user) {
        this.user = user;
    }

    /** A page that htmx has asked for is only shown with a status that it takes. */
    private static HttpStatus status(HttpServletRequest request, HttpStatus usual) {
        return request.getHeader("HX-Request") == null ? usual : HttpStatus.CONFLICT;
    }

    @PostMapping("/sign-in-again")
    String signIn(HttpServletRequest request, HttpServletResponse response, Model model) {
        Optional<KeptForm> kept = KeptForm.of(request);
        if (kept.isEmpty()) {
            return "redirect:/login";
        }
        response.setStatus(status(request, HttpStatus.UNAUTHORIZED).value());
        model.addAttribute("kept", kept.get());
        model.addAttribute("failed", KeptForm.travelsIn(request) && request.getAttribute(NOT_TRIED) == null);
        return "account/session-ended";
    }

    @PostMapping("/go-on")
    String goOn(HttpServletRequest request, HttpServletResponse response, Model model) {
        Optional<KeptForm> kept = KeptForm.of(request);
        if (kept.isEmpty() || user.member().isEmpty()) {
            return "redirect:/";
        }
        response.setStatus(status(request, HttpStatus.CONFLICT).value());
        model.addAttribute("kept", kept.get());
        model.addAttribute("name", user.require().displayName());
        return "account/go-on";
    }
}
