package headertank.app.carspec.history;

import headertank.app.car.CarSearch;
import headertank.app.carspec.Revision;
import headertank.app.carspec.Revisions;
import headertank.app.carspec.Spec;
import headertank.app.field.FieldText;
import headertank.calc.carspec.Assumption;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.FieldGroup;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** A revision to read: what was stated, and what stands in for the rest. */
@Controller
class RevisionPages {

    /**
     * @param from provenance in words, or why it is assumed
     * @param assumed whether nobody stated it
     */
    record Line(String label, String value, String from, boolean assumed) {}

    record SpecPart(String label, List<Line> lines) {

        /** Those that nobody stated, or the others. */
        public List<Line> which(boolean assumed) {
            return lines.stream().filter(l -> l.assumed() == assumed).toList();
        }
    }

    private final CarSearch cars;
    private final Revisions revisions;
    private final StandIns standIns;
    private final FieldText text;

    RevisionPages(CarSearch cars, Revisions revisions, StandIns standIns, FieldText text) {
        this.cars = cars;
        this.revisions = revisions;
        this.standIns = standIns;
        this.text = text;
    }

    @GetMapping("/cars/{id}/revisions/{number}")
    String revision(@PathVariable long id, @PathVariable int number, Model model) {
        model.addAttribute("car", cars.car(id));
        Revision revision = revisions.of(id, number);
        model.addAttribute("revision", revision);
        model.addAttribute("newest", revisions.latest(id).orElseThrow().number());
        model.addAttribute("carClass", text.carClass(revision.spec().build().carClass()));
        model.addAttribute(
                "duties", revision.spec().dutyIds().stream().map(text::duty).toList());
        model.addAttribute("stated", revision.spec().build().entries().size());
        model.addAttribute("fields", BuildField.values().length);
        model.addAttribute("parts", parts(revision.spec()));
        return "carspec/revision";
    }

    private List<SpecPart> parts(Spec spec) {
        Map<BuildField, Assumption> assumed = standIns.of(spec);
        Map<FieldGroup, List<Line>> parts = new LinkedHashMap<>();
        for (BuildField field : BuildField.values()) {
            parts.computeIfAbsent(field.group(), g -> new ArrayList<>()).add(line(spec, field, assumed.get(field)));
        }
        return parts.entrySet().stream()
                .map(e -> new SpecPart(text.group(e.getKey()), e.getValue()))
                .toList();
    }

    private Line line(Spec spec, BuildField field, Assumption assumption) {
        var entry = spec.build().entries().get(field);
        if (entry != null) {
            return new Line(text.label(field), text.show(spec.values(), field), text.provenance(entry.from()), false);
        }
        if (assumption == null) {
            return new Line(
                    text.label(field), text.message("spec.unknown", ""), text.message("spec.not-needed", ""), true);
        }
        return new Line(
                text.label(field),
                standIns.show(assumption),
                text.message("spec.assumed.why", "", text.said(assumption.why().with())),
                true);
    }
}
