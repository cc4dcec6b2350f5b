package headertank.calc.oil;

import headertank.calc.choice.OilCoolerPlace;
import headertank.calc.quantity.OutOfRangeException;
import org.hipparchus.util.FastMath;

/**
 * How well the oil of one car is cooled at a speed of its engine, of the road and of the air through its core.
 *
 * <p>To the coolant through walls that oil films wet: {@link #BLOCK_W_PER_K} of two litres in four cylinders at 3000 1/min, as much
 * again by a plate cooler. Both grow with displacement^(2/3) cylinders^(1/3), the walls of cylinders of like shape (derived), and
 * with (engine speed)^0.6, as films do whose flow the oil pump sets. The size is such that stock cars without a cooler hold their
 * oil 15 to 25 K above the coolant on a motorway, 95 to 120 deg C (common practice, no source); exponent a modelling choice.
 *
 * <p>To the air through the sump: 0.25 m2 for 1.5 litres, growing with displacement^(2/3), at 10 W/m2K by natural convection and
 * radiation and 1.9 more per m/s of road speed up to 25 m/s, as the block's surface (derived). By an air cooler: its conductance
 * at 30 m/s times r^0.7, at least 0.02 by natural convection; r is road speed over 30 m/s, or in front of the core the velocity
 * at its face over 6 m/s, which is what 30 m/s bring there; exponents between that of a core (0.5) and that of its air's heat
 * capacity (1), modelling choices. One standard deviation of all of it 25 %.
 *
 * @param displacementM3 displacement [m3]
 * @param cylinders number of cylinders; {@link #usualCylinders}, no whole number, where nobody counted them [-]
 * @param plateCooler whether a plate cooler in the coolant helps
 * @param airCoolerAt30MPerSWPerK conductance of a cooler between oil and air at 30 m/s, 0 without, to 5000 [W/K]
 * @param place where that gets its air
 * @param thermostat its thermostat; the share that it governs is replaced by the cooler's
 * @param factor factor on all conductances [-]
 */
public record OilCoolers(
        double displacementM3,
        double cylinders,
        boolean plateCooler,
        double airCoolerAt30MPerSWPerK,
        OilCoolerPlace place,
        OilThermostat thermostat,
        double factor) {

    /** Conductance from oil to coolant of two litres in four cylinders at 3000 1/min [W/K]. */
    public static final double BLOCK_W_PER_K = 140;

    private static final double BLOCK_AT_M3 = 2e-3;
    private static final double BLOCK_AT_CYLINDERS = 4;

    private static final double REFERENCE_PER_S = 50;
    private static final double SLOWEST_PER_S = 5;
    private static final double SUMP_M2 = 0.25;
    private static final double SUMP_AT_M3 = 1.5e-3;
    private static final double NATURAL = 0.02;
    private static final double FASTEST_FILM_M_PER_S = 25;
    private static final double ROAD_M_PER_S = 30;
    private static final double FACE_M_PER_S = 6;

    /**
     * @param displacementM3 displacement [m3]
     * @return how many cylinders of the reference's size make it up, so that what nobody counted makes no steps [-]
     */
    public static double usualCylinders(double displacementM3) {
        return BLOCK_AT_CYLINDERS * displacementM3 / BLOCK_AT_M3;
    }

    public OilCoolers {
        OutOfRangeException.require("oil.airCoolerWPerK", airCoolerAt30MPerSWPerK, 0, 5000);
        OutOfRangeException.require("oil.factor", factor, 0.05, 20);
    }

    /**
     * @param engineSpeedPerS engine speed; below 5 taken as 5 [rev/s]
     * @param roadSpeedMPerS road speed [m/s]
     * @param coreFaceMPerS velocity of the air before the core's face [m/s]
     * @return the conductances there
     */
    public OilSpec at(double engineSpeedPerS, double roadSpeedMPerS, double coreFaceMPerS) {
        return driven(engineSpeedPerS, roadSpeedMPerS).at(coreFaceMPerS);
    }

    /**
     * @param engineSpeedPerS engine speed; below 5 taken as 5 [rev/s]
     * @param roadSpeedMPerS road speed [m/s]
     * @return what of the conductances does not change with the air through the core
     */
    public Driven driven(double engineSpeedPerS, double roadSpeedMPerS) {
        double films = FastMath.pow(Math.max(SLOWEST_PER_S, engineSpeedPerS) / REFERENCE_PER_S, 0.6);
        double walls =
                FastMath.pow(displacementM3 / BLOCK_AT_M3, 2.0 / 3) * FastMath.cbrt(cylinders / BLOCK_AT_CYLINDERS);
        double toCoolant = (plateCooler ? 2 : 1) * BLOCK_W_PER_K * walls * films;
        return new Driven(this, toCoolant, sumpWPerK(roadSpeedMPerS), roadSpeedMPerS);
    }

    /**
     * The coolers of a car at a speed of engine and road.
     *
     * @param coolers the coolers
     * @param toCoolantWPerK from oil to coolant, without the factor [W/K]
     * @param sumpWPerK from the sump to the air, without the factor [W/K]
     * @param roadSpeedMPerS road speed [m/s]
     */
    public record Driven(OilCoolers coolers, double toCoolantWPerK, double sumpWPerK, double roadSpeedMPerS) {

        /**
         * @param coreFaceMPerS velocity of the air before the core's face [m/s]
         * @return the conductances there
         */
        public OilSpec at(double coreFaceMPerS) {
            double cooler = coolers.airCoolerWPerK(roadSpeedMPerS, coreFaceMPerS);
            OilThermostat of = coolers.thermostat;
            OilThermostat governing = new OilThermostat(
                    of.openingK(), of.fullOpenK(), of.governedShare() > 0 ? cooler / (sumpWPerK + cooler) : 0);
            return new OilSpec(coolers.factor * toCoolantWPerK, coolers.factor * (sumpWPerK + cooler), governing);
        }
    }

    private double sumpWPerK(double roadSpeedMPerS) {
        double area = SUMP_M2 * FastMath.pow(displacementM3 / SUMP_AT_M3, 2.0 / 3);
        return area * (10 + 1.9 * Math.min(FASTEST_FILM_M_PER_S, roadSpeedMPerS));
    }

    private double airCoolerWPerK(double roadSpeedMPerS, double coreFaceMPerS) {
        if (airCoolerAt30MPerSWPerK == 0) {
            return 0;
        }
        double r = place == OilCoolerPlace.BEFORE_CORE ? coreFaceMPerS / FACE_M_PER_S : roadSpeedMPerS / ROAD_M_PER_S;
        return airCoolerAt30MPerSWPerK * Math.max(NATURAL, FastMath.pow(Math.min(2, Math.max(0, r)), 0.7));
    }
}
