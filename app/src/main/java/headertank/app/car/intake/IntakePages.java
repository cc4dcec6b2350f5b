package headertank.app.car.intake;

import headertank.app.car.CarForm;
import headertank.app.car.CarLine;
import headertank.app.car.CarSearch;
import headertank.app.car.Cars;
import headertank.app.car.CustomerLine;
import headertank.app.form.FormKeys.Sent;
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
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** A car comes in: find it, or add it with its owner in one go, and on to its spec. */
@Controller
class IntakePages {

    private static final int SHOWN = 8;

    private final Cars cars;
    private final CarSearch search;
    private final LookAlikes lookAlikes;

    IntakePages(Cars cars, CarSearch search, LookAlikes lookAlikes) {
        this.cars = cars;
        this.search = search;
        this.lookAlikes = lookAlikes;
    }

    /** @param customer owner of a further car; null when the car comes first */
    @GetMapping("/intake")
    String intake(
            @RequestParam(defaultValue = "") String q, @RequestParam(required = false) Long customer, Model model) {
        CarForm form = customer == null ? IntakeGuess.form(q) : CarForm.emptyFor(customer);
        model.addAttribute("form", form);
        model.addAttribute("fresh", q.isBlank() && customer == null);
        return page(model, form, q, LookAlikes.Found.NOTHING);
    }

    /** @param warned what the form was already warned of; the same again is meant so */
    @PostMapping("/intake")
    String add(
            @Valid @ModelAttribute("form") CarForm sent,
            BindingResult faults,
            @RequestParam(defaultValue = "") String warned,
            @RequestParam(required = false) UUID key,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        if (!sent.namesACustomer()) {
            faults.rejectValue("newCustomerName", "customer.name.missing");
        }
        CarForm form = sent.customerId() == null ? sent : sent.withCustomer(sent.customerId());
        Sent<LookAlikes.Found> added = faults.hasErrors()
                ? new Sent<>(Optional.empty(), Optional.of(lookAlikes.of(sent)))
                : cars.addCar(form, key, () -> Optional.of(lookAlikes.of(sent)).filter(f -> f.isMoreThan(warned)));
        if (added.inTheWay().isPresent()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return page(model, sent, "", added.inTheWay().get());
        }
        redirect.addFlashAttribute("done", "car.added");
        return "redirect:/cars/" + added.id().orElseThrow() + "/spec";
    }

    private String page(Model model, CarForm form, String q, LookAlikes.Found alike) {
        boolean asked = !q.isBlank();
        List<CarLine> found =
                asked ? search.cars(q, "", 0).stream().limit(SHOWN).toList() : List.of();
        List<CustomerLine> people = asked ? search.choices(q) : List.of();
        model.addAttribute("q", q);
        model.addAttribute("cars", found);
        model.addAttribute("people", people);
        model.addAttribute("nothing", asked && found.isEmpty() && people.isEmpty());
        model.addAttribute("alike", alike);
        model.addAttribute("chosen", form.customerId() == null ? null : search.customer(form.customerId()));
        return "car/intake";
    }
}
