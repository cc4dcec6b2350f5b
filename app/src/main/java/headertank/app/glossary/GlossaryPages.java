package headertank.app.glossary;

import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The glossary. */
@Controller
class GlossaryPages {

    private final Glossary glossary;

    GlossaryPages(Glossary glossary) {
        this.glossary = glossary;
    }

    @GetMapping("/glossary")
    String all(@RequestParam(defaultValue = "") String q, Model model) {
        model.addAttribute("q", q);
        model.addAttribute("terms", glossary.lines(q));
        return "glossary/glossary";
    }
}
