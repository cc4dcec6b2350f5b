package headertank.app.known;

import headertank.app.car.CarSearch;
import headertank.app.carlog.LogEvidence;
import headertank.app.carspec.Revision;
import headertank.app.carspec.Revisions;
import headertank.app.evidence.CarEvidence;
import headertank.app.evidence.NewPiece;
import headertank.app.evidence.PieceKind;
import headertank.app.problem.ConflictException;
import headertank.app.shop.Shops;
import headertank.calc.duty.Duty;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import java.util.List;
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

/** A car's evidence: what was seen of it, what that teaches, and a settled reading typed in one line. */
@Controller
class EvidencePages {

    private final CarSearch cars;
    private final Revisions revisions;
    private final CarEvidence evidence;
    private final CarFindings findings;
    private final LogEvidence logs;
    private final Shops shops;
    private final KnownWords words;

    EvidencePages(
            CarSearch cars,
            Revisions revisions,
            CarEvidence evidence,
            CarFindings findings,
            LogEvidence logs,
            Shops shops,
            KnownWords words) {
        this.cars = cars;
        this.revisions = revisions;
        this.evidence = evidence;
        this.findings = findings;
        this.logs = logs;
        this.shops = shops;
        this.words = words;
    }

    @GetMapping("/cars/{id}/evidence")
    String page(@PathVariable long id, Model model) {
        model.addAttribute("form", ReadingForm.blank());
        model.addAttribute("switching", new SwitchForm(null, ""));
        return page(id, 0, model);
    }

    /** What is learned, again and again while it is not: whoever looks has it worked out, and may go away meanwhile. */
    @GetMapping("/cars/{id}/evidence/lesson")
    String lesson(@PathVariable long id, Model model) {
        model.addAttribute("car", cars.car(id));
        findings.start(id);
        model.addAttribute("known", words.of(id));
        return "known/lesson :: lesson";
    }

    @PostMapping("/cars/{id}/evidence/readings")
    String settled(
            @PathVariable long id,
            @ModelAttribute("form") ReadingForm form,
            BindingResult faults,
            @RequestParam(required = false) UUID key,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        cars.car(id);
        Revision newest = newest(id);
        List<Duty> duties = findings.duties(newest);
        Optional<SettledText> reading =
                ReadingEntry.read(form, duties, shops.current().unitSystem(), faults);
        if (reading.isEmpty()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            model.addAttribute("switching", new SwitchForm(null, ""));
            return page(id, 0, model);
        }
        evidence.add(
                id,
                new NewPiece(
                        newest.id(),
                        PieceKind.SETTLED,
                        Optional.empty(),
                        reading.get().text()),
                key);
        findings.start(id);
        redirect.addFlashAttribute("done", "known.reading.kept");
        return "redirect:/cars/" + id + "/evidence";
    }

    @PostMapping("/cars/{id}/evidence/logs")
    String log(
            @PathVariable long id,
            @RequestParam long log,
            @RequestParam(required = false) UUID key,
            RedirectAttributes redirect) {
        cars.car(id);
        String said = logs.said(id, log);
        evidence.add(id, new NewPiece(newest(id).id(), PieceKind.LOG, Optional.of(log), said), key);
        findings.start(id);
        redirect.addFlashAttribute("done", "known.log.used");
        return "redirect:/cars/" + id + "/evidence";
    }

    @PostMapping("/cars/{id}/evidence/{piece}/switch")
    String switchTo(
            @PathVariable long id,
            @PathVariable long piece,
            @Valid @ModelAttribute("switching") SwitchForm form,
            BindingResult faults,
            @RequestParam(required = false) UUID key,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        cars.car(id);
        long revision = evidence.byId(id, piece).revisionId();
        if (faults.hasErrors()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            model.addAttribute("form", ReadingForm.blank());
            return page(id, piece, model);
        }
        boolean asNewest = form.then() == SwitchForm.Then.USE_AS_NEWEST;
        evidence.switchTo(
                id,
                piece,
                form.then() != SwitchForm.Then.LEAVE_OUT,
                asNewest ? newest(id).id() : revision,
                form.reason(),
                key);
        findings.start(id);
        redirect.addFlashAttribute("done", "known.switched");
        return "redirect:/cars/" + id + "/evidence";
    }

    /** Holds a log that was not learned from against what is known. */
    @PostMapping("/cars/{id}/logs/{log}/confirm")
    String confirm(@PathVariable long id, @PathVariable long log) {
        cars.car(id);
        logs.said(id, log);
        findings.startConfirming(id, log);
        return "redirect:/cars/" + id + "/logs/" + log;
    }

    private Revision newest(long carId) {
        return revisions.latest(carId).orElseThrow(() -> new ConflictException("known.not-described"));
    }

    /** @param switched the piece whose form comes back with faults; 0 for none */
    private String page(long id, long switched, Model model) {
        model.addAttribute("car", cars.car(id));
        model.addAttribute("known", words.of(id));
        model.addAttribute("switched", switched);
        return "known/evidence";
    }
}
