package headertank.app.handover.page;

import headertank.app.car.CarSearch;
import headertank.app.check.figure.ShopFigures;
import headertank.app.handover.ClearingForm;
import headertank.app.handover.EntryForm;
import headertank.app.handover.EntryRules;
import headertank.app.handover.Handover;
import headertank.app.handover.Handovers;
import headertank.app.handover.item.CheckItem;
import headertank.app.handover.item.ChecklistLine;
import headertank.app.handover.photo.PhotoForm;
import headertank.app.handover.photo.PictureReader;
import headertank.app.handover.photo.PictureRefused;
import headertank.app.problem.NotFoundException;
import headertank.app.shop.CurrentUser;
import headertank.app.shop.Role;
import headertank.app.shop.Shops;
import headertank.app.unit.UnitSystem;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import java.io.IOException;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.validation.ObjectError;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/**
 * The check list. A form that is sent by the page's script carries the header {@value #BY_SCRIPT} and gets the item's card
 * back; without script the page comes anew.
 */
@Controller
class HandoverPages {

    static final String BY_SCRIPT = "X-Handover";

    private final Handovers handovers;
    private final CarSearch cars;
    private final ShopFigures figures;
    private final Shops shops;
    private final CurrentUser user;

    HandoverPages(Handovers handovers, CarSearch cars, ShopFigures figures, Shops shops, CurrentUser user) {
        this.handovers = handovers;
        this.cars = cars;
        this.figures = figures;
        this.shops = shops;
        this.user = user;
    }

    @GetMapping("/checks/{id}/handover")
    String list(@PathVariable long id, Model model) {
        return page(handovers.of(id), model);
    }

    @PostMapping("/checks/{id}/handover/entries")
    String enter(
            @PathVariable long id,
            @Valid @ModelAttribute("entry") EntryForm form,
            BindingResult faults,
            @RequestHeader(name = BY_SCRIPT, required = false) String byScript,
            Model model,
            HttpServletResponse response) {
        Handover handover = handovers.of(id);
        CheckItem item = item(handover, form.item());
        UnitSystem system = shops.current().unitSystem();
        ChecklistLine line = handover.line(item.key()).orElseThrow();
        if (!faults.hasErrors() && !handovers.isSent(form.key(), id + " " + form)) {
            EntryRules.fault(line, form).ifPresent(why -> faults.rejectValue("note", why));
            Optional<Double> value = EntryReading.read(item, form, system, faults);
            if (!faults.hasErrors()) {
                handovers.enter(
                        id, form, value, value.isPresent() ? EntryReading.kept(item, form.value(), system) : "");
            }
        }
        return answer(id, item, faults, byScript != null, model, response);
    }

    @PostMapping("/checks/{id}/handover/photos")
    String photo(
            @PathVariable long id,
            @Valid @ModelAttribute("photo") PhotoForm form,
            BindingResult faults,
            @RequestHeader(name = BY_SCRIPT, required = false) String byScript,
            Model model,
            HttpServletResponse response) {
        Handover handover = handovers.of(id);
        CheckItem item = item(handover, form.item());
        if (!faults.hasErrors()) {
            try {
                handovers.addPhoto(id, form.item(), form.caption(), PictureReader.read(bytes(form.file())), form.key());
            } catch (PictureRefused e) {
                faults.rejectValue("file", e.messageKey());
            }
        }
        return answer(id, item, faults, byScript != null, model, response);
    }

    @PostMapping("/checks/{id}/handover/faults/{fault}")
    String clear(
            @PathVariable long id,
            @PathVariable long fault,
            @Valid @ModelAttribute("clearing") ClearingForm form,
            BindingResult faults,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        if (faults.hasErrors()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            model.addAttribute("faultyFault", fault);
            model.addAttribute("faultyAt", fault);
            model.addAttribute(
                    "clearingFaults",
                    faults.getAllErrors().stream()
                            .map(ObjectError::getDefaultMessage)
                            .toList());
            return page(handovers.of(id), model);
        }
        handovers.clear(id, fault, form);
        redirect.addFlashAttribute("done", "gate.cleared");
        return "redirect:/checks/" + id + "/handover";
    }

    private static byte[] bytes(MultipartFile file) throws PictureRefused {
        if (file.getSize() > PictureReader.LARGEST_BYTES) {
            throw new PictureRefused("handover.photo.large");
        }
        try {
            return file.getBytes();
        } catch (IOException e) {
            throw new PictureRefused("handover.photo.broken");
        }
    }

    /** The card for the script, the page for everybody else. */
    private String answer(
            long id,
            CheckItem item,
            BindingResult faults,
            boolean byScript,
            Model model,
            HttpServletResponse response) {
        if (!faults.hasErrors() && !byScript) {
            return "redirect:/checks/" + id + "/handover#item-" + item.key();
        }
        if (faults.hasErrors()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            model.addAttribute("faultyItem", item.key());
            model.addAttribute("faultyAt", item.key());
        }
        Handover now = handovers.of(id);
        page(now, model);
        model.addAttribute("line", now.line(item.key()).orElseThrow());
        return byScript ? "handover/item :: card" : "handover/list";
    }

    private static CheckItem item(Handover handover, String key) {
        return handover.line(key).map(ChecklistLine::item).orElseThrow(() -> new NotFoundException("item", key));
    }

    private String page(Handover handover, Model model) {
        model.addAttribute("handover", handover);
        model.addAttribute("check", handover.check());
        model.addAttribute("car", cars.car(handover.check().carId()));
        model.addAttribute("shown", figures.current());
        model.addAttribute("account", user.accountId());
        model.addAttribute("mayEnter", user.has(Role.TECHNICIAN) && handover.isInWork());
        model.addAttribute("mayClear", (user.has(Role.TECHNICIAN) || user.has(Role.OWNER)) && !handover.isAway());
        model.addAttribute("photoKey", handovers.photoKey(handover.check().id()));
        model.addAttribute("maxBytes", PictureReader.LARGEST_BYTES);
        if (!model.containsAttribute("entry")) {
            model.addAttribute("entry", EntryForm.empty());
        }
        if (!model.containsAttribute("photo")) {
            model.addAttribute("photo", PhotoForm.empty());
        }
        if (!model.containsAttribute("clearing")) {
            model.addAttribute("clearing", ClearingForm.empty());
        }
        return "handover/list";
    }
}
