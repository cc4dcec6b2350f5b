package headertank.calc.risk;

import headertank.calc.carspec.BuildField;
import headertank.calc.choice.FanDrive;
import headertank.calc.choice.FanMounting;
import headertank.calc.quantity.Message;
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
                RuleText.PUSHING_FAN_GAIN.with(), car.resolved().with(BuildField.FAN_MOUNTING, FanMounting.PULLING));
        return Optional.of(new Flag(
                id(),
                version(),
                RuleText.PUSHING_FAN_TITLE.with(),
                Flag.Weight.ofGains(gains),
                Flag.Scope.IN_THE_MARGINS,
                RuleText.PUSHING_FAN_REASON.with(),
                gains,
                RuleText.PUSHING_FAN_ADVICE.with(),
                Message.NONE,
                RuleText.PUSHING_FAN_CAUTION.with(),
                source()));
    }
}
