package headertank.calc.risk;

import headertank.calc.carspec.Resolved;
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
        List<Flag.Consequence> gains = car.gainedBy("margin gained with a dense core of the same size", dense);
        return Optional.of(new Flag(
                id(),
                version(),
                "Bargain core",
                Flag.Weight.ofGains(gains),
                Flag.Scope.IN_THE_MARGINS,
                "What decides is fin density, louvres and the joint of fin and tube, not outer size or polish. A coarse core"
                        + " of the same size gives off up to a third less.",
                gains,
                "Ask for fin pitch and louvre angle, or for a performance sheet, before buying by size.",
                "Many buy by outer size and number of rows.",
                "",
                source()));
    }
}
