package headertank.calc.rating;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.choice.YesNo;
import headertank.calc.duty.Demand;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.engine.ColdEngine;
import headertank.calc.engine.EngineHeat;
import headertank.calc.engine.EngineMode;
import headertank.calc.engine.HeatSplit;
import headertank.calc.fluid.Air;
import headertank.calc.quantity.Note;
import headertank.calc.quantity.NoteText;
import headertank.calc.quantity.Physics;
import headertank.calc.quantity.Range;
import java.util.List;
import org.hipparchus.util.FastMath;

/**
 * What an operating point asks of one car: heat, engine speed, heat in front of the core.
 *
 * @param heat where the fuel's power goes
 * @param coolantW heat into the coolant with the point's deviate of demand [W]
 * @param oilW heat into the oil likewise [W]
 * @param engineSpeedPerS engine speed that drives pump, alternator and clutch fan [rev/s]
 * @param pumpSpeedShare pump speed over its rated speed [-]
 * @param upstreamW heat that coolers in front of the core give to its air [W]
 * @param notes what had to be changed to make the point possible
 */
public record PointLoad(
        HeatSplit heat,
        double coolantW,
        double oilW,
        double engineSpeedPerS,
        double pumpSpeedShare,
        double upstreamW,
        List<Note> notes) {

    /** Drag area of a closed car [m2]; guessed. */
    private static final double DRAG_AREA_M2 = 0.70;

    /** Rolling resistance of a road tyre [-]; from memory. */
    private static final double ROLLING = 0.013;

    /** Share of the engine's power that reaches the wheels [-]; guessed. */
    private static final double DRIVELINE = 0.88;

    /**
     * Heat of the condenser that meets the radiator's air, per brake power for the air conditioning [-]; guessed, so that the
     * 2.5 kW of a jam on a hot day give 4 kW.
     */
    private static final double CONDENSER_PER_BRAKE_W = 1.6;

    /**
     * The same on the road [W]: a duty has no figure of its own for the air conditioning there, its accessories hold it, and it
     * counts as on; guessed.
     */
    private static final double CONDENSER_ON_THE_ROAD_W = 4000;

    /** What the air conditioning takes of a duty's accessories on the road, which a car without one does not need; guessed [W]. */
    private static final double AIR_CONDITIONING_ON_THE_ROAD_W = 2000;

    private static final double LEAST_ACCESSORIES_W = 500;

    /** Share of the charge cooler's heat that meets the radiator's air [-]; guessed. */
    private static final double CHARGE_COOLER_OVERLAP = 0.5;

    private static final HeatSplit NO_HEAT = new HeatSplit(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, List.of());

    /** @return what the point asks of the warm car */
    public static PointLoad of(Plant plant, OperatingPoint point) {
        return of(plant, point, ColdEngine.WARM_K, ColdEngine.WARM_K);
    }

    /**
     * @param blockK coolant in the block: colder than {@link ColdEngine#WARM_K} an engine idles faster and its walls take more [K]
     * @param oilK oil likewise: it rubs more [K]
     * @return what the point asks of the car
     */
    public static PointLoad of(Plant plant, OperatingPoint point, double blockK, double oilK) {
        if (point.demand() instanceof Demand.EngineOff d) {
            return new PointLoad(NO_HEAT, 0, 0, 0, plant.pump().speedShare(0, d.pumpRunOnShare()), 0, List.of());
        }
        Resolved r = plant.resolved();
        EngineHeat engine = plant.engine();
        double rated = r.value(BuildField.ENGINE_SPEED);
        double idle = engine.spec().idleSpeedPerS();
        double share = point.demand().engineSpeedShare();
        double speed = share > 0 ? share * rated : idle;
        double rubs = ColdEngine.friction(oilK);
        List<Note> notes = List.of();
        HeatSplit heat;
        if (point.demand() instanceof Demand.Idle d) {
            speed = Math.max(speed, idle + ColdEngine.addedIdlePerS(blockK));
            double asked = d.accessoriesW() + (r.is(BuildField.CONDENSER, YesNo.YES) ? d.airConditioningW() : 0);
            heat = engine.at(Math.min(asked, engine.fullLoadPowerW(speed)), speed, rubs);
        } else if (point.demand() instanceof Demand.Road d) {
            double accessories = r.is(BuildField.CONDENSER, YesNo.YES)
                    ? d.accessoriesW()
                    : Math.max(LEAST_ACCESSORIES_W, d.accessoriesW() - AIR_CONDITIONING_ON_THE_ROAD_W);
            double wanted = roadPowerW(plant, point, d.slope()) + accessories;
            speed = speedForPower(engine, speed, wanted);
            double given = Math.min(wanted, engine.fullLoadPowerW(speed));
            if (given < wanted) {
                notes = List.of(new Note(
                        "brakePowerW",
                        wanted,
                        Range.of(0, given),
                        Note.Action.CLAMPED,
                        1,
                        NoteText.SPEED_BEYOND_POWER.with()));
            }
            heat = engine.at(given, speed, rubs);
        } else {
            Demand.Mix d = (Demand.Mix) point.demand();
            heat = engine.meanOver(d.modes().stream()
                    .map(m -> new EngineMode(m.timeShare(), m.powerShare(), m.speedShare()))
                    .toList());
        }
        double deviate = FastMath.exp(point.loadSigma() * plant.factors().demand());
        return new PointLoad(
                heat,
                heat.coolantW() * deviate * ColdEngine.wallHeat(blockK),
                heat.oilW() * deviate,
                speed,
                plant.pump().speedShare(speed / rated, 1.0),
                upstreamW(plant, point, heat),
                notes);
    }

    /**
     * The slowest engine speed from one on at which full throttle gives the power wanted; where none does, that of the most
     * power. A gearbox has steps and nobody states them: the speed follows the power smoothly, so that a little more weight
     * is never a whole gear (modelling choice).
     */
    private static double speedForPower(EngineHeat engine, double fromPerS, double wantedW) {
        double strongestPerS = engine.spec().engineClass().strongestSpeedShare()
                * engine.spec().ratedSpeedPerS();
        double lacking = engine.fullLoadPowerW(fromPerS) - wantedW;
        if (lacking >= 0 || fromPerS >= strongestPerS) {
            return fromPerS;
        }
        double left = engine.fullLoadPowerW(strongestPerS) - wantedW;
        return left <= 0
                ? strongestPerS
                : RisingRoot.enclosed(
                        n -> engine.fullLoadPowerW(n) - wantedW, strongestPerS, left, fromPerS, lacking, 1e-6, 1e-12);
    }

    private static double roadPowerW(Plant plant, OperatingPoint point, double slope) {
        Resolved r = plant.resolved();
        double v = point.roadSpeedMPerS();
        double rho = Air.densityKgPerM3(plant.atmospherePa(), r.value(BuildField.AMBIENT), 0);
        double force = r.value(BuildField.CAR_MASS) * Physics.GRAVITY_M_PER_S2 * (slope + ROLLING)
                + 0.5 * rho * DRAG_AREA_M2 * v * v;
        return Math.max(0, force * v / DRIVELINE);
    }

    private static double upstreamW(Plant plant, OperatingPoint point, HeatSplit heat) {
        Resolved r = plant.resolved();
        double w = 0;
        if (r.is(BuildField.CHARGE_COOLER, YesNo.YES)) {
            double drop = engineClassDropK(plant);
            w += CHARGE_COOLER_OVERLAP * EngineHeat.chargeCoolerW(heat, drop);
        }
        if (r.is(BuildField.CONDENSER, YesNo.YES)) {
            w += condenserW(point.demand());
        }
        return w;
    }

    /** A driver who asks for all the power has the air conditioning off. */
    private static double condenserW(Demand demand) {
        if (demand instanceof Demand.Idle d) {
            return CONDENSER_PER_BRAKE_W * d.airConditioningW();
        }
        return demand instanceof Demand.Road ? CONDENSER_ON_THE_ROAD_W : 0;
    }

    private static double engineClassDropK(Plant plant) {
        return plant.engine().spec().engineClass().chargeCoolerDropK();
    }
}
