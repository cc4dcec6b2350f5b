package headertank.calc.rating;

import headertank.calc.air.AirBalance;
import headertank.calc.air.AirConditions;
import headertank.calc.air.AirFlow;
import headertank.calc.air.Fan;
import headertank.calc.air.Recirculation;
import headertank.calc.choice.FanDrive;
import headertank.calc.choice.OilCoolerPlace;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.electric.ElectricBalance;
import headertank.calc.fluid.Air;
import headertank.calc.oil.OilBalance;
import headertank.calc.oil.OilCoolers;
import headertank.calc.oil.OilSpec;
import headertank.calc.quantity.Range;
import headertank.calc.radiator.RadiatorPoint;
import org.hipparchus.util.FastMath;

/**
 * Air flow, radiator heat, current and recirculation of a car, brought to agree at a coolant temperature, a coolant flow
 * and a drive of the fans. Keeps its last state and begins there. Not thread-safe.
 */
final class AirLoop {

    private static final Range CORE_AIR_K = Range.of(223.15, 500);
    private static final Range AROUND_K = Range.of(223.15, 343);

    /** Coolers in front cannot heat the air further than this [K]: they are hardly hotter themselves. */
    private static final double HOTTEST_PREHEAT_K = 40;

    /**
     * Air that hardly moves mixes: below this capacity rate, 0.1 g/s, it enters at the day's temperature and leaves at the
     * coolant's, as it does where none moves; the step from none to some would be a step of the balance [W/K]; modelling
     * choice.
     */
    private static final double STILL_AIR_W_PER_K = 0.1;

    /** Share of an oil cooler's heat that meets the radiator's air when it hangs in front of it [-]; guessed. */
    private static final double OIL_COOLER_OVERLAP = 0.5;

    private static final int INNER_TURNS = 60;
    private static final double INNER_K = 1e-7;
    /** Largest share by which two turns are mixed [-]. */
    private static final double MOST_MIXING = 0.6;

    private final Plant plant;
    private final OperatingPoint point;
    private final PointLoad load;
    private final AirBalance air;
    private final double surfaceWPerK;
    private final OilCoolers.Driven oilCoolers;
    private final boolean oilFollowsCore;

    private OilSpec oil;
    private double oilFaceMPerS;
    private double airInK = Double.NaN;
    private double airOutK = Double.NaN;
    private double radiatorOutK;
    private double coolantWPerK;
    private double drive;
    private double speedFactor;
    private ElectricBalance current;
    private RadiatorPoint radiatorPoint;
    private double aroundK = Double.NaN;
    private double settledHotK;
    private double settledAmbientK;
    private double settledSpanK;

    AirLoop(Plant plant, OperatingPoint point, PointLoad load) {
        this.plant = plant;
        this.point = point;
        this.load = load;
        this.surfaceWPerK = plant.surfaceWPerK(point.roadSpeedMPerS());
        this.air = plant.airPath().balance(plant.coreDrop(), plant.fan());
        this.oilCoolers = plant.oil().driven(load.engineSpeedPerS(), effectiveSpeedMPerS());
        this.oilFollowsCore = plant.oil().place() == OilCoolerPlace.BEFORE_CORE;
    }

    /** @return air entering the core [K] */
    double airInK() {
        return airInK;
    }

    /** @return air leaving the core [K] */
    double airOutK() {
        return airOutK;
    }

    /** @return coolant leaving the radiator [K] */
    double radiatorOutK() {
        return radiatorOutK;
    }

    /** @return duty of electric fans or slip of a clutch [-] */
    double drive() {
        return drive;
    }

    /** @return fan speed over reference speed [-] */
    double speedFactor() {
        return speedFactor;
    }

    /** @return fans and alternator */
    ElectricBalance current() {
        return current;
    }

    /** @return the radiator */
    RadiatorPoint radiator() {
        return radiatorPoint;
    }

    /** @return heat capacity rate of the air through the core [W/K] */
    double capacityWPerK() {
        return air.massKgPerS() * Air.heatCapacityJPerKgK(clampAir(airInK));
    }

    /** @return how the oil is cooled in the last state */
    OilSpec oil() {
        double face = oilFollowsCore && !Double.isNaN(airInK) ? plant.coreFaceMPerS(capacityWPerK()) : 0;
        if (oil == null || face != oilFaceMPerS) {
            oil = oilCoolers.at(face);
            oilFaceMPerS = face;
        }
        return oil;
    }

    /** @return road speed as coolers feel it: reduced by the sideslip as the radiator's ram is [m/s] */
    double effectiveSpeedMPerS() {
        return point.roadSpeedMPerS() * Math.abs(FastMath.cos(point.yawRad()));
    }

    /** What an oil cooler in front of the core gives to the radiator's air. */
    private double oilAheadW(double hotK, double ambientK) {
        if (!oilFollowsCore) {
            return 0;
        }
        OilSpec cooled = oil();
        double oilK = OilBalance.temperatureK(cooled, load.oilW(), hotK, ambientK);
        return OIL_COOLER_OVERLAP
                * cooled.toAirWPerK()
                * cooled.thermostat().openShare(oilK)
                * Math.max(0, oilK - ambientK);
    }

    /** @return the air flow */
    AirFlow flow() {
        return air.flow();
    }

    /** What the core loses where no air is driven through it, from the coolant that driven air has left it [W]. */
    private double standingW() {
        double still = plant.standingCoreWPerK(capacityWPerK());
        double brought = coolantWPerK;
        return still > 0 && brought > 0
                ? brought * -FastMath.expm1(-still / brought) * (radiatorOutK - settledAmbientK)
                : 0;
    }

    /** @return heat from block and hoses to the air under the hood, and from a core through which no air is driven [W] */
    double surfaceW(double hotK) {
        return surfaceWPerK * (hotK - 0.5 * (airInK + airOutK)) + standingW();
    }

    /** @return heat that radiator, block and hoses give off [W] */
    double givenW(double hotK) {
        return radiatorPoint.heatW() + surfaceW(hotK);
    }

    /** First temperatures of a state: those of the state before, moved with the difference between coolant and day. */
    void startFrom(double hotK, double ambientK) {
        double span = hotK - ambientK;
        if (Double.isNaN(airOutK) || Math.abs(settledSpanK) < 0.1) {
            airInK = ambientK;
            airOutK = ambientK + 0.5 * span;
            radiatorOutK = hotK - 0.1 * span;
        } else if (hotK != settledHotK || ambientK != settledAmbientK) {
            double grown = span / settledSpanK;
            airInK = ambientK + (airInK - settledAmbientK) * grown;
            airOutK = ambientK + (airOutK - settledAmbientK) * grown;
            radiatorOutK = ambientK + (radiatorOutK - settledAmbientK) * grown;
        }
        if (ambientK != aroundK) {
            air.around(conditions(ambientK));
            aroundK = ambientK;
        }
        settledHotK = hotK;
        settledAmbientK = ambientK;
        settledSpanK = span;
    }

    /** @return the air at the last state */
    AirConditions conditions(double ambientK) {
        return new AirConditions(
                point.roadSpeedMPerS(),
                point.yawRad(),
                plant.atmospherePa(),
                clampAmbient(ambientK),
                clampAir(airInK),
                clampAir(airOutK),
                plant.moistDensityFactor());
    }

    /**
     * Air flow, radiator heat and recirculation with the fans at this drive: turns until the temperatures rest, sped up by
     * D. G. Anderson's mixing of the last two (J. ACM 12 (1965); from memory). While the heat balance is far from zero its
     * value need not be known better than a share of itself.
     *
     * @param takenW heat that the coolant takes up, with which the given heat is compared [W]
     * @param looseShare that share, 0 to settle fully [-]
     */
    void settle(double hotK, double ambientK, double coolantM3PerS, double fanDrive, double takenW, double looseShare) {
        fans(fanDrive);
        coolantWPerK = coolantM3PerS
                * plant.coolant().densityKgPerM3(hotK)
                * plant.coolant().heatCapacityJPerKgK(hotK);
        double inMissBefore = 0;
        double outMissBefore = 0;
        double coolantMissBefore = 0;
        double inFoundBefore = 0;
        double outFoundBefore = 0;
        double coolantFoundBefore = 0;
        for (int turn = 0; turn < INNER_TURNS; turn++) {
            double inBefore = airInK;
            double outBefore = airOutK;
            double coolantBefore = radiatorOutK;
            air.solve(clampAir(airInK), clampAir(airOutK), speedFactor);
            radiatorPoint = plant.radiator()
                    .heatWithPropertiesAt(
                            clampMean(0.5 * (airInK + airOutK)),
                            0.5 * (hotK + radiatorOutK),
                            air.massKgPerS(),
                            clampAir(airInK),
                            plant.atmospherePa(),
                            coolantM3PerS,
                            plant.coolant(),
                            hotK);
            double capacity = air.massKgPerS() * Air.heatCapacityJPerKgK(clampAir(airInK));
            airOutK = hotK + moving(capacity) * (radiatorPoint.airOutK() - hotK);
            airInK = Math.min(hotK, inletK(hotK, ambientK, capacity));
            radiatorOutK = radiatorPoint.coolantOutK();
            double inMiss = airInK - inBefore;
            double outMiss = airOutK - outBefore;
            double coolantMiss = radiatorOutK - coolantBefore;
            if (Math.abs(inMiss) < INNER_K && Math.abs(outMiss) < INNER_K && Math.abs(coolantMiss) < INNER_K) {
                return;
            }
            double unsure = (capacity + surfaceWPerK) * (Math.abs(inMiss) + Math.abs(outMiss));
            if (unsure < looseShare * Math.abs(givenW(hotK) - takenW)) {
                return;
            }
            double inFound = airInK;
            double outFound = airOutK;
            double coolantFound = radiatorOutK;
            if (turn > 12) {
                airInK = 0.5 * (airInK + inBefore);
                airOutK = 0.5 * (airOutK + outBefore);
            } else if (turn > 0) {
                double di = inMiss - inMissBefore;
                double d = outMiss - outMissBefore;
                double dc = coolantMiss - coolantMissBefore;
                double share = (inMiss * di + outMiss * d + coolantMiss * dc) / (di * di + d * d + dc * dc);
                if (Math.abs(share) < MOST_MIXING) {
                    airInK -= share * (inFound - inFoundBefore);
                    airOutK -= share * (outFound - outFoundBefore);
                    radiatorOutK -= share * (coolantFound - coolantFoundBefore);
                }
            }
            inMissBefore = inMiss;
            outMissBefore = outMiss;
            coolantMissBefore = coolantMiss;
            inFoundBefore = inFound;
            outFoundBefore = outFound;
            coolantFoundBefore = coolantFound;
        }
    }

    private void fans(double fanDrive) {
        drive = fanDrive;
        double engineOverIdle =
                Math.min(50, load.engineSpeedPerS() / plant.engine().spec().idleSpeedPerS());
        boolean electric = plant.fanDrive() == FanDrive.ELECTRIC;
        current = ElectricBalance.of(
                plant.alternator(), engineOverIdle, plant.fanRunningA(), electric ? drive : 0, plant.fanStart());
        speedFactor = switch (plant.fanDrive()) {
            case ELECTRIC -> Fan.speedFactor(drive, current.voltageV());
            case CLUTCH -> plant.clutch().speedFactorAtSlip(load.engineSpeedPerS(), drive);
            case NONE -> 0;
        };
    }

    /** Air entering the core, with the heat that it will itself bring back solved for, not taken from the turn before. */
    private double inletK(double hotK, double ambientK, double capacity) {
        if (capacity <= 1e-9) {
            return ambientK;
        }
        double upstream = Math.min(load.upstreamW() + oilAheadW(hotK, ambientK), HOTTEST_PREHEAT_K * capacity);
        double difference = hotK - clampAir(airInK);
        double perKelvin = difference > 1e-6 ? Math.max(0, radiatorPoint.heatW() / difference) : 0;
        double inlet =
                Recirculation.inletBeforeCoreK(ambientK, upstream, air.recirculationShare(), perKelvin, hotK, capacity);
        return ambientK + moving(capacity) * (inlet - ambientK);
    }

    private static double moving(double capacity) {
        return capacity > 40 * STILL_AIR_W_PER_K ? 1 : -FastMath.expm1(-capacity / STILL_AIR_W_PER_K);
    }

    private static double clampAir(double k) {
        return CORE_AIR_K.clamp(k);
    }

    private static double clampMean(double k) {
        return Air.TEMPERATURE_K.clamp(k);
    }

    private static double clampAmbient(double k) {
        return AROUND_K.clamp(k);
    }
}
