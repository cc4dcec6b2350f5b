package headertank.app.incident;

import headertank.app.car.CarSearch;
import headertank.app.carspec.Revision;
import headertank.app.carspec.Revisions;
import headertank.app.check.figure.ShopFigures;
import headertank.app.problem.ConflictException;
import headertank.app.shop.ShopTime;
import headertank.app.shop.Shops;
import headertank.calc.Rater;
import headertank.calc.carspec.BuildField;
import headertank.calc.choice.SensorPlacement;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
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

/** Writing down that a car ran hot, and looking at it beside the last good check. */
@Controller
class IncidentPages {

    private final Incidents incidents;
    private final SinceLastGood sinceLastGood;
    private final Revisions revisions;
    private final CarSearch cars;
    private final Supplier<Rater> rater;
    private final Shops shops;
    private final ShopFigures figures;
    private final ShopTime time;

    IncidentPages(
            Incidents incidents,
            SinceLastGood sinceLastGood,
            Revisions revisions,
            CarSearch cars,
            Supplier<Rater> rater,
            Shops shops,
            ShopFigures figures,
            ShopTime time) {
        this.incidents = incidents;
        this.sinceLastGood = sinceLastGood;
        this.revisions = revisions;
        this.cars = cars;
        this.rater = rater;
        this.shops = shops;
        this.figures = figures;
        this.time = time;
    }

    @GetMapping("/cars/{id}/incidents/new")
    String blank(@PathVariable long id, Model model) {
        cars.car(id);
        Optional<Revision> latest = revisions.latest(id);
        SensorPlacement gauge = latest.map(r ->
                        rater.get().resolve(r.spec().build()).option(BuildField.GAUGE_SENSOR, SensorPlacement.class))
                .orElse(null);
        IncidentForm form = new IncidentForm(
                time.now().truncatedTo(ChronoUnit.MINUTES).toString(),
                "",
                "",
                "",
                "",
                gauge,
                latest.map(Revision::number).orElse(null),
                "");
        model.addAttribute("form", form);
        return form(id, model);
    }

    @PostMapping("/cars/{id}/incidents")
    String report(
            @PathVariable long id,
            @Valid @ModelAttribute("form") IncidentForm form,
            BindingResult faults,
            @RequestParam(required = false) UUID key,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        cars.car(id);
        if (revisions.latest(id).isEmpty()) {
            throw new ConflictException("incident.no-revision");
        }
        if (!form.duty().isEmpty() && !rater.get().duties().containsKey(form.duty())) {
            faults.rejectValue("duty", "incident.duty.unknown");
        }
        Optional<IncidentEntry> entry =
                IncidentEntry.read(form, shops.current().unitSystem(), Instant.now(), time.zone(), faults);
        if (entry.isEmpty()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return form(id, model);
        }
        long incident = incidents.report(id, form, entry.get(), key);
        redirect.addFlashAttribute("done", "incident.reported");
        return "redirect:/incidents/" + incident;
    }

    private String form(long carId, Model model) {
        model.addAttribute("car", cars.car(carId));
        model.addAttribute("revisions", revisions.all(carId));
        model.addAttribute("duties", List.copyOf(rater.get().duties().keySet()));
        model.addAttribute("places", SensorPlacement.values());
        model.addAttribute("gauge", BuildField.GAUGE_SENSOR);
        model.addAttribute("shown", figures.current());
        return "incident/form";
    }

    /** The report at once; what it is held against comes in behind, for it rates many states of the car. */
    @GetMapping("/incidents/{id}")
    String one(@PathVariable long id, @RequestParam(required = false) String whole, Model model) {
        Incident incident = incidents.byId(id);
        model.addAttribute("incident", incident);
        model.addAttribute("car", cars.car(incident.carId()));
        if (whole != null) {
            besides(incident, model);
        }
        model.addAttribute("shown", figures.current());
        return "incident/incident";
    }

    @GetMapping("/incidents/{id}/since")
    String since(@PathVariable long id, Model model) {
        Incident incident = incidents.byId(id);
        model.addAttribute("incident", incident);
        model.addAttribute("shown", figures.current());
        besides(incident, model);
        return "incident/since :: since";
    }

    private void besides(Incident incident, Model model) {
        model.addAttribute("beside", sinceLastGood.of(incident));
        model.addAttribute("gauge", BuildField.GAUGE_SENSOR);
    }
}
