package headertank.calc.learning;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.evidence.DriveLog;
import headertank.calc.evidence.Replay;
import headertank.calc.fluid.Air;
import headertank.calc.rating.Plant;
import headertank.calc.transients.LogReplay;
import headertank.calc.transients.LogStretches;
import java.util.ArrayList;
import java.util.List;

/** A log driven again by the car as it is known, its day and its sensor taken as the log says. */
public final class Replaying {

    private Replaying() {}

    /** @return the log beside what the car would have shown */
    public static Replay of(Resolved car, DriveLog log) {
        double ambient = Air.AMBIENT_K.clamp(log.ambientK());
        LogStretches stretches = new LogStretches(log);
        double[] shown = LogReplay.shownK(
                Plant.of(car.with(BuildField.AMBIENT, ambient)), stretches, ambient, 1, LogLikelihood.RADIATOR_SHARE);
        List<Replay.Moment> moments = new ArrayList<>();
        for (int b = 0; b < shown.length; b++) {
            moments.add(new Replay.Moment(
                    stretches.startS() + LogStretches.BLOCK_S * b,
                    stretches.readings().get(b),
                    shown[b]));
        }
        return new Replay(moments);
    }
}
