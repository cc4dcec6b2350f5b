package headertank.app.carspec;

import headertank.app.MessageSources;
import headertank.app.field.FieldText;
import headertank.app.unit.UnitSystem;
import headertank.calc.Rater;
import java.util.Locale;
import org.springframework.context.support.StaticMessageSource;

/** Words for tests without a database: units are metric. */
public final class Texts {

    private Texts() {}

    public static FieldText metric(Rater rater) {
        StaticMessageSource messages = new StaticMessageSource();
        messages.setParentMessageSource(MessageSources.all());
        messages.addMessage("compare.by-run", Locale.ENGLISH, "runs");
        messages.addMessage("compare.too-many", Locale.ENGLISH, "too many");
        messages.addMessage("spec.reason.missing", Locale.ENGLISH, "why?");
        messages.addMessage("spec.fault.range", Locale.ENGLISH, "{1} to {2}");
        messages.addMessage("spec.fault.count", Locale.ENGLISH, "whole {1} to {2}");
        messages.addMessage("spec.fault.option", Locale.ENGLISH, "no option {0}");
        return new FieldText(messages, MessageSources.modelWords(), () -> UnitSystem.METRIC, () -> rater);
    }
}
