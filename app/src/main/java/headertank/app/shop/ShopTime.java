package headertank.app.shop;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import org.springframework.stereotype.Component;

/**
 * Days and times of the shop that somebody has signed in to, whatever the machine is set to; UTC where nobody has. The zone is
 * looked up once in a request.
 */
@Component("shopTime")
public class ShopTime {

    private final OncePerRequest<ZoneId> zone;

    ShopTime(Shops shops) {
        zone = new OncePerRequest<>(
                ShopTime.class, () -> shops.currentIfAny().map(Shop::zone).orElse(ZoneOffset.UTC));
    }

    public ZoneId zone() {
        return zone.get();
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
