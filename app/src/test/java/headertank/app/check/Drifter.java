package headertank.app.check;

import headertank.app.check.snapshot.Snapshot;
import headertank.app.check.stored.CheckResult;
import headertank.app.check.stored.DutyResult;
import headertank.app.check.stored.StoredRun;
import headertank.calc.Rater;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import headertank.calc.quantity.Physics;
import headertank.calc.quantity.Stated;
import java.util.List;

/** A drift car with two big fans on a ramp, rated without uncertainty. */
public final class Drifter {

    public static final Rater RATER = Rater.standard();
    public static final CheckResult RESULT = check(builder().build(), "drift");

    private Drifter() {}

    public static Build.Builder builder() {
        return Build.forCar(CarClass.DRIFT)
                .set(BuildField.ENGINE_POWER, Stated.measured(330e3))
                .set(BuildField.FAN_COUNT, Stated.measured(2))
                .set(BuildField.FAN_FLOW, Stated.measured(0.9))
                .set(BuildField.FAN_CURRENT, Stated.measured(25))
                .set(BuildField.FAN_START_CURRENT, Stated.measured(30))
                .seen(BuildField.CONTROL_KIND, "RAMP")
                .set(BuildField.CONTROL_SET, Stated.measured(Physics.kelvin(90)));
    }

    public static CheckResult check(Build build, String duty) {
        return Snapshot.result(RATER.preview(build, List.of(RATER.duties().get(duty))), RATER);
    }

    public static DutyResult drift() {
        return RESULT.duty("drift").orElseThrow();
    }

    public static StoredRun run() {
        return drift().run().orElseThrow();
    }
}
