package headertank.app.shop;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import org.springframework.stereotype.Component;
import org.springframework.web.context.request.RequestAttributes;
import org.springframework.web.context.request.RequestContextHolder;

/**
 * Days and times of the shop that somebody has signed in to, whatever the machine is set to; UTC where nobody has. The zone is
 * looked up once in a request.
 */
@Component("shopTime")
public class ShopTime {

    private static final String KNOWN = ShopTime.class.getName();

    private final Shops shops;

    ShopTime(Shops shops) {
        this.shops = shops;
    }

    public ZoneId zone() {
        RequestAttributes request = RequestContextHolder.getRequestAttributes();
        if (request == null) {
            return lookUp();
        }
        Object known = request.getAttribute(KNOWN, RequestAttributes.SCOPE_REQUEST);
        if (known == null) {
            known = lookUp();
            request.setAttribute(KNOWN, known, RequestAttributes.SCOPE_REQUEST);
        }
        return (ZoneId) known;
    }

    private ZoneId lookUp() {
        return shops.currentIfAny().map(Shop::zone).orElse(ZoneOffset.UTC);
    }

    /** Today's date at the shop. */
    public LocalDate today() {
        return LocalDate.now(clock());
    }

    /** What the shop's clock shows. */
    public LocalDateTime now() {
        return LocalDateTime.now(clock());
    }

    /** A moment as the shop's clock showed it. */
    public ZonedDateTime at(Instant moment) {
        return moment.atZone(zone());
    }

    private Clock clock() {
        return Clock.system(zone());
    }
}
