package headertank.calc.rating;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.choice.CoolantBase;
import headertank.calc.fluid.Coolant;
import headertank.calc.fluid.GlycolKind;

/** The coolant of a car. */
public final class CoolantOf {

    private CoolantOf() {}

    /** @return the coolant that the resolved values describe */
    public static Coolant resolved(Resolved r) {
        return switch (r.option(BuildField.COOLANT_BASE, CoolantBase.class)) {
            case PROPYLENE_GLYCOL -> Coolant.ofVolumeFraction(GlycolKind.PROPYLENE, r.value(BuildField.COOLANT_GLYCOL));
            case ETHYLENE_GLYCOL -> Coolant.ofVolumeFraction(GlycolKind.ETHYLENE, r.value(BuildField.COOLANT_GLYCOL));
            case WATER -> Coolant.of(GlycolKind.NONE, 0);
        };
    }
}
