package headertank.calc.fluid;

import headertank.calc.quantity.Note;
import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Range;
import java.util.List;

/**
 * A coolant of fixed composition. The property functions take any temperature of 233 to 473 K without a throw, are
 * continuous, and the viscosity never rises with temperature, so that a bracketed root search may run over them; where
 * the source ends they follow the rule that {@link #notes(double)} states. Corrosion inhibitors and wetting additives
 * are not modelled: they come in shares of a few percent and no bulk property of ours tells them apart.
 */
public interface Coolant {

    /** Mass fractions of glycol that are accepted; above 0.60 the properties are those of 0.60, with a note [-]. */
    Range GLYCOL_MASS_FRACTION = Range.of(0.0, 0.70);

    /**
     * @param temperatureK temperature [K]
     * @return density [kg/m3]
     */
    double densityKgPerM3(double temperatureK);

    /**
     * @param temperatureK temperature [K]
     * @return specific heat capacity at constant pressure [J/kgK]
     */
    double heatCapacityJPerKgK(double temperatureK);

    /**
     * @param temperatureK temperature [K]
     * @return dynamic viscosity [Pa s]
     */
    double viscosityPaS(double temperatureK);

    /**
     * @param temperatureK temperature [K]
     * @return thermal conductivity [W/mK]
     */
    double conductivityWPerMK(double temperatureK);

    /** @return temperature at which the first ice forms [K] */
    double freezingK();

    /**
     * Bubble point.
     *
     * @param pressurePa absolute pressure [Pa]
     * @return temperature at which the coolant begins to boil at this pressure [K]
     * @throws OutOfRangeException for a pressure whose bubble point lies outside 20 to 260 C
     */
    double boilingK(double pressurePa);

    /**
     * Bubble point pressure.
     *
     * @param temperatureK temperature, clamped to 273.15 to 647.096 K [K]
     * @return absolute pressure below which the coolant boils at this temperature [Pa]
     */
    double vapourPressurePa(double temperatureK);

    /** @return mass fraction of glycol of the figures that are used [-] */
    double glycolMassFraction();

    /** @return which glycol */
    GlycolKind kind();

    /** @return where the properties come from, in a line */
    String source();

    /**
     * @param temperatureK temperature of the last look at the properties [K]
     * @return what was done at this temperature and composition that the source does not cover; empty inside its range
     */
    List<Note> notes(double temperatureK);

    /**
     * @param temperatureK temperature [K]
     * @return one standard deviation of the properties at this temperature
     */
    CoolantSpread spread(double temperatureK);

    /**
     * The coolant whose source covers 80 to 120 C best: the water formulations without glycol, the ASHRAE tables (to
     * 100 C) with it; their difference from the second source is part of {@link #spread(double)}.
     *
     * @param kind which glycol
     * @param glycolMassFraction mass fraction of glycol, 0..0.70; above 0.60 clamped with a note [-]
     * @throws OutOfRangeException above 0.70 or below 0
     */
    static Coolant of(GlycolKind kind, double glycolMassFraction) {
        OutOfRangeException.require("glycolMassFraction", glycolMassFraction, GLYCOL_MASS_FRACTION);
        if (kind == GlycolKind.NONE || glycolMassFraction == 0) {
            return WaterCoolant.WATER;
        }
        return new AshraeCoolant(kind, glycolMassFraction);
    }

    /**
     * The coolant of {@link #of(GlycolKind, double)} for a mixture that was filled by volume, see
     * {@link GlycolKind#massFraction(double)}.
     *
     * @param kind which glycol
     * @param volumeFraction volume of pure glycol over the sum of both volumes [-]
     */
    static Coolant ofVolumeFraction(GlycolKind kind, double volumeFraction) {
        OutOfRangeException.require("glycolVolumeFraction", volumeFraction, Range.of(0.0, 1.0));
        return of(kind, kind.massFraction(volumeFraction));
    }
}
