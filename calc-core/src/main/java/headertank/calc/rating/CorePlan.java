package headertank.calc.rating;

import headertank.calc.air.AirFactors;
import headertank.calc.air.AirPath;
import headertank.calc.air.AirPathSpec;
import headertank.calc.air.ClutchFan;
import headertank.calc.air.Fan;
import headertank.calc.air.FanSpec;
import headertank.calc.air.TypicalAirPath;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import headertank.calc.carspec.Resolved;
import headertank.calc.choice.AirExit;
import headertank.calc.choice.CoreMaterial;
import headertank.calc.choice.Ducting;
import headertank.calc.choice.FanDrive;
import headertank.calc.choice.FanMounting;
import headertank.calc.choice.FinKind;
import headertank.calc.choice.TankPlacement;
import headertank.calc.choice.YesNo;
import headertank.calc.coreclass.CoreFigure;
import headertank.calc.quantity.FigureKind;
import headertank.calc.quantity.Note;
import headertank.calc.quantity.NoteText;
import headertank.calc.quantity.Range;
import headertank.calc.quantity.SiFigure;
import headertank.calc.radiator.CoreGeometry;
import headertank.calc.radiator.LouveredFins;
import headertank.calc.radiator.Radiator;
import headertank.calc.radiator.RadiatorPoint;
import headertank.calc.radiator.RadiatorSpec;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.util.FastMath;

/** Turns the resolved values of core, fans and air path into their models. */
final class CorePlan {

    /** A figure this many standard deviations from that of its class belongs to another class [-]; modelling choice. */
    private static final double CLASS_SPREADS = 3;

    private CorePlan() {}

    static Radiator radiator(Resolved r, ModelFactors f) {
        return new Radiator(
                new RadiatorSpec(
                        geometry(r),
                        r.option(BuildField.CORE_TANKS, TankPlacement.class),
                        (int) Math.rint(r.value(BuildField.CORE_PASSES)),
                        RadiatorSpec.BLOCKED.clamp(r.value(BuildField.CORE_BLOCKED)),
                        r.from(BuildField.FIN_HEIGHT).isPresent()
                                && r.from(BuildField.TUBE_HEIGHT).isPresent()),
                f.radiator());
    }

    private static CoreGeometry geometry(Resolved r) {
        return r.coreClass()
                .geometry(
                        new CoreGeometry.Face(r.value(BuildField.CORE_WIDTH), r.value(BuildField.CORE_HEIGHT)),
                        r.option(BuildField.CORE_MATERIAL, CoreMaterial.class),
                        r.option(BuildField.FIN_KIND, FinKind.class),
                        (int) Math.rint(r.value(BuildField.TUBE_ROWS)),
                        figure -> known(r, figure));
    }

    private static double known(Resolved r, CoreFigure figure) {
        return switch (figure) {
            case DEPTH_M -> r.value(BuildField.CORE_DEPTH);
            case TUBE_HEIGHT_M -> r.value(BuildField.TUBE_HEIGHT);
            case FIN_HEIGHT_M -> r.value(BuildField.FIN_HEIGHT);
            case FIN_PITCH_M -> r.value(BuildField.FIN_PITCH);
            case COOLANT_FOULING_M2K_PER_W -> r.value(BuildField.CORE_FOULING);
            default -> Double.NaN;
        };
    }

    /** @return what the sources do not cover of this core at this operating point */
    static List<Note> notes(Plant plant, RadiatorPoint at) {
        Resolved r = plant.resolved();
        double depth = r.value(BuildField.CORE_DEPTH);
        List<Note> notes = new ArrayList<>(plant.radiator().notes(at));
        if (r.is(BuildField.FIN_KIND, FinKind.LOUVERED) && !LouveredFins.RATED_DEPTH_M.contains(depth)) {
            notes.removeIf(n -> n.field().equals("coreDepthM"));
            notes.add(new Note(
                    BuildField.CORE_DEPTH.key(),
                    depth,
                    LouveredFins.COVERED_DEPTH_M,
                    Note.Action.CLAMPED,
                    2,
                    NoteText.CORE_DEPTH_BEYOND_MEASURED.with(
                            new SiFigure(LouveredFins.RATED_DEPTH_M.clamp(depth), FigureKind.LENGTH))));
        }
        notes.addAll(unlikeItsClass(r));
        return notes;
    }

    /**
     * Names each figure of the core that somebody stated and that cores of its class do not have. The stated one is rated; what the
     * class gives for the rest may then be that of another core.
     */
    private static List<Note> unlikeItsClass(Resolved r) {
        List<Note> notes = new ArrayList<>();
        unlikeItsClass(r, BuildField.CORE_DEPTH, CoreFigure.DEPTH_M, notes);
        unlikeItsClass(r, BuildField.FIN_PITCH, CoreFigure.FIN_PITCH_M, notes);
        double rows = r.coreClass().rows();
        if (r.from(BuildField.TUBE_ROWS).isPresent() && Math.rint(r.value(BuildField.TUBE_ROWS)) != rows) {
            notes.add(unlikeItsClass(r, BuildField.TUBE_ROWS, Range.of(rows, rows)));
        }
        return notes;
    }

    private static void unlikeItsClass(Resolved r, BuildField field, CoreFigure figure, List<Note> notes) {
        double typical = r.coreClass().typical(figure);
        double span = FastMath.exp(
                CLASS_SPREADS * r.coreClass().figures().get(figure).spread().sigma());
        Range ofClass = Range.of(typical / span, typical * span);
        if (r.from(field).isPresent() && !ofClass.contains(r.value(field))) {
            notes.add(unlikeItsClass(r, field, ofClass));
        }
    }

    private static Note unlikeItsClass(Resolved r, BuildField field, Range ofClass) {
        return new Note(
                field.key(),
                r.value(field),
                ofClass,
                Note.Action.WIDENED,
                1,
                NoteText.CORE_UNLIKE_ITS_CLASS.with(
                        new SiFigure(r.value(field), field.kind()),
                        new SiFigure(ofClass.min(), field.kind()),
                        new SiFigure(ofClass.max(), field.kind())));
    }

    static AirPath airPath(Resolved r, ModelFactors f, double faceAreaM2) {
        Ducting duct = r.option(BuildField.AIR_DUCT, Ducting.class);
        double cpIn = TypicalAirPath.inletPressureCoefficient(duct);
        double cpEx = TypicalAirPath.exitPressureCoefficient(
                r.option(BuildField.AIR_EXIT, AirExit.class), r.build().carClass() == CarClass.TRACK);
        return new AirPath(
                new AirPathSpec(
                        faceAreaM2,
                        r.value(BuildField.AIR_INLET),
                        r.value(BuildField.AIR_EXIT_AREA),
                        TypicalAirPath.INLET_PRESSURE.clamp(cpIn + f.air().inletPressureOffset()),
                        TypicalAirPath.EXIT_PRESSURE.clamp(cpEx + f.air().exitPressureOffset()),
                        TypicalAirPath.INLET_LOSS,
                        TypicalAirPath.EXIT_LOSS,
                        TypicalAirPath.SEALING.clamp(
                                TypicalAirPath.sealing(duct) * f.air().sealing()),
                        r.value(BuildField.CORE_TILT),
                        Range.of(0.05, 1).clamp(r.value(BuildField.FAN_COVER) * gapOfTilt(r)),
                        r.is(BuildField.FAN_FLAPS, YesNo.YES),
                        TypicalAirPath.recirculationAtRest(duct)),
                new AirFactors(
                        f.air().losses(), 1.0, Range.of(0, 2).clamp(1 + f.air().yawOffset())));
    }

    /**
     * A fan on the engine stays upright when the core leans back: the wedge between them takes 1 - sin(tilt) of what the
     * shroud covers (guessed; a shroud that follows the core is entered as not tilted).
     */
    private static double gapOfTilt(Resolved r) {
        return r.is(BuildField.FAN_DRIVE, FanDrive.CLUTCH) ? 1 - FastMath.sin(r.value(BuildField.CORE_TILT)) : 1;
    }

    static Fan fan(Resolved r, ModelFactors f) {
        if (r.is(BuildField.FAN_DRIVE, FanDrive.NONE)) {
            return null;
        }
        return Fan.of(fanSpec(r, f));
    }

    static FanSpec fanSpec(Resolved r, ModelFactors f) {
        double diameter = r.value(BuildField.FAN_DIAMETER);
        double windmilling = Math.min(
                FanSpec.WINDMILLING_LOSS.max(),
                FanSpec.USUAL_WINDMILLING_LOSS * f.air().fanOverrun());
        return new FanSpec(
                (int) Math.rint(r.value(BuildField.FAN_COUNT)),
                r.value(BuildField.FAN_FLOW),
                r.value(BuildField.FAN_SHUT_OFF),
                diameter,
                FanSpec.USUAL_HUB_SHARE * diameter,
                FanSpec.USUAL_SHAPE,
                r.is(BuildField.FAN_MOUNTING, FanMounting.PUSHING),
                windmilling);
    }

    /** @return the viscous clutch of an engine-driven fan */
    static ClutchFan clutch(Resolved r, ModelFactors f) {
        double pulley = ClutchFan.PULLEY_RATIO.clamp(r.value(BuildField.FAN_RATIO) / ClutchFan.ENGAGED_SLIP);
        return ClutchFan.viscous(fanSpec(r, f), pulley);
    }
}
