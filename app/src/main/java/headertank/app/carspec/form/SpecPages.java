package headertank.app.carspec.form;

import headertank.app.car.CarSearch;
import headertank.app.carspec.OvertakenException;
import headertank.app.carspec.Revision;
import headertank.app.carspec.Revisions;
import headertank.app.carspec.Spec;
import headertank.app.carspec.history.Differences;
import headertank.app.evidence.Lessons;
import headertank.app.field.FieldText;
import headertank.calc.Rater;
import jakarta.servlet.http.HttpServletResponse;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The form of a car's cooling spec, its preview, and saving. */
@Controller
class SpecPages {

    private final CarSearch cars;
    private final Revisions revisions;
    private final SpecReader reader;
    private final Preview preview;
    private final FormView view;
    private final Differences differences;
    private final FieldText text;
    private final StartFrom starts;
    private final Completeness completeness;
    private final AdvisedChange advised;
    private final Lessons lessons;

    SpecPages(
            CarSearch cars,
            Revisions revisions,
            SpecReader reader,
            Preview preview,
            FormView view,
            Differences differences,
            FieldText text,
            StartFrom starts,
            Completeness completeness,
            AdvisedChange advised,
            Lessons lessons) {
        this.cars = cars;
        this.revisions = revisions;
        this.reader = reader;
        this.preview = preview;
        this.view = view;
        this.differences = differences;
        this.text = text;
        this.starts = starts;
        this.completeness = completeness;
        this.advised = advised;
        this.lessons = lessons;
    }

    /**
     * @param from another car of the shop whose values the form starts from; null to start from the car's own
     * @param change an improvement of a check that is typed in; empty for none
     * @param measure key of a field that is about to be measured; empty for none
     * @param back what is typed back to what it was, as {@link AdvisedChange#back} names it; empty for nothing
     * @param of number of the revision that it is taken from
     */
    @GetMapping("/cars/{id}/spec")
    String form(
            @PathVariable long id,
            @RequestParam(required = false) Long from,
            @RequestParam(defaultValue = "") String change,
            @RequestParam(defaultValue = "") String measure,
            @RequestParam(defaultValue = "") String back,
            @RequestParam(defaultValue = "0") int of,
            Model model) {
        model.addAttribute("car", cars.car(id));
        Optional<Revision> latest = revisions.latest(id);
        SpecForm form;
        if (from != null && from != id) {
            StartFrom.Start start = starts.from(from, latest.map(Revision::number));
            model.addAttribute("start", start);
            form = start.form();
        } else {
            form = latest.map(r -> typedIn(r, back, of, model).orElseGet(() -> advised(r, change, measure, model)))
                    .orElseGet(SpecForm::blank);
        }
        model.addAttribute("alike", starts.alike(id, "", StartFrom.FEW));
        SpecReader.Reading reading = reader.read(form, latest.map(Revision::spec), false);
        return page(id, model, form, reading, Map.of(), Map.of());
    }

    /** The form of a car's newest revision, with something as it was in another one; empty when nothing is named. */
    private Optional<SpecForm> typedIn(Revision newest, String back, int of, Model model) {
        SpecForm form = SpecForm.of(newest.spec(), "", newest.number(), text);
        Optional<AdvisedChange.Filled> filled = advised.back(form, back, () -> revisions.of(newest.carId(), of));
        filled.ifPresent(f -> model.addAttribute("typedIn", f.typed()));
        return filled.map(AdvisedChange.Filled::form);
    }

    /** The form of a car's newest revision, with what a check advises typed in. */
    private SpecForm advised(Revision newest, String change, String measure, Model model) {
        SpecForm form = SpecForm.of(newest.spec(), "", newest.number(), text);
        Optional<AdvisedChange.Filled> filled =
                advised.improvement(newest, form, change, lessons.rater(newest.carId()));
        filled.ifPresent(f -> model.addAttribute("typedIn", f.typed()));
        return filled.map(AdvisedChange.Filled::form)
                .or(() -> advised.measurement(form, measure))
                .orElse(form);
    }

    /** Cars to start from; a fragment of it renews while somebody searches. */
    @GetMapping("/cars/{id}/spec/similar")
    String similar(@PathVariable long id, @RequestParam(defaultValue = "") String q, Model model) {
        model.addAttribute("car", cars.car(id));
        model.addAttribute("q", q);
        model.addAttribute("alike", starts.alike(id, q, StartFrom.MANY));
        return "carspec/similar";
    }

    /** A fragment while somebody types; the whole page for a browser without scripts. Nothing is kept. */
    @PostMapping("/cars/{id}/spec/preview")
    String preview(
            @PathVariable long id,
            @RequestParam MultiValueMap<String, String> sent,
            @RequestHeader(name = "HX-Request", required = false) String byScript,
            @RequestHeader(name = "HX-Boosted", required = false) String wholePage,
            Model model) {
        boolean fragment = byScript != null && wholePage == null;
        model.addAttribute("car", cars.car(id));
        SpecForm form = SpecForm.sent(sent);
        SpecReader.Reading reading = reader.read(form, parent(id, form).map(Revision::spec), false);
        page(id, model, form, reading, fragment ? Map.of() : reading.faults(), Map.of());
        return fragment ? "carspec/preview :: renewed" : "carspec/form";
    }

    @PostMapping("/cars/{id}/spec")
    String save(
            @PathVariable long id,
            @RequestParam MultiValueMap<String, String> sent,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        model.addAttribute("car", cars.car(id));
        SpecForm form = SpecForm.sent(sent);
        Optional<Revision> parent = parent(id, form);
        SpecReader.Reading reading = reader.read(form, parent.map(Revision::spec), form.parent() != null);
        if (!reading.faults().isEmpty()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return page(id, model, form, reading, reading.faults(), Map.of());
        }
        Revision saved;
        try {
            saved = revisions.save(id, form.parent(), reading.spec(), form.reason(), form.key());
        } catch (OvertakenException e) {
            response.setStatus(HttpStatus.CONFLICT.value());
            return merged(id, form, parent, reading.spec(), model);
        }
        boolean unchanged = Integer.valueOf(saved.number()).equals(form.parent());
        redirect.addFlashAttribute("done", unchanged ? "spec.unchanged" : "spec.saved");
        return "redirect:/cars/" + id + "/revisions/" + saved.number();
    }

    private Optional<Revision> parent(long carId, SpecForm form) {
        return Optional.ofNullable(form.parent()).map(number -> revisions.of(carId, number));
    }

    /** Both sets of differences, and a form that joins them, made from what is saved now. */
    private String merged(long id, SpecForm form, Optional<Revision> parent, Spec mine, Model model) {
        Revision theirs = revisions.latest(id).orElseThrow();
        Optional<Spec> was = parent.map(Revision::spec);
        SpecMerge merge = SpecMerge.of(was, theirs.spec(), mine);
        Map<String, String> contested = new HashMap<>();
        merge.contested()
                .forEach(f -> contested.put(
                        f.key(),
                        theirs.spec().build().entries().containsKey(f)
                                ? text.show(theirs.spec().values(), f) + ", "
                                        + text.provenance(theirs.spec()
                                                .build()
                                                .entries()
                                                .get(f)
                                                .from())
                                : text.message("spec.unknown", "")));
        if (merge.classContested()) {
            contested.put("carClass", text.carClass(theirs.spec().build().carClass()));
        }
        model.addAttribute("theirs", theirs);
        model.addAttribute("theirChanges", changes(was, theirs.spec()));
        model.addAttribute("myChanges", changes(was, mine));
        SpecForm joined = SpecForm.of(merge.spec(), form.reason(), theirs.number(), text);
        SpecReader.Reading reading = reader.read(joined, Optional.of(theirs.spec()), false);
        return page(id, model, joined, reading, reading.faults(), contested);
    }

    private List<Differences.Line> changes(Optional<Spec> from, Spec to) {
        return from.map(f -> differences.between(f, to)).orElseGet(() -> differences.fromNothing(to));
    }

    String page(
            long carId,
            Model model,
            SpecForm form,
            SpecReader.Reading reading,
            Map<String, String> faults,
            Map<String, String> contested) {
        Rater rater = lessons.rater(carId);
        Preview.Draft draft = preview.of(reading, rater);
        model.addAttribute("form", form);
        model.addAttribute("draft", draft);
        FormView.Page page = view.page(form, reading, draft, faults, contested);
        model.addAttribute("page", page);
        model.addAttribute("firstFault", page.firstFault(faults));
        model.addAttribute("complete", completeness.of(reading, draft, rater));
        model.addAttribute("faults", faults);
        model.addAttribute("contested", contested);
        return "carspec/form";
    }
}
