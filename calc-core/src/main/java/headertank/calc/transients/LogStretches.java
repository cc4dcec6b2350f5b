package headertank.calc.transients;

import headertank.calc.evidence.DriveLog;
import headertank.calc.quantity.Physics;
import java.util.ArrayList;
import java.util.List;

/**
 * A log cut into stretches of two seconds, at each of which the car stays as it is on the mean, and blocks of five of them, of
 * which the mean reading is looked at: readings come in whole degrees, and many of one second are not many proofs. What a row says
 * holds until the next. Where rows are further apart than 5 s nobody knows what the car did; such blocks are not looked at, nor what
 * begins within a minute after.
 */
public final class LogStretches {

    /** Length of a block [s]. */
    public static final double BLOCK_S = 10;

    private static final double STRETCH_S = 2;
    private static final int OF_A_BLOCK = 5;
    private static final double GAP_S = 5;
    private static final double AFTER_GAP_S = 60;
    private static final double STANDS_PER_S = 2;
    private static final double GAMMA = 1.35;
    private static final double COMPRESSION = 10;

    /**
     * A stretch.
     *
     * @param enginePerS engine speed, 0 with the engine off [rev/s]
     * @param breathedPaPerKs mean of engine speed times manifold pressure over intake temperature, times what a throttled
     *     engine takes in of it [Pa/K s]
     * @param roadMPerS road speed [m/s]
     * @param yawRad angle between the car's nose and the way it travels, 0 where nobody says otherwise [rad]
     */
    public record Stretch(double enginePerS, double breathedPaPerKs, double roadMPerS, double yawRad) {}

    private final List<Stretch> stretches = new ArrayList<>();
    private final List<Double> readings = new ArrayList<>();
    private final double startS;
    private final double firstK;

    /** @param log the log */
    public LogStretches(DriveLog log) {
        List<DriveLog.Row> rows = log.rows();
        this.startS = rows.get(0).timeS();
        this.firstK = rows.get(0).coolantK();
        int blocks = (int) ((rows.get(rows.size() - 1).timeS() - startS) / BLOCK_S);
        int at = 0;
        double seenAgainS = Double.NEGATIVE_INFINITY;
        for (int b = 0; b < blocks; b++) {
            double read = 0;
            double readS = 0;
            boolean gap = false;
            for (int i = 0; i < OF_A_BLOCK; i++) {
                double from = startS + (b * OF_A_BLOCK + i) * STRETCH_S;
                double to = from + STRETCH_S;
                double engine = 0;
                double breathed = 0;
                double road = 0;
                for (double t = from; t < to - 1e-9; ) {
                    while (at < rows.size() - 2 && rows.get(at + 1).timeS() <= t) {
                        at++;
                    }
                    DriveLog.Row row = rows.get(at);
                    double next = rows.get(at + 1).timeS();
                    if (next - row.timeS() > GAP_S) {
                        gap = true;
                        seenAgainS = next;
                    }
                    double end = Math.min(to, Math.max(next, t + 1e-6));
                    double dt = end - t;
                    engine += dt * row.enginePerS();
                    breathed += dt * row.enginePerS() * row.manifoldPa() / row.intakeK() * filled(row.manifoldPa());
                    road += dt * row.roadMPerS();
                    if (!Double.isNaN(row.coolantK())) {
                        read += dt * row.coolantK();
                        readS += dt;
                    }
                    t = end;
                }
                double speed = engine / STRETCH_S;
                boolean runs = speed >= STANDS_PER_S;
                stretches.add(new Stretch(runs ? speed : 0, runs ? breathed / STRETCH_S : 0, road / STRETCH_S, 0));
            }
            boolean known = !gap && startS + b * BLOCK_S >= seenAgainS + AFTER_GAP_S && readS > 0.5 * BLOCK_S;
            readings.add(known ? read / readS : Double.NaN);
        }
    }

    /**
     * What is left of the volumetric efficiency when the exhaust of the last cycle, at 101 kPa, expands into the cylinder of a throttled
     * engine: {@code (g - 1)/g + (r - p_e/p_i)/(g (r - 1))}, g = 1.35, r = 10 (C. F. Taylor, The Internal Combustion Engine in Theory and
     * Practice, 1985, ideal four-stroke inlet process, from memory); 0.76 at 25 kPa, 0.92 at 50.
     */
    private static double filled(double manifoldPa) {
        double ratio = Physics.STANDARD_PRESSURE_PA / Math.max(1e4, manifoldPa);
        return (GAMMA - 1) / GAMMA + (COMPRESSION - ratio) / (GAMMA * (COMPRESSION - 1));
    }

    /** The car goes sideways in the stretches from one place to before another, at this angle [rad]. */
    public void sideways(int from, int to, double yawRad) {
        for (int i = from; i < to; i++) {
            Stretch s = stretches.get(i);
            stretches.set(i, new Stretch(s.enginePerS(), s.breathedPaPerKs(), s.roadMPerS(), yawRad));
        }
    }

    /** @return the stretches, in their order */
    public List<Stretch> stretches() {
        return stretches;
    }

    /** @return mean reading of each block [K]; no number where it is not looked at */
    public List<Double> readings() {
        return List.copyOf(readings);
    }

    /** @return when the first block begins [s] */
    public double startS() {
        return startS;
    }

    /** @return the first reading [K] */
    public double firstK() {
        return firstK;
    }

    /** @return stretches of a block */
    static int ofABlock() {
        return OF_A_BLOCK;
    }

    /** @return length of a stretch [s] */
    public static double stretchS() {
        return STRETCH_S;
    }
}
