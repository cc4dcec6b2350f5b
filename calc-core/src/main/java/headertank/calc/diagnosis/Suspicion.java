package headertank.calc.diagnosis;

import headertank.calc.cause.Cause;
import headertank.calc.cause.CauseText;
import headertank.calc.cause.Chance;
import headertank.calc.cause.Inquiry;
import headertank.calc.cause.Observation;
import headertank.calc.cause.Sighting;
import headertank.calc.quantity.Message;
import headertank.calc.quantity.SiFigure;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** One cause, how it would look, and how well that fits what was seen. */
final class Suspicion {

    /**
     * A piece of what was seen.
     *
     * @param what what was seen
     * @param likelihood how often it is seen with the cause [-] or, of a reading, how densely [1/K]
     */
    record Piece(Message what, double likelihood) {}

    private final Cause cause;
    private final double prior;
    private final List<Chance> signs;
    private final List<Piece> pieces = new ArrayList<>();
    private final double likelihood;
    private final double severity;

    /** @param heats for each severity the sampled cars, not all empty */
    Suspicion(Cause cause, double prior, Sighting seen, List<List<Heat>> heats, double limitK) {
        this.cause = cause;
        this.prior = prior;
        this.signs = cause.signs();
        double said = 1;
        List<ToDoubleFunction<Heat>> shown = new ArrayList<>();
        for (Observation o : seen.observed()) {
            if (!o.followsHeat()) {
                double share = o.share(signs);
                said *= share;
                pieces.add(new Piece(o.with(), share));
            } else if (o.inquiry() != Inquiry.NEEDLE || seen.shownK().isEmpty()) {
                shown.add(h -> h.share(o, limitK));
                pieces.add(new Piece(o.with(), mean(heats, h -> h.share(o, limitK))));
            }
        }
        if (seen.shownK().isPresent()) {
            double k = seen.shownK().getAsDouble();
            shown.add(h -> h.densityOf(k, limitK));
            pieces.add(new Piece(
                    CauseText.READING.with(SiFigure.temperature(k), SiFigure.temperature(mean(heats, Heat::shownK))),
                    mean(heats, h -> h.densityOf(k, limitK))));
        } else if (!seen.answers(Inquiry.NEEDLE)) {
            shown.add(h -> h.reported(limitK));
        }
        ToDoubleFunction<Heat> all = h -> {
            double p = 1;
            for (ToDoubleFunction<Heat> one : shown) {
                p *= one.applyAsDouble(h);
            }
            return p;
        };
        double[] bySeverity = new double[heats.size()];
        double sum = 0;
        double severities = 0;
        double weights = 0;
        for (int i = 0; i < bySeverity.length; i++) {
            List<Heat> cars = heats.get(i);
            if (!cars.isEmpty()) {
                double p = HeatStates.WEIGHTS[i]
                        * cars.stream().mapToDouble(all).average().orElseThrow();
                sum += p;
                severities += p * HeatStates.SEVERITIES[i];
                weights += HeatStates.WEIGHTS[i];
            }
        }
        this.likelihood = said * sum / weights;
        this.severity = sum > 0 ? severities / sum : HeatStates.SEVERITIES[1];
    }

    private static double mean(List<List<Heat>> heats, ToDoubleFunction<Heat> of) {
        double sum = 0;
        double weights = 0;
        for (int i = 0; i < heats.size(); i++) {
            if (!heats.get(i).isEmpty()) {
                sum += HeatStates.WEIGHTS[i]
                        * heats.get(i).stream().mapToDouble(of).average().orElseThrow();
                weights += HeatStates.WEIGHTS[i];
            }
        }
        return sum / weights;
    }

    Cause cause() {
        return cause;
    }

    /** Its share of the cars that come back hot, in the parts of {@link Cause#prior}. */
    double prior() {
        return prior;
    }

    /** How likely is all that was seen with it, in a measure that is the same for all causes. */
    double likelihood() {
        return likelihood;
    }

    /** How bad it would have to be, on average. */
    double severity() {
        return severity;
    }

    /** What was seen, in the same order for all causes. */
    List<Piece> pieces() {
        return pieces;
    }

    /** How often a test shows it. */
    double share(Observation outcome) {
        return outcome.share(signs);
    }
}
