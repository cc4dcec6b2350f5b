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
import headertank.calc.coreclass.CoreClass;
import headertank.calc.coreclass.CoreFigure;
import headertank.calc.quantity.FigureKind;
import headertank.calc.quantity.Note;
import headertank.calc.quantity.NoteText;
import headertank.calc.quantity.Range;
import headertank.calc.quantity.SiFigure;
import headertank.calc.radiator.CoreGeometry;
import headertank.calc.radiator.LouveredFins;
import headertank.calc.radiator.Radiator;
import headertank.calc.radiator.RadiatorFactors;
import headertank.calc.radiator.RadiatorPoint;
import headertank.calc.radiator.RadiatorSpec;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.util.FastMath;

/** Turns the resolved values of core, fans and air path into their models. */
final class CorePlan {

    /**
     * Narrowest row of tubes that a core is made up with where only its depth is stated [m]: two rows of a class find room in
     * any depth that is accepted, so that the depth never takes a row away in one step; modelling choice.
     */
    private static final double NARROWEST_ROW_M = 0.006;

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
                new RadiatorFactors(f.airSide(), f.airFriction(), f.tubeSide()));
    }

    private static CoreGeometry geometry(Resolved r) {
        CoreClass c = r.coreClass();
        FinKind fins = r.option(BuildField.FIN_KIND, FinKind.class);
        double depth = r.value(BuildField.CORE_DEPTH);
        if (fins == FinKind.LOUVERED) {
            depth = LouveredFins.RATED_DEPTH_M.clamp(depth);
        }
        int most = (int) Math.max(1, Math.floor(depth / NARROWEST_ROW_M));
        int rows = Math.min(most, (int) Math.rint(r.value(BuildField.TUBE_ROWS)));
        double gap = rows > 1 ? Math.min(Math.max(c.rowGapM(), 0.002), 0.1 * depth) : 0;
        double tubeWidth = (depth - (rows - 1) * gap) / rows;
        double pitch = r.value(BuildField.FIN_PITCH);
        double finHeight = r.value(BuildField.FIN_HEIGHT);
        CoreMaterial material = r.option(BuildField.CORE_MATERIAL, CoreMaterial.class);
        boolean copper = material == CoreMaterial.COPPER_BRASS;
        boolean ofClass = material == c.material();
        double tubeHeight = Math.min(r.value(BuildField.TUBE_HEIGHT), 0.9 * tubeWidth);
        double wall = ofClass ? c.typical(CoreFigure.TUBE_WALL_M) : copper ? 1.5e-4 : 3e-4;
        return new CoreGeometry(
                r.value(BuildField.CORE_WIDTH),
                r.value(BuildField.CORE_HEIGHT),
                tubeWidth,
                rows,
                gap,
                tubeHeight,
                Math.min(wall, 0.4 * tubeHeight),
                finHeight,
                pitch,
                Math.min(ofClass ? c.typical(CoreFigure.FIN_THICKNESS_M) : copper ? 5e-5 : 8e-5, 0.35 * pitch),
                fins,
                c.typical(CoreFigure.LOUVER_PITCH_M),
                c.typical(CoreFigure.LOUVER_ANGLE_DEG),
                c.typical(CoreFigure.LOUVER_SHARE) * finHeight,
                material.finConductivityWPerMK(),
                material.tubeConductivityWPerMK(),
                ofClass ? c.typical(CoreFigure.BOND_RESISTANCE_M2K_PER_W) : copper ? 5e-6 : 0,
                r.value(BuildField.CORE_FOULING),
                0,
                false);
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
        return notes;
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
                        TypicalAirPath.INLET_PRESSURE.clamp(cpIn + f.inletPressureOffset()),
                        TypicalAirPath.EXIT_PRESSURE.clamp(cpEx + f.exitPressureOffset()),
                        TypicalAirPath.INLET_LOSS,
                        TypicalAirPath.EXIT_LOSS,
                        TypicalAirPath.SEALING.clamp(TypicalAirPath.sealing(duct) * f.sealing()),
                        r.value(BuildField.CORE_TILT),
                        Range.of(0.05, 1).clamp(r.value(BuildField.FAN_COVER) * gapOfTilt(r)),
                        r.is(BuildField.FAN_FLAPS, YesNo.YES),
                        TypicalAirPath.recirculationAtRest(duct)),
                new AirFactors(f.airLosses(), 1.0, Range.of(0, 2).clamp(1 + f.yawOffset())));
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
        double windmilling = Math.min(FanSpec.WINDMILLING_LOSS.max(), FanSpec.USUAL_WINDMILLING_LOSS * f.fanOverrun());
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
