package headertank.calc.radiator;

/**
 * Passes side by side in one face: division plates in the tanks send the coolant through one part of the tubes after the
 * other. Each of N passes meets 1/N of the air at its inlet temperature with UA/N, and the coolant is mixed in the tank
 * between. With e the effectiveness and C_s the smaller capacity rate of one pass, the heat per kelvin between coolant
 * and air inlet is C_c [1 - (1 - e C_s/C_c)^N]; derived.
 */
public final class Passes {

    private Passes() {}

    /**
     * @param passes number of passes, at least 1
     * @param conductanceWPerK UA of the whole core [W/K]
     * @param airCapacityWPerK capacity rate of all the air [W/K], above 0
     * @param coolantCapacityWPerK capacity rate of the coolant [W/K], above 0
     * @return heat per kelvin between coolant inlet and air inlet [W/K]
     */
    public static double heatPerKelvin(
            int passes, double conductanceWPerK, double airCapacityWPerK, double coolantCapacityWPerK) {
        double air = airCapacityWPerK / passes;
        double smaller = Math.min(air, coolantCapacityWPerK);
        double larger = Math.max(air, coolantCapacityWPerK);
        double one = smaller * CrossFlow.effectiveness(conductanceWPerK / passes / smaller, smaller / larger);
        if (passes == 1) {
            return one;
        }
        double left = 1 - one / coolantCapacityWPerK;
        double product = left;
        for (int i = 1; i < passes; i++) {
            product *= left;
        }
        return coolantCapacityWPerK * (1 - product);
    }
}
