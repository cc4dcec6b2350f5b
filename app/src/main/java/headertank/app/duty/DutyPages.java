package headertank.app.duty;

import headertank.app.language.Dates;
import headertank.app.problem.ConflictException;
import headertank.app.shop.CurrentUser;
import headertank.app.shop.Role;
import headertank.app.shop.Shops;
import headertank.calc.quantity.InputException;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.UUID;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The list of duties, their files, and the owner's form for one. */
@Controller
class DutyPages {

    private final Duties duties;
    private final DutyText words;
    private final Shops shops;
    private final CurrentUser user;
    private final Dates dates;

    DutyPages(Duties duties, DutyText words, Shops shops, CurrentUser user, Dates dates) {
        this.duties = duties;
        this.words = words;
        this.shops = shops;
        this.user = user;
        this.dates = dates;
    }

    @GetMapping("/duties")
    String list(Model model) {
        var system = shops.current().unitSystem();
        model.addAttribute(
                "duties",
                duties.list().stream()
                        .map(d -> DutyView.of(d, words, system, dates))
                        .toList());
        model.addAttribute("mayWrite", user.has(Role.OWNER));
        return "duty/list";
    }

    @GetMapping("/duties/{id}/csv")
    ResponseEntity<byte[]> csv(@PathVariable String id) {
        String text = duties.csv(id);
        return ResponseEntity.ok()
                .contentType(new MediaType("text", "csv", StandardCharsets.UTF_8))
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.attachment()
                                .filename("duty-" + id + ".csv")
                                .build()
                                .toString())
                .body(text.getBytes(StandardCharsets.UTF_8));
    }

    @GetMapping("/duties/new")
    String blank(@RequestParam(defaultValue = "") String like, Model model) {
        String text = like.isEmpty() ? "" : duties.csv(like).replaceFirst("(?m)^# id: .*$", "# id: ");
        return form(new DutyForm(text, "", 0), List.of(), model);
    }

    @GetMapping("/duties/{id}/edit")
    String edit(@PathVariable String id, Model model) {
        DutyVersion own = duties.own(id);
        return form(new DutyForm(own.csv(), own.dutyId(), own.number()), List.of(), model);
    }

    @PostMapping("/duties")
    String save(
            @ModelAttribute("form") DutyForm sent,
            @RequestParam(required = false) MultipartFile file,
            @RequestParam(required = false) UUID key,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect)
            throws IOException {
        DutyForm form = sent;
        try {
            if (file != null && !file.isEmpty()) {
                if (file.getSize() > Duties.LONGEST) {
                    return refused(form, words.whole("file", "", "duties.too-long", Duties.LONGEST), model, response);
                }
                form = new DutyForm(DutyForm.decoded(file.getBytes()), sent.id(), sent.number());
            }
            if (form.text().length() > Duties.LONGEST || !DutyForm.storable(form.text())) {
                return refused(form, words.whole("text", "", "duties.too-long", Duties.LONGEST), model, response);
            }
            String id = duties.save(form.text(), form.id(), form.number(), key);
            redirect.addFlashAttribute("done", "duties.saved");
            return "redirect:/duties#duty-" + id;
        } catch (CharacterCodingException e) {
            return refused(form, words.whole("file", "", "duties.not-text"), model, response);
        } catch (InputException e) {
            return refused(form, DutyFault.of(e, words), model, response);
        } catch (ConflictException e) {
            response.setStatus(HttpStatus.CONFLICT.value());
            DutyVersion theirs = duties.own(form.id());
            model.addAttribute("theirs", theirs);
            return form(new DutyForm(form.text(), form.id(), theirs.number()), List.of(), model);
        }
    }

    @PostMapping("/duties/{id}/switch")
    String switchTo(
            @PathVariable String id,
            @RequestParam boolean on,
            @RequestParam(required = false) UUID key,
            RedirectAttributes redirect) {
        duties.switchTo(id, on, key);
        redirect.addFlashAttribute("done", on ? "duties.switched-on" : "duties.switched-off");
        return "redirect:/duties#duty-" + id;
    }

    private String refused(DutyForm form, List<DutyFault> faults, Model model, HttpServletResponse response) {
        response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        return form(form, faults, model);
    }

    private static String form(DutyForm form, List<DutyFault> faults, Model model) {
        model.addAttribute("form", form);
        model.addAttribute("faults", faults);
        return "duty/form";
    }
}
