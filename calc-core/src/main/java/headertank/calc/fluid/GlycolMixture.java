package headertank.calc.fluid;

import headertank.calc.quantity.Note;
import headertank.calc.quantity.NoteText;
import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.quantity.Range;
import headertank.calc.quantity.SiFigure;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.util.FastMath;

/**
 * A water-glycol mixture whose properties are polynomials in temperature up to 100 C, with a common extension above.
 *
 * <p>Above 100 C density, heat capacity and conductivity go on along their tangents at 373.15 K, and the viscosity
 * along ln mu = A + B/T (Andrade 1930) through its values at 353.15 and 373.15 K; above 135 C everything stays at its
 * value there. Modelling choice: for plain water, where the truth is known, the same rule gives at 120 C -0.35 % in
 * heat capacity, -0.02 % in density and -5.7 % in viscosity. The spread doubles above 100 C and trebles above 125 C.
 *
 * <p>Bubble point: y_w p_w(T) + (1 - y_w) p_g(T) = p (Raoult, activities 1), y_w mole fraction of water, p_w of
 * {@link WaterProperties}, p_g by Antoine's equation log10(p / mmHg) = A - B/(t + C), t in degrees C, with A, B, C =
 * 8.0908, 2088.9, 203.5 (ethylene) and 8.2082, 2085.9, 203.54 (propylene), from memory; they return one atmosphere at
 * 197.4 and 188.0 C, the known normal boiling points within 0.3 K. Water and glycol deviate a little from Raoult: one
 * standard deviation of the boiling temperature is 1.0 K (ethylene), 1.5 K (propylene), modelling choice.
 */
abstract class GlycolMixture implements Coolant {

    /** Glycol mass fractions that both sources cover [-]. */
    static final Range COVERED_FRACTION = Range.of(0.0, 0.60);

    static final double EXTENSION_FROM_K = 373.15;
    private static final double WIDER_FROM_K = 398.15;
    private static final double CLAMP_K = 408.15;
    private static final double ANDRADE_LOW_K = 353.15;
    private static final Range BOILING_K = Range.of(293.15, 533.15);
    private static final double WATER_MOLAR_MASS = 0.018015;
    private static final double PA_PER_MMHG = 101325.0 / 760.0;

    private final GlycolKind kind;
    private final double askedFraction;
    private final double fraction;
    private final double freezingK;
    private final double lowestK;
    private final double waterMoleFraction;

    private final double baseK;
    private final double scaleK;
    private final double[] density;
    private final double[] heatCapacity;
    private final double[] conductivity;
    private final double[] lnViscosity;
    private final double density100;
    private final double densitySlope;
    private final double heatCapacity100;
    private final double heatCapacitySlope;
    private final double conductivity100;
    private final double conductivitySlope;
    private final double andradeA;
    private final double andradeB;

    /** Polynomials in z = (T - baseK)/scaleK of one composition. */
    record Curves(
            double baseK,
            double scaleK,
            double[] density,
            double[] heatCapacity,
            double[] conductivity,
            double[] lnViscosity,
            double freezingK,
            double lowestK) {}

    GlycolMixture(GlycolKind kind, double askedFraction, Curves c) {
        this.kind = kind;
        this.askedFraction = askedFraction;
        this.fraction = usedFraction(kind, askedFraction);
        this.freezingK = c.freezingK();
        this.lowestK = Math.max(c.lowestK(), c.freezingK());
        double water = (1 - fraction) / WATER_MOLAR_MASS;
        double glycol = fraction / kind.molarMassKgPerMol();
        this.waterMoleFraction = water / (water + glycol);
        this.baseK = c.baseK();
        this.scaleK = c.scaleK();
        this.density = c.density();
        this.heatCapacity = c.heatCapacity();
        this.conductivity = c.conductivity();
        this.lnViscosity = c.lnViscosity();
        double z = z(EXTENSION_FROM_K);
        this.density100 = Polynomial.at(density, z);
        this.densitySlope = Polynomial.slopeAt(density, z) / scaleK;
        this.heatCapacity100 = Polynomial.at(heatCapacity, z);
        this.heatCapacitySlope = Polynomial.slopeAt(heatCapacity, z) / scaleK;
        this.conductivity100 = Polynomial.at(conductivity, z);
        this.conductivitySlope = Polynomial.slopeAt(conductivity, z) / scaleK;
        double lnLow = Polynomial.at(lnViscosity, z(ANDRADE_LOW_K));
        double lnHigh = Polynomial.at(lnViscosity, z);
        this.andradeB = (lnLow - lnHigh) / (1 / ANDRADE_LOW_K - 1 / EXTENSION_FROM_K);
        this.andradeA = lnHigh - andradeB / EXTENSION_FROM_K;
    }

    /** @return the fraction that the curves are made for, refusing what no rule covers */
    static double usedFraction(GlycolKind kind, double asked) {
        if (kind == GlycolKind.NONE) {
            throw new IllegalArgumentException("plain water is no glycol mixture");
        }
        return COVERED_FRACTION.clamp(OutOfRangeException.require("glycolMassFraction", asked, GLYCOL_MASS_FRACTION));
    }

    private double z(double temperatureK) {
        return (temperatureK - baseK) / scaleK;
    }

    private double clamped(double temperatureK) {
        return Math.max(lowestK, Math.min(CLAMP_K, temperatureK));
    }

    @Override
    public final double densityKgPerM3(double temperatureK) {
        double t = clamped(temperatureK);
        return t > EXTENSION_FROM_K ? density100 + densitySlope * (t - EXTENSION_FROM_K) : Polynomial.at(density, z(t));
    }

    @Override
    public final double heatCapacityJPerKgK(double temperatureK) {
        double t = clamped(temperatureK);
        return t > EXTENSION_FROM_K
                ? heatCapacity100 + heatCapacitySlope * (t - EXTENSION_FROM_K)
                : Polynomial.at(heatCapacity, z(t));
    }

    @Override
    public final double conductivityWPerMK(double temperatureK) {
        double t = clamped(temperatureK);
        return t > EXTENSION_FROM_K
                ? conductivity100 + conductivitySlope * (t - EXTENSION_FROM_K)
                : Polynomial.at(conductivity, z(t));
    }

    @Override
    public final double viscosityPaS(double temperatureK) {
        double t = clamped(temperatureK);
        return FastMath.exp(t > EXTENSION_FROM_K ? andradeA + andradeB / t : Polynomial.at(lnViscosity, z(t)));
    }

    @Override
    public final double freezingK() {
        return freezingK;
    }

    @Override
    public final double vapourPressurePa(double temperatureK) {
        double t = WaterProperties.SATURATION_K.clamp(temperatureK);
        return waterMoleFraction * WaterProperties.saturationPressureUnchecked(t)
                + (1 - waterMoleFraction) * glycolPressurePa(kind, t);
    }

    /** Antoine's equation of the pure glycol. */
    static double glycolPressurePa(GlycolKind kind, double temperatureK) {
        double t = temperatureK - 273.15;
        double log10 = kind == GlycolKind.ETHYLENE ? 8.0908 - 2088.9 / (t + 203.5) : 8.2082 - 2085.9 / (t + 203.54);
        return PA_PER_MMHG * FastMath.exp(log10 * 2.302585092994046);
    }

    @Override
    public final double boilingK(double pressurePa) {
        Range allowed = Range.of(vapourPressurePa(BOILING_K.min()), vapourPressurePa(BOILING_K.max()));
        double lnP = FastMath.log(OutOfRangeException.require("pressurePa", pressurePa, allowed));
        return new BracketingNthOrderBrentSolver(1e-12, 1e-9, 5)
                .solve(60, t -> FastMath.log(vapourPressurePa(t)) - lnP, BOILING_K.min(), BOILING_K.max());
    }

    @Override
    public final double glycolMassFraction() {
        return fraction;
    }

    @Override
    public final GlycolKind kind() {
        return kind;
    }

    @Override
    public final List<Note> notes(double temperatureK) {
        List<Note> notes = new ArrayList<>(2);
        if (askedFraction > fraction) {
            notes.add(new Note(
                    "glycolMassFraction",
                    askedFraction,
                    COVERED_FRACTION,
                    Note.Action.CLAMPED,
                    1.5,
                    NoteText.GLYCOL_BEYOND_TABLES.with()));
        }
        if (!(temperatureK >= lowestK && temperatureK <= EXTENSION_FROM_K)) {
            boolean outside = temperatureK < lowestK || temperatureK > CLAMP_K;
            notes.add(new Note(
                    "coolantTemperatureK",
                    temperatureK,
                    Range.of(lowestK, EXTENSION_FROM_K),
                    outside ? Note.Action.CLAMPED : Note.Action.WIDENED,
                    widening(temperatureK),
                    temperatureK < lowestK
                            ? NoteText.COLDER_THAN_GLYCOL_TABLES.with()
                            : NoteText.HOTTER_THAN_GLYCOL_TABLES.with(
                                    SiFigure.temperature(EXTENSION_FROM_K), SiFigure.temperature(CLAMP_K))));
        }
        return List.copyOf(notes);
    }

    @Override
    public final CoolantSpread spread(double temperatureK) {
        CoolantSpread s = spreadWithin(Math.max(lowestK, Math.min(EXTENSION_FROM_K, temperatureK)));
        return s.widened(widening(temperatureK) * (askedFraction > fraction ? 1.5 : 1.0));
    }

    private double widening(double temperatureK) {
        if (temperatureK > WIDER_FROM_K) {
            return 3.0;
        }
        if (temperatureK > EXTENSION_FROM_K) {
            return 2.0;
        }
        return temperatureK < lowestK ? 1.5 : 1.0;
    }

    /** @return one standard deviation at a temperature inside the source's range */
    abstract CoolantSpread spreadWithin(double temperatureK);

    /** What one source alone leaves open: modelling choice after comparing the two sources at 80 to 100 C. */
    final CoolantSpread baseSpread() {
        return new CoolantSpread(0.005, 0.007, 0.04, 0.02, kind == GlycolKind.ETHYLENE ? 1.0 : 1.5);
    }
}
