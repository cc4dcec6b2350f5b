package headertank.app.settings;

import headertank.app.audit.AuditTrail;
import headertank.app.problem.ConflictException;
import headertank.app.shop.Shop;
import headertank.app.shop.Shops;
import java.util.Map;
import java.util.TreeMap;
import org.springframework.orm.ObjectOptimisticLockingFailureException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Keeps what the owner decided, and notes each setting that changed. */
@Service
class ShopSettings {

    private final Shops shops;
    private final AuditTrail audit;

    ShopSettings(Shops shops, AuditTrail audit) {
        this.shops = shops;
        this.audit = audit;
    }

    /**
     * @param then what is to hold from now on; its version is that of the form it was typed in
     * @throws ConflictException when somebody else has changed the settings meanwhile
     */
    @Transactional
    void change(Shop then) {
        Shop now = shops.current();
        try {
            shops.change(then);
        } catch (ObjectOptimisticLockingFailureException e) {
            throw new ConflictException("settings.overtaken");
        }
        Map<String, String> after = told(then);
        told(now).forEach((setting, before) -> {
            if (!before.equals(after.get(setting))) {
                audit.record(
                        "settings.changed", "shop", now.id(), setting + ": " + before + " -> " + after.get(setting));
            }
        });
        if (!now.name().equals(then.name())) {
            audit.record("settings.changed", "shop", now.id(), "name");
        }
    }

    /** Every setting but the name, which may be that of a person. */
    private static Map<String, String> told(Shop shop) {
        Map<String, String> told = new TreeMap<>();
        told.put("units", shop.unitSystem().name());
        told.put("language", shop.language());
        told.put("paper", shop.paper().name());
        told.put("timeZone", shop.timeZone());
        told.put("recheckDays", String.valueOf(shop.recheckDays()));
        told.put("thresholds", shop.thresholdsText().isEmpty() ? "usual" : shop.thresholdsText());
        told.put("figures", shop.figuresText().isEmpty() ? "none" : shop.figuresText());
        return told;
    }
}
