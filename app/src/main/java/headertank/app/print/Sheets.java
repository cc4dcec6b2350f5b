package headertank.app.print;

import static java.util.Map.entry;

import headertank.app.audit.AuditTrail;
import headertank.app.car.CarLine;
import headertank.app.car.CarSearch;
import headertank.app.carspec.Revisions;
import headertank.app.check.CheckView;
import headertank.app.check.Checks;
import headertank.app.check.figure.FigureText;
import headertank.app.check.figure.ShopFigures;
import headertank.app.check.page.Conditions;
import headertank.app.check.stored.StoredCheck;
import headertank.app.drawing.Drawings;
import headertank.app.handover.Handovers;
import headertank.app.handover.page.HandoverText;
import headertank.app.shop.CurrentUser;
import headertank.app.shop.Shops;
import java.time.Clock;
import java.util.Map;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.thymeleaf.context.Context;
import org.thymeleaf.spring6.SpringTemplateEngine;

/** Delivery sheets: drawn from the stored check, never from a new rating, and each one noted with its hash. */
@Service
public class Sheets {

    /** A sheet and the name of its file. */
    public record Sheet(String fileName, byte[] pdf) {}

    private final Checks checks;
    private final Revisions revisions;
    private final CarSearch cars;
    private final Shops shops;
    private final ShopFigures figures;
    private final SpringTemplateEngine templates;
    private final PdfPaper pdf;
    private final Drawings drawings;
    private final PublicAddress address;
    private final Handovers handovers;
    private final HandoverText words;
    private final CurrentUser user;
    private final AuditTrail audit;
    private final SheetStore store;

    Sheets(
            Checks checks,
            Revisions revisions,
            CarSearch cars,
            Shops shops,
            ShopFigures figures,
            SpringTemplateEngine templates,
            PdfPaper pdf,
            Drawings drawings,
            PublicAddress address,
            CurrentUser user,
            AuditTrail audit,
            SheetStore store,
            Handovers handovers,
            HandoverText words) {
        this.handovers = handovers;
        this.words = words;
        this.checks = checks;
        this.revisions = revisions;
        this.cars = cars;
        this.shops = shops;
        this.figures = figures;
        this.templates = templates;
        this.pdf = pdf;
        this.drawings = drawings;
        this.address = address;
        this.user = user;
        this.audit = audit;
        this.store = store;
    }

    /** Prints a check and notes that it was printed. */
    @Transactional
    public Sheet print(long checkId, PageSize paper) {
        StoredCheck check = checks.byId(checkId);
        byte[] sheet = pdf.of(xhtml(check), paper);
        store.add(user.shopId(), checkId, user.accountId(), sheet);
        audit.record("check.sheet-printed", "check_run", checkId, "");
        return new Sheet("check-" + checkId + ".pdf", sheet);
    }

    private String xhtml(StoredCheck check) {
        CarLine car = cars.car(check.line().carId());
        FigureText shown = figures.current();
        Context context = new Context(LocaleContextHolder.getLocale());
        context.setVariables(Map.ofEntries(
                entry("view", CheckView.of(check, car, shown)),
                entry("line", check.line()),
                entry("conditions", Conditions.of(check.result(), shown)),
                entry("result", check.result()),
                entry("shown", shown),
                entry("figures", figures),
                entry("list", handovers.of(check.line().id())),
                entry("words", words),
                entry("shop", shops.current()),
                entry("revision", revisions.byId(check.line().revisionId())),
                entry("drawing", drawings.deciding(check)),
                entry("qr", QrCode.of(address.ofCar(car.id()))),
                entry("address", address.ofCar(car.id())),
                entry("printedAt", Clock.systemUTC().instant()),
                entry("printedBy", user.require().displayName())));
        return templates.process("print/sheet", context);
    }
}
