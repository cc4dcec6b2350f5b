package headertank.calc.risk;

import headertank.calc.carspec.BuildField;
import headertank.calc.choice.FanDrive;
import headertank.calc.choice.FanMounting;
import java.util.List;
import java.util.Optional;

/** The fan sits in front of the core. */
public final class PushingFan implements RiskRule {

    @Override
    public String id() {
        return "pushing-fan";
    }

    @Override
    public String version() {
        return "1";
    }

    @Override
    public String source() {
        return "20 to 30 % less: common practice, no source; consequence solved";
    }

    @Override
    public Optional<Flag> examine(RiskContext car) {
        if (!car.resolved().is(BuildField.FAN_MOUNTING, FanMounting.PUSHING)
                || car.resolved().is(BuildField.FAN_DRIVE, FanDrive.NONE)) {
            return Optional.empty();
        }
        List<Flag.Consequence> gains = car.gainedBy(
                "margin gained with the same fans pulling",
                car.resolved().with(BuildField.FAN_MOUNTING, FanMounting.PULLING));
        return Optional.of(new Flag(
                id(),
                version(),
                "Pushing fan",
                Flag.Weight.ofGains(gains),
                Flag.Scope.IN_THE_MARGINS,
                "In front of the core a fan moves 20 to 30 % less than behind it and its hub and blades shade the core when"
                        + " the car moves.",
                gains,
                "Mount the fans behind the core on a shroud, if there is room.",
                "",
                "Fans can start by themselves, also with the engine off: pull their fuse before reaching in.",
                source()));
    }
}
