package headertank.app.audit;

import headertank.app.csv.Csv;
import headertank.app.csv.CsvDownload;
import headertank.app.form.ListPage;
import headertank.app.shop.ShopTime;
import java.time.LocalDate;
import java.util.List;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.format.annotation.DateTimeFormat;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The audit trail to read, filter and take home. Taking it home leaves a line in it. */
@Controller
class AuditPages {

    /** What was done, as a choice of the filter. */
    record Action(String token, String label) {}

    private static final List<String> HEADER =
            List.of("id", "at", "who", "action", "subject_type", "subject_id", "detail");

    private final AuditLog log;
    private final AuditTrail trail;
    private final MessageSource messages;
    private final ShopTime time;

    AuditPages(AuditLog log, AuditTrail trail, MessageSource messages, ShopTime time) {
        this.log = log;
        this.trail = trail;
        this.messages = messages;
        this.time = time;
    }

    @GetMapping("/audit")
    String read(
            @RequestParam(required = false) Long account,
            @RequestParam(defaultValue = "") String action,
            @RequestParam(required = false) @DateTimeFormat(iso = DateTimeFormat.ISO.DATE) LocalDate from,
            @RequestParam(required = false) @DateTimeFormat(iso = DateTimeFormat.ISO.DATE) LocalDate until,
            @RequestParam(defaultValue = "" + Long.MAX_VALUE) long before,
            Model model) {
        AuditFilter filter = new AuditFilter(account, action, from, until);
        ListPage<AuditEntry> page = ListPage.of(log.page(filter, before, time.zone()), AuditLog.PAGE);
        model.addAttribute("filter", filter);
        model.addAttribute("entries", page.lines());
        model.addAttribute("next", page.more() ? page.last().id() : null);
        model.addAttribute("people", log.people());
        model.addAttribute(
                "actions",
                log.actions().stream().map(a -> new Action(a, word(a))).toList());
        return "audit/trail";
    }

    /** What was done, in words; a deed without words keeps its token. */
    private String word(String action) {
        return messages.getMessage("audit.action." + action, null, action, LocaleContextHolder.getLocale());
    }

    @GetMapping("/audit.csv")
    @Transactional
    public ResponseEntity<byte[]> export(
            @RequestParam(required = false) Long account,
            @RequestParam(defaultValue = "") String action,
            @RequestParam(required = false) @DateTimeFormat(iso = DateTimeFormat.ISO.DATE) LocalDate from,
            @RequestParam(required = false) @DateTimeFormat(iso = DateTimeFormat.ISO.DATE) LocalDate until) {
        StringBuilder out = new StringBuilder(Csv.write(HEADER));
        log.each(
                new AuditFilter(account, action, from, until),
                time.zone(),
                e -> out.append(Csv.write(List.of(
                        Long.toString(e.id()),
                        e.at().toString(),
                        e.who().orElse(""),
                        e.action(),
                        e.subjectType(),
                        e.subjectId() == null ? "" : e.subjectId().toString(),
                        e.detail()))));
        trail.record("audit.exported", "shop", null, "");
        return CsvDownload.of(out.toString(), "audit.csv");
    }
}
