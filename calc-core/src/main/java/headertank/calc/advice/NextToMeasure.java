package headertank.calc.advice;

import headertank.calc.carspec.Assumption;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.duty.Duty;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.quantity.InputException;
import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Provenance;
import headertank.calc.quantity.Spread;
import headertank.calc.quantity.Stated;
import headertank.calc.result.WorthMeasuring;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleBiFunction;

/**
 * Which value of a car would be worth measuring next: for each number that is assumed or guessed, half the difference of the
 * coolant margin between one standard deviation above and one below, at the steady operating point with the least margin. One
 * value at a time, without what they do together (modelling choice: quick enough to follow somebody who types; a rating
 * samples all of them at once).
 */
public final class NextToMeasure {

    /** Less is not worth a walk to the car [K]; modelling choice. */
    public static final double WORTH_K = 0.1;

    private final ToDoubleBiFunction<Build, OperatingPoint> coolantMarginK;

    /** @param coolantMarginK coolant margin of a build at a point [K]; may throw {@link InputException} and {@link OutOfRangeException} */
    public NextToMeasure(ToDoubleBiFunction<Build, OperatingPoint> coolantMarginK) {
        this.coolantMarginK = coolantMarginK;
    }

    /**
     * @param car what is known of it, with what was assumed for the rest
     * @param duty the duty whose steady points are looked at
     * @return what is worth measuring, the worst first; none when no point has a margin
     */
    public List<WorthMeasuring> of(Resolved car, Duty duty) {
        Build build = car.build();
        Optional<OperatingPoint> worst = duty.points().stream()
                .filter(p -> !p.engineOff())
                .min(Comparator.comparingDouble(p -> margin(build, p)));
        if (worst.isEmpty()) {
            return List.of();
        }
        List<WorthMeasuring> found = new ArrayList<>();
        for (Assumption a : car.assumptions()) {
            if (!a.field().isChoice()) {
                effect(build, worst.get(), a.field(), car.value(a.field()), car.spread(a.field()), false)
                        .ifPresent(found::add);
            }
        }
        build.entries().forEach((field, entry) -> {
            if (entry instanceof Stated s && s.from() == Provenance.GUESSED) {
                effect(build, worst.get(), field, car.value(field), car.spread(field), true)
                        .ifPresent(found::add);
            }
        });
        found.sort(Comparator.comparingDouble(WorthMeasuring::marginK).reversed());
        return List.copyOf(found);
    }

    private Optional<WorthMeasuring> effect(
            Build build, OperatingPoint point, BuildField field, double value, Spread spread, boolean guessed) {
        double sigma = spread == null ? 0 : spread.sigmaAt(value);
        if (!(sigma > 0)) {
            return Optional.empty();
        }
        double more = margin(build, point, field, field.allowed().clamp(value + sigma));
        double less = margin(build, point, field, field.allowed().clamp(value - sigma));
        double kelvins = Math.abs(more - less) / 2;
        return Double.isFinite(kelvins) && kelvins >= WORTH_K
                ? Optional.of(new WorthMeasuring(field, guessed, kelvins))
                : Optional.empty();
    }

    /** A change that contradicts what else is stated has no margin. */
    private double margin(Build build, OperatingPoint point, BuildField field, double value) {
        try {
            return margin(
                    build.change()
                            .set(field, new Stated(value, Provenance.MEASURED, null))
                            .build(),
                    point);
        } catch (InputException e) {
            return Double.NaN;
        }
    }

    private double margin(Build build, OperatingPoint point) {
        try {
            return coolantMarginK.applyAsDouble(build, point);
        } catch (InputException | OutOfRangeException e) {
            return Double.NaN;
        }
    }
}
