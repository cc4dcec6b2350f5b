package headertank.calc.learning;

import headertank.calc.duty.Demand;
import headertank.calc.duty.Duty;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.duty.Schedule;
import headertank.calc.rating.Plant;
import headertank.calc.rating.PointLoad;
import headertank.calc.transients.LogStretches;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.hipparchus.util.FastMath;

/**
 * How hard a log drove a duty, over how hard the duty means it. Its hard pieces are those in which the engine turns faster than half
 * way, by ratio, from idle to what the duty turns it at, for 10 s or more, and gives at least two fifths of the duty's heat: what is less is
 * another drive. A long one is cut into pieces of a lap's length. Each gives the duty's heat but for how hard this driver drives, how
 * hard on that day (2 %) and how hard that time: the log's own spread about its mean, together with 3 % that count as three pieces. All
 * these are modelling choices.
 */
final class DrivenDuty {

    private static final double DAY_SIGMA = 0.02;
    private static final double PIECE_SIGMA = 0.03;
    private static final int PIECE_SIGMA_COUNTS = 3;
    private static final double SHORTEST_S = 10;
    private static final double DIP_S = 6;
    private static final double PIECE_S = 90;
    private static final double LEAST_HEAT = 0.4;

    private final Duty duty;
    private final List<Piece> pieces = new ArrayList<>();
    private final double sigma;

    /**
     * @param duty what was driven
     * @param stretches the log; the car goes sideways in its pieces as the duty says
     * @param expected the car as it is expected
     * @param coolantW heat into the coolant that such a car would have given in each stretch, warm [W]
     */
    DrivenDuty(Duty duty, LogStretches stretches, Plant expected, double[] coolantW) {
        this.duty = duty;
        List<LogStretches.Stretch> all = stretches.stretches();
        double fast = FastMath.sqrt(expected.engine().spec().idleSpeedPerS() * meanSpeedPerS(expected));
        double least = LEAST_HEAT * meanW(expected);
        int from = -1;
        int last = -1;
        for (int i = 0; i <= all.size(); i++) {
            boolean hard = i < all.size() && all.get(i).enginePerS() > fast;
            if (from >= 0 && (i == all.size() || !hard && (i - last) * LogStretches.stretchS() > DIP_S)) {
                cut(from, last + 1, least, all, coolantW);
                from = -1;
            }
            if (hard) {
                from = from < 0 ? i : from;
                last = i;
            }
        }
        turn(stretches);
        double mean = 0;
        for (Piece p : pieces) {
            mean += FastMath.log(p.mean(coolantW)) / pieces.size();
        }
        double squares = PIECE_SIGMA_COUNTS * PIECE_SIGMA * PIECE_SIGMA;
        for (Piece p : pieces) {
            double off = FastMath.log(p.mean(coolantW)) - mean;
            squares += off * off;
        }
        this.sigma = FastMath.sqrt(squares / (PIECE_SIGMA_COUNTS + Math.max(0, pieces.size() - 1)));
    }

    /** The car goes as sideways in the pieces as the duty says. */
    private void turn(LogStretches stretches) {
        double yaw = mean(OperatingPoint::yawRad);
        pieces.forEach(p -> stretches.sideways(p.from(), p.to(), yaw));
    }

    private void cut(int from, int to, double leastW, List<LogStretches.Stretch> all, double[] coolantW) {
        int parts = (int) Math.max(1, Math.round((to - from) * LogStretches.stretchS() / PIECE_S));
        double first = share(all, from, from - 1, from + 1);
        double last = share(all, to - 1, to, to - 2);
        for (int p = 0; p < parts; p++) {
            Piece piece = new Piece(
                    from + p * (to - from) / parts,
                    from + (p + 1) * (to - from) / parts,
                    p == 0 ? first : 1,
                    p == parts - 1 ? last : 1);
            if ((piece.to() - piece.from()) * LogStretches.stretchS() >= SHORTEST_S && piece.mean(coolantW) >= leastW) {
                pieces.add(piece);
            }
        }
    }

    /** Which share of a stretch at an end of a piece belongs to it, by the engine speed beyond and within [-]. */
    private static double share(List<LogStretches.Stretch> all, int at, int beyond, int within) {
        if (beyond < 0 || beyond >= all.size() || within < 0 || within >= all.size()) {
            return 1;
        }
        double out = all.get(beyond).enginePerS();
        double in = all.get(within).enginePerS();
        return in <= out ? 1 : Math.max(0, Math.min(1, (all.get(at).enginePerS() - out) / (in - out)));
    }

    /** @return how many residuals there are; none where the log shows no piece of the duty */
    int size() {
        return pieces.size();
    }

    /**
     * @param plant a car
     * @param coolantW heat that it would have given in each stretch [W]
     * @param day deviate of the driver's day
     * @return what each piece gave over what the duty asks of this car and driver, over its standard deviation
     */
    double[] residuals(Plant plant, double[] coolantW, double day) {
        double asked = FastMath.log(meanW(plant)) + DAY_SIGMA * day;
        double[] residuals = new double[pieces.size()];
        for (int i = 0; i < residuals.length; i++) {
            residuals[i] = (FastMath.log(pieces.get(i).mean(coolantW)) - asked) / sigma;
        }
        return residuals;
    }

    /** Mean heat of the points at which a driver decides, by how long the duty stays at each [W]. */
    private double meanW(Plant plant) {
        return mean(p -> PointLoad.of(plant, p).coolantW());
    }

    private double meanSpeedPerS(Plant plant) {
        return plant.engine().spec().ratedSpeedPerS() * mean(p -> p.demand().engineSpeedShare());
    }

    private double mean(ToDoubleFunction<OperatingPoint> of) {
        double sum = 0;
        double weights = 0;
        for (OperatingPoint p : duty.points()) {
            double weight = weight(p);
            if (weight > 0) {
                sum += weight * of.applyAsDouble(p);
                weights += weight;
            }
        }
        return sum / weights;
    }

    private double weight(OperatingPoint p) {
        if (!(p.demand() instanceof Demand.Mix)) {
            return 0;
        }
        return duty.schedule()
                .map(s -> s.phases().stream()
                        .filter(f -> f.pointId().equals(p.id()))
                        .mapToDouble(Schedule.Phase::seconds)
                        .sum())
                .orElse(1.0);
    }

    /**
     * Stretches of a log from one place to before another.
     *
     * @param first share of the first stretch in which it has begun [-]
     * @param last share of the last one in which it has not ended [-]
     */
    private record Piece(int from, int to, double first, double last) {

        /** @return mean over the piece: what the rest of a stretch at its ends gave is what the one beyond gave */
        double mean(double[] values) {
            double sum =
                    -(1 - first) * values[Math.max(0, from - 1)] - (1 - last) * values[Math.min(values.length - 1, to)];
            for (int i = from; i < to; i++) {
                sum += values[i];
            }
            return sum / (to - from - (1 - first) - (1 - last));
        }
    }
}
