package headertank.calc;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import headertank.calc.carspec.Resolved;
import headertank.calc.duty.Duty;
import headertank.calc.duty.StandardDuties;
import headertank.calc.quantity.FigureKind;
import headertank.calc.quantity.InputException;
import headertank.calc.quantity.Stated;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/**
 * The margin is a continuous function of everything that is measured: each number of a car is swept over its allowed range,
 * and where one difference between neighbours stands out from those beside it, the gap is halved until it either vanishes or
 * turns out to be a step. {@code -Dheadertank.steps=1000} looks closer.
 *
 * <p>A car whose fans switch with a hysteresis is not asked about its run: whether its fans are on when a run begins depends
 * on all that came before, in the model as in the car.
 */
class MarginSweepTest {

    private static final Rater RATER = Rater.standard();
    private static final int STEPS = Integer.getInteger("headertank.steps", 40);
    private static final int RUN_STEPS = STEPS / 8;
    private static final int HALVINGS = 30;

    /** The street's points, each as if without end. */
    private static final Duty STREET_POINTS =
            new Duty("street-points", "Street", StandardDuties.STREET.points(), Optional.empty(), "test");

    /** Differences that stand out by less are not looked at [K]. */
    private static final double STANDS_OUT_K = 0.005;

    /** What the settled residual of a balance may leave [K]. */
    private static final double STEADY_K = 1e-4;

    /** What the accepted and rejected steps of a run may leave [K]. */
    private static final double RUN_K = 0.1;

    /**
     * Beyond its limit by which the coolant of each of these cars boils, whatever is swept [K]. A pump that draws vapour delivers
     * less, which makes the coolant hotter still: the balance has a fold there, in the model as in the car.
     */
    private static final double BOILS_K = 30;

    /** Inputs that move the margin of a steady state of some car. */
    private static final int INPUTS = 29;

    @Test
    void noNumberOfACarMovesItsSteadyMarginInSteps() {
        Set<BuildField> moving = EnumSet.noneOf(BuildField.class);
        List<String> steps = new ArrayList<>();
        for (Build car : cars()) {
            for (Duty duty : List.of(STREET_POINTS, StandardDuties.TRACK)) {
                for (BuildField field : numbers()) {
                    Sweep sweep = new Sweep(car, field, duty, STEPS);
                    if (sweep.moves()) {
                        moving.add(field);
                    }
                    sweep.steps(STEADY_K).forEach(s -> steps.add(car.carClass() + " " + s));
                }
            }
        }
        assertThat(steps).isEmpty();
        assertThat(moving).hasSizeGreaterThanOrEqualTo(INPUTS);
    }

    @Test
    void norThatOfARunWhoseFansDoNotSwitch() {
        List<String> steps = new ArrayList<>();
        for (BuildField field : numbers()) {
            steps.addAll(new Sweep(Builds.drift(), field, StandardDuties.DRIFT, RUN_STEPS).steps(RUN_K));
        }
        assertThat(steps).isEmpty();
    }

    /** One of each class of which nothing is known, and one each of which every number is but the pitch of the tubes. */
    private static List<Build> cars() {
        List<Build> cars = new ArrayList<>();
        for (CarClass carClass : CarClass.values()) {
            Build unknown = Build.forCar(carClass).build();
            Build.Builder known = unknown.change();
            Resolved values = RATER.resolve(unknown);
            for (BuildField f : BuildField.values()) {
                if (values.has(f) && f != BuildField.FIN_HEIGHT && f != BuildField.TUBE_HEIGHT) {
                    known.set(f, Stated.measured(values.value(f)));
                }
            }
            cars.add(unknown);
            cars.add(known.build());
        }
        return cars;
    }

    private static List<BuildField> numbers() {
        return Arrays.stream(BuildField.values())
                .filter(f -> !f.isChoice() && f.kind() != FigureKind.COUNT)
                .toList();
    }

    /** Margins of one car at one duty over one of its numbers. */
    private static final class Sweep {
        private final BuildField field;
        private final Duty duty;
        private final DoubleUnaryOperator margin;
        private final double[] x;
        private final double[] y;

        Sweep(Build car, BuildField field, Duty duty, int steps) {
            this.field = field;
            this.duty = duty;
            this.margin = value -> marginK(car.change(), value);
            double min = field.allowed().min();
            double max = field.allowed().max();
            this.x = new double[steps + 1];
            this.y = new double[steps + 1];
            for (int i = 0; i <= steps; i++) {
                x[i] = min + (max - min) * i / steps;
                y[i] = margin.applyAsDouble(x[i]);
            }
        }

        /** A value that contradicts what else is assumed is refused, which other tests show: no number here. */
        private double marginK(Build.Builder car, double value) {
            try {
                return RATER.marginK(car.set(field, Stated.measured(value)).build(), duty);
            } catch (InputException refused) {
                return Double.NaN;
            }
        }

        boolean moves() {
            return Arrays.stream(y).filter(v -> !Double.isNaN(v)).distinct().count() > 2;
        }

        List<String> steps(double allowedK) {
            List<String> found = new ArrayList<>();
            for (int i = 1; i < y.length - 2; i++) {
                double before = y[i] - y[i - 1];
                double here = y[i + 1] - y[i];
                double after = y[i + 2] - y[i + 1];
                if (here > Math.max(before, after) + STANDS_OUT_K || here < Math.min(before, after) - STANDS_OUT_K) {
                    step(i, allowedK, found);
                }
            }
            return found;
        }

        private void step(int i, double allowedK, List<String> found) {
            double a = x[i];
            double ya = y[i];
            double b = x[i + 1];
            double yb = y[i + 1];
            for (int n = 0; n < HALVINGS; n++) {
                double c = 0.5 * (a + b);
                double yc = margin.applyAsDouble(c);
                if (Math.abs(yc - ya) > Math.abs(yb - yc)) {
                    b = c;
                    yb = yc;
                } else {
                    a = c;
                    ya = yc;
                }
            }
            if (Math.abs(yb - ya) > allowedK && Math.max(ya, yb) > -BOILS_K) {
                found.add(duty.id() + ": " + field + " at " + a + " steps from " + ya + " to " + yb + " K");
            }
        }
    }
}
