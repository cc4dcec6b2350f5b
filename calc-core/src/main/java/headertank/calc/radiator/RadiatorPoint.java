package headertank.calc.radiator;

import headertank.calc.quantity.TubeRegime;

/**
 * A radiator at one operating point.
 *
 * @param heatW heat from coolant to air, negative when the air is the hotter [W]
 * @param coolantOutK coolant leaving [K]
 * @param airOutK air leaving, mixed [K]
 * @param conductanceWPerK UA [W/K]
 * @param ntu UA over the smaller capacity rate [-]
 * @param capacityRatio smaller over larger capacity rate [-]
 * @param effectiveness heat over the smaller capacity rate times the difference of the inlets [-]
 * @param airSideResistanceShare share of the air side in 1/UA [-]
 * @param tubeReynolds Reynolds number in the tubes [-]
 * @param tubeRegime how the coolant flows there
 * @param finEfficiency efficiency of the fins [-]
 * @param faceVelocityMPerS air velocity before the whole face, at inlet density [m/s]
 * @param louverReynolds Reynolds number of the fins [-]
 */
public record RadiatorPoint(
        double heatW,
        double coolantOutK,
        double airOutK,
        double conductanceWPerK,
        double ntu,
        double capacityRatio,
        double effectiveness,
        double airSideResistanceShare,
        double tubeReynolds,
        TubeRegime tubeRegime,
        double finEfficiency,
        double faceVelocityMPerS,
        double louverReynolds) {

    /** @return the limit without air: nothing leaves, both streams have the coolant's temperature */
    public static RadiatorPoint withoutAir(double coolantInK) {
        return still(coolantInK, coolantInK, 0);
    }

    /** The limit without coolant flow: what stands in the tubes has the air's temperature. */
    static RadiatorPoint withoutCoolant(double airInK, double faceVelocityMPerS) {
        return still(airInK, airInK, faceVelocityMPerS);
    }

    private static RadiatorPoint still(double coolantOutK, double airOutK, double faceVelocityMPerS) {
        return new RadiatorPoint(
                0, coolantOutK, airOutK, 0, 0, 0, 0, 0, 0, TubeRegime.LAMINAR, 1, faceVelocityMPerS, 0);
    }
}
