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
                "margin gained with the fan parallel to the core",
                car.resolved().with(BuildField.CORE_TILT, 0));
        return Optional.of(new Flag(
                id(),
                version(),
                "Clutch fan behind a tilted core",
                Flag.Weight.ofGains(gains),
                Flag.Scope.IN_THE_MARGINS,
                "The fan stays upright with the engine while the core leans back (about 20 degrees are common to breathe"
                        + " through the hood): the wedge between them lets the fan draw air from around the core, most of all"
                        + " at idle. The tilt itself costs next to nothing.",
                gains,
                "Close the wedge with a shroud that follows the core, or change to electric fans on the core.",
                "Many say that tilting the core itself kills the cooling.",
                "Keep hands, clothes and tools away from an engine-driven fan.",
                source()));
    }
}
