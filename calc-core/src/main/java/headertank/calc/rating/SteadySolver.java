package headertank.calc.rating;

import headertank.calc.air.AirConditions;
import headertank.calc.air.AirFlow;
import headertank.calc.air.Fan;
import headertank.calc.air.Recirculation;
import headertank.calc.build.BuildField;
import headertank.calc.control.FanController;
import headertank.calc.coolant.CapPosition;
import headertank.calc.coolant.CoolantFlow;
import headertank.calc.coolant.PumpInlet;
import headertank.calc.coolant.Thermostat;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.electric.ElectricBalance;
import headertank.calc.fluid.Air;
import headertank.calc.oil.OilBalance;
import headertank.calc.quantity.Range;
import headertank.calc.radiator.RadiatorPoint;
import headertank.calc.sensor.SensorPlacement;
import headertank.calc.sensor.SensorReading;
import java.util.Locale;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.util.FastMath;

/**
 * The temperature at which a car's heat, air, coolant and current balance at one operating point.
 *
 * <p>Unknown is the coolant temperature out of the engine T_h. A trial T_h gives the thermostat's lift and the coolant
 * flows; then fan duty, air flow, radiator heat and recirculation are brought to agree; then the oil's node; what remains
 * is {@code F(T_h) = Q_rad + UA_s (T_h - T_uh) - Q_cool - Q_oil-to-coolant}. F rises with T_h, so one bracketed root is
 * enough (derived). The same function with T_h held and the ambient temperature as the unknown gives the limiting ambient.
 *
 * <p>Not thread-safe; each solve makes its own.
 */
public final class SteadySolver {

    /** Hottest coolant tried [K]; far above boiling: a root there only says how far cooling falls short. */
    public static final double HOTTEST_K = 533.15;

    private static final double COLDEST_AMBIENT_K = 233.15;
    private static final Range CORE_AIR_K = Range.of(223.15, 500);
    private static final Range AROUND_K = Range.of(223.15, 343);

    /** Coolers in front cannot heat the air further than this [K]: they are hardly hotter themselves. */
    private static final double HOTTEST_PREHEAT_K = 40;

    private static final int INNER_TURNS = 60;
    private static final double INNER_K = 1e-8;
    private static final int MOST_EVALUATIONS = 100;

    private final Plant plant;
    private final OperatingPoint point;
    private final PointLoad load;

    private int evaluations;
    private double airInK = Double.NaN;
    private double airOutK = Double.NaN;
    private double radiatorOutK;
    private double duty;
    private CoolantFlow coolantFlow;
    private AirFlow airFlow;
    private RadiatorPoint radiatorPoint;
    private ElectricBalance current;
    private double lift;
    private double speedFactor;
    private double heldDuty = Double.NaN;

    /**
     * @param plant the car
     * @param point what it does
     */
    public SteadySolver(Plant plant, OperatingPoint point) {
        this.plant = plant;
        this.point = point;
        this.load = PointLoad.of(plant, point);
    }

    /** @return what the point asks of the car */
    public PointLoad load() {
        return load;
    }

    /** @return the ambient temperature of the point on the design day [K] */
    public double designAmbientK() {
        return plant.resolved().value(BuildField.AMBIENT) + point.ambientOffsetK();
    }

    /** @return the steady state on the design day, or why there is none */
    public Balance solve() {
        double ambient = designAmbientK();
        if (load.pumpSpeedShare() <= 1e-6) {
            return new Balance.None(
                    Balance.Reason.NO_COOLANT_FLOW, "The pump stands still: no steady state, only a run over time.");
        }
        double low = ambient + 0.5;
        double atLow = residualW(low, ambient);
        if (atLow >= 0) {
            return steady(low, ambient);
        }
        double atHigh = residualW(HOTTEST_K, ambient);
        if (atHigh < 0) {
            return new Balance.None(
                    Balance.Reason.HEAT_EXCEEDS_COOLING,
                    String.format(
                            Locale.ROOT,
                            "%.1f kW reach the coolant and even at 260 C the radiator would give off %.1f kW less: there is no steady state.",
                            load.coolantW() / 1000,
                            -atHigh / 1000));
        }
        double root = root(t -> residualW(t, ambient), low, HOTTEST_K);
        return steady(root, ambient);
    }

    /**
     * @param coolantK held coolant temperature out of the engine [K]
     * @return the ambient temperature at which the car settles at it [K]; minus infinity when even -40 C is too hot
     */
    public double ambientForCoolantK(double coolantK) {
        double high = coolantK - 0.5;
        if (residualW(coolantK, COLDEST_AMBIENT_K) <= 0) {
            return Double.NEGATIVE_INFINITY;
        }
        if (residualW(coolantK, high) >= 0) {
            return Double.POSITIVE_INFINITY;
        }
        return root(a -> residualW(coolantK, a), COLDEST_AMBIENT_K, high);
    }

    private static double root(UnivariateFunction f, double low, double high) {
        return new BracketingNthOrderBrentSolver(1e-13, 1e-9, 1e-9, 5)
                .solve(MOST_EVALUATIONS, f, low, high, AllowedSolution.ANY_SIDE);
    }

    /**
     * One evaluation of the heat balance.
     *
     * @param hotK trial coolant temperature out of the engine [K]
     * @param ambientK ambient temperature [K]
     * @return F: heat given off less heat taken up [W]
     */
    public double residualW(double hotK, double ambientK) {
        evaluations++;
        circulate(hotK, Thermostat.lift(plant.thermostat(), hotK));
        air(hotK, ambientK);
        double oilToCoolant = OilBalance.toCoolantW(plant.oil(), load.oilW(), hotK, ambientK, effectiveSpeedMPerS());
        return radiatorPoint.heatW() + surfaceW(hotK) - load.coolantW() - oilToCoolant;
    }

    /**
     * The cooling alone, with thermostat and fans held, for a run over time.
     *
     * @param hotK coolant temperature out of the engine [K]
     * @param ambientK ambient temperature [K]
     * @param heldLift thermostat lift [-]
     * @param held duty of electric fans [-]; not used for a clutch fan, which follows the air
     * @return flows and effectiveness of this state
     */
    public CoolingState cooling(double hotK, double ambientK, double heldLift, double held) {
        heldDuty = held;
        circulate(hotK, heldLift);
        air(hotK, ambientK);
        heldDuty = Double.NaN;
        double density = plant.coolant().densityKgPerM3(hotK);
        double capacity =
                density * coolantFlow.radiatorM3PerS() * plant.coolant().heatCapacityJPerKgK(hotK);
        double difference = hotK - airInK;
        double effectiveness =
                capacity > 1e-9 && difference > 1e-9 ? radiatorPoint.heatW() / (capacity * difference) : 0;
        return new CoolingState(
                capacity,
                Math.min(0.9999, effectiveness),
                airInK,
                0.5 * (airInK + airOutK),
                coolantFlow.pumpM3PerS(),
                coolantFlow.radiatorM3PerS(),
                current.fanA(),
                current.deficitA(),
                duty,
                radiatorPoint.airSideResistanceShare(),
                airFlow.massKgPerS() * Air.heatCapacityJPerKgK(clampAir(airInK)));
    }

    private void circulate(double hotK, double atLift) {
        lift = atLift;
        coolantFlow = plant.circuit()
                .solve(load.pumpSpeedShare(), lift, q -> plant.radiator().coolantDropPa(q, plant.coolant(), hotK));
    }

    /**
     * Brings fan drive, air flow, radiator heat and recirculation to agree at this coolant temperature. Where the fans follow
     * something that they cool themselves (a clutch the air behind the core, a sensor in the tank the coolant behind it) more
     * drive asks for less drive, so the drive is a bracketed root of its own.
     */
    private void air(double hotK, double ambientK) {
        if (Double.isNaN(airOutK)) {
            airInK = ambientK;
            airOutK = ambientK + 0.5 * (hotK - ambientK);
            radiatorOutK = hotK - 5;
        }
        boolean followsItself = plant.fanDrive() == Plant.FanDrive.CLUTCH
                || plant.fanDrive() == Plant.FanDrive.ELECTRIC && plant.fanSensor() == SensorPlacement.TANK;
        if (plant.fanDrive() == Plant.FanDrive.ELECTRIC && !Double.isNaN(heldDuty)) {
            settle(hotK, ambientK, heldDuty);
        } else if (!followsItself) {
            settle(hotK, ambientK, wantedDrive(hotK, ambientK));
        } else {
            settle(hotK, ambientK, selfConsistentDrive(hotK, ambientK));
        }
    }

    private double selfConsistentDrive(double hotK, double ambientK) {
        double lowest =
                plant.fanDrive() == Plant.FanDrive.CLUTCH ? plant.clutch().slipCold() : 0;
        double highest =
                plant.fanDrive() == Plant.FanDrive.CLUTCH ? plant.clutch().slipHot() : 1;
        UnivariateFunction missing = d -> {
            settle(hotK, ambientK, d);
            return wantedDrive(hotK, ambientK) - d;
        };
        if (missing.value(lowest) <= 0) {
            return lowest;
        }
        if (missing.value(highest) >= 0) {
            return highest;
        }
        return new BracketingNthOrderBrentSolver(1e-14, 1e-12, 1e-13, 5)
                .solve(MOST_EVALUATIONS, missing, lowest, highest, AllowedSolution.ANY_SIDE);
    }

    /** @return duty or slip that control or clutch ask for in the present state [-] */
    private double wantedDrive(double hotK, double ambientK) {
        return switch (plant.fanDrive()) {
            case ELECTRIC ->
                FanController.steadyDuty(
                        plant.control(),
                        SensorReading.steadyK(
                                plant.fanSensor(), hotK, radiatorOutK, ambientK, coolantFlow.radiatorM3PerS()));
            case CLUTCH -> plant.clutch().slip(airOutK);
            case NONE -> 0;
        };
    }

    /** Air flow, radiator heat and recirculation with the fans at this drive. */
    private void settle(double hotK, double ambientK, double drive) {
        fans(drive);
        for (int turn = 0; turn < INNER_TURNS; turn++) {
            double inBefore = airInK;
            double outBefore = airOutK;
            airFlow = plant.airPath()
                    .solve(
                            new AirConditions(
                                    point.roadSpeedMPerS(),
                                    point.yawRad(),
                                    plant.atmospherePa(),
                                    clampAmbient(ambientK),
                                    clampAir(airInK),
                                    clampAir(airOutK),
                                    plant.moistDensityFactor()),
                            plant.coreDrop(),
                            plant.fan(),
                            speedFactor);
            radiatorPoint = plant.radiator()
                    .heat(
                            airFlow.massKgPerS(),
                            clampAir(airInK),
                            plant.atmospherePa(),
                            coolantFlow.radiatorM3PerS(),
                            plant.coolant(),
                            hotK);
            double capacity = airFlow.massKgPerS() * Air.heatCapacityJPerKgK(clampAir(airInK));
            airOutK = capacity > 1e-9 ? radiatorPoint.airOutK() : hotK;
            airInK = Math.min(hotK, inletK(ambientK, capacity));
            radiatorOutK = radiatorPoint.coolantOutK();
            if (Math.abs(airInK - inBefore) < INNER_K && Math.abs(airOutK - outBefore) < INNER_K) {
                return;
            }
            if (turn > 12) {
                airInK = 0.5 * (airInK + inBefore);
                airOutK = 0.5 * (airOutK + outBefore);
            }
        }
    }

    private void fans(double drive) {
        duty = drive;
        double engineOverIdle =
                Math.min(50, load.engineSpeedPerS() / plant.engine().spec().idleSpeedPerS());
        boolean electric = plant.fanDrive() == Plant.FanDrive.ELECTRIC;
        current = ElectricBalance.of(
                plant.alternator(), engineOverIdle, plant.fanRunningA(), electric ? drive : 0, plant.fanStart());
        speedFactor = switch (plant.fanDrive()) {
            case ELECTRIC -> Fan.speedFactor(drive, current.voltageV());
            case CLUTCH -> plant.clutch().speedFactorAtSlip(load.engineSpeedPerS(), drive);
            case NONE -> 0;
        };
    }

    private double inletK(double ambientK, double capacity) {
        if (capacity <= 1e-9) {
            return ambientK;
        }
        double upstream = Math.min(load.upstreamW(), HOTTEST_PREHEAT_K * capacity);
        return Recirculation.inletK(
                ambientK, upstream, airFlow.recirculationShare(), Math.max(0, radiatorPoint.heatW()), capacity);
    }

    /** @return road speed as the oil cooler feels it: reduced by the sideslip as the radiator's ram is [m/s] */
    public double effectiveSpeedMPerS() {
        return point.roadSpeedMPerS() * Math.abs(FastMath.cos(point.yawRad()));
    }

    private double surfaceW(double hotK) {
        return plant.surfaceWPerK() * (hotK - 0.5 * (airInK + airOutK));
    }

    private static double clampAir(double k) {
        return CORE_AIR_K.clamp(k);
    }

    private static double clampAmbient(double k) {
        return AROUND_K.clamp(k);
    }

    private Balance.Steady steady(double hotK, double ambientK) {
        double residual = residualW(hotK, ambientK);
        OilBalance oil = OilBalance.of(plant.oil(), load.oilW(), hotK, ambientK, effectiveSpeedMPerS());
        double vapour = plant.coolant().vapourPressurePa(radiatorOutK);
        PumpInlet inlet =
                PumpInlet.of(plant.capPressurePa(), CapPosition.HOT_TANK, coolantFlow, vapour, load.pumpSpeedShare());
        return new Balance.Steady(
                hotK,
                radiatorOutK,
                oil.oilK(),
                ambientK,
                airInK,
                airOutK,
                load.heat(),
                radiatorPoint.heatW(),
                surfaceW(hotK),
                oil.toCoolantW(),
                airFlow.massKgPerS(),
                radiatorPoint.faceVelocityMPerS(),
                duty,
                speedFactor,
                coolantFlow.pumpM3PerS(),
                coolantFlow.radiatorM3PerS(),
                coolantFlow.radiatorDropPa(),
                coolantFlow.pumpRisePa(),
                coolantFlow.thermostatDropPa(),
                lift,
                radiatorPoint.conductanceWPerK(),
                radiatorPoint.ntu(),
                radiatorPoint.capacityRatio(),
                radiatorPoint.effectiveness(),
                radiatorPoint.airSideResistanceShare(),
                radiatorPoint.tubeReynolds(),
                plant.boilingK(),
                inlet.marginPa(),
                current.fanA(),
                current.supplyA(),
                current.baseLoadA() + current.fanA(),
                current.voltageV(),
                residual,
                residual / load.coolantW(),
                airFlow.residualPa(),
                coolantFlow.residualPa(),
                evaluations);
    }
}
