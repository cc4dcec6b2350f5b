package headertank.calc.coolant;

import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Range;

/**
 * Air that travels with the coolant.
 *
 * <p>Both ends of the pump's curve, head and largest flow, are taken times 1 - 3 a, with a the void share [-]. A guess
 * (modelling choice): nothing published was found for automotive pumps.
 *
 * @param voidShare volume share of air, 0 to 0.25, outside: typed error [-]
 */
public record AirInSystem(double voidShare) {

    /** Void share from which a sensor at a high point must be expected to stand in air [-]; modelling choice. */
    public static final double BLINDING_SHARE = 0.05;

    /** Void shares that the model accepts [-]. */
    public static final Range COVERED = Range.of(0, 0.25);

    public AirInSystem {
        OutOfRangeException.require("voidShare", voidShare, COVERED);
    }

    /** @return factor on head and largest flow of the pump, 0.25 to 1 [-] */
    public double pumpFactor() {
        return 1 - 3 * voidShare;
    }

    /** @return whether a sensor at the highest point can no longer be trusted */
    public boolean blindsHighSensor() {
        return voidShare >= BLINDING_SHARE;
    }
}
