package headertank.calc.risk;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.choice.AirExit;
import java.util.List;
import java.util.Optional;

/** Hot air cannot leave the engine bay. */
public final class NoWayOut implements RiskRule {

    @Override
    public String id() {
        return "no-way-out";
    }

    @Override
    public String version() {
        return "1";
    }

    @Override
    public String source() {
        return "air balance; pressure coefficients from memory, wide spread";
    }

    @Override
    public Optional<Flag> examine(RiskContext car) {
        Resolved now = car.resolved();
        double face = now.value(BuildField.CORE_WIDTH) * now.value(BuildField.CORE_HEIGHT);
        double share = now.value(BuildField.AIR_EXIT_AREA) / face;
        if (!now.is(BuildField.AIR_EXIT, AirExit.NO_WAY_OUT) && share >= 0.35) {
            return Optional.empty();
        }
        Resolved vented = now.with(BuildField.AIR_EXIT, AirExit.HOOD_VENT)
                .with(
                        BuildField.AIR_EXIT_AREA,
                        Math.min(0.8, Math.max(now.value(BuildField.AIR_EXIT_AREA), 0.55 * face)));
        List<Flag.Consequence> gains =
                car.gainedBy("margin gained with a vent in the hood's low-pressure area", vented);
        return Optional.of(new Flag(
                id(),
                version(),
                "Hot air has no way out",
                Flag.Weight.ofGains(gains),
                Flag.Scope.IN_THE_MARGINS,
                "What enters through the core must leave again: without an exit of at least a third of the core's face the"
                        + " pressure under the hood holds the air up. The hood's material hardly matters, its opening does.",
                gains,
                "Open an exit where the pressure is low: the front third of the hood or behind the wheels, not at the foot of"
                        + " the windscreen, where it is high.",
                "Many blame the material of the hood.",
                "A vent above hot parts can drip and burn: keep it clear of electrics and hot exhaust.",
                source()));
    }
}
