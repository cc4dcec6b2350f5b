package headertank.app.part;

import headertank.app.field.FieldText;
import headertank.app.field.FieldValues;
import headertank.app.problem.NotFoundException;
import headertank.calc.carspec.BuildField;
import headertank.calc.quantity.Entry;
import headertank.calc.quantity.Provenance;
import jakarta.servlet.http.HttpServletResponse;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.UUID;
import org.springframework.http.HttpStatus;
import org.springframework.orm.ObjectOptimisticLockingFailureException;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The list of parts, a part's page, and the comparison of two. */
@Controller
class PartPages {

    /**
     * One value of two parts side by side.
     *
     * @param first in words, empty when unknown
     */
    record Side(BuildField field, String first, String second, boolean differs) {}

    /** @param value in words */
    record ValueLine(BuildField field, String value, Provenance from) {}

    private final Catalogue catalogue;
    private final Parts parts;
    private final CarsWithPart cars;
    private final Recalls recalls;
    private final FieldText text;

    PartPages(Catalogue catalogue, Parts parts, CarsWithPart cars, Recalls recalls, FieldText text) {
        this.catalogue = catalogue;
        this.parts = parts;
        this.cars = cars;
        this.recalls = recalls;
        this.text = text;
    }

    @GetMapping("/parts")
    String list(
            @RequestParam(defaultValue = "") String q,
            @RequestParam(defaultValue = "") String kind,
            @RequestParam(defaultValue = "name") String sort,
            @RequestParam(defaultValue = "false") boolean retired,
            Model model) {
        Catalogue.Sort order = Catalogue.Sort.of(sort);
        List<PartLine> found = catalogue.parts(q, PartKind.of(kind), order, retired);
        model.addAttribute("parts", found.stream().limit(Catalogue.MOST).toList());
        model.addAttribute("more", found.size() > Catalogue.MOST);
        model.addAttribute("most", Catalogue.MOST);
        model.addAttribute("q", q);
        model.addAttribute("kind", kind);
        model.addAttribute("kinds", PartKind.values());
        model.addAttribute("sort", order.name().toLowerCase(Locale.ROOT));
        model.addAttribute("retired", retired);
        return "part/list";
    }

    @GetMapping("/parts/{id}")
    String part(@PathVariable long id, Model model) {
        return page(id, catalogue.part(id), model);
    }

    private String page(long id, PartLine part, Model model) {
        List<CarsWithPart.Line> found = cars.of(id);
        model.addAttribute("part", part);
        model.addAttribute(
                "values",
                part.kind().fields().stream()
                        .filter(f -> part.content().values().entries().containsKey(f))
                        .map(f -> new ValueLine(
                                f,
                                text.show(part.content().values(), f),
                                part.content().values().entries().get(f).from()))
                        .toList());
        model.addAttribute(
                "unknown",
                part.kind().fields().stream()
                        .filter(f -> !part.content().values().entries().containsKey(f))
                        .toList());
        model.addAttribute("now", found.stream().filter(CarsWithPart.Line::now).toList());
        model.addAttribute(
                "reachedNow",
                found.stream().filter(c -> c.now() && c.reached().isPresent()).count());
        model.addAttribute("before", found.stream().filter(c -> !c.now()).toList());
        model.addAttribute("owners", cars.ownersShown());
        model.addAttribute(
                "others",
                catalogue.ofKind(part.kind()).stream().filter(p -> p.id() != id).toList());
        return "part/part";
    }

    /** Two parts of one kind; a part of another kind is not there. */
    @GetMapping("/parts/{id}/compare")
    String compare(@PathVariable long id, @RequestParam long with, Model model) {
        PartLine first = catalogue.part(id);
        PartLine second = catalogue.part(with);
        if (second.kind() != first.kind()) {
            throw new NotFoundException("part of this kind", with);
        }
        FieldValues one = first.content().values();
        FieldValues other = second.content().values();
        Set<BuildField> stated = new LinkedHashSet<>(first.kind().fields());
        stated.removeIf(f -> !one.entries().containsKey(f) && !other.entries().containsKey(f));
        model.addAttribute("first", first);
        model.addAttribute("second", second);
        model.addAttribute(
                "sides",
                stated.stream()
                        .map(f -> new Side(
                                f,
                                text.show(one, f),
                                text.show(other, f),
                                !Entry.sameValue(
                                        one.entries().get(f), other.entries().get(f))))
                        .toList());
        return "part/compare";
    }

    @PostMapping("/parts/{id}/recall/{carId}")
    String reached(
            @PathVariable long id,
            @PathVariable long carId,
            @RequestParam boolean reached,
            @RequestParam(required = false) UUID key) {
        recalls.mark(id, carId, reached, key);
        return "redirect:/parts/" + id + "#cars";
    }

    @PostMapping("/parts/{id}/retire")
    String retire(
            @PathVariable long id,
            @RequestParam(defaultValue = "true") boolean retired,
            @RequestParam(required = false) Integer version,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        try {
            parts.retire(id, retired, version);
        } catch (ObjectOptimisticLockingFailureException e) {
            response.setStatus(HttpStatus.CONFLICT.value());
            model.addAttribute("refused", "part.retire.clash");
            return page(id, catalogue.part(id), model);
        }
        redirect.addFlashAttribute("done", retired ? "part.retired" : "part.brought-back");
        return "redirect:/parts/" + id;
    }
}
