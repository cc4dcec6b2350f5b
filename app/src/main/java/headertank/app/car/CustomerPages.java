package headertank.app.car;

import headertank.app.form.ListPage;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
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

/** The list of customers, a customer's page, and its form. */
@Controller
class CustomerPages {

    private final Cars cars;
    private final CarSearch search;

    CustomerPages(Cars cars, CarSearch search) {
        this.cars = cars;
        this.search = search;
    }

    @GetMapping("/customers")
    String list(
            @RequestParam(defaultValue = "") String q,
            @RequestParam(defaultValue = "") String after,
            @RequestParam(defaultValue = "0") long afterId,
            Model model) {
        ListPage<CustomerLine> page = ListPage.of(search.customers(q, after, afterId), CarSearch.PAGE);
        model.addAttribute("customers", page.lines());
        model.addAttribute("q", q);
        model.addAttribute("last", page.last());
        return "car/customers";
    }

    /** Part of the car's form: customers to choose from while somebody types. */
    @GetMapping("/customers/choices")
    String choices(@RequestParam(defaultValue = "") String customer, Model model) {
        model.addAttribute("customers", search.choices(customer));
        return "car/customer-choices :: choices";
    }

    @GetMapping("/customers/{id}")
    String customer(@PathVariable long id, Model model) {
        model.addAttribute("customer", search.customer(id));
        model.addAttribute("cars", search.carsOf(id));
        return "car/customer";
    }

    @GetMapping("/customers/new")
    String blank(Model model) {
        model.addAttribute("form", CustomerForm.empty());
        return form(model, null);
    }

    @PostMapping("/customers")
    String add(
            @Valid @ModelAttribute("form") CustomerForm form,
            BindingResult faults,
            @RequestParam(required = false) UUID key,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        if (faults.hasErrors()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return form(model, null);
        }
        long id = cars.addCustomer(form, key);
        redirect.addFlashAttribute("done", "customer.added");
        return "redirect:/customers/" + id;
    }

    @GetMapping("/customers/{id}/edit")
    String edit(@PathVariable long id, Model model) {
        model.addAttribute("form", cars.customerForm(id));
        return form(model, id);
    }

    @PostMapping("/customers/{id}")
    String change(
            @PathVariable long id,
            @Valid @ModelAttribute("form") CustomerForm form,
            BindingResult faults,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        if (faults.hasErrors()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return form(model, id);
        }
        try {
            cars.changeCustomer(id, form);
        } catch (ObjectOptimisticLockingFailureException e) {
            response.setStatus(HttpStatus.CONFLICT.value());
            CustomerForm theirs = cars.customerForm(id);
            model.addAttribute("theirs", theirs);
            model.addAttribute("form", form.withVersion(theirs.version()));
            return form(model, id);
        }
        redirect.addFlashAttribute("done", "customer.changed");
        return "redirect:/customers/" + id;
    }

    private static String form(Model model, Long id) {
        model.addAttribute("id", id);
        return "car/customer-form";
    }
}
