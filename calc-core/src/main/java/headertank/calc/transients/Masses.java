package headertank.calc.transients;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.choice.CoreMaterial;
import headertank.calc.engine.EngineClass;
import headertank.calc.radiator.CoreAreas;
import headertank.calc.radiator.CoreGeometry;
import headertank.calc.rating.Plant;
import org.hipparchus.util.FastMath;

/**
 * Heat capacities of a car's cooling and the conductance between metal and coolant. All but the core's are guesses, the
 * metal's with a standard deviation of 25 % (modelling choice); a logged warm-up replaces them, and published checks compare
 * two cars.
 *
 * @param metalJPerK engine metal that follows the coolant: 35 % of the engine, which is head, liners and upper block, of a
 *     mass of 50 kg and 27 kg per litre, 1.4 times that in iron, at 650 J/kgK, the mean of aluminium and steel; masses from
 *     memory, share a modelling choice. Crank, sump and what hangs on the engine follow too late to count [J/K]
 * @param blockJPerK coolant in block, head and heater, 50 % of the volume [J/K]
 * @param radiatorJPerK coolant in hoses and radiator, 35 % of the volume; the rest stands in the header tank [J/K]
 * @param coreJPerK tubes and fins of the core by their geometry, and 30 % more for plates and tanks [J/K]
 * @param oilJPerK oil: 3 litres and one more per 100 kW [J/K]
 * @param hoodJPerK air under the hood and the thin parts that it washes, 5 kJ/K [J/K]
 */
record Masses(
        double metalJPerK,
        double blockJPerK,
        double radiatorJPerK,
        double coreJPerK,
        double oilJPerK,
        double hoodJPerK) {

    private static final double BLOCK_SHARE = 0.50;
    private static final double RADIATOR_SHARE = 0.35;
    private static final double REFERENCE_K = 363.15;
    private static final double OIL_J_PER_M3K = 820 * 2150.0;

    /** Density times specific heat of aluminium, from memory [J/m3K]. */
    private static final double ALUMINIUM_J_PER_M3K = 2700 * 900.0;

    /** The same of copper and brass, from memory [J/m3K]. */
    private static final double COPPER_BRASS_J_PER_M3K = 8700 * 385.0;

    private static final double ENGINE_KG = 50;
    private static final double ENGINE_KG_PER_M3 = 27e3;
    private static final double IRON_OVER_ALUMINIUM = 1.4;
    private static final double ENGINE_J_PER_KG_K = 650;
    private static final double FOLLOWS_COOLANT = 0.35;
    private static final double PLATES_AND_TANKS = 1.3;
    private static final double HOOD_J_PER_K = 5e3;

    /** Metal to coolant by natural convection when the pump stands, guessed [W/K]. */
    private static final double STANDING_W_PER_K = 60;

    private static final double METAL_W_PER_K = 5000;

    static Masses of(Plant plant) {
        Resolved r = plant.resolved();
        double kilowatts = r.value(BuildField.ENGINE_POWER) / 1000;
        double coolant = r.value(BuildField.COOLANT_VOLUME)
                * plant.coolant().densityKgPerM3(REFERENCE_K)
                * plant.coolant().heatCapacityJPerKgK(REFERENCE_K);
        double factor = plant.factors().metal().mass();
        return new Masses(
                factor * metalJPerK(r),
                BLOCK_SHARE * coolant,
                plant.factors().metal().radiatorMass() * RADIATOR_SHARE * coolant,
                plant.factors().metal().radiatorMass() * coreJPerK(plant),
                plant.factors().metal().oilMass() * (3 + kilowatts / 100) * 1e-3 * OIL_J_PER_M3K,
                HOOD_J_PER_K);
    }

    private static double metalJPerK(Resolved r) {
        double kg = ENGINE_KG + ENGINE_KG_PER_M3 * r.value(BuildField.ENGINE_DISPLACEMENT);
        double iron = r.is(BuildField.ENGINE_CLASS, EngineClass.PETROL_OLD) ? IRON_OVER_ALUMINIUM : 1;
        return FOLLOWS_COOLANT * kg * iron * ENGINE_J_PER_KG_K;
    }

    private static double coreJPerK(Plant plant) {
        CoreGeometry g = plant.radiator().spec().geometry();
        CoreAreas a = plant.radiator().areas();
        double fins = 0.5 * a.air().finAreaM2() * g.fins().thicknessM();
        double tubes = a.tubes().areaM2() * g.tubes().wallM();
        boolean copper =
                plant.resolved().option(BuildField.CORE_MATERIAL, CoreMaterial.class) == CoreMaterial.COPPER_BRASS;
        return PLATES_AND_TANKS * (fins + tubes) * (copper ? COPPER_BRASS_J_PER_M3K : ALUMINIUM_J_PER_M3K);
    }

    /**
     * @param pumpM3PerS flow through the block [m3/s]
     * @return conductance from metal to coolant [W/K]: 5 kW/K at half the pump's flow and 450 kW, with flow^0.8, so that the bulk
     *     of the metal is some 30 K above the coolant at full load (from memory), and what it is without flow
     */
    static double metalConductanceWPerK(Plant plant, double pumpM3PerS) {
        double contact = plant.factors().metal().contact();
        if (!(pumpM3PerS > 0)) {
            return STANDING_W_PER_K * contact;
        }
        double share = pumpM3PerS / (0.5 * plant.pump().maxFlowM3PerS());
        double size = plant.resolved().value(BuildField.ENGINE_POWER) / 450e3;
        // exp(0.8 ln x) is x^0.8 within rounding and less than half the work
        return contact * (METAL_W_PER_K * FastMath.exp(0.8 * FastMath.log(share)) * size + STANDING_W_PER_K);
    }

    /** @return energy in the masses at these temperatures, from 0 K [J] */
    double storedJ(double[] y) {
        return metalJPerK * y[LumpedCar.METAL]
                + blockJPerK * y[LumpedCar.BLOCK]
                + radiatorJPerK * y[LumpedCar.RADIATOR]
                + coreJPerK * y[LumpedCar.CORE]
                + oilJPerK * y[LumpedCar.OIL]
                + hoodJPerK * y[LumpedCar.HOOD];
    }
}
