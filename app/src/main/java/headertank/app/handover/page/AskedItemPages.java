package headertank.app.handover.page;

import headertank.app.check.figure.ShopFigures;
import headertank.app.handover.asked.AskedItem;
import headertank.app.handover.asked.AskedItemForm;
import headertank.app.handover.asked.AskedItems;
import headertank.app.handover.item.ChecklistTask;
import headertank.app.handover.item.WarmUpStage;
import headertank.calc.Rater;
import headertank.calc.duty.Duty;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Supplier;
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
import org.springframework.web.server.ResponseStatusException;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The owner's page of what check lists ask for a duty. */
@Controller
class AskedItemPages {

    private final AskedItems asked;
    private final Supplier<Rater> rater;
    private final ShopFigures figures;
    private final MessageSource messages;

    AskedItemPages(AskedItems asked, Supplier<Rater> rater, ShopFigures figures, MessageSource messages) {
        this.messages = messages;
        this.asked = asked;
        this.rater = rater;
        this.figures = figures;
    }

    @GetMapping("/duties/{id}/list")
    String list(@PathVariable String id, Model model) {
        return page(id, AskedItemForm.empty(), model);
    }

    @PostMapping("/duties/{id}/list")
    String change(
            @PathVariable String id,
            @Valid @ModelAttribute("form") AskedItemForm form,
            BindingResult faults,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        if (faults.hasFieldErrors("item") || faults.hasFieldErrors("asked")) {
            throw new ResponseStatusException(HttpStatus.BAD_REQUEST);
        }
        if (faults.hasErrors()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            model.addAttribute("faultyAt", form.item());
            return page(id, form, model);
        }
        asked.change(id, form);
        redirect.addFlashAttribute("done", form.asked() ? "handover.asked.again.done" : "handover.asked.left-out.done");
        return "redirect:/duties/" + id + "/list#item-" + form.item();
    }

    private String page(String id, AskedItemForm form, Model model) {
        Map<String, AskedItem> decided = asked.of(id);
        Map<WarmUpStage, List<ChecklistTask>> stages = Arrays.stream(ChecklistTask.values())
                .collect(Collectors.groupingBy(ChecklistTask::stage, TreeMap::new, Collectors.toList()));
        Duty duty = rater.get().duties().get(id);
        model.addAttribute("form", form);
        model.addAttribute("id", id);
        model.addAttribute(
                "label", messages.getMessage("duty." + id, null, duty.label(), LocaleContextHolder.getLocale()));
        model.addAttribute("stages", stages);
        model.addAttribute("decided", decided);
        model.addAttribute("shown", figures.current());
        return "handover/asked";
    }
}
