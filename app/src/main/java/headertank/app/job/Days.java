package headertank.app.job;

import java.time.LocalDate;
import java.time.ZoneId;

/** Today, and what a promise may name seen from it. */
public record Days(LocalDate today) {

    static Days now() {
        return new Days(LocalDate.now(ZoneId.systemDefault()));
    }

    /** The last day a promise may name. */
    public LocalDate last() {
        return today.plusYears(JobForm.YEARS_AHEAD);
    }
}
