package headertank.calc.risk;

import headertank.calc.carspec.BuildField;
import headertank.calc.choice.FanDrive;
import java.util.List;
import java.util.Optional;

/** The fans reach only a part of the core. */
public final class NoShroud implements RiskRule {

    @Override
    public String id() {
        return "no-shroud";
    }

    @Override
    public String version() {
        return "1";
    }

    @Override
    public String source() {
        return "two-zone air balance; trade statement: common practice, no source";
    }

    @Override
    public Optional<Flag> examine(RiskContext car) {
        double cover = car.resolved().value(BuildField.FAN_COVER);
        if (cover >= 0.7 || car.resolved().is(BuildField.FAN_DRIVE, FanDrive.NONE)) {
            return Optional.empty();
        }
        List<Flag.Consequence> gains =
                car.gainedBy(RuleText.NO_SHROUD_GAIN.with(), car.resolved().with(BuildField.FAN_COVER, 1.0));
        return Optional.of(new Flag(
                id(),
                version(),
                RuleText.NO_SHROUD_TITLE.with(),
                Flag.Weight.ofGains(gains),
                Flag.Scope.IN_THE_MARGINS,
                RuleText.NO_SHROUD_REASON.with(),
                gains,
                RuleText.NO_SHROUD_ADVICE.with(),
                RuleText.NO_SHROUD_TRADE.with(),
                RuleText.NO_SHROUD_CAUTION.with(),
                source()));
    }
}
