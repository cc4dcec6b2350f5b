package headertank.app.shop;

import headertank.app.problem.NotFoundException;
import java.util.Optional;
import org.springframework.orm.ObjectOptimisticLockingFailureException;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Finds, founds and changes shops. */
@Component
@Transactional(readOnly = true)
public class Shops {

    private final ShopRepository shops;
    private final CurrentUser user;

    Shops(ShopRepository shops, CurrentUser user) {
        this.shops = shops;
        this.user = user;
    }

    /** The shop of whoever has signed in. */
    public Shop current() {
        return byId(user.shopId());
    }

    /** For page headers: empty when nobody has signed in. Fragments call {@code @shops.currentIfAny()}. */
    public Optional<Shop> currentIfAny() {
        return user.member().map(m -> byId(m.shopId()));
    }

    public Shop byId(long id) {
        return find(id).view();
    }

    /** Whether every shop in this database is an invented one. */
    public boolean allInvented() {
        return !shops.existsByInventedFalse();
    }

    /** Whether no other shop keeps its records here. */
    public boolean isOnlyOne() {
        return shops.count() == 1;
    }

    /**
     * Founds a shop; returns its id.
     *
     * @param timeZone name of the IANA time zone database
     */
    @Transactional
    public long found(String name, String timeZone, boolean invented) {
        return shops.saveAndFlush(new ShopRow(name, timeZone, invented)).id();
    }

    /**
     * Changes the shop of whoever has signed in.
     *
     * @param then what is to hold from now on; its version is that of the form it was typed in
     * @throws ObjectOptimisticLockingFailureException when somebody else has changed it meanwhile
     */
    @Transactional
    public void change(Shop then) {
        ShopRow now = find(user.shopId());
        if (now.version() != then.settingsVersion()) {
            throw new ObjectOptimisticLockingFailureException(Shop.class, now.id());
        }
        now.take(then);
        shops.saveAndFlush(now);
    }

    /** Until the end of the transaction, whoever else asks for this waits: what only one may do at a time in a shop. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void oneAtATime(long id) {
        shops.hold(id).orElseThrow(() -> new NotFoundException("shop", id));
    }

    private ShopRow find(long id) {
        return shops.findById(id).orElseThrow(() -> new NotFoundException("shop", id));
    }
}
