package headertank.calc.rating;

import headertank.calc.air.AirBalance;
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
import java.util.function.DoubleUnaryOperator;
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

    /**
     * Air that hardly moves mixes: below this capacity rate, 0.1 g/s, it enters at the day's temperature and leaves at the
     * coolant's, as it does where none moves; the step from none to some would be a step of the balance [W/K]; modelling
     * choice.
     */
    private static final double STILL_AIR_W_PER_K = 0.1;

    private static final int INNER_TURNS = 60;
    private static final double INNER_K = 1e-8;
    private static final double WIDTH_K = 1e-10;
    private static final double DRIVE_TOLERANCE = 1e-12;

    /** What may be left of the heat balance, as a share of the heat to the coolant [-]. */
    private static final double SETTLED_SHARE = 1e-9;

    /** What is left of the heat balance where it steps over zero [-]. */
    private static final double STEP_SHARE = 1e-7;

    /** How well the balance is known while it is searched for, as a share of what is left of it [-]. */
    private static final double LOOSE_SHARE = 5e-3;

    /** Largest share by which two turns are mixed [-]. */
    private static final double MOST_MIXING = 0.6;

    /** Coolant above the day to begin a search with when nothing better is known [K]. */
    private static final double USUAL_RISE_K = 60;

    private final Plant plant;
    private final OperatingPoint point;
    private final PointLoad load;
    private final AirBalance air;

    private int evaluations;
    private double airInK = Double.NaN;
    private double airOutK = Double.NaN;
    private double radiatorOutK;
    private double duty;
    private CoolantFlow coolantFlow;
    private RadiatorPoint radiatorPoint;
    private ElectricBalance current;
    private double lift;
    private double speedFactor;
    private double takenW;
    private double looseShare;
    private double heldDuty = Double.NaN;
    private double heldDrive = Double.NaN;
    private double byDriveK;
    private double circulatedK = Double.NaN;
    private double circulatedLift = Double.NaN;
    private double aroundK = Double.NaN;
    private double settledHotK;
    private double settledAmbientK;
    private double settledSpanK;
    private double knownRiseK = Double.NaN;

    /**
     * @param plant the car
     * @param point what it does
     */
    public SteadySolver(Plant plant, OperatingPoint point) {
        this.plant = plant;
        this.point = point;
        this.load = PointLoad.of(plant, point);
        this.air = plant.airPath().balance(plant.coreDrop(), plant.fan());
    }

    /** @return what the point asks of the car */
    public PointLoad load() {
        return load;
    }

    /** @return coolant flows of the last state */
    CoolantFlow coolantFlow() {
        return coolantFlow;
    }

    /** @return air entering the core at the last state [K] */
    double airInK() {
        return airInK;
    }

    /** @return air flow of the last state */
    AirFlow airFlow() {
        return air.flow();
    }

    /** @return fans and alternator at the last state */
    ElectricBalance current() {
        return current;
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
        double guess = Math.max(low, Math.min(HOTTEST_K, fullOpenK(ambient)));
        double atGuess = residualW(guess, ambient);
        double root = root(ambient, low, guess, atGuess);
        if (root == Double.NEGATIVE_INFINITY) {
            return steady(low, ambient);
        }
        if (root == Double.POSITIVE_INFINITY) {
            return new Balance.None(
                    Balance.Reason.HEAT_EXCEEDS_COOLING,
                    String.format(
                            Locale.ROOT,
                            "%.1f kW reach the coolant and even at 260 C the radiator would give off %.1f kW less: there is no steady state.",
                            load.coolantW() / 1000,
                            -residualW(HOTTEST_K, ambient) / 1000));
        }
        Balance.Steady steady = steady(root, ambient);
        return followsItself() && Math.abs(steady.residualShare()) > STEP_SHARE
                ? byDrive(ambient, low, steady)
                : steady;
    }

    /**
     * The same balance with the drive of the fans as the outer unknown, for cars that have two states of the fans at one
     * coolant temperature: hot air that runs back beside a small shroud engages a clutch, which draws more of it back. The
     * balance then steps from one to the other, and what balances lies between.
     */
    private Balance.Steady byDrive(double ambient, double low, Balance.Steady otherwise) {
        DoubleUnaryOperator surplus = d -> {
            heldDrive = d;
            double first = otherwise.engineOutK();
            double found = root(ambient, low, first, residualW(first, ambient));
            double hot = Math.max(low, Math.min(HOTTEST_K, found));
            settledResidualW(hot, ambient);
            byDriveK = hot;
            return d - wantedDrive(hot, ambient);
        };
        double lowest = lowestDrive();
        double highest = highestDrive();
        double guess = Math.max(lowest, Math.min(highest, otherwise.fanDuty()));
        double drive = RisingRoot.find(
                surplus, lowest, highest, guess, surplus.applyAsDouble(guess), 1, DRIVE_TOLERANCE, DRIVE_TOLERANCE);
        surplus.applyAsDouble(Math.max(lowest, Math.min(highest, drive)));
        Balance.Steady steady = steady(byDriveK, ambient);
        heldDrive = Double.NaN;
        return steady;
    }

    /** The thermostat's range has a kink at either end: a root inside is looked for inside. */
    private double root(double ambient, double low, double first, double atFirst) {
        double guess = first;
        double atGuess = atFirst;
        DoubleUnaryOperator f = t -> residualW(t, ambient);
        if (atFirst > 0 && plant.thermostat().fitted() && plant.thermostat().openingK() > low) {
            guess = plant.thermostat().openingK();
            atGuess = residualW(guess, ambient);
            if (atGuess < 0) {
                return RisingRoot.enclosed(f, guess, atGuess, first, atFirst, valueToleranceW(), WIDTH_K);
            }
        }
        double given = Math.max(atGuess + load.coolantW(), 1e-3 * load.coolantW());
        double slope = given / Math.max(1, guess - ambient);
        return RisingRoot.find(f, low, HOTTEST_K, guess, atGuess, slope, valueToleranceW(), WIDTH_K);
    }

    /** @return where the thermostat has just opened, or a usual temperature without one [K] */
    private double fullOpenK(double ambientK) {
        return plant.thermostat().fitted() ? plant.thermostat().fullOpenK() : ambientK + USUAL_RISE_K;
    }

    private double valueToleranceW() {
        return Math.max(1e-6, SETTLED_SHARE * load.coolantW());
    }

    /**
     * @param coolantK held coolant temperature out of the engine [K]
     * @return the ambient temperature at which the car settles at it [K]; minus infinity when even -40 C is too hot
     */
    public double ambientForCoolantK(double coolantK) {
        double high = coolantK - 0.5;
        double guess = Math.max(COLDEST_AMBIENT_K, Math.min(high, guessForK(coolantK)));
        double atGuess = residualW(coolantK, guess);
        double slope = Math.max(atGuess + load.coolantW(), 1e-3 * load.coolantW()) / (coolantK - guess);
        double found = RisingRoot.find(
                a -> -residualW(coolantK, a),
                COLDEST_AMBIENT_K,
                high,
                guess,
                -atGuess,
                slope,
                valueToleranceW(),
                WIDTH_K);
        if (!Double.isInfinite(found)) {
            knownRiseK = coolantK - found;
        }
        return found;
    }

    /** A limiting ambient to begin with: coolant rises with the day, about one for one. */
    private double guessForK(double coolantK) {
        return coolantK - (Double.isNaN(knownRiseK) ? USUAL_RISE_K : knownRiseK);
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
        looseShare = LOOSE_SHARE;
        double residual = settledResidualW(hotK, ambientK);
        looseShare = 0;
        return residual;
    }

    private double settledResidualW(double hotK, double ambientK) {
        circulate(hotK, Thermostat.lift(plant.thermostat(), hotK));
        takenW = load.coolantW()
                + OilBalance.toCoolantW(plant.oil(), load.oilW(), hotK, ambientK, effectiveSpeedMPerS());
        air(hotK, ambientK);
        return residualNowW(hotK);
    }

    private double residualNowW(double hotK) {
        return radiatorPoint.heatW() + surfaceW(hotK) - takenW;
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
                air.massKgPerS() * Air.heatCapacityJPerKgK(clampAir(airInK)));
    }

    private void circulate(double hotK, double atLift) {
        lift = atLift;
        if (hotK == circulatedK && atLift == circulatedLift) {
            return;
        }
        circulatedK = hotK;
        circulatedLift = atLift;
        double density = plant.coolant().densityKgPerM3(hotK);
        double viscosity = plant.coolant().viscosityPaS(hotK);
        coolantFlow = plant.circuit()
                .solve(load.pumpSpeedShare(), lift, q -> plant.radiator().coolantDropPa(q, density, viscosity));
    }

    /**
     * Brings fan drive, air flow, radiator heat and recirculation to agree at this coolant temperature. Where the fans follow
     * something that they cool themselves (a clutch the air behind the core, a sensor in the tank the coolant behind it) more
     * drive asks for less drive, so the drive is a bracketed root of its own.
     */
    private void air(double hotK, double ambientK) {
        startFrom(hotK, ambientK);
        if (!Double.isNaN(heldDrive)) {
            settle(hotK, ambientK, heldDrive);
        } else if (plant.fanDrive() == Plant.FanDrive.ELECTRIC && !Double.isNaN(heldDuty)) {
            settle(hotK, ambientK, heldDuty);
        } else if (!followsItself()) {
            settle(hotK, ambientK, wantedDrive(hotK, ambientK));
        } else {
            double loose = looseShare;
            looseShare = 0;
            double drive = selfConsistentDrive(hotK, ambientK);
            looseShare = loose;
            settle(hotK, ambientK, drive);
        }
    }

    /** First temperatures of a state: those of the state before, moved with the difference between coolant and day. */
    private void startFrom(double hotK, double ambientK) {
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

    /** Whether the fans follow something that they cool themselves. */
    private boolean followsItself() {
        return plant.fanDrive() == Plant.FanDrive.CLUTCH
                || plant.fanDrive() == Plant.FanDrive.ELECTRIC && plant.fanSensor() == SensorPlacement.TANK;
    }

    private double lowestDrive() {
        return plant.fanDrive() == Plant.FanDrive.CLUTCH ? plant.clutch().slipCold() : 0;
    }

    private double highestDrive() {
        return plant.fanDrive() == Plant.FanDrive.CLUTCH ? plant.clutch().slipHot() : 1;
    }

    private double selfConsistentDrive(double hotK, double ambientK) {
        double lowest = lowestDrive();
        double highest = highestDrive();
        double guess = Math.max(lowest, Math.min(highest, duty));
        DoubleUnaryOperator surplus = d -> {
            settle(hotK, ambientK, d);
            return d - wantedDrive(hotK, ambientK);
        };
        double found = RisingRoot.find(
                surplus, lowest, highest, guess, surplus.applyAsDouble(guess), 1, DRIVE_TOLERANCE, DRIVE_TOLERANCE);
        return Math.max(lowest, Math.min(highest, found));
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

    /**
     * Air flow, radiator heat and recirculation with the fans at this drive: turns until the temperatures rest, sped up by
     * D. G. Anderson's mixing of the last two (J. ACM 12 (1965); from memory). While the heat balance is far from zero its
     * value need not be known better than a share of itself.
     */
    private void settle(double hotK, double ambientK, double drive) {
        fans(drive);
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
                            coolantFlow.radiatorM3PerS(),
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
            double unsure = (capacity + plant.surfaceWPerK()) * (Math.abs(inMiss) + Math.abs(outMiss));
            if (unsure < looseShare * Math.abs(residualNowW(hotK))) {
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

    /** Air entering the core, with the heat that it will itself bring back solved for, not taken from the turn before. */
    private double inletK(double hotK, double ambientK, double capacity) {
        if (capacity <= 1e-9) {
            return ambientK;
        }
        double upstream = Math.min(load.upstreamW(), HOTTEST_PREHEAT_K * capacity);
        double difference = hotK - clampAir(airInK);
        double perKelvin = difference > 1e-6 ? Math.max(0, radiatorPoint.heatW() / difference) : 0;
        double inlet =
                Recirculation.inletBeforeCoreK(ambientK, upstream, air.recirculationShare(), perKelvin, hotK, capacity);
        return ambientK + moving(capacity) * (inlet - ambientK);
    }

    private static double moving(double capacity) {
        return capacity > 40 * STILL_AIR_W_PER_K ? 1 : -FastMath.expm1(-capacity / STILL_AIR_W_PER_K);
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

    private static double clampMean(double k) {
        return Air.TEMPERATURE_K.clamp(k);
    }

    private static double clampAmbient(double k) {
        return AROUND_K.clamp(k);
    }

    private Balance.Steady steady(double hotK, double ambientK) {
        evaluations++;
        double residual = settledResidualW(hotK, ambientK);
        knownRiseK = hotK - ambientK;
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
                air.massKgPerS(),
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
                air.flow().residualPa(),
                coolantFlow.residualPa(),
                evaluations);
    }
}
