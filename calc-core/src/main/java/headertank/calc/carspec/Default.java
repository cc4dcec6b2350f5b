package headertank.calc.carspec;

import headertank.calc.quantity.Spread;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * One row of the table of defaults: what to assume for a field that nobody stated.
 *
 * @param field which field
 * @param value the number [SI]; {@code null} for a choice
 * @param option the option's token; {@code null} for a number
 * @param spread how far the number may be off
 * @param why what it rests on
 * @param needed for which cars anything is assumed at all
 */
record Default(
        BuildField field,
        Amount value,
        Function<Known, String> option,
        Function<Known, Spread> spread,
        Function<Known, AssumptionText> why,
        Predicate<Known> needed) {

    /** A number that may rest on what is known before it. */
    @FunctionalInterface
    interface Amount {
        double from(Known car);
    }

    static Default number(BuildField field, Amount value, Spread spread, AssumptionText why) {
        return new Default(field, value, null, car -> spread, car -> why, car -> true);
    }

    static Default choice(BuildField field, Function<Known, Enum<?>> option, AssumptionText why) {
        return token(field, car -> field.token(option.apply(car)), why);
    }

    static Default token(BuildField field, Function<Known, String> option, AssumptionText why) {
        return new Default(field, null, option, car -> Spread.relative(0), car -> why, car -> true);
    }

    /** @return the same with a spread that rests on what is known */
    Default spread(Function<Known, Spread> of) {
        return new Default(field, value, option, of, why, needed);
    }

    /** @return the same with a reason that rests on what is known */
    Default why(Function<Known, AssumptionText> of) {
        return new Default(field, value, option, spread, of, needed);
    }

    /** @return the same for some cars only; the others do without */
    Default onlyIf(Predicate<Known> condition) {
        return new Default(field, value, option, spread, why, condition);
    }

    Optional<Assumption> assume(Known car) {
        if (!needed.test(car)) {
            return Optional.empty();
        }
        return Optional.of(
                value == null
                        ? new Assumption(field, Double.NaN, option.apply(car), spread.apply(car), why.apply(car))
                        : new Assumption(
                                field, field.allowed().clamp(value.from(car)), "", spread.apply(car), why.apply(car)));
    }
}
