package headertank.app.audit;

import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

/** Whether what is kept for ever is as it was sealed, worked out while the owner waits. */
@Controller
class SealPages {

    private static final int SHOWN = 200;

    private final Seals seals;

    SealPages(Seals seals) {
        this.seals = seals;
    }

    @GetMapping("/audit/seals")
    String verified(Model model) {
        Seals.Verified verified = seals.verify();
        model.addAttribute("verified", verified);
        model.addAttribute("seen", verified.faults().stream().limit(SHOWN).toList());
        return "audit/seals";
    }
}
