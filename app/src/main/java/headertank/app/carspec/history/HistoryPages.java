package headertank.app.carspec.history;

import headertank.app.car.CarSearch;
import headertank.app.carspec.Revision;
import headertank.app.carspec.Revisions;
import headertank.app.evidence.Lessons;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** What happened to a car, and what two of its revisions differ in. */
@Controller
class HistoryPages {

    private static final int MOST_EVENTS = 500;

    private final CarSearch cars;
    private final Revisions revisions;
    private final Timeline timeline;
    private final Differences differences;
    private final RevisionComparison comparison;
    private final Lessons lessons;

    HistoryPages(
            CarSearch cars,
            Revisions revisions,
            Timeline timeline,
            Differences differences,
            RevisionComparison comparison,
            Lessons lessons) {
        this.cars = cars;
        this.revisions = revisions;
        this.timeline = timeline;
        this.differences = differences;
        this.comparison = comparison;
        this.lessons = lessons;
    }

    @GetMapping("/cars/{id}/history")
    String history(@PathVariable long id, Model model) {
        model.addAttribute("car", cars.car(id));
        List<Timeline.Event> events = timeline.of(id, MOST_EVENTS);
        model.addAttribute("events", events);
        model.addAttribute(
                "revisions",
                events.stream().filter(e -> e.kind() == Timeline.Kind.REVISION).toList());
        return "carspec/history";
    }

    /** Without numbers it compares the newest revision with the one before. */
    @GetMapping("/cars/{id}/compare")
    String compare(
            @PathVariable long id,
            @RequestParam(required = false) Integer from,
            @RequestParam(required = false) Integer to,
            @RequestParam(required = false) String whole,
            Model model) {
        model.addAttribute("car", cars.car(id));
        int newest =
                to != null ? to : revisions.latest(id).map(Revision::number).orElse(1);
        Revision after = revisions.of(id, newest);
        Revision before = revisions.of(id, from != null ? from : Math.max(1, newest - 1));
        model.addAttribute("before", before);
        model.addAttribute("after", after);
        model.addAttribute("lines", differences.between(before.spec(), after.spec()));
        if (whole != null || before.number() == after.number()) {
            costs(id, before, after, model);
        }
        return "carspec/compare";
    }

    /** What each difference costs: comes in behind the page, for it rates many states of the car. */
    @GetMapping("/cars/{id}/compare/costs")
    String costs(@PathVariable long id, @RequestParam int from, @RequestParam int to, Model model) {
        costs(id, revisions.of(id, from), revisions.of(id, to), model);
        return "carspec/cost :: all";
    }

    private void costs(long carId, Revision before, Revision after, Model model) {
        model.addAttribute("carId", carId);
        model.addAttribute("before", before);
        model.addAttribute(
                "duties",
                before.number() == after.number()
                        ? List.of()
                        : comparison.between(before.spec(), after.spec(), lessons.rater(carId)));
    }
}
