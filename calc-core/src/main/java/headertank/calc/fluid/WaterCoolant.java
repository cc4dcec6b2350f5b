package headertank.calc.fluid;

import headertank.calc.quantity.Note;
import headertank.calc.quantity.NoteText;
import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Range;
import headertank.calc.quantity.SiFigure;
import java.util.List;
import org.hipparchus.util.FastMath;

/** Plain water as a coolant: {@link WaterProperties}, clamped to 1 to 150 C. */
final class WaterCoolant implements Coolant {

    static final WaterCoolant WATER = new WaterCoolant();

    private static final Range BOILING_K = Range.of(293.15, 533.15);
    private static final CoolantSpread SPREAD = new CoolantSpread(3e-4, 1e-3, 0.01, 0.015, 0.05);

    private WaterCoolant() {}

    @Override
    public double densityKgPerM3(double temperatureK) {
        return Polynomial.at(WaterProperties.DENSITY, z(temperatureK));
    }

    @Override
    public double heatCapacityJPerKgK(double temperatureK) {
        return Polynomial.at(WaterProperties.HEAT_CAPACITY, z(temperatureK));
    }

    @Override
    public double viscosityPaS(double temperatureK) {
        return FastMath.exp(Polynomial.at(WaterProperties.LN_VISCOSITY, z(temperatureK)));
    }

    @Override
    public double conductivityWPerMK(double temperatureK) {
        return Polynomial.at(WaterProperties.CONDUCTIVITY, z(temperatureK));
    }

    private static double z(double temperatureK) {
        return (WaterProperties.LIQUID_K.clamp(temperatureK) - 348.15) / 75.0;
    }

    @Override
    public double freezingK() {
        return 273.15;
    }

    @Override
    public double boilingK(double pressurePa) {
        Range allowed = Range.of(vapourPressurePa(BOILING_K.min()), vapourPressurePa(BOILING_K.max()));
        return WaterProperties.saturationTemperatureK(OutOfRangeException.require("pressurePa", pressurePa, allowed));
    }

    @Override
    public double vapourPressurePa(double temperatureK) {
        return WaterProperties.saturationPressureUnchecked(WaterProperties.SATURATION_K.clamp(temperatureK));
    }

    @Override
    public double glycolMassFraction() {
        return 0;
    }

    @Override
    public GlycolKind kind() {
        return GlycolKind.NONE;
    }

    @Override
    public String source() {
        return "fits of ours to IAPWS R7-97 (industrial formulation 1997), R12-08 and R15-11";
    }

    @Override
    public List<Note> notes(double temperatureK) {
        if (WaterProperties.LIQUID_K.contains(temperatureK)) {
            return List.of();
        }
        return List.of(new Note(
                "coolantTemperatureK",
                temperatureK,
                WaterProperties.LIQUID_K,
                Note.Action.CLAMPED,
                1.5,
                NoteText.WATER_BEYOND_TABLES.with(
                        SiFigure.temperature(WaterProperties.LIQUID_K.min()),
                        SiFigure.temperature(WaterProperties.LIQUID_K.max()))));
    }

    @Override
    public CoolantSpread spread(double temperatureK) {
        return WaterProperties.LIQUID_K.contains(temperatureK) ? SPREAD : SPREAD.widened(1.5);
    }
}
