package headertank.calc.rating;

import headertank.calc.air.AirFlow;
import headertank.calc.carspec.BuildField;
import headertank.calc.choice.FanDrive;
import headertank.calc.coolant.CoolantFlow;
import headertank.calc.coolant.PumpInlet;
import headertank.calc.coolant.Thermostat;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.electric.ElectricBalance;
import headertank.calc.engine.HeatSplit;
import headertank.calc.oil.OilBalance;
import headertank.calc.oil.OilSpec;
import headertank.calc.quantity.SiFigure;
import headertank.calc.radiator.RadiatorPoint;
import headertank.calc.result.Balance;
import headertank.calc.result.BalanceText;
import java.util.function.DoubleUnaryOperator;

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
    private static final double WIDTH_K = 1e-10;

    /** What may be left of the heat balance, as a share of the heat to the coolant [-]. */
    private static final double SETTLED_SHARE = 1e-7;

    /** What is left of the heat balance where it steps over zero [-]. */
    private static final double STEP_SHARE = 1e-6;

    /** How well the balance is known while it is searched for, as a share of what is left of it [-]. */
    private static final double LOOSE_SHARE = 5e-3;

    /** What is left of the heat balance where it may have the wrong sign, as a share of the heat to the coolant [-]. */
    private static final double CLOSE_SHARE = 1e-3;

    /** Coolant above the day to begin a search with when nothing better is known [K]. */
    private static final double USUAL_RISE_K = 60;

    private final Plant plant;
    private final OperatingPoint point;
    private final PointLoad load;
    private final AirLoop air;
    private final CoolingLoop cooling;

    private int evaluations;
    private double byDriveK;
    private double knownRiseK = Double.NaN;

    /**
     * @param plant the car
     * @param point what it does
     */
    public SteadySolver(Plant plant, OperatingPoint point) {
        this.plant = plant;
        this.point = point;
        this.load = PointLoad.of(plant, point);
        this.air = new AirLoop(plant, point, load);
        this.cooling = new CoolingLoop(plant, load, air);
    }

    /** @return what the point asks of the car */
    public PointLoad load() {
        return load;
    }

    /** @return coolant flows of the last state */
    CoolantFlow coolantFlow() {
        return cooling.flow();
    }

    /** @return the radiator in the last state; one that stands still when there was none */
    RadiatorPoint radiator() {
        return air.radiator() == null ? RadiatorPoint.withoutAir(designAmbientK()) : air.radiator();
    }

    /** @return the pump's inlet in the last state */
    PumpInlet pumpInlet() {
        return cooling.inlet();
    }

    /** @return air, fans and radiator of the last state */
    AirLoop air() {
        return air;
    }

    /** @return the ambient temperature of the point on the design day [K] */
    public double designAmbientK() {
        return plant.resolved().value(BuildField.AMBIENT) + point.ambientOffsetK();
    }

    /** @return the steady state on the design day, or why there is none */
    public Balance solve() {
        double ambient = designAmbientK();
        if (load.pumpSpeedShare() <= 1e-6) {
            return new Balance.None(Balance.Reason.NO_COOLANT_FLOW, BalanceText.NO_COOLANT_FLOW.with());
        }
        double low = ambient + 0.5;
        double guess = Math.max(low, Math.min(HOTTEST_K, fullOpenK(ambient)));
        double atGuess = signedResidualW(guess, ambient);
        double root = root(ambient, low, guess, atGuess);
        if (root == Double.NEGATIVE_INFINITY) {
            return steady(low, ambient);
        }
        if (root == Double.POSITIVE_INFINITY) {
            return new Balance.None(
                    Balance.Reason.HEAT_EXCEEDS_COOLING,
                    BalanceText.HEAT_EXCEEDS_COOLING.with(
                            SiFigure.power(load.coolantW()),
                            SiFigure.temperature(HOTTEST_K),
                            SiFigure.power(-residualW(HOTTEST_K, ambient))));
        }
        Balance.Steady steady = steady(root, ambient);
        return cooling.followsItself() && Math.abs(steady.residuals().heatShare()) > STEP_SHARE
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
            cooling.hold(d);
            double first = otherwise.engineOutK();
            double found = root(ambient, low, first, residualW(first, ambient));
            double hot = Math.max(low, Math.min(HOTTEST_K, found));
            residualW(hot, ambient, 0);
            byDriveK = hot;
            return d - cooling.wantedDrive(hot, ambient);
        };
        double lowest = cooling.lowestDrive();
        double highest = cooling.highestDrive();
        double guess = Math.max(lowest, Math.min(highest, otherwise.air().fanDuty()));
        double drive = RisingRoot.find(
                surplus,
                lowest,
                highest,
                guess,
                surplus.applyAsDouble(guess),
                1,
                CoolingLoop.DRIVE_TOLERANCE,
                CoolingLoop.DRIVE_TOLERANCE);
        surplus.applyAsDouble(Math.max(lowest, Math.min(highest, drive)));
        Balance.Steady steady = steady(byDriveK, ambient);
        cooling.hold(Double.NaN);
        return steady;
    }

    /** The thermostat's range has a kink at either end: a root inside is looked for inside. */
    private double root(double ambient, double low, double first, double atFirst) {
        double guess = first;
        double atGuess = atFirst;
        DoubleUnaryOperator f = t -> residualW(t, ambient);
        if (atFirst > 0 && plant.thermostat().fitted() && plant.thermostat().openingK() > low) {
            guess = plant.thermostat().openingK();
            atGuess = signedResidualW(guess, ambient);
            if (atGuess < 0) {
                return RisingRoot.enclosed(f, guess, atGuess, first, atFirst, valueToleranceW(), WIDTH_K);
            }
        }
        double given = Math.max(atGuess + load.coolantW(), 1e-3 * load.coolantW());
        double slope = given / Math.max(1, guess - ambient);
        return RisingRoot.find(f, low, HOTTEST_K, guess, atGuess, slope, valueToleranceW(), WIDTH_K);
    }

    /** What is left at an end of the thermostat's range: of a root that lies close by, the side must be known for certain. */
    private double signedResidualW(double hotK, double ambientK) {
        double left = residualW(hotK, ambientK);
        return Math.abs(left) < CLOSE_SHARE * load.coolantW() ? residualW(hotK, ambientK, 0) : left;
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
        return residualW(hotK, ambientK, LOOSE_SHARE);
    }

    private double residualW(double hotK, double ambientK, double looseShare) {
        evaluations++;
        cooling.circulate(hotK, Thermostat.lift(plant.thermostat(), hotK));
        cooling.settle(hotK, ambientK, takenW(hotK, ambientK), looseShare);
        return air.givenW(hotK) - takenW(hotK, ambientK);
    }

    private double takenW(double hotK, double ambientK) {
        return load.coolantW() + OilBalance.toCoolantW(oil(), load.oilW(), hotK, ambientK);
    }

    /** @return how the oil is cooled in the last state */
    public OilSpec oil() {
        return air.oil();
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
        cooling.hold(plant.fanDrive() == FanDrive.ELECTRIC ? held : Double.NaN);
        cooling.circulate(hotK, heldLift);
        cooling.settle(hotK, ambientK, 0, 0);
        cooling.hold(Double.NaN);
        CoolantFlow coolantFlow = cooling.flow();
        ElectricBalance current = air.current();
        double density = plant.coolant().densityKgPerM3(hotK);
        double capacity =
                density * coolantFlow.radiatorM3PerS() * plant.coolant().heatCapacityJPerKgK(hotK);
        double difference = hotK - air.airInK();
        double effectiveness =
                capacity > 1e-9 && difference > 1e-9 ? air.radiator().heatW() / (capacity * difference) : 0;
        return new CoolingState(
                capacity,
                Math.min(0.9999, effectiveness),
                air.airInK(),
                0.5 * (air.airInK() + air.airOutK()),
                coolantFlow.pumpM3PerS(),
                coolantFlow.radiatorM3PerS(),
                current.fanA(),
                current.deficitA(),
                air.drive(),
                air.radiator().airSideResistanceShare(),
                air.capacityWPerK());
    }

    private Balance.Steady steady(double hotK, double ambientK) {
        double residual = residualW(hotK, ambientK, 0);
        CoolantFlow coolantFlow = cooling.flow();
        AirFlow flow = air.flow();
        RadiatorPoint radiatorPoint = air.radiator();
        ElectricBalance current = air.current();
        knownRiseK = hotK - ambientK;
        OilBalance oil = OilBalance.of(oil(), load.oilW(), hotK, ambientK);
        PumpInlet inlet = cooling.inlet();
        HeatSplit heat = load.heat();
        return new Balance.Steady(
                hotK,
                ambientK,
                plant.boilingK(),
                air.surfaceW(hotK),
                new Balance.FuelPower(
                        heat.fuelW(),
                        heat.brakeW(),
                        heat.coolantW(),
                        heat.oilW(),
                        heat.exhaustW(),
                        heat.unburntW(),
                        heat.miscW()),
                new Balance.AirSide(
                        air.airInK(),
                        air.airOutK(),
                        flow.massKgPerS(),
                        radiatorPoint.faceVelocityMPerS(),
                        air.drive(),
                        air.speedFactor()),
                new Balance.CoolantSide(
                        air.radiatorOutK(),
                        coolantFlow.pumpM3PerS(),
                        coolantFlow.radiatorM3PerS(),
                        coolantFlow.radiatorDropPa(),
                        coolantFlow.pumpRisePa(),
                        coolantFlow.thermostatDropPa(),
                        cooling.lift(),
                        inlet.marginPa()),
                new Balance.Core(
                        radiatorPoint.heatW(),
                        radiatorPoint.conductanceWPerK(),
                        radiatorPoint.ntu(),
                        radiatorPoint.capacityRatio(),
                        radiatorPoint.effectiveness(),
                        radiatorPoint.airSideResistanceShare(),
                        radiatorPoint.tubeReynolds()),
                new Balance.Oil(oil.oilK(), oil.toCoolantW()),
                new Balance.Electrics(
                        current.fanA(), current.supplyA(), current.baseLoadA() + current.fanA(), current.voltageV()),
                new Balance.Residuals(
                        residual,
                        residual / load.coolantW(),
                        flow.residualPa(),
                        coolantFlow.residualPa(),
                        evaluations));
    }
}
