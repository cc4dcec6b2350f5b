package headertank.app.duty;

import headertank.app.shop.CurrentUser;
import headertank.app.shop.Shop;
import headertank.app.shop.Shops;
import headertank.calc.Rater;
import headertank.calc.duty.Duty;
import headertank.calc.verdict.StandardPolicy;
import java.util.Optional;
import java.util.function.Supplier;
import org.springframework.stereotype.Component;
import org.springframework.web.context.request.RequestAttributes;
import org.springframework.web.context.request.RequestContextHolder;

/**
 * The rater of the shop that somebody has signed in to: what is installed, the shop's own duties that are switched on, its
 * thresholds and its figures. Made once in a request. Where nobody has signed in, what is installed.
 */
@Component("shopRater")
public class ShopRater implements Supplier<Rater> {

    private static final String KNOWN = ShopRater.class.getName();

    private final Rater installed;
    private final CurrentUser user;
    private final Shops shops;
    private final DutyStore store;

    ShopRater(Rater installed, CurrentUser user, Shops shops, DutyStore store) {
        this.installed = installed;
        this.user = user;
        this.shops = shops;
        this.store = store;
    }

    private record Known(long shopId, Rater rater) {}

    @Override
    public Rater get() {
        if (user.member().isEmpty()) {
            return installed;
        }
        long shop = user.shopId();
        RequestAttributes request = RequestContextHolder.getRequestAttributes();
        if (request == null) {
            return of(shops.byId(shop));
        }
        Object known = request.getAttribute(KNOWN, RequestAttributes.SCOPE_REQUEST);
        if (known instanceof Known k && k.shopId() == shop) {
            return k.rater();
        }
        Rater made = of(shops.byId(shop));
        request.setAttribute(KNOWN, new Known(shop, made), RequestAttributes.SCOPE_REQUEST);
        return made;
    }

    /** To be called when the shop's duties have changed within a request. */
    void forget() {
        RequestAttributes request = RequestContextHolder.getRequestAttributes();
        if (request != null) {
            request.removeAttribute(KNOWN, RequestAttributes.SCOPE_REQUEST);
        }
    }

    private Rater of(Shop shop) {
        Rater rater = installed;
        if (!shop.thresholdsText().isEmpty()) {
            rater = rater.with(new StandardPolicy(shop.thresholds()));
        }
        if (!shop.figuresText().isEmpty()) {
            rater = rater.with(shop.figures());
        }
        for (DutyVersion version : store.newest(shop.id())) {
            Optional<Duty> duty = version.active() ? version.duty() : Optional.empty();
            if (duty.isPresent() && !installed.duties().containsKey(version.dutyId())) {
                rater = rater.with(DutyVersion.source(duty.get(), version));
            }
        }
        return rater;
    }

    /** What every shop has. */
    Rater installed() {
        return installed;
    }
}
