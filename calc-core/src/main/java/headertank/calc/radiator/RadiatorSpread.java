package headertank.calc.radiator;

/**
 * One standard deviation of each of the {@link RadiatorFactors}, as a share (log-normal).
 *
 * @param airSide of the air-side coefficient [-]
 * @param airFriction of the air-side friction [-]
 * @param tubeSide of the tube-side coefficient [-]
 */
public record RadiatorSpread(double airSide, double airFriction, double tubeSide) {}
