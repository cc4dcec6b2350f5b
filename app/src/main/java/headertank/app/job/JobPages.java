package headertank.app.job;

import headertank.app.car.CarSearch;
import headertank.app.check.figure.ShopFigures;
import headertank.app.gate.Gate;
import headertank.app.gate.Stage;
import headertank.app.handover.Handovers;
import headertank.app.language.Dates;
import headertank.app.problem.ConflictException;
import headertank.app.shop.CurrentUser;
import headertank.app.shop.Role;
import headertank.app.shop.ShopTime;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import java.time.LocalDate;
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

/** A job: its form, its page, and what is done with it. */
@Controller
class JobPages {

    private final Jobs jobs;
    private final CarSearch cars;
    private final ShopFigures figures;
    private final Dates dates;
    private final Gate gate;
    private final Handovers handovers;
    private final CurrentUser user;
    private final ShopTime time;

    JobPages(
            Jobs jobs,
            CarSearch cars,
            ShopFigures figures,
            Dates dates,
            Gate gate,
            Handovers handovers,
            CurrentUser user,
            ShopTime time) {
        this.time = time;
        this.jobs = jobs;
        this.cars = cars;
        this.figures = figures;
        this.dates = dates;
        this.gate = gate;
        this.handovers = handovers;
        this.user = user;
    }

    @GetMapping("/cars/{id}/jobs/new")
    String blank(@PathVariable long id, Model model) {
        model.addAttribute("form", JobForm.empty());
        return newForm(id, model);
    }

    @PostMapping("/cars/{id}/jobs")
    String open(
            @PathVariable long id,
            @Valid @ModelAttribute("form") JobForm form,
            BindingResult faults,
            @RequestParam(required = false) UUID key,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        Optional<LocalDate> promised = promised(form, null, Days.at(time), faults);
        if (faults.hasErrors()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return newForm(id, model);
        }
        try {
            long job = jobs.open(id, form.asked(), promised.orElseThrow(), key);
            redirect.addFlashAttribute("done", "job.opened");
            return "redirect:/jobs/" + job;
        } catch (ConflictException e) {
            faults.reject(e.messageKey(), e.messageKey());
            response.setStatus(HttpStatus.CONFLICT.value());
            return newForm(id, model);
        }
    }

    @GetMapping("/jobs/{id}")
    String job(@PathVariable long id, Model model) {
        Job job = jobs.byId(id);
        boolean handedOver = job.line().stage() == Stage.HANDED_OVER;
        model.addAttribute("form", handedOver ? TakeBackForm.empty(job.version()) : StopForm.empty(job.version()));
        return page(job, model);
    }

    @GetMapping("/jobs/{id}/edit")
    String edit(@PathVariable long id, Model model) {
        Job job = jobs.byId(id);
        model.addAttribute("form", JobForm.of(job));
        return editForm(job, model);
    }

    @PostMapping("/jobs/{id}")
    String change(
            @PathVariable long id,
            @Valid @ModelAttribute("form") JobForm form,
            BindingResult faults,
            @RequestParam(required = false) UUID key,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        Job job = jobs.byId(id);
        Optional<LocalDate> promised = promised(form, job.line().promisedOn(), Days.at(time), faults);
        if (faults.hasErrors()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return editForm(job, model);
        }
        try {
            jobs.change(id, form.asked(), promised.orElseThrow(), form.version() == null ? -1 : form.version(), key);
        } catch (ConflictException e) {
            Job now = jobs.byId(id);
            response.setStatus(HttpStatus.CONFLICT.value());
            model.addAttribute("form", form.withVersion(now.version()));
            model.addAttribute("theirs", JobForm.of(now));
            return editForm(now, model);
        }
        redirect.addFlashAttribute("done", "job.changed");
        return "redirect:/jobs/" + id;
    }

    @PostMapping("/jobs/{id}/stop")
    String stop(
            @PathVariable long id,
            @Valid @ModelAttribute("form") StopForm form,
            BindingResult faults,
            @RequestParam(required = false) UUID key,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        Job job = jobs.byId(id);
        if (faults.hasErrors()) {
            if (job.line().stage() == Stage.HANDED_OVER) {
                throw new ConflictException("job.changed-meanwhile");
            }
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return page(job, model);
        }
        boolean forGood = form.how() == StopForm.How.CALL_OFF;
        if (forGood) {
            jobs.callOff(id, form.reason(), form.version(), key);
        } else {
            jobs.pause(id, form.reason(), form.version(), key);
        }
        redirect.addFlashAttribute("done", forGood ? "job.called-off" : "job.paused");
        return "redirect:/jobs/" + id;
    }

    @PostMapping("/jobs/{id}/resume")
    String resume(
            @PathVariable long id,
            @RequestParam int version,
            @RequestParam(required = false) UUID key,
            RedirectAttributes redirect) {
        jobs.resume(id, version, key);
        redirect.addFlashAttribute("done", "job.resumed");
        return "redirect:/jobs/" + id;
    }

    /** Asks once more before the last click. */
    @GetMapping("/jobs/{id}/hand-over")
    String askToHandOver(@PathVariable long id, Model model) {
        Job job = jobs.byId(id);
        model.addAttribute("handover", job.line().checkId().map(handovers::of).orElse(null));
        return shown(job, model, "job/hand-over");
    }

    @PostMapping("/jobs/{id}/hand-over")
    String handOver(
            @PathVariable long id,
            @RequestParam int version,
            @RequestParam(defaultValue = "") String sure,
            @RequestParam(required = false) UUID key,
            RedirectAttributes redirect) {
        if (!sure.equals("yes")) {
            return "redirect:/jobs/" + id + "/hand-over";
        }
        jobs.handOver(id, version, key);
        redirect.addFlashAttribute("done", "job.handed-over");
        return "redirect:/jobs/" + id;
    }

    @PostMapping("/jobs/{id}/take-back")
    String takeBack(
            @PathVariable long id,
            @Valid @ModelAttribute("form") TakeBackForm form,
            BindingResult faults,
            @RequestParam(required = false) UUID key,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        Job job = jobs.byId(id);
        if (faults.hasErrors()) {
            if (job.line().stage() != Stage.HANDED_OVER) {
                throw new ConflictException("job.changed-meanwhile");
            }
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return page(job, model);
        }
        jobs.takeBack(id, form.reason(), form.version(), key);
        redirect.addFlashAttribute("done", "job.taken-back");
        return "redirect:/jobs/" + id;
    }

    /** The promised date; a date that stood before may stay, however old it is. */
    private Optional<LocalDate> promised(JobForm form, LocalDate before, Days days, BindingResult faults) {
        Optional<LocalDate> promised = form.promisedOn();
        if (promised.isEmpty()) {
            if (!form.promised().isEmpty()) {
                faults.rejectValue("promised", "job.promised.unreadable", new Object[] {form.promised()}, null);
            }
        } else if (!promised.get().equals(before) && !JobForm.isSensible(promised.get(), days.today())) {
            faults.rejectValue(
                    "promised",
                    "job.promised.outside",
                    new Object[] {form.promised(), dates.weekday(days.today()), dates.weekday(days.last())},
                    null);
        }
        return promised;
    }

    private String newForm(long carId, Model model) {
        model.addAttribute("car", cars.car(carId));
        model.addAttribute("days", Days.at(time));
        return "job/form";
    }

    private String editForm(Job job, Model model) {
        model.addAttribute("job", job);
        return newForm(job.line().carId(), model);
    }

    private String page(Job job, Model model) {
        model.addAttribute("hows", StopForm.How.values());
        model.addAttribute("mayTakeBack", user.has(Role.OWNER) && job.line().stage() == Stage.HANDED_OVER);
        return shown(job, model, "job/job");
    }

    private String shown(Job job, Model model, String view) {
        model.addAttribute("job", job);
        model.addAttribute("standing", gate.ofJob(job.line().id()));
        model.addAttribute("car", cars.car(job.line().carId()));
        model.addAttribute("days", Days.at(time));
        model.addAttribute("shown", figures.current());
        return view;
    }
}
