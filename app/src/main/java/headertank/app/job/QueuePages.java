package headertank.app.job;

import headertank.app.check.figure.ShopFigures;
import headertank.app.shop.ShopTime;
import java.time.Instant;
import java.time.LocalDate;
import org.springframework.format.annotation.DateTimeFormat;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The lists in full, a page at a time. */
@Controller
class QueuePages {

    private final Queue queue;
    private final Unfinished unfinished;
    private final ShopFigures figures;
    private final ShopTime time;

    QueuePages(Queue queue, Unfinished unfinished, ShopFigures figures, ShopTime time) {
        this.time = time;
        this.queue = queue;
        this.unfinished = unfinished;
        this.figures = figures;
    }

    @GetMapping("/jobs")
    String jobs(
            @RequestParam(defaultValue = "all") String show,
            @RequestParam(required = false) @DateTimeFormat(iso = DateTimeFormat.ISO.DATE) LocalDate after,
            @RequestParam(defaultValue = "0") long afterId,
            Model model) {
        Days days = Days.at(time);
        QueueView wanted = QueueView.of(show);
        Queue.Place place = after == null ? Queue.Place.START : new Queue.Place(after, afterId);
        model.addAttribute("days", days);
        model.addAttribute("show", wanted);
        model.addAttribute("shows", QueueView.values());
        model.addAttribute(
                "jobs", ListPage.of(queue.open(wanted.choice(days.today()), place, Queue.PAGE + 1), Queue.PAGE));
        return "job/queue";
    }

    @GetMapping("/jobs/unsigned")
    String unsigned(@RequestParam(defaultValue = "" + Long.MAX_VALUE) long before, Model model) {
        model.addAttribute("shown", figures.current());
        model.addAttribute("unsigned", ListPage.of(unfinished.unsigned(before, Queue.PAGE + 1), Queue.PAGE));
        return "job/unsigned";
    }

    @GetMapping("/jobs/overdue")
    String overdue(
            @RequestParam(required = false) @DateTimeFormat(iso = DateTimeFormat.ISO.DATE_TIME) Instant after,
            @RequestParam(defaultValue = "0") long afterCar,
            Model model) {
        Instant behind = after == null ? Instant.EPOCH : after;
        model.addAttribute("shown", figures.current());
        model.addAttribute("recheckDays", unfinished.recheckDays());
        model.addAttribute(
                "overdue",
                ListPage.of(unfinished.overdue(Instant.now(), behind, afterCar, Queue.PAGE + 1), Queue.PAGE));
        return "job/overdue";
    }
}
