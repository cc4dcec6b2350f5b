package headertank.app.handover.page;

import headertank.app.car.CarSearch;
import headertank.app.check.figure.ShopFigures;
import headertank.app.form.FormProblem;
import headertank.app.handover.DecisionForm;
import headertank.app.handover.DecisionRules;
import headertank.app.handover.Handover;
import headertank.app.handover.Handovers;
import headertank.app.shop.CurrentUser;
import headertank.app.shop.Role;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The last word: the car leaves, or goes back with a reason. */
@Controller
class DecisionPages {

    private final Handovers handovers;
    private final CarSearch cars;
    private final ShopFigures figures;
    private final CurrentUser user;
    private final MessageSource messages;

    DecisionPages(Handovers handovers, CarSearch cars, ShopFigures figures, CurrentUser user, MessageSource messages) {
        this.handovers = handovers;
        this.cars = cars;
        this.figures = figures;
        this.user = user;
        this.messages = messages;
    }

    @GetMapping("/checks/{id}/handover/decision")
    String ask(@PathVariable long id, Model model) {
        return page(handovers.of(id), DecisionForm.empty(), List.of(), model);
    }

    @PostMapping("/checks/{id}/handover/decision")
    String decide(
            @PathVariable long id,
            @Valid @ModelAttribute("form") DecisionForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        Handover handover = handovers.of(id);
        if (!handovers.isSent(form.key(), id + " " + form)) {
            List<DecisionRules.Fault> faults =
                    form.outcome() == null ? List.of() : DecisionRules.faults(handover, form);
            if (errors.hasErrors() || !faults.isEmpty()) {
                response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
                return page(handover, form, faults, model);
            }
            handovers.decide(id, form);
        }
        redirect.addFlashAttribute("done", "handover.decided." + form.outcome().name());
        return "redirect:/checks/" + id + "/handover";
    }

    private String page(Handover handover, DecisionForm form, List<DecisionRules.Fault> faults, Model model) {
        Map<String, List<String>> byField = faults.stream()
                .collect(Collectors.groupingBy(
                        DecisionRules.Fault::field, Collectors.mapping(DecisionRules.Fault::key, Collectors.toList())));
        Function<String, List<String>> faultsOf = field -> byField.getOrDefault(field, List.of());
        model.addAttribute("faultsOf", faultsOf);
        model.addAttribute(
                "problems",
                faults.stream()
                        .map(f -> new FormProblem(
                                f.field().equals("outcome") ? "" : f.field(),
                                messages.getMessage(f.key(), null, LocaleContextHolder.getLocale())))
                        .toList());
        model.addAttribute("form", form);
        model.addAttribute("handover", handover);
        model.addAttribute("check", handover.check());
        model.addAttribute("car", cars.car(handover.check().carId()));
        model.addAttribute("shown", figures.current());
        model.addAttribute("mayDecide", user.has(Role.TECHNICIAN) && handover.isInWork());
        return "handover/decision";
    }
}
