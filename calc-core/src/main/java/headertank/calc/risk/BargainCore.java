package headertank.calc.risk;

import headertank.calc.carspec.Resolved;
import headertank.calc.quantity.Message;
import java.util.List;
import java.util.Optional;

/** A core of low fin density. */
public final class BargainCore implements RiskRule {

    @Override
    public String id() {
        return "bargain-core";
    }

    @Override
    public String version() {
        return "1";
    }

    @Override
    public String source() {
        return "louvred-fin correlation, Chang and Wang 1997; class geometry guessed";
    }

    @Override
    public Optional<Flag> examine(RiskContext car) {
        Resolved now = car.resolved();
        if (!now.coreClass().id().equals("bargain-aluminium")) {
            return Optional.empty();
        }
        Resolved dense = car.withCoreClass("dense-aluminium");
        List<Flag.Consequence> gains = car.gainedBy(RuleText.BARGAIN_CORE_GAIN.with(), dense);
        return Optional.of(new Flag(
                id(),
                version(),
                RuleText.BARGAIN_CORE_TITLE.with(),
                Flag.Weight.ofGains(gains),
                Flag.Scope.IN_THE_MARGINS,
                RuleText.BARGAIN_CORE_REASON.with(),
                gains,
                RuleText.BARGAIN_CORE_ADVICE.with(),
                RuleText.BARGAIN_CORE_TRADE.with(),
                Message.NONE,
                source()));
    }
}
