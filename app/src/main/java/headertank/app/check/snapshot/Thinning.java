package headertank.app.check.snapshot;

import headertank.calc.result.RunResult.Sample;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Leaves out moments of a trace that lie on a straight line between those that stay, in every quantity that is drawn (the
 * method of Ramer, Douglas and Peucker, from memory). Peaks and switching stay, for they lie on no line.
 */
final class Thinning {

    /** A quantity and how far off its line a moment may lie. */
    private record Quantity(ToDoubleFunction<Sample> value, double tolerance) {}

    /** No more moments than this; the tolerances double until it is so. */
    static final int MOST = 400;

    /** The same where one curve lies among others. */
    static final int MOST_AMONG_OTHERS = 200;

    private static final double KELVIN = 0.1;

    private static final List<Quantity> ALL = List.of(
            new Quantity(Sample::coolantK, KELVIN),
            new Quantity(Sample::gaugeK, KELVIN),
            new Quantity(Sample::fanSensorK, 2 * KELVIN),
            new Quantity(Sample::oilK, 2 * KELVIN),
            new Quantity(Sample::radiatorK, 10 * KELVIN),
            new Quantity(Sample::underHoodK, 10 * KELVIN),
            new Quantity(Sample::fanDuty, 0.02),
            new Quantity(Sample::fanCurrentA, 0.5),
            new Quantity(Sample::voltageV, 0.03),
            new Quantity(Sample::roadSpeedMPerS, 0.5));

    private static final List<Quantity> TEMPERATURES =
            List.of(new Quantity(Sample::coolantK, KELVIN), new Quantity(Sample::gaugeK, KELVIN));

    private Thinning() {}

    /** The moments that are needed to draw everything. */
    static List<Sample> forAll(List<Sample> trace) {
        return thin(trace, ALL, MOST);
    }

    /** The moments that are needed to draw coolant and gauge. */
    static List<Sample> forTemperatures(List<Sample> trace) {
        return thin(trace, TEMPERATURES, MOST_AMONG_OTHERS);
    }

    private static List<Sample> thin(List<Sample> trace, List<Quantity> quantities, int most) {
        for (double wider = 1; ; wider *= 2) {
            List<Sample> kept = thin(trace, quantities, wider);
            if (kept.size() <= most) {
                return kept;
            }
        }
    }

    private static List<Sample> thin(List<Sample> trace, List<Quantity> quantities, double wider) {
        if (trace.size() < 3) {
            return trace;
        }
        BitSet keep = new BitSet();
        keep.set(0);
        keep.set(trace.size() - 1);
        Deque<int[]> open = new ArrayDeque<>();
        open.push(new int[] {0, trace.size() - 1});
        while (!open.isEmpty()) {
            int[] span = open.pop();
            int furthest = furthest(trace, span[0], span[1], quantities, wider);
            if (furthest > 0) {
                keep.set(furthest);
                open.push(new int[] {span[0], furthest});
                open.push(new int[] {furthest, span[1]});
            }
        }
        List<Sample> kept = new ArrayList<>();
        keep.stream().forEach(i -> kept.add(trace.get(i)));
        return kept;
    }

    /** The moment between two others that is furthest off their line; 0 when none is too far. */
    private static int furthest(List<Sample> trace, int from, int to, List<Quantity> quantities, double wider) {
        Sample a = trace.get(from);
        Sample b = trace.get(to);
        double worst = wider;
        int at = 0;
        for (int i = from + 1; i < to; i++) {
            Sample s = trace.get(i);
            double share = (s.timeS() - a.timeS()) / (b.timeS() - a.timeS());
            for (Quantity q : quantities) {
                double line = (1 - share) * q.value().applyAsDouble(a)
                        + share * q.value().applyAsDouble(b);
                double off = Math.abs(q.value().applyAsDouble(s) - line) / q.tolerance();
                if (off > worst) {
                    worst = off;
                    at = i;
                }
            }
        }
        return at;
    }
}
