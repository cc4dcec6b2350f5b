package headertank.app.duty;

import headertank.app.language.ModelWords;
import headertank.app.unit.Dimension;
import headertank.app.unit.UnitSystem;
import headertank.app.unit.Units;
import headertank.calc.duty.Demand;
import headertank.calc.duty.Duty;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.quantity.MessageArgument;
import java.util.List;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;

/** Duties in words, from the message files. */
@Component
public class DutyText {

    private final MessageSource messages;
    private final ModelWords words;

    public DutyText(MessageSource messages, ModelWords words) {
        this.messages = messages;
        this.words = words;
    }

    /** Name of a duty, as on the car's form. */
    String label(Duty duty) {
        return words.duty(duty.id(), duty.label(), LocaleContextHolder.getLocale());
    }

    String label(Duty duty, OperatingPoint point) {
        return words.point(duty.id(), point.id(), point.label(), LocaleContextHolder.getLocale());
    }

    /** What a duty rests on. */
    String source(Duty duty) {
        return words.basis(duty.id(), duty.source(), LocaleContextHolder.getLocale());
    }

    /** What calc-core says of a text; numbers stay as a file writes them. */
    String said(MessageArgument said) {
        return words.of(said);
    }

    /** What a point asks of the engine. */
    String demand(OperatingPoint point, UnitSystem system) {
        Demand demand = point.demand();
        if (demand instanceof Demand.EngineOff off) {
            return say(off.fansRunOn() ? "duties.demand.off.fans" : "duties.demand.off");
        }
        if (demand instanceof Demand.Idle idle) {
            return say("duties.demand.idle", power(idle.accessoriesW(), system));
        }
        if (demand instanceof Demand.Road road) {
            return say("duties.demand.road", share(road.slope()), share(road.engineSpeedShare()));
        }
        int modes = ((Demand.Mix) demand).modes().size();
        return say("duties.demand.mix", share(demand.engineSpeedShare()), modes);
    }

    /** A length of time: minutes and seconds, or hours and minutes. */
    String time(double seconds) {
        long s = Math.round(seconds);
        if (s < 60) {
            return say("duties.time.s", trimmed(seconds));
        }
        String text = s < 3600 ? say("duties.time.min", s / 60, s % 60) : say("duties.time.h", s / 3600, s % 3600 / 60);
        return text.strip();
    }

    String share(double share) {
        return Units.show(share, Dimension.FRACTION);
    }

    /** A fault of a whole text or field, as a list of one. */
    List<DutyFault> whole(String place, String value, String allowedKey, Object... arguments) {
        return List.of(new DutyFault(0, place, value, say(allowedKey, arguments)));
    }

    public String say(String key, Object... arguments) {
        return messages.getMessage(key, arguments, LocaleContextHolder.getLocale());
    }

    private static String trimmed(double seconds) {
        return java.math.BigDecimal.valueOf(Math.rint(10 * seconds) / 10)
                .stripTrailingZeros()
                .toPlainString();
    }

    private static String power(double watts, UnitSystem system) {
        return Units.show(watts, Dimension.POWER, system);
    }
}
