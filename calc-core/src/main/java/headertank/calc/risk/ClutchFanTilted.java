package headertank.calc.risk;

import headertank.calc.carspec.BuildField;
import headertank.calc.choice.FanDrive;
import java.util.List;
import java.util.Optional;

/** A fan on the engine behind a core that leans back. */
public final class ClutchFanTilted implements RiskRule {

    @Override
    public String id() {
        return "clutch-fan-tilted";
    }

    @Override
    public String version() {
        return "1";
    }

    @Override
    public String source() {
        return "two-zone air balance; coverage lost to the wedge guessed; tilt: common practice, no source";
    }

    @Override
    public Optional<Flag> examine(RiskContext car) {
        double tilt = car.resolved().value(BuildField.CORE_TILT);
        if (!car.resolved().is(BuildField.FAN_DRIVE, FanDrive.CLUTCH) || tilt < Math.toRadians(10)) {
            return Optional.empty();
        }
        List<Flag.Consequence> gains = car.gainedBy(
                RuleText.CLUTCH_FAN_TILTED_GAIN.with(), car.resolved().with(BuildField.CORE_TILT, 0));
        return Optional.of(new Flag(
                id(),
                version(),
                RuleText.CLUTCH_FAN_TILTED_TITLE.with(),
                Flag.Weight.ofGains(gains),
                Flag.Scope.IN_THE_MARGINS,
                RuleText.CLUTCH_FAN_TILTED_REASON.with(),
                gains,
                RuleText.CLUTCH_FAN_TILTED_ADVICE.with(),
                RuleText.CLUTCH_FAN_TILTED_TRADE.with(),
                RuleText.CLUTCH_FAN_TILTED_CAUTION.with(),
                source()));
    }
}
