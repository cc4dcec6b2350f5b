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
        List<Flag.Consequence> gains = car.gainedBy(RuleText.NO_WAY_OUT_GAIN.with(), vented);
        return Optional.of(new Flag(
                id(),
                version(),
                RuleText.NO_WAY_OUT_TITLE.with(),
                Flag.Weight.ofGains(gains),
                Flag.Scope.IN_THE_MARGINS,
                RuleText.NO_WAY_OUT_REASON.with(),
                gains,
                RuleText.NO_WAY_OUT_ADVICE.with(),
                RuleText.NO_WAY_OUT_TRADE.with(),
                RuleText.NO_WAY_OUT_CAUTION.with(),
                source()));
    }
}
