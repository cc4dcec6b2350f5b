package headertank.app.check.page;

import headertank.app.car.CarSearch;
import headertank.app.carspec.Revision;
import headertank.app.carspec.Revisions;
import headertank.app.check.Checks;
import headertank.app.check.SignOffForm;
import headertank.app.check.figure.FigureText;
import headertank.app.check.figure.ShopFigures;
import headertank.app.check.stored.Decision;
import headertank.app.check.stored.DutyResult;
import headertank.app.check.stored.StoredCheck;
import headertank.app.shop.CurrentUser;
import headertank.app.shop.Role;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import java.util.Optional;
import java.util.UUID;
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

/** The technician's page: run a check, read it, sign it. */
@Controller
class CheckPages {

    private final Checks checks;
    private final Revisions revisions;
    private final CarSearch cars;
    private final ShopFigures figures;
    private final CurrentUser user;
    private final FirstScreens screens;

    CheckPages(
            Checks checks,
            Revisions revisions,
            CarSearch cars,
            ShopFigures figures,
            CurrentUser user,
            FirstScreens screens) {
        this.checks = checks;
        this.revisions = revisions;
        this.cars = cars;
        this.figures = figures;
        this.user = user;
        this.screens = screens;
    }

    @GetMapping("/cars/{id}/revisions/{number}/check")
    String ofRevision(@PathVariable long id, @PathVariable int number, Model model) {
        Revision revision = revisions.of(id, number);
        Optional<StoredCheck> newest = checks.newestOf(revision);
        if (newest.isPresent()) {
            return page(newest.get(), "", model);
        }
        model.addAttribute("car", cars.car(id));
        model.addAttribute("revision", revision);
        model.addAttribute("shown", figures.current());
        model.addAttribute("mayRun", user.has(Role.TECHNICIAN));
        model.addAttribute("formKey", UUID.randomUUID());
        return "check/offer";
    }

    @PostMapping("/cars/{id}/revisions/{number}/checks")
    String run(
            @PathVariable long id,
            @PathVariable int number,
            @RequestParam(required = false) UUID key,
            RedirectAttributes redirect) {
        Checks.Rated rated = checks.rate(id, number, key);
        redirect.addFlashAttribute("done", rated.unchanged() ? "check.unchanged" : "check.ran");
        return "redirect:/checks/" + rated.checkId();
    }

    /** @param duty the one that is shown whole; empty for the worst */
    @GetMapping("/checks/{id}")
    String stored(@PathVariable long id, @RequestParam(defaultValue = "") String duty, Model model) {
        return page(checks.byId(id), duty, model);
    }

    /** What each change since the last signed check has cost: comes in behind the first screen, for it rates many states. */
    @GetMapping("/checks/{id}/since")
    String since(@PathVariable long id, @RequestParam(defaultValue = "") String duty, Model model) {
        StoredCheck check = checks.byId(id);
        model.addAttribute("costs", screens.costs(check, FirstScreens.shown(check, duty)));
        return "check/first :: costs";
    }

    @GetMapping("/checks/{id}/sign")
    String ask(@PathVariable long id, Model model) {
        return sign(checks.byId(id), SignOffForm.empty(), model);
    }

    @PostMapping("/checks/{id}/sign-off")
    String sign(
            @PathVariable long id,
            @Valid @ModelAttribute("form") SignOffForm form,
            BindingResult faults,
            @RequestParam(required = false) UUID key,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        StoredCheck check = checks.byId(id);
        if (!checks.isSent(id, form, key)) {
            checks.faults(check, form)
                    .forEach(f -> faults.rejectValue(f.field(), f.key(), new Object[] {f.argument()}, f.key()));
            if (faults.hasErrors()) {
                response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
                return sign(check, form, model);
            }
        }
        checks.sign(id, form, key);
        redirect.addFlashAttribute("done", "check.signed");
        return "redirect:/checks/" + id;
    }

    private String page(StoredCheck check, String dutyId, Model model) {
        DutyResult duty = FirstScreens.shown(check, dutyId);
        model.addAttribute("first", screens.of(check, duty));
        model.addAttribute("mayRun", user.has(Role.TECHNICIAN));
        model.addAttribute("formKey", UUID.randomUUID());
        frame(check, duty, model);
        return "check/check";
    }

    private String sign(StoredCheck check, SignOffForm form, Model model) {
        FigureText shown = figures.current();
        model.addAttribute("form", form);
        model.addAttribute("decisions", Decision.values());
        model.addAttribute("conditions", Conditions.of(check.result(), shown));
        model.addAttribute("formKey", UUID.randomUUID());
        model.addAttribute("maySign", user.has(Role.TECHNICIAN) && (!check.isSigned() || checks.counts(check)));
        frame(check, FirstScreens.shown(check, ""), model);
        return "check/sign";
    }

    private void frame(StoredCheck check, DutyResult duty, Model model) {
        model.addAttribute("check", check);
        model.addAttribute("duty", duty);
        model.addAttribute("car", cars.car(check.line().carId()));
        model.addAttribute("shown", figures.current());
        model.addAttribute("tabs", CheckTab.of(check.result()));
    }
}
