package headertank.calc.learning;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.evidence.DriveLog;
import headertank.calc.evidence.Replay;
import headertank.calc.rating.Plant;
import headertank.calc.transients.LogStretches;
import java.util.ArrayList;
import java.util.List;

/** A log driven again by the car as it is known, its day and its sensor taken as the log says. */
public final class Replaying {

    private Replaying() {}

    /** @return the log beside what the car would have shown */
    public static Replay of(Resolved car, DriveLog log) {
        DrivenLog driven = new DrivenLog(log, car);
        Plant plant = Plant.of(car.with(BuildField.AMBIENT, driven.ambientK(0)));
        double[] shown = driven.answer(plant, 0, DrivenLog.USUAL).shownK();
        LogStretches stretches = driven.stretches();
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
