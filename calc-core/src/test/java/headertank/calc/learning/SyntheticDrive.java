package headertank.calc.learning;

import headertank.calc.evidence.DriveLog;
import headertank.calc.quantity.Physics;
import headertank.calc.rating.Plant;
import headertank.calc.transients.LogReplay;
import headertank.calc.transients.LogStretches;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * An invented drift day of 18 minutes at 25 deg C as a logger would have written it: a cold start, queue and four heats, each second a
 * row, the coolant in whole degrees with noise. The car's answer is that of a replay; its inputs do not ask the model.
 */
final class SyntheticDrive {

    static final double AMBIENT_K = Physics.kelvin(25);

    private static final double QUEUE_S = 180;
    private static final double HEAT_S = 45;
    private static final int HEATS = 4;
    private static final double NOISE_K = 0.3;

    private SyntheticDrive() {}

    /** @return what this car's logger would have written that day, its plant that of the day */
    static DriveLog of(Plant truth, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<DriveLog.Row> inputs = inputs(truth, random);
        double[] shown = LogReplay.shownK(truth, new LogStretches(log(inputs)), AMBIENT_K, 1, 0.5);
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
        return log(rows);
    }

    private static DriveLog log(List<DriveLog.Row> rows) {
        return new DriveLog(AMBIENT_K, 1, rows);
    }

    private static List<DriveLog.Row> inputs(Plant truth, SplittableRandom random) {
        double idle = truth.engine().spec().idleSpeedPerS();
        double rated = truth.engine().spec().ratedSpeedPerS();
        List<DriveLog.Row> rows = new ArrayList<>();
        double length = QUEUE_S + HEATS * (HEAT_S + QUEUE_S);
        for (int t = 0; t <= length; t++) {
            double in = (t - QUEUE_S) % (HEAT_S + QUEUE_S);
            boolean heat = t >= QUEUE_S && in < HEAT_S;
            double wobble = 1 + 0.03 * random.nextGaussian();
            double mode = (t % 8) / 8.0;
            double pressure = !heat ? 36e3 : mode < 0.25 ? 98e3 : mode < 0.65 ? 60e3 : 28e3;
            double engine = heat ? 0.8 * rated : 1.1 * idle;
            rows.add(new DriveLog.Row(t, AMBIENT_K, engine * wobble, pressure * wobble, AMBIENT_K + 10, heat ? 20 : 0));
        }
        return rows;
    }
}
