package headertank.app.known;

import headertank.app.unit.Dimension;
import headertank.app.unit.UnitException;
import headertank.app.unit.UnitSystem;
import headertank.app.unit.Units;
import headertank.calc.choice.SensorPlacement;
import headertank.calc.duty.Duty;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.quantity.Range;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.springframework.validation.BindingResult;

/** Reads a settled reading from its form. */
final class ReadingEntry {

    private static final Range SHOWN_K = Range.of(273.15, 433.15);
    private static final Range OUTSIDE_K = Range.of(233.15, 328.15);

    private ReadingEntry() {}

    /**
     * @param duties that may be named
     * @param faults takes what is wrong, by field
     * @return the reading; empty when something is wrong
     */
    static Optional<SettledText> read(ReadingForm form, List<Duty> duties, UnitSystem system, BindingResult faults) {
        double shown = temperature("shown", form.shown(), SHOWN_K, system, faults);
        double outside = temperature("outside", form.outside(), OUTSIDE_K, system, faults);
        if (shown <= outside) {
            faults.rejectValue("shown", "known.reading.colder");
        }
        Optional<SensorPlacement> sensor = Arrays.stream(SensorPlacement.values())
                .filter(p -> p.name().equals(form.sensor()))
                .findFirst();
        if (sensor.isEmpty() && !form.sensor().isEmpty()) {
            faults.rejectValue("sensor", "known.reading.sensor.unknown");
        }
        int slash = form.at().indexOf('/');
        String duty = slash < 0 ? "" : form.at().substring(0, slash);
        String point = form.at().substring(slash + 1);
        boolean named = duties.stream()
                .filter(d -> d.id().equals(duty))
                .flatMap(d -> settling(d).stream())
                .anyMatch(p -> p.id().equals(point));
        if (!named) {
            faults.rejectValue("at", "known.reading.at.missing");
        }
        return faults.hasErrors()
                ? Optional.empty()
                : Optional.of(
                        new SettledText(duty, point, shown, outside, form.dial().sigmaK(), sensor));
    }

    /** Points at which a reading settles. */
    static List<OperatingPoint> settling(Duty duty) {
        return duty.points().stream().filter(p -> !p.engineOff()).toList();
    }

    private static double temperature(
            String field, String typed, Range allowed, UnitSystem system, BindingResult faults) {
        try {
            double k = Units.parse(typed, Dimension.TEMPERATURE, system);
            if (!allowed.contains(k)) {
                Object[] bounds = {
                    typed,
                    Units.show(allowed.min(), Dimension.TEMPERATURE, system),
                    Units.show(allowed.max(), Dimension.TEMPERATURE, system)
                };
                faults.rejectValue(field, "duties.range", bounds, "");
                return Double.NaN;
            }
            return k;
        } catch (UnitException e) {
            faults.rejectValue(field, e.messageKey(), e.messageArguments(), e.getMessage());
            return Double.NaN;
        }
    }
}
