package headertank.calc.learning;

import headertank.calc.duty.Demand;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.duty.StandardDuties;
import headertank.calc.evidence.DriveLog;
import headertank.calc.quantity.Physics;
import headertank.calc.rating.Plant;
import headertank.calc.rating.PointLoad;
import headertank.calc.transients.LogReplay;
import headertank.calc.transients.LogStretches;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * An invented drift day of 18 minutes at 25 deg C as a logger would have written it: a cold start, queue and four heats, each second a
 * row, the coolant in whole degrees with noise. The heats ask for what the duty asks of this car and driver, harder or less hard by the
 * day (2 %) and by the heat (3 %); the pressures are those at which the car gives that. Heat per breathed air is off by the day, as it is
 * taken to be. It is integrated in steps of a fifth of a second, a replay in whole ones.
 */
final class SyntheticDrive {

    static final double AMBIENT_K = Physics.kelvin(25);

    private static final OperatingPoint RUN = StandardDuties.DRIFT.point("run");
    private static final double QUEUE_S = 180;
    private static final double HEAT_S = 45;
    private static final int HEATS = 4;
    private static final int CYCLES_S = 90;
    private static final double NOISE_K = 0.3;

    /** Not that of a replay [s]. */
    private static final double STEP_S = 0.2;

    private static final double DAY_SIGMA = 0.02;
    private static final double HEAT_SIGMA = 0.03;
    private static final double LOAD_SIGMA = 0.05;

    private SyntheticDrive() {}

    /** @return what this car's logger would have written that day, its plant that of the day */
    static DriveLog of(Plant truth, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double load = Math.exp(LOAD_SIGMA * random.nextGaussian());
        double day = Math.exp(DAY_SIGMA * random.nextGaussian());
        double[] hard = new double[HEATS];
        for (int h = 0; h < HEATS; h++) {
            hard[h] = pressureFactor(truth, day * Math.exp(HEAT_SIGMA * random.nextGaussian()), load);
        }
        List<DriveLog.Row> inputs = inputs(truth, hard, random);
        DrivenLog driven = new DrivenLog(log(inputs).driving(StandardDuties.DRIFT), truth.resolved());
        double[] shown = LogReplay.of(truth, driven.stretches(), AMBIENT_K, day(load), STEP_S)
                .shownK();
        List<DriveLog.Row> rows = new ArrayList<>();
        for (int i = 0; i < inputs.size(); i++) {
            DriveLog.Row in = inputs.get(i);
            double at = Math.max(0, Math.min(shown.length - 1.001, i / LogStretches.BLOCK_S - 0.5));
            int b = (int) at;
            double now = shown[b] + (at - b) * (shown[Math.min(shown.length - 1, b + 1)] - shown[b]);
            double read = Physics.kelvin(Math.rint(Physics.celsius(now + NOISE_K * random.nextGaussian())));
            rows.add(
                    new DriveLog.Row(in.timeS(), read, in.enginePerS(), in.manifoldPa(), in.intakeK(), in.roadMPerS()));
        }
        return log(rows).driving(StandardDuties.DRIFT);
    }

    private static LogReplay.Day day(double load) {
        return new LogReplay.Day(load, 0.5, 0.5);
    }

    private static DriveLog log(List<DriveLog.Row> rows) {
        return new DriveLog(AMBIENT_K, 1, rows);
    }

    /** By bisection the factor on the pressures of a heat at which this car gives the heat that it is asked for. */
    private static double pressureFactor(Plant truth, double over, double load) {
        double asked = over * PointLoad.of(truth, RUN).coolantW();
        double low = 0.3;
        double high = 3;
        for (int i = 0; i < 40; i++) {
            double mid = 0.5 * (low + high);
            List<DriveLog.Row> rows = new ArrayList<>();
            for (int t = 0; t <= CYCLES_S; t++) {
                rows.add(row(truth, t, t, true, mid, 1));
            }
            double[] given = LogReplay.of(truth, new LogStretches(log(rows)), AMBIENT_K, day(load))
                    .coolantW();
            double mean = 0;
            for (double w : given) {
                mean += w / given.length;
            }
            low = mean < asked ? mid : low;
            high = mean < asked ? high : mid;
        }
        return low;
    }

    private static List<DriveLog.Row> inputs(Plant truth, double[] hard, SplittableRandom random) {
        List<DriveLog.Row> rows = new ArrayList<>();
        double length = QUEUE_S + HEATS * (HEAT_S + QUEUE_S);
        for (int t = 0; t <= length; t++) {
            double in = (t - QUEUE_S) % (HEAT_S + QUEUE_S);
            boolean heat = t >= QUEUE_S && in < HEAT_S;
            int which = (int) Math.min(HEATS - 1, Math.max(0, (t - QUEUE_S) / (HEAT_S + QUEUE_S)));
            rows.add(row(truth, t, in, heat, hard[which], 1 + 0.03 * random.nextGaussian()));
        }
        return rows;
    }

    /** The modes of the duty, one after the other in nine seconds: no multiple of what a replay looks at. */
    private static DriveLog.Row row(Plant truth, double timeS, double inS, boolean heat, double factor, double wobble) {
        double idle = truth.engine().spec().idleSpeedPerS();
        double rated = truth.engine().spec().ratedSpeedPerS();
        double in = inS % 9 / 9;
        Demand.Mix mix = (Demand.Mix) RUN.demand();
        int mode = 0;
        for (double end = mix.modes().get(0).timeShare(); heat && mode < 2 && in >= end; ) {
            mode++;
            end += mix.modes().get(mode).timeShare();
        }
        double pressure = heat ? factor * new double[] {98e3, 60e3, 28e3}[mode] : 36e3;
        double engine = heat ? mix.modes().get(mode).speedShare() * rated : 1.1 * idle;
        return new DriveLog.Row(
                timeS, AMBIENT_K, engine * wobble, pressure * wobble, AMBIENT_K + 10, heat ? RUN.roadSpeedMPerS() : 0);
    }
}
