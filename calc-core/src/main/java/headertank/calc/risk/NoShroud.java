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
        List<Flag.Consequence> gains = car.gainedBy(
                "margin gained with a shroud over the whole core",
                car.resolved().with(BuildField.FAN_COVER, 1.0));
        return Optional.of(new Flag(
                id(),
                version(),
                "No shroud, or a small one",
                Flag.Weight.ofGains(gains),
                Flag.Scope.IN_THE_MARGINS,
                "At low speed a fan without a shroud draws air through the core in front of it only, and hot air comes back"
                        + " through the rest. At speed the same open core lets ram air through that a full shroud would hold"
                        + " up: the figures show both.",
                gains,
                "For slow duties fit a shroud over most of the core, with flaps that open at speed.",
                "Many say that a full shroud is always better; at speed it is not.",
                "Fans can start by themselves, also with the engine off: pull their fuse before reaching in.",
                source()));
    }
}
