package headertank.app.job;

import headertank.app.check.figure.ShopFigures;
import headertank.app.form.ListPage;
import headertank.app.language.Dates;
import headertank.app.shop.CurrentUser;
import headertank.app.shop.Role;
import headertank.app.shop.ShopTime;
import java.time.Instant;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

/** The page that a day begins with: for each role that somebody holds, what waits for it. */
@Controller
class StartPage {

    /** Lines of each list; the rest is on the list's own page. */
    private static final int SHOWN = 12;

    private final Queue queue;
    private final Unfinished unfinished;
    private final FirstSteps firstSteps;
    private final CurrentUser user;
    private final ShopFigures figures;
    private final Dates dates;
    private final ShopTime time;

    StartPage(
            Queue queue,
            Unfinished unfinished,
            FirstSteps firstSteps,
            CurrentUser user,
            ShopFigures figures,
            Dates dates,
            ShopTime time) {
        this.time = time;
        this.queue = queue;
        this.unfinished = unfinished;
        this.firstSteps = firstSteps;
        this.user = user;
        this.figures = figures;
        this.dates = dates;
    }

    @GetMapping("/first-steps")
    String firstSteps(Model model) {
        model.addAttribute("steps", firstSteps.steps());
        return "job/first-steps";
    }

    @GetMapping("/")
    String start(Model model) {
        Days days = Days.at(time);
        model.addAttribute("days", days);
        model.addAttribute("today", dates.weekday(days.today()));
        model.addAttribute("shown", figures.current());
        if (user.has(Role.FRONT_DESK)) {
            model.addAttribute("due", jobs(QueueView.DUE, days));
        }
        if (user.has(Role.TECHNICIAN)) {
            model.addAttribute("workshop", jobs(QueueView.WORKSHOP, days));
        }
        if (user.has(Role.OWNER)) {
            if (firstSteps.isNew()) {
                model.addAttribute("steps", firstSteps.steps());
            }
            model.addAttribute("all", jobs(QueueView.ALL, days));
            model.addAttribute("unsigned", ListPage.of(unfinished.unsigned(Long.MAX_VALUE, SHOWN + 1), SHOWN));
            model.addAttribute(
                    "overdue", ListPage.of(unfinished.overdue(Instant.now(), Instant.EPOCH, 0, SHOWN + 1), SHOWN));
            model.addAttribute("recheckDays", unfinished.recheckDays());
        }
        return "job/start";
    }

    private ListPage<JobLine> jobs(QueueView show, Days days) {
        return ListPage.of(queue.open(show.choice(days.today()), Queue.Position.START, SHOWN + 1), SHOWN);
    }
}
