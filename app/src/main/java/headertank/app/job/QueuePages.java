package headertank.app.job;

import headertank.app.audit.AuditTrail;
import headertank.app.check.figure.ShopFigures;
import headertank.app.csv.Csv;
import headertank.app.csv.CsvDownload;
import headertank.app.form.ListPage;
import headertank.app.shop.ShopTime;
import java.time.Instant;
import java.util.List;
import org.springframework.format.annotation.DateTimeFormat;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The lists in full, a page at a time. */
@Controller
class QueuePages {

    private static final String CLOSED = "closed";
    private static final int MOST_PAGES = 10_000;
    private static final int MOST_IN_A_FILE = 50_000;

    private final JobSearch search;
    private final AuditTrail audit;
    private final Unfinished unfinished;
    private final ShopFigures figures;
    private final ShopTime time;

    QueuePages(JobSearch search, AuditTrail audit, Unfinished unfinished, ShopFigures figures, ShopTime time) {
        this.time = time;
        this.search = search;
        this.audit = audit;
        this.unfinished = unfinished;
        this.figures = figures;
    }

    /** @param page from 0 */
    @GetMapping("/jobs")
    String jobs(
            @RequestParam(defaultValue = "all") String show,
            @RequestParam(defaultValue = "") String q,
            @RequestParam(defaultValue = "") String sort,
            @RequestParam(defaultValue = "0") int page,
            Model model) {
        Days days = Days.at(time);
        JobSearch.Wanted wanted = wanted(show, q, sort, days);
        int at = Math.max(0, Math.min(page, MOST_PAGES));
        model.addAttribute("days", days);
        model.addAttribute("show", wanted.closed() ? CLOSED : QueueView.of(show).word());
        model.addAttribute("shows", QueueView.values());
        model.addAttribute("q", q);
        model.addAttribute("sort", wanted.sort());
        model.addAttribute("sorts", JobSearch.Sort.values());
        model.addAttribute("page", at);
        model.addAttribute("count", search.count(wanted));
        model.addAttribute("jobs", ListPage.of(search.find(wanted, at * Queue.PAGE, Queue.PAGE + 1), Queue.PAGE));
        return "job/queue";
    }

    /** The same list as a file. It holds names of customers: who took it is noted. */
    @GetMapping("/jobs.csv")
    @Transactional
    public ResponseEntity<byte[]> file(
            @RequestParam(defaultValue = "all") String show,
            @RequestParam(defaultValue = "") String q,
            @RequestParam(defaultValue = "") String sort) {
        StringBuilder out = new StringBuilder(
                Csv.write(List.of("job", "plate", "car", "customer", "asked", "promised_on", "stage")));
        for (JobLine job : search.find(wanted(show, q, sort, Days.at(time)), 0, MOST_IN_A_FILE)) {
            out.append(Csv.write(List.of(
                    Long.toString(job.id()),
                    job.plate(),
                    job.carTitle(),
                    job.customerName(),
                    job.asked(),
                    job.promisedOn().toString(),
                    job.stage().name())));
        }
        audit.record("job.exported", "job", null, "");
        return CsvDownload.of(out.toString(), "jobs.csv");
    }

    private static JobSearch.Wanted wanted(String show, String words, String sort, Days days) {
        boolean closed = show.equals(CLOSED);
        return new JobSearch.Wanted(
                closed,
                closed ? Queue.Choice.ALL : QueueView.of(show).choice(days.today()),
                words,
                JobSearch.Sort.of(sort).orElse(closed ? JobSearch.Sort.NEWEST : JobSearch.Sort.PROMISED));
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
