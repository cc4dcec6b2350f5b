package headertank.app.job;

import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Dates on a page, seen from today. */
public record Days(LocalDate today, Locale locale) {

    static Days of(Locale locale) {
        return new Days(LocalDate.now(ZoneId.systemDefault()), locale);
    }

    /** With the day of the week, which is what people at a counter agree on. */
    public String show(LocalDate day) {
        return DateTimeFormatter.ofPattern("EEE d MMM yyyy", locale).format(day);
    }

    /** The last day a promise may name. */
    public LocalDate last() {
        return today.plusYears(JobForm.YEARS_AHEAD);
    }
}
