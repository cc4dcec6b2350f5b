package headertank.app.account;

import headertank.app.account.password.PasswordRules;
import headertank.app.shop.TimeZones;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import java.util.List;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The way in: sign in, or found the shop. */
@Controller
class SignInPages {

    private final Accounts accounts;
    private final FirstOwnerCode code;

    SignInPages(Accounts accounts, FirstOwnerCode code) {
        this.accounts = accounts;
        this.code = code;
    }

    /** What a browser shows without a connection where it has kept no page; it fetches this one beforehand, for nobody. */
    @GetMapping("/offline")
    String offline() {
        return "account/offline";
    }

    @GetMapping("/login")
    String login() {
        return "account/login";
    }

    @GetMapping("/first-owner")
    String firstOwner(Model model) {
        if (accounts.any()) {
            return "redirect:/login";
        }
        model.addAttribute("form", FirstOwnerForm.empty());
        model.addAttribute("guess", true);
        return "account/first-owner";
    }

    @ModelAttribute("zones")
    List<String> zones() {
        return TimeZones.names();
    }

    @PostMapping("/first-owner")
    String createFirstOwner(
            @Valid @ModelAttribute("form") FirstOwnerForm form,
            BindingResult faults,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        if (accounts.any()) {
            return "redirect:/login";
        }
        if (!TimeZones.known(form.timeZone())) {
            faults.rejectValue("timeZone", "account.zone.unknown", new Object[] {form.timeZone()}, "");
        }
        if (!code.fits(form.code())) {
            faults.rejectValue("code", "account.first-owner.code.wrong");
        }
        if (!faults.hasFieldErrors("password")) {
            PasswordRules.fault(form.password(), form.words()).ifPresent(f -> faults.rejectValue("password", f));
        }
        if (faults.hasErrors()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return "account/first-owner";
        }
        accounts.createFirstOwner(
                form.shop(), form.timeZone(), form.login(), form.name(), form.password(), form.alsoHolds());
        redirect.addFlashAttribute("done", "account.first-owner.done");
        return "redirect:/login";
    }
}
