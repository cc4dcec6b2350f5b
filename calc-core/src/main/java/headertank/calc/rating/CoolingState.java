package headertank.calc.rating;

/**
 * What the cooling does at one coolant temperature with thermostat and fans held.
 *
 * @param capacityRateWPerK heat capacity rate of the coolant through the radiator [W/K]
 * @param coolantEffectiveness radiator heat over what the coolant could give off at most [-]
 * @param airInK air entering the core [K]
 * @param underHoodK air under the hood [K]
 * @param pumpM3PerS flow through the pump [m3/s]
 * @param radiatorM3PerS flow through the radiator [m3/s]
 * @param fanCurrentA current of all electric fans [A]
 * @param deficitA current that the battery must give [A]
 * @param fanDuty duty of the fans, slip of a clutch fan [-]
 * @param airSideShare share of the air side in the resistance of the radiator [-]
 * @param airCapacityWPerK heat capacity rate of the air through the core [W/K]
 */
public record CoolingState(
        double capacityRateWPerK,
        double coolantEffectiveness,
        double airInK,
        double underHoodK,
        double pumpM3PerS,
        double radiatorM3PerS,
        double fanCurrentA,
        double deficitA,
        double fanDuty,
        double airSideShare,
        double airCapacityWPerK) {}
