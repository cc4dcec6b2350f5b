package headertank.app.check.page;

import headertank.app.car.CarSearch;
import headertank.app.check.CheckView;
import headertank.app.check.Checks;
import headertank.app.check.figure.FigureText;
import headertank.app.check.figure.ShopFigures;
import headertank.app.check.stored.DutyResult;
import headertank.app.check.stored.PointResult;
import headertank.app.check.stored.StoredCheck;
import headertank.app.problem.NotFoundException;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** What stands behind the first screen of a check, each at an address of its own; see {@link CheckTab}. */
@Controller
class FurtherPages {

    private final Checks checks;
    private final CarSearch cars;
    private final ShopFigures figures;

    FurtherPages(Checks checks, CarSearch cars, ShopFigures figures) {
        this.checks = checks;
        this.cars = cars;
        this.figures = figures;
    }

    @GetMapping("/checks/{id}/reasons")
    String reasons(@PathVariable long id, @RequestParam(defaultValue = "") String duty, Model model) {
        StoredCheck check = checks.byId(id);
        model.addAttribute("conditions", Conditions.of(check.result(), figures.current()));
        return page(check, shown(check, duty), CheckTab.REASONS, model);
    }

    /** Without a duty's id the worst of those that have a run. */
    @GetMapping("/checks/{id}/run")
    String run(@PathVariable long id, @RequestParam(defaultValue = "") String duty, Model model) {
        StoredCheck check = checks.byId(id);
        DutyResult one = duty.isEmpty()
                ? check.result().withRun().stream()
                        .findFirst()
                        .orElseThrow(() -> new NotFoundException("run of check", id))
                : shown(check, duty);
        if (one.run().isEmpty()) {
            throw new NotFoundException("run of duty", one.id());
        }
        return page(check, one, CheckTab.RUN, model);
    }

    @GetMapping("/checks/{id}/what-if")
    String whatIf(@PathVariable long id, @RequestParam(defaultValue = "") String duty, Model model) {
        StoredCheck check = checks.byId(id);
        return page(check, shown(check, duty), CheckTab.WHAT_IF, model);
    }

    @GetMapping("/checks/{id}/flags")
    String flags(@PathVariable long id, Model model) {
        StoredCheck check = checks.byId(id);
        return page(check, shown(check, ""), CheckTab.FLAGS, model);
    }

    @GetMapping("/checks/{id}/assumed")
    String assumed(@PathVariable long id, Model model) {
        StoredCheck check = checks.byId(id);
        FigureText shown = figures.current();
        List<AssumedLine> lines = AssumedLine.of(check.result(), shown, figures);
        model.addAttribute(
                "costly", lines.stream().filter(AssumedLine::isCostly).toList());
        model.addAttribute("others", lines.stream().filter(l -> !l.isCostly()).toList());
        return page(check, shown(check, ""), CheckTab.ASSUMED, model);
    }

    /** @param point of the duty; empty for the one that decides */
    @GetMapping("/checks/{id}/working")
    String working(
            @PathVariable long id,
            @RequestParam(defaultValue = "") String duty,
            @RequestParam(defaultValue = "") String point,
            Model model) {
        StoredCheck check = checks.byId(id);
        DutyResult one = shown(check, duty);
        PointResult at = point.isEmpty()
                ? one.deciding()
                : one.points().stream()
                        .filter(p -> p.id().equals(point))
                        .findFirst()
                        .orElseThrow(() -> new NotFoundException("operating point", point));
        model.addAttribute("point", at);
        return page(check, one, CheckTab.WORKING, model);
    }

    private static DutyResult shown(StoredCheck check, String duty) {
        return FirstScreens.shown(check, duty);
    }

    private String page(StoredCheck check, DutyResult duty, CheckTab tab, Model model) {
        FigureText shown = figures.current();
        model.addAttribute("view", CheckView.of(check, cars.car(check.line().carId()), shown));
        model.addAttribute("check", check);
        model.addAttribute("car", cars.car(check.line().carId()));
        model.addAttribute("shown", shown);
        model.addAttribute("duty", duty);
        model.addAttribute("tab", tab);
        model.addAttribute("tabs", CheckTab.of(check.result()));
        return "check/" + tab.path();
    }
}
