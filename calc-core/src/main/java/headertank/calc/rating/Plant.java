package headertank.calc.rating;

import headertank.calc.air.AirPath;
import headertank.calc.air.ClutchFan;
import headertank.calc.air.CoreDropCurve;
import headertank.calc.air.Fan;
import headertank.calc.air.StandingCore;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.choice.AirExit;
import headertank.calc.choice.BypassState;
import headertank.calc.choice.FanDrive;
import headertank.calc.choice.OilCoolerPlace;
import headertank.calc.choice.OilCooling;
import headertank.calc.choice.OilThermostatFitting;
import headertank.calc.choice.PumpDrive;
import headertank.calc.choice.SensorPlacement;
import headertank.calc.choice.ThermostatFitting;
import headertank.calc.control.FanControlSpec;
import headertank.calc.coolant.CircuitSpec;
import headertank.calc.coolant.CoolantCircuit;
import headertank.calc.coolant.PressureCap;
import headertank.calc.coolant.PumpSpec;
import headertank.calc.coolant.Thermostat;
import headertank.calc.coolant.ThermostatSpec;
import headertank.calc.electric.AlternatorSpec;
import headertank.calc.electric.FanStart;
import headertank.calc.engine.EngineClass;
import headertank.calc.engine.EngineHeat;
import headertank.calc.engine.EngineSpec;
import headertank.calc.fluid.Air;
import headertank.calc.fluid.Atmosphere;
import headertank.calc.fluid.Coolant;
import headertank.calc.fluid.Fuel;
import headertank.calc.oil.OilCoolers;
import headertank.calc.oil.OilThermostat;
import headertank.calc.radiator.AirDrop;
import headertank.calc.radiator.Radiator;
import java.util.OptionalDouble;
import org.hipparchus.util.FastMath;

/**
 * The models of one car, assembled from its resolved values: what the balances of {@link SteadySolver} and of the run over
 * time work on. Immutable.
 */
public final class Plant {

    /** Rise of the air in the core at which its drop curve is taken [K]; the viscosity there follows from it. */
    private static final double DROP_RISE_K = 40;

    private static final double STANDING_GONE_W_PER_K = 100;

    private final Resolved resolved;
    private final ModelFactors factors;
    private final Coolant coolant;
    private final Radiator radiator;
    private final AirPath airPath;
    private final Fan fan;
    private final FanDrive fanDrive;
    private final ClutchFan clutch;
    private final CoreDropCurve coreDrop;
    private final double moistDensityFactor;
    private final CoolantCircuit circuit;
    private final ThermostatSpec thermostat;
    private final PumpSpec pump;
    private final EngineHeat engine;
    private final FanControlSpec control;
    private final AlternatorSpec alternator;
    private final OilCoolers oil;
    private final double atmospherePa;
    private final PressureCap cap;
    private final double boilingK;
    private final double standingWPerK;

    private Plant(Resolved r, ModelFactors f) {
        this.resolved = r;
        this.factors = f;
        this.coolant = CoolantOf.resolved(r);
        this.atmospherePa = Atmosphere.pressurePa(r.value(BuildField.ALTITUDE));
        this.radiator = CorePlan.radiator(r, f);
        this.airPath = CorePlan.airPath(r, f, radiator.faceAreaM2());
        this.fan = CorePlan.fan(r, f);
        this.fanDrive = r.option(BuildField.FAN_DRIVE, FanDrive.class);
        this.clutch = fanDrive == FanDrive.CLUTCH ? CorePlan.clutch(r, f) : null;
        double ambient = Air.AMBIENT_K.clamp(r.value(BuildField.AMBIENT));
        this.coreDrop = coreDrop(radiator, ambient, atmospherePa);
        this.moistDensityFactor = Math.max(
                0.9,
                Math.min(
                        1,
                        Air.densityKgPerM3(atmospherePa, ambient, r.value(BuildField.HUMIDITY))
                                / Air.densityKgPerM3(atmospherePa, ambient, 0)));
        this.thermostat = thermostat(r, f);
        this.pump = new PumpSpec(
                r.value(BuildField.PUMP_HEAD),
                r.value(BuildField.PUMP_FLOW),
                r.is(BuildField.PUMP_DRIVE, PumpDrive.ELECTRIC));
        this.circuit = new CoolantCircuit(circuit(r, f, pump, thermostat));
        this.engine = new EngineHeat(engine(r), f.engine());
        this.control = FanControlOf.resolved(r);
        this.alternator = AlternatorSpec.of(r.value(BuildField.ALTERNATOR), r.value(BuildField.BASE_LOAD));
        this.oil = oil(r, f);
        this.cap = new PressureCap(r.value(BuildField.CAP_PRESSURE), r.value(BuildField.CAP_HELD));
        this.boilingK = coolant.boilingK(capPressurePa()) + f.liquid().boilingOffsetK();
        this.standingWPerK = f.air().standing()
                * StandingCore.conductanceWPerK(
                        r.value(BuildField.CORE_WIDTH),
                        r.value(BuildField.CORE_HEIGHT),
                        1 - r.value(BuildField.CORE_BLOCKED),
                        coreDrop,
                        r.option(BuildField.AIR_EXIT, AirExit.class),
                        atmospherePa);
    }

    /** @return the models for this car: as published, moved by what was learned of it */
    public static Plant of(Resolved resolved) {
        return new Plant(resolved, ModelFactors.of(resolved.learned()));
    }

    /** @return the models at these factors for this car */
    public static Plant of(Resolved resolved, ModelFactors factors) {
        return new Plant(resolved, factors);
    }

    /** The core's curve without the growth by heating, which the air path applies at the temperatures that it finds. */
    private static CoreDropCurve coreDrop(Radiator radiator, double airInK, double pressurePa) {
        AirDrop heated = radiator.airDrop(airInK, airInK + DROP_RISE_K, pressurePa);
        double growth = 0.5 * (1 + (airInK + DROP_RISE_K) / airInK);
        return new CoreDropCurve(
                Math.max(0, heated.linearPaSPerM()) / growth, Math.max(0, heated.quadraticPaS2PerM2()) / growth);
    }

    private static ThermostatSpec thermostat(Resolved r, ModelFactors f) {
        BypassState bypass = r.option(BuildField.THERMOSTAT_BYPASS, BypassState.class);
        if (r.is(BuildField.THERMOSTAT, ThermostatFitting.REMOVED)) {
            return ThermostatSpec.removed(bypass == BypassState.CLOSES_WITH_LIFT ? BypassState.OPEN : bypass);
        }
        double opening = r.value(BuildField.THERMOSTAT_OPENING);
        return new ThermostatSpec(
                true,
                opening,
                opening + ThermostatSpec.DEFAULT_WIDTH_K * f.liquid().opens(),
                bypass,
                ThermostatSpec.LEAK.clamp(Thermostat.LEAK_LIFT * f.liquid().leak()));
    }

    /** Hose resistance goes with d^-5 at equal length; the default ratio belongs to a hose of 36 mm (modelling choice). */
    private static CircuitSpec circuit(Resolved r, ModelFactors f, PumpSpec pump, ThermostatSpec thermostat) {
        CircuitSpec usual = CircuitSpec.of(pump, thermostat);
        double usualHose = CircuitSpec.usualHoseM(r.value(BuildField.ENGINE_POWER));
        double hose = Math.min(400, usual.hoseRatio() * FastMath.pow(usualHose / r.value(BuildField.HOSE_DIAMETER), 5));
        return new CircuitSpec(
                pump,
                thermostat,
                usual.blockRatio() * f.liquid().circuit(),
                hose * f.liquid().circuit(),
                usual.thermostatRatio() * f.liquid().circuit(),
                usual.bypassRatio() * f.liquid().circuit(),
                usual.emptyHousingRatio(),
                usual.restrictedAreaShare());
    }

    private static EngineSpec engine(Resolved r) {
        return new EngineSpec(
                r.option(BuildField.ENGINE_CLASS, EngineClass.class),
                r.value(BuildField.ENGINE_DISPLACEMENT),
                (int) Math.rint(r.value(BuildField.ENGINE_CYLINDERS)),
                r.value(BuildField.ENGINE_POWER),
                r.value(BuildField.ENGINE_SPEED),
                Math.min(
                        r.value(BuildField.ENGINE_IDLE),
                        BuildField.IDLE_BELOW_SHARE * r.value(BuildField.ENGINE_SPEED)),
                r.option(BuildField.FUEL, Fuel.class),
                r.has(BuildField.ENGINE_EFFICIENCY)
                        ? OptionalDouble.of(r.value(BuildField.ENGINE_EFFICIENCY))
                        : OptionalDouble.empty());
    }

    private static OilCoolers oil(Resolved r, ModelFactors f) {
        OilCooling cooler = r.option(BuildField.OIL_COOLER, OilCooling.class);
        double displacement = r.value(BuildField.ENGINE_DISPLACEMENT);
        return new OilCoolers(
                displacement,
                r.from(BuildField.ENGINE_CYLINDERS).isPresent()
                        ? r.value(BuildField.ENGINE_CYLINDERS)
                        : OilCoolers.usualCylinders(displacement),
                cooler.byCoolant(),
                cooler.byAir() ? r.value(BuildField.OIL_COOLER_CONDUCTANCE) : 0,
                !cooler.byAir() || r.is(BuildField.OIL_COOLER_PLACE, OilCoolerPlace.ELSEWHERE)
                        ? OilCoolerPlace.ELSEWHERE
                        : OilCoolerPlace.BEFORE_CORE,
                cooler.byAir() ? oilThermostat(r) : OilThermostat.NONE,
                f.liquid().oilCoolers());
    }

    private static OilThermostat oilThermostat(Resolved r) {
        if (r.is(BuildField.OIL_THERMOSTAT, OilThermostatFitting.NONE)) {
            return OilThermostat.NONE;
        }
        if (!r.has(BuildField.OIL_THERMOSTAT_OPENING)) {
            return OilThermostat.usual(1);
        }
        double opening = r.value(BuildField.OIL_THERMOSTAT_OPENING);
        double open = r.has(BuildField.OIL_THERMOSTAT_OPEN)
                ? r.value(BuildField.OIL_THERMOSTAT_OPEN)
                : opening + OilThermostat.USUAL_WIDTH_K;
        return new OilThermostat(opening, Math.max(opening + 1, Math.min(opening + 40, open)), 1);
    }

    /** @return every value that the models were made from */
    public Resolved resolved() {
        return resolved;
    }

    /** @return the factors that the models were made with */
    public ModelFactors factors() {
        return factors;
    }

    public Coolant coolant() {
        return coolant;
    }

    public Radiator radiator() {
        return radiator;
    }

    public AirPath airPath() {
        return airPath;
    }

    /** @return the fans side by side; {@code null} when the car has none */
    public Fan fan() {
        return fan;
    }

    public FanDrive fanDrive() {
        return fanDrive;
    }

    /** @return the clutch of an engine-driven fan; {@code null} when the fans are electric or there are none */
    public ClutchFan clutch() {
        return clutch;
    }

    /** @return air-side pressure drop of the core against face velocity at inlet density, without heating */
    public CoreDropCurve coreDrop() {
        return coreDrop;
    }

    /** @return density of the moist air over that of dry air [-] */
    public double moistDensityFactor() {
        return moistDensityFactor;
    }

    public CoolantCircuit circuit() {
        return circuit;
    }

    public ThermostatSpec thermostat() {
        return thermostat;
    }

    public PumpSpec pump() {
        return pump;
    }

    /** @return how long an electric pump runs on after the engine has stopped [s] */
    public double pumpRunOnS() {
        return pump.electric() && resolved.has(BuildField.PUMP_RUN_ON) ? resolved.value(BuildField.PUMP_RUN_ON) : 0;
    }

    public EngineHeat engine() {
        return engine;
    }

    /**
     * @param airWPerK heat capacity rate of the air through the core [W/K]
     * @return its velocity before the core's face, at 1.13 kg/m3 and 1006 J/kgK [m/s]
     */
    public double coreFaceMPerS(double airWPerK) {
        return airWPerK / (1137 * radiator.faceAreaM2());
    }

    /** @return how electric fans are controlled */
    public FanControlSpec control() {
        return control;
    }

    public AlternatorSpec alternator() {
        return alternator;
    }

    public OilCoolers oil() {
        return oil;
    }

    /** @return pressure of the air around the car [Pa] */
    public double atmospherePa() {
        return atmospherePa;
    }

    /** @return boiling point of the coolant at the cap [K] */
    public double boilingK() {
        return boilingK;
    }

    /** @return pressure at the cap, absolute [Pa] */
    public double capPressurePa() {
        return cap.absolutePa(atmospherePa);
    }

    /** @return the cap with what it still holds */
    public PressureCap cap() {
        return cap;
    }

    /** @return running current of all electric fans at full duty and charging voltage [A] */
    public double fanRunningA() {
        return fanDrive == FanDrive.ELECTRIC
                ? resolved.value(BuildField.FAN_COUNT) * resolved.value(BuildField.FAN_CURRENT)
                : 0;
    }

    /** @return how the fans are switched on: only a ramp or a table winds them up */
    public FanStart fanStart() {
        return control.softStartS() > 0 ? FanStart.SOFT : FanStart.ABRUPT;
    }

    /** @return where the sensor that switches the fans sits */
    public SensorPlacement fanSensor() {
        return resolved.option(BuildField.FAN_SENSOR, SensorPlacement.class);
    }

    /** @return where the sensor of the gauge sits */
    public SensorPlacement gaugeSensor() {
        return resolved.option(BuildField.GAUGE_SENSOR, SensorPlacement.class);
    }

    /**
     * What a hot core loses where no air is driven through it, see {@link StandingCore}. Gone where the air through it carries more
     * than some 100 W/K (modelling choice).
     *
     * @param airWPerK heat capacity rate of the air through the core [W/K]
     * @return conductance from the core to the ambient air [W/K]
     */
    public double standingCoreWPerK(double airWPerK) {
        return airWPerK > 1000 ? 0 : standingWPerK * FastMath.exp(-airWPerK / STANDING_GONE_W_PER_K);
    }

    /**
     * Conductance from block, head and hoses to the air under the hood: area 1 m2 for 1.5 litres, growing as displacement^(2/3),
     * at 10 W/m2K by natural convection and radiation (derived), and 1.9 W/m2K more per m/s of road speed, half of what a
     * plate in open wind takes (W. Juerges, 1924, from memory), up to 25 m/s.
     *
     * @param roadSpeedMPerS road speed [m/s]
     * @return conductance [W/K]
     */
    public double surfaceWPerK(double roadSpeedMPerS) {
        double area = FastMath.pow(resolved.value(BuildField.ENGINE_DISPLACEMENT) / 1.5e-3, 2.0 / 3);
        return factors.metal().surface() * area * (10 + 1.9 * Math.min(25, roadSpeedMPerS));
    }
}
