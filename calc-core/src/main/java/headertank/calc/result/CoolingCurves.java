package headertank.calc.result;

import java.util.List;

/**
 * The two pictures behind a steady state, with everything but the air flow held: pressure of core, fans and ram against
 * air flow, and heat of the radiator against air flow.
 *
 * @param air what the core takes and what drives it, by rising flow from 0
 * @param at the same at the steady state
 * @param heat heat of the radiator, by rising flow from 0
 * @param heatAt the same at the steady state
 */
public record CoolingCurves(List<AirPoint> air, AirPoint at, List<HeatPoint> heat, HeatPoint heatAt) {

    public CoolingCurves {
        air = List.copyOf(air);
        heat = List.copyOf(heat);
    }

    /**
     * One air flow: what the core takes and what there is to drive it. The curves cross at the steady state.
     *
     * @param flowM3PerS flow through the face under the shroud, at core-inlet density [m3/s]
     * @param corePa pressure drop of the core at it [Pa]
     * @param fanPa pressure rise of the fans at it [Pa], negative where they resist, 0 without fans
     * @param offeredPa the same with ram pressure less the losses of inlet, tilt and exit [Pa]
     */
    public record AirPoint(double flowM3PerS, double corePa, double fanPa, double offeredPa) {}

    /**
     * Heat of the radiator at one air flow.
     *
     * @param airMassKgPerS air through the core [kg/s]
     * @param heatW heat at the coolant's temperature in the steady state [W]
     * @param heatAtLimitW heat with the coolant at its limit [W]
     */
    public record HeatPoint(double airMassKgPerS, double heatW, double heatAtLimitW) {}

    /**
     * A steady state, as far as the curves need it.
     *
     * @param roadSpeedMPerS car speed [m/s]
     * @param yawRad sideslip angle [rad]
     * @param ambientK air around the car [K]
     * @param airInK air entering the core [K]
     * @param airOutK air leaving the core [K]
     * @param fanSpeedFactor fan speed over reference speed [-]
     * @param engineOutK coolant leaving the engine [K]
     * @param radiatorM3PerS coolant through the radiator [m3/s]
     */
    public record State(
            double roadSpeedMPerS,
            double yawRad,
            double ambientK,
            double airInK,
            double airOutK,
            double fanSpeedFactor,
            double engineOutK,
            double radiatorM3PerS) {}
}
