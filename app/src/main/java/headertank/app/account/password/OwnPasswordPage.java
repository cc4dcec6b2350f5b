package headertank.app.account.password;

import headertank.app.account.Accounts;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import org.springframework.http.HttpStatus;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.web.context.HttpSessionSecurityContextRepository;
import org.springframework.security.web.context.SecurityContextRepository;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Everybody changes their own password. */
@Controller
class OwnPasswordPage {

    /** The old one proves that it is the person and not a passer-by. */
    record Form(String old, @AcceptablePassword String password) {
        Form {
            old = old == null ? "" : old;
        }
    }

    private final Accounts accounts;
    private final SecurityContextRepository contexts = new HttpSessionSecurityContextRepository();

    OwnPasswordPage(Accounts accounts) {
        this.accounts = accounts;
    }

    /** Whether nothing else opens before. */
    @ModelAttribute("must")
    boolean must() {
        return accounts.mustChangePassword();
    }

    @GetMapping("/account/password")
    String blank(Model model) {
        model.addAttribute("form", new Form("", ""));
        return "account/own-password";
    }

    @PostMapping("/account/password")
    String change(
            @Valid @ModelAttribute("form") Form form,
            BindingResult faults,
            HttpServletRequest request,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        if (!faults.hasErrors()) {
            PasswordRules.fault(form.password(), accounts.wordsAround())
                    .ifPresent(f -> faults.rejectValue("password", f));
        }
        if (!faults.hasErrors()
                && !accounts.changeOwnPassword(
                        form.old(), form.password(), request.getSession().getId())) {
            faults.rejectValue("old", "account.own-password.wrong");
        }
        if (faults.hasErrors()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return "account/own-password";
        }
        var context = SecurityContextHolder.createEmptyContext();
        context.setAuthentication(accounts.signedInAnew());
        SecurityContextHolder.setContext(context);
        contexts.saveContext(context, request, response);
        redirect.addFlashAttribute("done", "account.own-password.done");
        return "redirect:/account/password";
    }
}
