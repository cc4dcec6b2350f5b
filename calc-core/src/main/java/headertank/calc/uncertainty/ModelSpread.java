package headertank.calc.uncertainty;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.coreclass.CoreFigure;
import headertank.calc.coreclass.CoreSpread;
import headertank.calc.engine.EngineClass;
import headertank.calc.engine.EngineFactors;
import headertank.calc.fluid.CoolantSpread;
import headertank.calc.fluid.Fuel;
import headertank.calc.quantity.Note;
import headertank.calc.quantity.Physics;
import headertank.calc.radiator.RadiatorFactors;
import headertank.calc.radiator.RadiatorSpread;
import headertank.calc.rating.CoolantOf;
import headertank.calc.rating.ModelFactors;
import headertank.calc.result.PointRating;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.Predicate;
import org.hipparchus.util.FastMath;

/**
 * How far the models may be off for one car at an operating point: what the radiator's correlations state for themselves
 * there, what the class of core leaves open, the coolant's properties, and the widening that notes ask for where a source
 * ends. One standard deviation each; log-normal shares.
 *
 * @param airSide of the air-side coefficient [-]
 * @param airFriction of the air-side friction [-]
 * @param tubeSide of the tube-side coefficient, coolant properties included [-]
 * @param coolantHeat of the coolant's share of the heat, by engine class [-]
 * @param fuelHeat of the fuel's influence [-]
 * @param boilingK of the boiling point [K]
 */
public record ModelSpread(
        double airSide, double airFriction, double tubeSide, double coolantHeat, double fuelHeat, double boilingK) {

    /**
     * Spread of the engine's heat capacity at its displacement: mass 12 %, iron in place of aluminium 10 % (a volume of it holds
     * half as much again and is cast thinner), how far down the jacket reaches 12 %, as squares (modelling choices) [-].
     */
    private static final double METAL = 0.20;

    /** Number of factors that {@link #at} varies. */
    public static final int COUNT = 18;

    /**
     * @param r the car
     * @param point an operating point that it was rated at
     * @return its standard deviations there
     */
    public static ModelSpread of(Resolved r, PointRating point) {
        RadiatorSpread core = point.radiatorSpread();
        CoreSpread unknown = coreSpread(r);
        CoolantSpread fluid = CoolantOf.resolved(r).spread(Physics.kelvin(95));
        // h ~ mu^-0.4 k^0.6 cp^0.4 rho^0.8 in turbulent flow: the viscosity decides
        double properties = FastMath.hypot(0.4 * fluid.viscosityShare(), 0.6 * fluid.conductivityShare())
                * widest(point, ModelSpread::isCoolant);
        return new ModelSpread(
                FastMath.hypot(core.airSide(), unknown.conductanceShare()),
                FastMath.hypot(core.airFriction(), unknown.airDropShare()),
                FastMath.hypot(core.tubeSide(), properties),
                r.option(BuildField.ENGINE_CLASS, EngineClass.class).wallShareSigma()
                        * widest(point, ModelSpread::isEngine),
                r.option(BuildField.FUEL, Fuel.class).coolantFactorSigma(),
                fluid.boilingK());
    }

    /**
     * @param z one standard normal deviate per factor, in the order of the components of {@link ModelFactors}
     * @return the factors at these deviates; the standard deviations that stand here are modelling choices
     */
    public ModelFactors at(double[] z) {
        return new ModelFactors(
                new RadiatorFactors(
                        FastMath.exp(airSide * z[0]), FastMath.exp(airFriction * z[1]), FastMath.exp(tubeSide * z[2])),
                new EngineFactors(
                        FastMath.exp(coolantHeat * z[3]),
                        FastMath.exp(0.10 * z[4]),
                        FastMath.exp(fuelHeat * z[5]),
                        EngineFactors.LOAD_EXPONENT_SIGMA * z[17]),
                new ModelFactors.AirWay(
                        FastMath.exp(0.25 * z[6]),
                        0.08 * z[7],
                        0.10 * z[8],
                        FastMath.exp(0.06 * z[9]),
                        0.15 * z[10],
                        FastMath.exp(0.40 * z[11])),
                new ModelFactors.Liquid(FastMath.exp(0.30 * z[12]), FastMath.exp(0.25 * z[13]), boilingK * z[15]),
                z[14],
                FastMath.exp(METAL * z[16]));
    }

    /** Spread of the class of core over the figures that are no fields of a build. */
    private static CoreSpread coreSpread(Resolved r) {
        Map<CoreFigure, Double> fields = new EnumMap<>(CoreFigure.class);
        fields.put(CoreFigure.DEPTH_M, r.coreClass().typical(CoreFigure.DEPTH_M));
        fields.put(CoreFigure.FIN_PITCH_M, r.coreClass().typical(CoreFigure.FIN_PITCH_M));
        fields.put(CoreFigure.FIN_HEIGHT_M, r.coreClass().typical(CoreFigure.FIN_HEIGHT_M));
        fields.put(CoreFigure.TUBE_HEIGHT_M, r.coreClass().typical(CoreFigure.TUBE_HEIGHT_M));
        fields.put(CoreFigure.COOLANT_FOULING_M2K_PER_W, r.coreClass().typical(CoreFigure.COOLANT_FOULING_M2K_PER_W));
        return r.coreClass().spread(fields);
    }

    private static double widest(PointRating point, Predicate<Note> which) {
        return point.notes().stream()
                .filter(which)
                .mapToDouble(Note::widening)
                .max()
                .orElse(1);
    }

    private static boolean isCoolant(Note n) {
        return n.field().startsWith("coolant") || n.field().startsWith("glycol");
    }

    private static boolean isEngine(Note n) {
        return n.field().equals("exhaustShare")
                || n.field().equals("wallHeat")
                || n.field().equals("measuredBrakeEfficiency");
    }
}
