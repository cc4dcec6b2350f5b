package headertank.app.drawing;

import headertank.app.unit.Dimension;
import headertank.app.unit.UnitSystem;
import headertank.app.unit.Units;
import java.util.Locale;
import org.springframework.context.MessageSource;

/** Words and figures of a drawing as one shop reads them. */
final class Words {

    private final MessageSource messages;
    private final UnitSystem system;
    private final Locale locale;

    Words(MessageSource messages, UnitSystem system, Locale locale) {
        this.messages = messages;
        this.system = system;
        this.locale = locale;
    }

    String say(String key, Object... arguments) {
        return messages.getMessage("drawing." + key, arguments, locale);
    }

    /** A figure with its unit, never broken over two lines; a dash when there is none. */
    String show(double si, Dimension dimension) {
        if (!Double.isFinite(si)) {
            return say("none");
        }
        String shown = Units.show(si, dimension, system).replace(' ', '\u00a0');
        return shown.startsWith("-") ? "\u2212" + shown.substring(1) : shown;
    }

    /** The number alone. */
    String number(double si, Dimension dimension) {
        return Units.number(si, dimension, system);
    }

    String symbol(Dimension dimension) {
        return dimension.symbol(system);
    }

    UnitSystem system() {
        return system;
    }
}
