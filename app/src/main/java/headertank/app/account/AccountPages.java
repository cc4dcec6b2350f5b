package headertank.app.account;

import headertank.app.problem.ConflictException;
import headertank.app.shop.Role;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The owner's page of accounts. */
@Controller
class AccountPages {

    private final Accounts accounts;

    AccountPages(Accounts accounts) {
        this.accounts = accounts;
    }

    @GetMapping("/accounts")
    String list(Model model) {
        model.addAttribute("form", NewAccountForm.empty());
        return page(model);
    }

    @PostMapping("/accounts")
    String add(
            @Valid @ModelAttribute("form") NewAccountForm form,
            BindingResult faults,
            @RequestParam(required = false) UUID key,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        Optional<String> first = faults.hasErrors() ? Optional.empty() : add(form, key);
        if (first.isEmpty()) {
            if (!faults.hasErrors()) {
                faults.rejectValue("login", "account.login.taken");
            }
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return page(model);
        }
        tell(redirect, form.login(), first.get());
        return done(redirect, "account.added");
    }

    /** The password that was made up; nothing when the login is taken, be it a moment ago. */
    private Optional<String> add(NewAccountForm form, UUID key) {
        try {
            return accounts.add(form.login(), form.name(), form.roles(), key);
        } catch (DataIntegrityViolationException justNow) {
            return Optional.empty();
        }
    }

    @PostMapping("/accounts/{id}/roles")
    String roles(
            @PathVariable long id,
            @RequestParam(required = false) Set<Role> roles,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        if (roles == null || roles.isEmpty()) {
            return refused(HttpStatus.UNPROCESSABLE_CONTENT, id, "roles", "account.roles.missing", model, response);
        }
        try {
            accounts.setRoles(id, roles);
        } catch (ConflictException e) {
            return refused(HttpStatus.CONFLICT, id, "roles", e.messageKey(), model, response);
        }
        return done(redirect, "account.roles.changed");
    }

    @PostMapping("/accounts/{id}/switch")
    String switchTo(
            @PathVariable long id,
            @RequestParam boolean on,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        try {
            accounts.switchTo(id, on);
        } catch (ConflictException e) {
            return refused(HttpStatus.CONFLICT, id, "switch", e.messageKey(), model, response);
        }
        return done(redirect, on ? "account.switched-on" : "account.switched-off");
    }

    @PostMapping("/accounts/{id}/password")
    String password(@PathVariable long id, RedirectAttributes redirect) {
        tell(redirect, accounts.login(id), accounts.resetPassword(id));
        return done(redirect, "account.password.changed");
    }

    /** Shows a password that was made up, once. */
    private static void tell(RedirectAttributes redirect, String login, String password) {
        if (!password.isEmpty()) {
            redirect.addFlashAttribute("madeFor", login);
            redirect.addFlashAttribute("made", password);
        }
    }

    /** What was refused, to be shown beside the field of the account it was meant for. */
    record Fault(long account, String field, String key) {
        public boolean isAt(long other, String otherField) {
            return account == other && field.equals(otherField);
        }
    }

    private String refused(
            HttpStatus status, long id, String field, String key, Model model, HttpServletResponse response) {
        response.setStatus(status.value());
        model.addAttribute("fault", new Fault(id, field, key));
        model.addAttribute("form", NewAccountForm.empty());
        return page(model);
    }

    private static String done(RedirectAttributes redirect, String key) {
        redirect.addFlashAttribute("done", key);
        return "redirect:/accounts";
    }

    private String page(Model model) {
        model.addAttribute("accounts", accounts.list());
        model.addAttribute("roles", Role.values());
        return "account/list";
    }
}
