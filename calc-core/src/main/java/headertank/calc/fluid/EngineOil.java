package headertank.calc.fluid;

import headertank.calc.quantity.Note;
import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Range;
import java.util.List;
import org.hipparchus.util.FastMath;

/**
 * Engine oil from the figures of its data sheet.
 *
 * <p>Density rho = rho_15 - 0.63 (t - 15), heat capacity cp = 1796 + 4.18 t, conductivity k = 0.1367 - 7.2e-5 t, t in
 * degrees C, from memory; kinematic viscosity by the line of ASTM D341, log10 log10(nu + 0.7) = A - B log10 T, nu in
 * mm2/s, through the two stated values at 40 and 100 C. Range 40 to 160 C; outside, the properties of the nearest bound
 * with a note, and a note above 150 C, where most oils age within hours (common practice, no source).
 */
public final class EngineOil {

    /** Temperatures that are covered [K]. */
    public static final Range TEMPERATURE_K = Range.of(313.15, 433.15);

    private static final Range KV40 = Range.of(10e-6, 1000e-6);
    private static final Range RHO15 = Range.of(750.0, 1000.0);

    private final double density15;
    private final double a;
    private final double b;

    /**
     * @param viscosity40M2PerS kinematic viscosity at 40 C, 10 to 1000 mm2/s [m2/s]
     * @param viscosity100M2PerS kinematic viscosity at 100 C, above 2 mm2/s and below the first [m2/s]
     * @param density15KgPerM3 density at 15 C, 750 to 1000 kg/m3
     */
    public EngineOil(double viscosity40M2PerS, double viscosity100M2PerS, double density15KgPerM3) {
        double nu40 = 1e6 * OutOfRangeException.require("oilViscosity40M2PerS", viscosity40M2PerS, KV40);
        double nu100 = 1e6
                * OutOfRangeException.require(
                        "oilViscosity100M2PerS", viscosity100M2PerS, Range.of(2e-6, viscosity40M2PerS * 0.99));
        this.density15 = OutOfRangeException.require("oilDensity15KgPerM3", density15KgPerM3, RHO15);
        double w40 = FastMath.log10(FastMath.log10(nu40 + 0.7));
        double w100 = FastMath.log10(FastMath.log10(nu100 + 0.7));
        this.b = (w40 - w100) / (FastMath.log10(373.15) - FastMath.log10(313.15));
        this.a = w40 + b * FastMath.log10(313.15);
    }

    /** @return an ordinary multigrade oil: 100 and 14.5 mm2/s, 855 kg/m3 (common practice, no source) */
    public static EngineOil multigrade() {
        return new EngineOil(100e-6, 14.5e-6, 855.0);
    }

    /** @return density [kg/m3] */
    public double densityKgPerM3(double temperatureK) {
        return density15 - 0.63 * (celsius(temperatureK) - 15.0);
    }

    /** @return specific heat capacity [J/kgK] */
    public double heatCapacityJPerKgK(double temperatureK) {
        return 1796.0 + 4.18 * celsius(temperatureK);
    }

    /** @return thermal conductivity [W/mK] */
    public double conductivityWPerMK(double temperatureK) {
        return 0.1367 - 7.2e-5 * celsius(temperatureK);
    }

    /** @return dynamic viscosity [Pa s] */
    public double viscosityPaS(double temperatureK) {
        double exponent = FastMath.pow(10.0, a - b * FastMath.log10(TEMPERATURE_K.clamp(temperatureK)));
        return 1e-6 * (FastMath.pow(10.0, exponent) - 0.7) * densityKgPerM3(temperatureK);
    }

    /** @return what was done outside 40 to 160 C, and a warning above 150 C */
    public List<Note> notes(double temperatureK) {
        if (TEMPERATURE_K.contains(temperatureK) && temperatureK <= 423.15) {
            return List.of();
        }
        boolean hot = temperatureK > 423.15;
        return List.of(new Note(
                "oilTemperatureK",
                temperatureK,
                hot ? Range.of(TEMPERATURE_K.min(), 423.15) : TEMPERATURE_K,
                TEMPERATURE_K.contains(temperatureK) ? Note.Action.WIDENED : Note.Action.CLAMPED,
                1.5,
                hot
                        ? "Above 150 C the oil itself is damaged; its properties are those of 160 C at most."
                        : "Below 40 C the oil's properties are those of 40 C."));
    }

    private static double celsius(double temperatureK) {
        return TEMPERATURE_K.clamp(temperatureK) - 273.15;
    }
}
