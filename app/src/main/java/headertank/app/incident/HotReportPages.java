package headertank.app.incident;

import headertank.app.check.figure.ShopFigures;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The list of all reports. */
@Controller
class HotReportPages {

    private static final int MOST_PAGES = 10_000;

    private final HotReports reports;
    private final ShopFigures figures;

    HotReportPages(HotReports reports, ShopFigures figures) {
        this.reports = reports;
        this.figures = figures;
    }

    /** @param page from 0 */
    @GetMapping("/incidents")
    String list(@RequestParam(defaultValue = "") String q, @RequestParam(defaultValue = "0") int page, Model model) {
        int at = Math.max(0, Math.min(page, MOST_PAGES));
        List<HotReports.Line> found = reports.page(q, at);
        boolean more = found.size() > HotReports.PAGE;
        model.addAttribute("reports", more ? found.subList(0, HotReports.PAGE) : found);
        model.addAttribute("shown", figures.current());
        model.addAttribute("more", more);
        model.addAttribute("page", at);
        model.addAttribute("q", q);
        model.addAttribute("count", reports.count(q));
        return "incident/list";
    }
}
