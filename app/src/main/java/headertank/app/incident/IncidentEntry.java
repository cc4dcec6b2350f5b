package headertank.app.incident;

import headertank.app.unit.Dimension;
import headertank.app.unit.UnitException;
import headertank.app.unit.UnitSystem;
import headertank.app.unit.Units;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Optional;
import org.springframework.validation.Errors;

/** Reads the typed texts of a form. */
record IncidentEntry(Instant occurredAt, Optional<Double> ambientK, double readingK) {

    private static final double COLDEST_K = 223.15;
    private static final double HOTTEST_K = 333.15;
    private static final double READING_MIN_K = 253.15;
    private static final double READING_MAX_K = 473.15;

    /** Empty when something cannot be read; the faults then say what. */
    static Optional<IncidentEntry> read(IncidentForm form, UnitSystem system, Instant now, ZoneId zone, Errors faults) {
        Instant at = when(form.when(), now, zone, faults);
        double reading = temperature(
                "reading", form.reading(), system, READING_MIN_K, READING_MAX_K, "incident.reading.range", faults);
        Optional<Double> ambient = form.ambient().isBlank()
                ? Optional.empty()
                : Optional.of(temperature(
                        "ambient", form.ambient(), system, COLDEST_K, HOTTEST_K, "incident.ambient.range", faults));
        return faults.hasErrors() ? Optional.empty() : Optional.of(new IncidentEntry(at, ambient, reading));
    }

    private static Instant when(String text, Instant now, ZoneId zone, Errors faults) {
        if (text.isBlank()) {
            return now;
        }
        try {
            Instant at = LocalDateTime.parse(text).atZone(zone).toInstant();
            if (at.isAfter(now)) {
                faults.rejectValue("when", "incident.when.future");
            }
            return at;
        } catch (DateTimeException e) {
            faults.rejectValue("when", "incident.when.form");
            return now;
        }
    }

    private static double temperature(
            String field, String text, UnitSystem system, double min, double max, String outside, Errors faults) {
        try {
            double k = Units.parse(text, Dimension.TEMPERATURE, system);
            if (k < min || k > max) {
                Object[] bounds = {
                    Units.show(min, Dimension.TEMPERATURE, system), Units.show(max, Dimension.TEMPERATURE, system)
                };
                faults.rejectValue(field, outside, bounds, outside);
            }
            return k;
        } catch (UnitException e) {
            faults.rejectValue(field, e.messageKey(), e.messageArguments(), e.getMessage());
            return Double.NaN;
        }
    }
}
