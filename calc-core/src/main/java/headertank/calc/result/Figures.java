package headertank.calc.result;

/**
 * The figures of the field for one operating point. Temperatures of limits are ambient temperatures in the sense of SAE
 * J1393 (on-highway truck cooling test code): the hottest day on which the car still holds, and on which it boils.
 *
 * @param coolantMarginK coolant limit minus coolant leaving the engine [K]
 * @param oilMarginK oil limit minus oil temperature [K]
 * @param boilingMarginK boiling point at the cap minus coolant leaving the engine, bulk [K]
 * @param limitingAmbientK LAT, solved: ambient at which the coolant leaves the engine at its limit [K]; infinite when no
 *     ambient up to 400 K reaches it
 * @param limitingAmbientLinearK LAT by the standard's linear formula: ambient plus coolant margin [K]
 * @param boilingAmbientK ATB, solved: ambient at which the coolant boils at the cap [K]; infinite likewise
 * @param boilingAmbientLinearK ATB by the linear formula: ambient plus boiling margin [K]
 * @param inletDifferenceK inlet temperature difference: coolant in minus air in [K]
 * @param specificDissipationWPerK radiator heat over inlet temperature difference [W/K]
 * @param coolantApproachK coolant leaving the radiator minus air entering it [K]
 */
public record Figures(
        double coolantMarginK,
        double oilMarginK,
        double boilingMarginK,
        double limitingAmbientK,
        double limitingAmbientLinearK,
        double boilingAmbientK,
        double boilingAmbientLinearK,
        double inletDifferenceK,
        double specificDissipationWPerK,
        double coolantApproachK) {}
