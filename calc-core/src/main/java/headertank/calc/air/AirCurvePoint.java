package headertank.calc.air;

/**
 * One flow on the curves of an air balance: what the core takes and what there is to drive it. The curves cross at the
 * balance.
 *
 * @param flowM3PerS flow through the face under the shroud, at core-inlet density [m3/s]
 * @param corePa pressure drop of the core at it [Pa]
 * @param fanPa pressure rise of the fans at it [Pa], negative where they resist, 0 without fans
 * @param offeredPa the same with ram pressure less the losses of inlet, tilt and exit [Pa]
 */
public record AirCurvePoint(double flowM3PerS, double corePa, double fanPa, double offeredPa) {}
