package headertank.calc.transients;

import headertank.calc.build.BuildField;
import headertank.calc.build.Resolved;
import headertank.calc.rating.Plant;
import org.hipparchus.util.FastMath;

/**
 * Heat capacities of a car's cooling and the conductance between metal and coolant. All figures are guesses with a
 * standard deviation of 25 to 30 % (modelling choice); a logged warm-up replaces them.
 *
 * @param metalJPerK engine metal: 15 kJ/K and 180 J/K per kilowatt of rated power [J/K]
 * @param blockJPerK coolant in block and head, 55 % of the volume [J/K]
 * @param radiatorJPerK coolant in hoses and radiator, 45 % of the volume [J/K]
 * @param oilJPerK oil: 3 litres and one more per 100 kW [J/K]
 */
record Masses(double metalJPerK, double blockJPerK, double radiatorJPerK, double oilJPerK) {

    private static final double BLOCK_SHARE = 0.55;
    private static final double REFERENCE_K = 363.15;
    private static final double OIL_J_PER_M3K = 820 * 2150.0;

    static Masses of(Plant plant) {
        Resolved r = plant.resolved();
        double kilowatts = r.value(BuildField.ENGINE_POWER) / 1000;
        double coolant = r.value(BuildField.COOLANT_VOLUME)
                * plant.coolant().densityKgPerM3(REFERENCE_K)
                * plant.coolant().heatCapacityJPerKgK(REFERENCE_K);
        double factor = plant.factors().metalMass();
        return new Masses(
                factor * (15e3 + 180 * kilowatts),
                BLOCK_SHARE * coolant,
                (1 - BLOCK_SHARE) * coolant,
                (3 + kilowatts / 100) * 1e-3 * OIL_J_PER_M3K);
    }

    /**
     * @param pumpM3PerS flow through the block [m3/s]
     * @return conductance from metal to coolant [W/K]: 9 kW/K at half the pump's flow and 450 kW, with flow^0.8
     */
    static double metalConductanceWPerK(Plant plant, double pumpM3PerS) {
        double share = pumpM3PerS / (0.5 * plant.pump().maxFlowM3PerS());
        double size = plant.resolved().value(BuildField.ENGINE_POWER) / 450e3;
        // exp(0.8 ln x) is x^0.8 within rounding and less than half the work
        return share > 0 ? 9000 * FastMath.exp(0.8 * FastMath.log(share)) * size + 200 : 200;
    }
}
