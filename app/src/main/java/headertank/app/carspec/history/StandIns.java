package headertank.app.carspec.history;

import headertank.app.carspec.Spec;
import headertank.app.field.FieldText;
import headertank.calc.Rater;
import headertank.calc.carspec.Assumption;
import headertank.calc.carspec.BuildField;
import headertank.calc.quantity.InputException;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.Supplier;
import org.springframework.stereotype.Component;

/** What a rating takes for the fields of a spec that nobody has stated. */
@Component
class StandIns {

    private final Supplier<Rater> rater;
    private final FieldText text;

    StandIns(Supplier<Rater> rater, FieldText text) {
        this.rater = rater;
        this.text = text;
    }

    /** By field; empty when the spec names a part that is not installed here any more. */
    Map<BuildField, Assumption> of(Spec spec) {
        Map<BuildField, Assumption> assumed = new EnumMap<>(BuildField.class);
        try {
            rater.get().resolve(spec.build()).assumptions().forEach(a -> assumed.put(a.field(), a));
        } catch (InputException partIsGone) {
            assumed.clear();
        }
        return assumed;
    }

    /** An assumed value in the shop's units, or the option's words. */
    String show(Assumption assumption) {
        BuildField field = assumption.field();
        return field.isChoice() ? text.option(field, assumption.token()) : text.show(field, assumption.value());
    }
}
