package headertank.app.account;

import headertank.app.shop.Role;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import java.util.Set;
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
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        boolean added = !faults.hasErrors() && accounts.add(form.login(), form.name(), form.password(), form.roles());
        if (!added) {
            if (!faults.hasErrors()) {
                faults.rejectValue("login", "account.login.taken");
            }
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return page(model);
        }
        return done(redirect, "account.added");
    }

    @PostMapping("/accounts/{id}/roles")
    String roles(@PathVariable long id, @RequestParam(required = false) Set<Role> roles, RedirectAttributes redirect) {
        if (roles == null || roles.isEmpty()) {
            redirect.addFlashAttribute("refused", "account.roles.missing");
            return "redirect:/accounts";
        }
        accounts.setRoles(id, roles);
        return done(redirect, "account.roles.changed");
    }

    @PostMapping("/accounts/{id}/switch")
    String switchTo(@PathVariable long id, @RequestParam boolean on, RedirectAttributes redirect) {
        accounts.switchTo(id, on);
        return done(redirect, on ? "account.switched-on" : "account.switched-off");
    }

    @PostMapping("/accounts/{id}/password")
    String password(@PathVariable long id, @RequestParam String password, RedirectAttributes redirect) {
        if (!AcceptablePassword.Check.accepts(password)) {
            redirect.addFlashAttribute("refused", "account.password.size");
            return "redirect:/accounts";
        }
        accounts.setPassword(id, password);
        return done(redirect, "account.password.changed");
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
