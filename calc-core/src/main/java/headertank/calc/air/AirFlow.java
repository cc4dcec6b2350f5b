package headertank.calc.air;

/**
 * The solved air balance. Volume flows through the core are at core-inlet density.
 *
 * @param massKgPerS air that passes the core forwards and takes heat away [kg/s], at least 0
 * @param backflowKgPerS hot air that flows back through the core [kg/s], at least 0
 * @param shroudedM3PerS flow through the face under the shroud; the whole face without fans [m3/s], negative backwards
 * @param bareM3PerS flow through the bare face [m3/s], negative backwards
 * @param pressureAcrossPa D, pressure before the core less pressure under the hood [Pa]
 * @param faceVelocityMPerS forward flow over the whole face area [m/s]
 * @param recirculationShare r, share of core-outlet air in the air that enters [-]
 * @param residualPa what is left of the pressure balance [Pa], ideally 0
 * @param perFanM3PerS mean flow of one fan at the density that it sees [m3/s], 0 without fans
 * @param fanPressurePa pressure rise of the fans [Pa], negative when they resist, 0 without fans
 */
public record AirFlow(
        double massKgPerS,
        double backflowKgPerS,
        double shroudedM3PerS,
        double bareM3PerS,
        double pressureAcrossPa,
        double faceVelocityMPerS,
        double recirculationShare,
        double residualPa,
        double perFanM3PerS,
        double fanPressurePa) {}
