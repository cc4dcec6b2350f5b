package headertank.app.glossary;

import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;
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
        List<Glossary.Line> lines = glossary.lines(q);
        model.addAttribute("q", q);
        model.addAttribute("terms", lines);
        model.addAttribute(
                "parts",
                lines.stream().collect(Collectors.groupingBy(Glossary.Line::part, TreeMap::new, Collectors.toList())));
        return "glossary/glossary";
    }
}
