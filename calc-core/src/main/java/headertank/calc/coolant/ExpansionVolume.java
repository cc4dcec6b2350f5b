package headertank.calc.coolant;

import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Range;
import headertank.calc.quantity.WorkedQuantity;
import headertank.calc.quantity.WorkingLine;
import java.util.List;

/**
 * Room that the coolant needs when it gets hot: V (rho_cold / rho_hot - 1), and a tenth of that more as gas space.
 *
 * <p>Derived; the tenth is a modelling choice. The tank belongs at the highest point, so that it takes the air out too.
 *
 * @param coolantM3 volume of the cold filling [m3]
 * @param expansionShare rho_cold / rho_hot - 1 [-]
 * @param liquidM3 growth of the liquid [m3]
 * @param neededM3 free volume that the tank needs when cold [m3]
 */
public record ExpansionVolume(double coolantM3, double expansionShare, double liquidM3, double neededM3) {

    /** Gas space on top of the liquid's growth, as a share of it [-]; modelling choice. */
    public static final double GAS_SPACE = 0.10;

    /**
     * @param coolantM3 cold filling, 0 to 0.1 m3, outside: typed error [m3]
     * @param coldDensityKgPerM3 density when filled, usually at 20 deg C [kg/m3]
     * @param hotDensityKgPerM3 density when hot, usually at 110 deg C, at most the cold one [kg/m3]
     * @return the room needed
     */
    public static ExpansionVolume of(double coolantM3, double coldDensityKgPerM3, double hotDensityKgPerM3) {
        OutOfRangeException.require("coolantM3", coolantM3, Range.of(0, 0.1));
        OutOfRangeException.require("coldDensityKgPerM3", coldDensityKgPerM3, Range.of(500, 1500));
        OutOfRangeException.require("hotDensityKgPerM3", hotDensityKgPerM3, Range.of(500, coldDensityKgPerM3));
        double share = coldDensityKgPerM3 / hotDensityKgPerM3 - 1;
        double liquid = coolantM3 * share;
        return new ExpansionVolume(coolantM3, share, liquid, liquid * (1 + GAS_SPACE));
    }

    /** @return the working, line by line */
    public List<WorkingLine> working() {
        return List.of(
                new WorkingLine(
                        WorkedQuantity.GROWTH_OF_THE_COOLANT, "rho_c/rho_h - 1", "-", expansionShare, "derived"),
                new WorkingLine(WorkedQuantity.TANK_ROOM, "V_e", "m3", neededM3, "derived, a tenth for gas"));
    }
}
