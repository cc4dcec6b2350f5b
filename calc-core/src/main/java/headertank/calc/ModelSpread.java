package headertank.calc;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.engine.EngineClass;
import headertank.calc.fluid.CoolantSpread;
import headertank.calc.fluid.Fuel;
import headertank.calc.quantity.Note;
import headertank.calc.quantity.Physics;
import headertank.calc.radiator.CoreFigure;
import headertank.calc.radiator.CoreSpread;
import headertank.calc.radiator.RadiatorSpread;
import headertank.calc.rating.CoolantOf;
import headertank.calc.rating.ModelFactors;
import headertank.calc.rating.PointRating;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.Predicate;
import org.hipparchus.util.FastMath;

/**
 * How far the models may be off for one car at an operating point: what the radiator's correlations state for themselves
 * there, what the class of core leaves open, the coolant's properties, and the widening that notes ask for where a source
 * ends.
 */
final class ModelSpread {

    private final Resolved car;
    private final CoreSpread unknown;
    private final CoolantSpread fluid;

    ModelSpread(Resolved car) {
        this.car = car;
        this.unknown = coreSpread(car);
        this.fluid = CoolantOf.resolved(car).spread(Physics.kelvin(95));
    }

    /** @return standard deviations for this car at a point that it was rated at */
    ModelFactors.Sigmas at(PointRating point) {
        RadiatorSpread core = point.radiatorSpread();
        // h ~ mu^-0.4 k^0.6 cp^0.4 rho^0.8 in turbulent flow: the viscosity decides
        double properties = FastMath.hypot(0.4 * fluid.viscosityShare(), 0.6 * fluid.conductivityShare())
                * widest(point, ModelSpread::isCoolant);
        return new ModelFactors.Sigmas(
                FastMath.hypot(core.airSide(), unknown.conductanceShare()),
                FastMath.hypot(core.airFriction(), unknown.airDropShare()),
                FastMath.hypot(core.tubeSide(), properties),
                car.option(BuildField.ENGINE_CLASS, EngineClass.class).wallShareSigma()
                        * widest(point, ModelSpread::isEngine),
                car.option(BuildField.FUEL, Fuel.class).coolantFactorSigma(),
                fluid.boilingK());
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
        return n.field().equals("exhaustShare") || n.field().equals("measuredBrakeEfficiency");
    }
}
