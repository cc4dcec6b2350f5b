package headertank.calc.coreclass;

/**
 * How far cores of one class differ from their typical one: one standard deviation, log-normal.
 *
 * @param conductanceShare of the conductance UA [-]
 * @param airDropShare of the pressure drop on the air side [-]
 */
public record CoreSpread(double conductanceShare, double airDropShare) {}
