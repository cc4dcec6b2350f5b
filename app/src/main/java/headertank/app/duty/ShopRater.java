package headertank.app.duty;

import headertank.app.shop.CurrentUser;
import headertank.app.shop.OncePerRequest;
import headertank.app.shop.Shop;
import headertank.app.shop.Shops;
import headertank.calc.Rater;
import headertank.calc.duty.Duty;
import headertank.calc.verdict.StandardPolicy;
import java.util.Optional;
import java.util.function.Supplier;
import org.springframework.stereotype.Component;

/**
 * The rater of the shop that somebody has signed in to: what is installed, the shop's own duties that are switched on, its
 * thresholds and its figures. Made once in a request. Where nobody has signed in, what is installed.
 */
@Component("shopRater")
public class ShopRater implements Supplier<Rater> {

    private final Rater installed;
    private final CurrentUser user;
    private final DutyStore store;

    /** Of whoever has signed in; that changes within a request only where nobody has before. */
    private final OncePerRequest<Known> known;

    ShopRater(Rater installed, CurrentUser user, Shops shops, DutyStore store) {
        this.installed = installed;
        this.user = user;
        this.store = store;
        this.known =
                new OncePerRequest<>(ShopRater.class, () -> new Known(user.shopId(), of(shops.byId(user.shopId()))));
    }

    private record Known(long shopId, Rater rater) {}

    @Override
    public Rater get() {
        if (user.member().isEmpty()) {
            return installed;
        }
        Known now = known.get();
        if (now.shopId() != user.shopId()) {
            known.forget();
            now = known.get();
        }
        return now.rater();
    }

    /** To be called when the shop's duties have changed within a request. */
    void forget() {
        known.forget();
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
