package headertank.app.handover.page;

import headertank.app.check.figure.ShopFigures;
import headertank.app.handover.Handover;
import headertank.app.handover.Handovers;
import headertank.app.shop.Shops;
import headertank.app.unit.Dimension;
import headertank.app.unit.UnitException;
import headertank.app.unit.UnitSystem;
import headertank.app.unit.Units;
import headertank.calc.carspec.BuildField;
import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Range;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.UUID;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;

/** How warm the workshop is: what the car is expected to do follows from it. */
@Controller
class DayPages {

    /** What is filled in; the temperature stays as typed. */
    record DayForm(
            @NotNull(message = "{handover.key.missing}") UUID key,
            @Size(max = 40, message = "{field.long}") String ambient) {

        DayForm {
            ambient = ambient == null ? "" : ambient.strip();
        }
    }

    private final Handovers handovers;
    private final ShopFigures figures;
    private final Shops shops;

    DayPages(Handovers handovers, ShopFigures figures, Shops shops) {
        this.handovers = handovers;
        this.figures = figures;
        this.shops = shops;
    }

    @GetMapping("/checks/{id}/handover/day")
    String ask(@PathVariable long id, Model model) {
        model.addAttribute("form", new DayForm(UUID.randomUUID(), ""));
        return page(id, model);
    }

    @PostMapping("/checks/{id}/handover/day")
    String set(
            @PathVariable long id,
            @Valid @ModelAttribute("form") DayForm form,
            BindingResult faults,
            Model model,
            HttpServletResponse response) {
        handovers.of(id);
        if (!faults.hasErrors()) {
            set(id, form, faults);
        }
        if (faults.hasErrors()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return page(id, model);
        }
        return "redirect:/checks/" + id + "/handover";
    }

    private void set(long id, DayForm form, BindingResult faults) {
        UnitSystem system = shops.current().unitSystem();
        Range allowed = BuildField.AMBIENT.allowed();
        try {
            double ambientK = Units.parse(form.ambient(), Dimension.TEMPERATURE, system);
            if (allowed.contains(ambientK)) {
                handovers.setDay(id, ambientK, form.key());
                return;
            }
            Object[] bounds = {
                form.ambient(),
                Units.show(allowed.min(), Dimension.TEMPERATURE, system),
                Units.show(allowed.max(), Dimension.TEMPERATURE, system)
            };
            faults.rejectValue("ambient", "handover.value.range", bounds, "out of range");
        } catch (UnitException e) {
            faults.rejectValue("ambient", e.messageKey(), e.messageArguments(), e.getMessage());
        } catch (OutOfRangeException e) {
            faults.rejectValue("ambient", "handover.day.not-computed");
        }
    }

    private String page(long id, Model model) {
        Handover handover = handovers.of(id);
        model.addAttribute("handover", handover);
        model.addAttribute("check", handover.check());
        model.addAttribute("shown", figures.current());
        return "handover/day";
    }
}
