package headertank.calc.radiator;

import headertank.calc.quantity.TubeRegime;

/**
 * One line of the answer to "does coolant pass too fast?".
 *
 * @param flowM3PerS coolant flow [m3/s]
 * @param heatW heat given off [W]
 * @param coolantDropK temperature drop of the coolant [K]
 * @param pressureDropPa pressure drop of the coolant [Pa]
 * @param tubeReynolds Reynolds number in the tubes [-]
 * @param tubeRegime how the coolant flows there
 */
public record FlowPoint(
        double flowM3PerS,
        double heatW,
        double coolantDropK,
        double pressureDropPa,
        double tubeReynolds,
        TubeRegime tubeRegime) {}
