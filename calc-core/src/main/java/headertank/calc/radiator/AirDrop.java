package headertank.calc.radiator;

/**
 * Pressure drop of a core as a curve of face velocity: dp = a v + b v^2, odd in v.
 *
 * @param linearPaSPerM a [Pa s/m]
 * @param quadraticPaS2PerM2 b [Pa s2/m2]
 */
public record AirDrop(double linearPaSPerM, double quadraticPaS2PerM2) {}
