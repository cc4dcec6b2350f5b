package headertank.app.handover.page;

import headertank.app.handover.EntryForm;
import headertank.app.handover.item.CheckItem;
import headertank.app.handover.item.MeasuredQuantity;
import headertank.app.unit.Dimension;
import headertank.app.unit.UnitException;
import headertank.app.unit.UnitSystem;
import headertank.app.unit.Units;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.springframework.validation.Errors;

/** Reads and judges what was typed for an item. */
final class EntryReading {

    private static final Pattern CLOCK = Pattern.compile("(\\d{1,3}):([0-5]\\d)");
    private static final Pattern BARE = Pattern.compile("[\\d.,\\s]+");

    private EntryReading() {}

    /** The reading in SI, empty where none is meant; the faults say what is wrong. */
    static Optional<Double> read(CheckItem item, EntryForm form, UnitSystem system, Errors faults) {
        boolean said = !form.note().isBlank();
        switch (form.outcome()) {
            case DONE -> {
                if (item.isMeasured()) {
                    faults.rejectValue("value", "handover.value.missing");
                }
            }
            case FAULT -> {
                if (!said) {
                    faults.rejectValue("note", "handover.note.fault");
                }
            }
            case NOT_APPLICABLE -> {
                if (!said) {
                    faults.rejectValue("note", "handover.note.left-out");
                }
            }
            case MEASURED -> {
                if (item.quantity().isEmpty()) {
                    faults.rejectValue("value", "handover.value.none");
                    return Optional.empty();
                }
                return value(item.quantity().get(), form.value(), system, faults);
            }
        }
        return Optional.empty();
    }

    private static Optional<Double> value(MeasuredQuantity quantity, String typed, UnitSystem system, Errors faults) {
        if (quantity.isTime() && !typed.isEmpty() && BARE.matcher(typed).matches()) {
            faults.rejectValue("value", "handover.value.bare-time", new Object[] {typed}, "which unit");
            return Optional.empty();
        }
        try {
            double si = parsed(quantity, typed, system);
            if (!quantity.sensible().contains(si)) {
                Object[] bounds = {
                    typed,
                    Units.show(quantity.sensible().min(), quantity.dimension(), system),
                    Units.show(quantity.sensible().max(), quantity.dimension(), system)
                };
                faults.rejectValue("value", "handover.value.range", bounds, "out of range");
                return Optional.empty();
            }
            return Optional.of(si);
        } catch (UnitException e) {
            faults.rejectValue("value", e.messageKey(), e.messageArguments(), e.getMessage());
            return Optional.empty();
        }
    }

    private static double parsed(MeasuredQuantity quantity, String typed, UnitSystem system) {
        Matcher clock = CLOCK.matcher(typed);
        return quantity.isTime() && clock.matches()
                ? 60.0 * Integer.parseInt(clock.group(1)) + Integer.parseInt(clock.group(2))
                : Units.parse(typed, quantity.dimension(), system);
    }

    /** The typed reading with its unit, so that it reads the same in another shop. */
    static String kept(CheckItem item, String typed, UnitSystem system) {
        Dimension dimension = item.quantity().map(MeasuredQuantity::dimension).orElseThrow();
        return CLOCK.matcher(typed).matches() ? typed + " min" : Units.withUnit(typed, dimension, system);
    }
}
