package headertank.app.job;

import headertank.app.shop.ShopTime;
import java.time.LocalDate;

/** Today at the shop, and what a promise may name seen from it. */
public record Days(LocalDate today) {

    static Days at(ShopTime time) {
        return new Days(time.today());
    }

    /** The last day a promise may name. */
    public LocalDate last() {
        return today.plusYears(JobForm.YEARS_AHEAD);
    }
}
