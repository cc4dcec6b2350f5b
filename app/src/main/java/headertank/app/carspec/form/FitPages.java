package headertank.app.carspec.form;

import headertank.app.car.CarSearch;
import headertank.app.carspec.Revisions;
import headertank.app.carspec.Spec;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Fills the values of a part of the catalogue into the form of a spec. Nothing is kept. */
@Controller
class FitPages {

    private final CarSearch cars;
    private final Revisions revisions;
    private final SpecReader reader;
    private final Fitting fitting;
    private final SpecPages pages;

    FitPages(CarSearch cars, Revisions revisions, SpecReader reader, Fitting fitting, SpecPages pages) {
        this.cars = cars;
        this.revisions = revisions;
        this.reader = reader;
        this.fitting = fitting;
        this.pages = pages;
    }

    /** Answers with the whole page; htmx takes the form out of it. */
    @PostMapping("/cars/{id}/spec/fit")
    String fit(@PathVariable long id, @RequestParam MultiValueMap<String, String> sent, Model model) {
        model.addAttribute("car", cars.car(id));
        SpecForm form = fitting.takeOver(SpecForm.sent(sent), sent.getFirst("fit"));
        Optional<Spec> parent = Optional.ofNullable(form.parent())
                .map(number -> revisions.of(id, number).spec());
        SpecReader.Reading reading = reader.read(form, parent, false);
        return pages.page(id, model, form, reading, Map.of(), Map.of());
    }
}
