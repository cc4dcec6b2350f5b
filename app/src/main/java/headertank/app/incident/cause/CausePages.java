package headertank.app.incident.cause;

import headertank.app.incident.Incident;
import headertank.app.incident.Incidents;
import java.util.UUID;
import org.springframework.security.web.csrf.CsrfToken;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The causes of a report, which come in behind it, and the taps that move them. */
@Controller
class CausePages {

    private final Incidents incidents;
    private final IncidentAnswers answers;
    private final HotCauses causes;

    CausePages(Incidents incidents, IncidentAnswers answers, HotCauses causes) {
        this.incidents = incidents;
        this.answers = answers;
        this.causes = causes;
    }

    /** The token of its forms is made first: a fragment begins to be sent before its first form, and then no session can begin. */
    @GetMapping("/incidents/{id}/causes")
    String causes(@PathVariable long id, CsrfToken token, Model model) {
        token.getToken();
        Incident incident = incidents.byId(id);
        model.addAttribute("incident", incident);
        model.addAttribute("causes", causes.of(incident));
        return "incident/causes :: causes";
    }

    @PostMapping("/incidents/{id}/answers")
    String answer(
            @PathVariable long id,
            @RequestParam(required = false) UUID key,
            @RequestParam(defaultValue = "") String question,
            @RequestParam(defaultValue = "") String answer) {
        answers.add(id, new IncidentAnswerForm(key, question, answer));
        return "redirect:/incidents/" + id + "#causes";
    }
}
