package headertank.app.known;

import headertank.app.car.CarSearch;
import headertank.app.carspec.Revisions;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** What to find out next of a car. */
@Controller
class NextPages {

    private final CarSearch cars;
    private final Revisions revisions;
    private final CarFindings findings;
    private final KnownWords words;

    NextPages(CarSearch cars, Revisions revisions, CarFindings findings, KnownWords words) {
        this.cars = cars;
        this.revisions = revisions;
        this.findings = findings;
        this.words = words;
    }

    @GetMapping("/cars/{id}/evidence/next")
    String page(@PathVariable long id, Model model) {
        model.addAttribute(
                "described",
                revisions.latest(id).filter(r -> !findings.duties(r).isEmpty()).isPresent());
        found(id, model);
        return "known/next";
    }

    /** The same behind the page, again and again while it is worked out. */
    @GetMapping("/cars/{id}/evidence/next/found")
    String again(@PathVariable long id, Model model) {
        found(id, model);
        return "known/found :: found";
    }

    private void found(long id, Model model) {
        model.addAttribute("car", cars.car(id));
        findings.startNext(id);
        model.addAttribute("pending", findings.next(id).isEmpty());
        model.addAttribute("next", words.next(id));
    }
}
