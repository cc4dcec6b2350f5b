package headertank.app.job;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;

/**
 * What is typed about a job.
 *
 * @param promised as a date field sends it, {@code 2026-07-01}
 * @param version of the job that was on show; null for a new one
 */
record JobForm(
        @NotBlank(message = "{job.asked.missing}") @Size(max = 2000, message = "{field.long}")
        String asked,

        @NotBlank(message = "{job.promised.missing}") String promised,
        Integer version) {

    /** A promise goes at most this far ahead; beyond, a slip of the pen is likelier (modelling choice) [years]. */
    static final int YEARS_AHEAD = 2;

    JobForm {
        asked = asked == null ? "" : asked.strip();
        promised = promised == null ? "" : promised.strip();
    }

    static JobForm empty() {
        return new JobForm("", "", null);
    }

    static JobForm of(Job job) {
        return new JobForm(job.line().asked(), job.line().promisedOn().toString(), job.version());
    }

    JobForm withVersion(int newest) {
        return new JobForm(asked, promised, newest);
    }

    /** The date, when it can be read. */
    Optional<LocalDate> promisedOn() {
        try {
            return Optional.of(LocalDate.parse(promised));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    /** Whether a promise given today may name that date. */
    static boolean isSensible(LocalDate promisedOn, LocalDate today) {
        return !promisedOn.isBefore(today) && !promisedOn.isAfter(today.plusYears(YEARS_AHEAD));
    }
}
