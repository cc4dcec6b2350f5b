package headertank.calc.uncertainty;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.ModelFactor;
import headertank.calc.carspec.Resolved;
import headertank.calc.coreclass.CoreFigure;
import headertank.calc.coreclass.CoreSpread;
import headertank.calc.engine.EngineClass;
import headertank.calc.engine.EngineFactors;
import headertank.calc.fluid.CoolantSpread;
import headertank.calc.fluid.Fuel;
import headertank.calc.quantity.Note;
import headertank.calc.quantity.Physics;
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
     * half as much again and is cast thinner), how far down the jacket reaches 12 %, which share of what it does not reach follows
     * all the same 15 %, as squares (modelling choices) [-].
     */
    private static final double METAL = 0.25;

    private static final ModelFactor[] FACTORS = ModelFactor.values();

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
     * @param factor one of the factors
     * @return its standard deviation: of the logarithm of a factor, of an offset as it is; those that stand here are modelling
     *     choices
     */
    public double sigma(ModelFactor factor) {
        return switch (factor) {
            case AIR_SIDE -> airSide;
            case AIR_FRICTION -> airFriction;
            case TUBE_SIDE -> tubeSide;
            case COOLANT_HEAT -> coolantHeat;
            case ENGINE_FRICTION, EXIT_PRESSURE, CHARGE -> 0.10;
            case FUEL_HEAT -> fuelHeat;
            case AIR_LOSSES, OIL_COOLERS -> 0.25;
            case INLET_PRESSURE -> 0.08;
            case SEALING -> 0.06;
            case SIDESLIP -> 0.15;
            case FAN_OVERRUN -> 0.40;
            case CIRCUIT -> 0.30;
            case DEMAND -> 1;
            case BOILING -> boilingK;
            case METAL_MASS -> METAL;
            case LEAK -> 0.70;
            case SURFACE -> 0.30;
            case CONTACT, OIL_MASS -> 0.60;
            case GAUGE -> 1.5;
            case RADIATOR_MASS, THERMOSTAT_WIDTH -> 0.40;
            case STANDING_CORE -> 0.80;
            case LOAD_EXPONENT -> EngineFactors.LOAD_EXPONENT_SIGMA;
        };
    }

    /**
     * @param z one standard normal deviate for each {@link ModelFactor}
     * @param about deviations that they are about, as of {@link headertank.calc.carspec.Learned#deviations}
     * @return the factors at these deviates
     */
    public ModelFactors at(double[] z, double[] about) {
        double[] deviations = about.clone();
        for (ModelFactor f : FACTORS) {
            deviations[f.ordinal()] += sigma(f) * z[f.ordinal()];
        }
        return ModelFactors.at(deviations);
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
