package headertank.app.car;

import headertank.app.form.ListPage;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import java.util.List;
import java.util.UUID;
import org.springframework.http.HttpStatus;
import org.springframework.orm.ObjectOptimisticLockingFailureException;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The list of cars, a car's page, and its form. */
@Controller
class CarPages {

    private final Cars cars;
    private final CarSearch search;

    CarPages(Cars cars, CarSearch search) {
        this.cars = cars;
        this.search = search;
    }

    @GetMapping("/cars")
    String list(
            @RequestParam(defaultValue = "") String q,
            @RequestParam(defaultValue = "") String after,
            @RequestParam(defaultValue = "0") long afterId,
            Model model) {
        ListPage<CarLine> page = ListPage.of(search.cars(q, after, afterId), CarSearch.PAGE);
        model.addAttribute("cars", page.lines());
        model.addAttribute("q", q);
        model.addAttribute("last", page.last());
        return "car/list";
    }

    @GetMapping("/cars/{id}")
    String car(@PathVariable long id, Model model) {
        model.addAttribute("car", search.car(id));
        return "car/car";
    }

    @GetMapping("/cars/new")
    String blank(@RequestParam(required = false) Long customer, Model model) {
        CarForm form = CarForm.emptyFor(customer);
        model.addAttribute("form", form);
        return form(model, form, null);
    }

    @PostMapping("/cars")
    String add(
            @Valid @ModelAttribute("form") CarForm form,
            BindingResult faults,
            @RequestParam(required = false) UUID key,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        requireCustomer(form, faults);
        if (faults.hasErrors()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return form(model, form, null);
        }
        long id = cars.addCar(form, key);
        redirect.addFlashAttribute("done", "car.added");
        return "redirect:/cars/" + id;
    }

    @GetMapping("/cars/{id}/edit")
    String edit(@PathVariable long id, Model model) {
        CarForm form = cars.carForm(id);
        model.addAttribute("form", form);
        return form(model, form, id);
    }

    @PostMapping("/cars/{id}")
    String change(
            @PathVariable long id,
            @Valid @ModelAttribute("form") CarForm form,
            BindingResult faults,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        requireCustomer(form, faults);
        if (faults.hasErrors()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return form(model, form, id);
        }
        try {
            cars.changeCar(id, form);
        } catch (ObjectOptimisticLockingFailureException e) {
            response.setStatus(HttpStatus.CONFLICT.value());
            CarForm theirs = cars.carForm(id);
            model.addAttribute("theirs", theirs);
            model.addAttribute(
                    "theirCustomer", search.customer(theirs.customerId()).name());
            model.addAttribute("form", form.withVersion(theirs.version()));
            return form(model, form, id);
        }
        redirect.addFlashAttribute("done", "car.changed");
        return "redirect:/cars/" + id;
    }

    private static void requireCustomer(CarForm form, BindingResult faults) {
        if (!form.namesACustomer()) {
            faults.rejectValue("customerId", "car.customer.missing");
        }
    }

    private String form(Model model, CarForm form, Long id) {
        model.addAttribute("id", id);
        model.addAttribute("chosen", form.customerId() == null ? null : search.customer(form.customerId()));
        model.addAttribute("customers", form.customerId() == null ? search.choices("") : List.of());
        return "car/form";
    }
}
