package headertank.app.drawing;

import headertank.app.car.CarSearch;
import headertank.app.check.Checks;
import headertank.app.check.figure.ShopFigures;
import headertank.app.check.page.CheckTab;
import headertank.app.check.stored.StoredCheck;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** The drawings of a check, at the operating point that one chooses. */
@Controller
class DrawingPages {

    private final Checks checks;
    private final CarSearch cars;
    private final Drawings drawings;
    private final ShopFigures figures;

    DrawingPages(Checks checks, CarSearch cars, Drawings drawings, ShopFigures figures) {
        this.checks = checks;
        this.cars = cars;
        this.drawings = drawings;
        this.figures = figures;
    }

    @GetMapping("/checks/{id}/drawing")
    String drawing(
            @PathVariable long id,
            @RequestParam(defaultValue = "") String duty,
            @RequestParam(defaultValue = "") String point,
            Model model) {
        StoredCheck check = checks.byId(id);
        model.addAttribute("check", check);
        model.addAttribute("shown", figures.current());
        model.addAttribute("car", cars.car(check.line().carId()));
        CheckDrawing drawing = drawings.at(check, duty, point);
        model.addAttribute("drawing", drawing);
        model.addAttribute("duty", drawing.duty());
        model.addAttribute("tab", CheckTab.DRAWING);
        model.addAttribute("tabs", CheckTab.of(check.result()));
        return "drawing/drawing";
    }
}
