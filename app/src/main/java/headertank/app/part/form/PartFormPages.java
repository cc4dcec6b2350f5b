package headertank.app.part.form;

import headertank.app.field.FieldValues;
import headertank.app.form.FormKeys.Sent;
import headertank.app.part.Catalogue;
import headertank.app.part.PartKind;
import headertank.app.part.PartLine;
import headertank.app.part.Parts;
import jakarta.servlet.http.HttpServletResponse;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.http.HttpStatus;
import org.springframework.orm.ObjectOptimisticLockingFailureException;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The form of a part. */
@Controller
class PartFormPages {

    private final Catalogue catalogue;
    private final Parts parts;
    private final PartReader reader;
    private final PartFormView view;
    private final Taken taken;

    PartFormPages(Catalogue catalogue, Parts parts, PartReader reader, PartFormView view, Taken taken) {
        this.catalogue = catalogue;
        this.parts = parts;
        this.reader = reader;
        this.view = view;
        this.taken = taken;
    }

    /** Without a kind it asks for one. */
    @GetMapping("/parts/new")
    String blank(@RequestParam(defaultValue = "") String kind, Model model) {
        if (PartKind.of(kind).isEmpty()) {
            model.addAttribute("kinds", PartKind.values());
            return "part/choose-kind";
        }
        return page(model, null, PartForm.blank(kind, catalogue.usualCurrency()), Map.of(), Map.of());
    }

    @PostMapping("/parts")
    String add(
            @RequestParam MultiValueMap<String, String> sent,
            @RequestParam(required = false) UUID key,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        PartForm form = PartForm.sent(sent);
        PartReader.Reading reading = reader.read(form, FieldValues.none());
        Map<String, String> faults = new HashMap<>(reading.faults());
        if (faults.isEmpty()) {
            try {
                Sent<String> added = parts.add(reading.content().orElseThrow(), key, () -> taken.fault(form, null));
                if (added.id().isPresent()) {
                    redirect.addFlashAttribute("done", "part.added");
                    return "redirect:/parts/" + added.id().get();
                }
                faults.put("name", added.inTheWay().orElseThrow());
            } catch (DataIntegrityViolationException justNow) {
                faults.put("name", taken.sentence());
            }
        } else {
            taken.fault(form, null).ifPresent(fault -> faults.putIfAbsent("name", fault));
        }
        response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        return page(model, null, form, faults, Map.of());
    }

    @GetMapping("/parts/{id}/edit")
    String edit(@PathVariable long id, Model model) {
        PartForm form = view.of(catalogue.part(id));
        return page(
                model,
                id,
                form.currency().isEmpty() ? form.withCurrency(catalogue.usualCurrency()) : form,
                Map.of(),
                Map.of());
    }

    @PostMapping("/parts/{id}")
    String change(
            @PathVariable long id,
            @RequestParam MultiValueMap<String, String> sent,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        PartLine saved = catalogue.part(id);
        PartForm form = PartForm.sent(sent);
        PartReader.Reading reading =
                reader.read(form.withKind(saved.kind()), saved.content().values());
        Map<String, String> faults = new HashMap<>(reading.faults());
        taken.fault(form, id).ifPresent(fault -> faults.putIfAbsent("name", fault));
        if (faults.isEmpty()) {
            try {
                parts.change(id, reading.content().orElseThrow(), form.version());
                redirect.addFlashAttribute("done", "part.changed");
                return "redirect:/parts/" + id;
            } catch (ObjectOptimisticLockingFailureException e) {
                PartLine theirs = catalogue.part(id);
                response.setStatus(HttpStatus.CONFLICT.value());
                model.addAttribute("clash", true);
                return page(model, id, form.withVersion(theirs.version()), Map.of(), view.theirs(form, theirs));
            } catch (DataIntegrityViolationException justNow) {
                faults.put("name", taken.sentence());
            }
        }
        response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        return page(model, id, form, faults, Map.of());
    }

    private String page(Model model, Long id, PartForm form, Map<String, String> faults, Map<String, String> theirs) {
        Optional<PartKind> kind = id == null
                ? PartKind.of(form.kind())
                : Optional.of(catalogue.part(id).kind());
        if (kind.isEmpty()) {
            model.addAttribute("kinds", PartKind.values());
            model.addAttribute("fault", faults.get("kind"));
            return "part/choose-kind";
        }
        model.addAttribute("id", id);
        model.addAttribute("form", form);
        model.addAttribute("kind", kind.get());
        model.addAttribute("rows", view.rows(kind.get(), form, faults, theirs));
        model.addAttribute("faults", faults);
        model.addAttribute("theirs", theirs);
        return "part/form";
    }
}
