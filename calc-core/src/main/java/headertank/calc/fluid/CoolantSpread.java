package headertank.calc.fluid;

/**
 * One standard deviation of a coolant's properties at a temperature: what the sources of the figures leave open.
 *
 * @param densityShare of the density, as a share of it [-]
 * @param heatCapacityShare of the heat capacity, as a share of it [-]
 * @param viscosityShare of the viscosity, as a share of it [-]
 * @param conductivityShare of the conductivity, as a share of it [-]
 * @param boilingK of the boiling temperature [K]
 */
public record CoolantSpread(
        double densityShare,
        double heatCapacityShare,
        double viscosityShare,
        double conductivityShare,
        double boilingK) {

    /** @return the four shares {@code factor} times as wide; the boiling temperature keeps its spread */
    CoolantSpread widened(double factor) {
        return new CoolantSpread(
                densityShare * factor,
                heatCapacityShare * factor,
                viscosityShare * factor,
                conductivityShare * factor,
                boilingK);
    }
}
