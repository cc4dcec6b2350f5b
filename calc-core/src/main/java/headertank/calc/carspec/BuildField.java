package headertank.calc.carspec;

import static headertank.calc.carspec.FieldGroup.AIR;
import static headertank.calc.carspec.FieldGroup.COOLANT;
import static headertank.calc.carspec.FieldGroup.ELECTRIC;
import static headertank.calc.carspec.FieldGroup.ENGINE;
import static headertank.calc.carspec.FieldGroup.FAN;
import static headertank.calc.carspec.FieldGroup.FAN_CONTROL;
import static headertank.calc.carspec.FieldGroup.HOOD;
import static headertank.calc.carspec.FieldGroup.LIMIT;
import static headertank.calc.carspec.FieldGroup.OIL;
import static headertank.calc.carspec.FieldGroup.PUMP;
import static headertank.calc.carspec.FieldGroup.RADIATOR;
import static headertank.calc.carspec.FieldGroup.SENSOR;
import static headertank.calc.carspec.FieldGroup.USE;

import headertank.calc.choice.AirExit;
import headertank.calc.choice.BypassState;
import headertank.calc.choice.CoolantBase;
import headertank.calc.choice.CoreMaterial;
import headertank.calc.choice.Ducting;
import headertank.calc.choice.FanControlKind;
import headertank.calc.choice.FanDrive;
import headertank.calc.choice.FanMounting;
import headertank.calc.choice.FinKind;
import headertank.calc.choice.OilCoolerPlace;
import headertank.calc.choice.OilCooling;
import headertank.calc.choice.OilThermostatFitting;
import headertank.calc.choice.PumpDrive;
import headertank.calc.choice.SensorPlacement;
import headertank.calc.choice.TankPlacement;
import headertank.calc.choice.ThermostatFitting;
import headertank.calc.choice.YesNo;
import headertank.calc.engine.EngineClass;
import headertank.calc.fluid.Fuel;
import headertank.calc.hood.HoodMaterial;
import headertank.calc.quantity.FigureKind;
import headertank.calc.quantity.Provenance;
import headertank.calc.quantity.Range;
import headertank.calc.quantity.Spread;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Every field of a car's cooling specification, once: key, part, kind of figure, allowed range or options, and how far a value of
 * each provenance may be off. Forms, file formats, comparisons, sampling and attribution all walk this list, so a new
 * field is added here and given its default in {@link ClassDefaults}.
 *
 * <p>Default spreads by provenance are a modelling choice: one standard deviation of 2 % when measured, 5 % from a
 * datasheet, 15 % when advertised, 20 % when guessed; for temperatures 1, 1.5, 3 and 4 K; for shares between zero and
 * one 0.02, 0.04, 0.08 and 0.10. Advertised fan flow is taken at 0.85 and advertised power at 0.95 of the claim.
 */
public enum BuildField {
    ENGINE_CLASS("engine.class", ENGINE, EngineClass.class, true),
    ENGINE_DISPLACEMENT("engine.displacementM3", ENGINE, FigureKind.VOLUME, 3e-4, 1.2e-2, Off.EXACT, true),
    ENGINE_CYLINDERS("engine.cylinders", ENGINE, FigureKind.COUNT, 1, 16, Off.EXACT, false),
    ENGINE_POWER("engine.ratedPowerW", ENGINE, FigureKind.POWER, 1.5e4, 1.2e6, Off.POWER, true),
    ENGINE_SPEED("engine.ratedSpeedPerS", ENGINE, FigureKind.ROTATION, 25, 220, Off.EXACT, true),
    ENGINE_IDLE("engine.idleSpeedPerS", ENGINE, FigureKind.ROTATION, 7, 40, Off.EXACT, false),
    ENGINE_EFFICIENCY("engine.fullLoadEfficiency", ENGINE, FigureKind.SHARE, 0.10, 0.50, Off.RELATIVE, false),
    CAR_MASS("engine.carMassKg", ENGINE, FigureKind.MASS, 400, 4500, Off.RELATIVE, false),

    FUEL("fuel.burnt", FieldGroup.FUEL, Fuel.class, true),
    FUEL_OF_DONOR("fuel.setupTakenFrom", FieldGroup.FUEL, Fuel.class, false),

    AMBIENT("use.ambientK", USE, FigureKind.TEMPERATURE, 253.15, 328.15, Off.TEMPERATURE, true),
    LOWEST_AMBIENT("use.lowestAmbientK", USE, FigureKind.TEMPERATURE, 223.15, 303.15, Off.TEMPERATURE, false),
    ALTITUDE("use.altitudeM", USE, FigureKind.ALTITUDE, 0, 4500, Off.EXACT, false),
    AS_BUILT("use.coolingAsBuilt", USE, YesNo.class, false),
    NOT_HOT_DAY("use.notHotUpToK", USE, FigureKind.TEMPERATURE, 283.15, 323.15, Off.TEMPERATURE, false),
    NOT_HOT_SUMMERS("use.summersNotHot", USE, FigureKind.COUNT, 1, 40, Off.EXACT, false),
    HUMIDITY("use.relativeHumidity", USE, FigureKind.SHARE, 0, 1, Off.SHARE, false),

    CORE_CLASS("radiator.coreClass", RADIATOR, null, true),
    CORE_WIDTH("radiator.coreWidthM", RADIATOR, FigureKind.LENGTH, 0.15, 1.2, Off.SIZE, true),
    CORE_HEIGHT("radiator.coreHeightM", RADIATOR, FigureKind.LENGTH, 0.10, 0.9, Off.SIZE, true),
    CORE_DEPTH("radiator.coreDepthM", RADIATOR, FigureKind.LENGTH, 0.012, 0.100, Off.SIZE, true),
    CORE_TANKS("radiator.tanks", RADIATOR, TankPlacement.class, false),
    CORE_PASSES("radiator.passes", RADIATOR, FigureKind.COUNT, 1, 3, Off.EXACT, false),
    CORE_TILT("radiator.tiltRad", RADIATOR, FigureKind.ANGLE, 0, 1.05, Off.EXACT, false),
    CORE_MATERIAL("radiator.material", RADIATOR, CoreMaterial.class, false),
    FIN_KIND("radiator.finKind", RADIATOR, FinKind.class, false),
    FIN_PITCH("radiator.finPitchM", RADIATOR, FigureKind.LENGTH, 5.5e-4, 3.9e-3, Off.RELATIVE, false),
    FIN_HEIGHT("radiator.finHeightM", RADIATOR, FigureKind.LENGTH, 5e-3, 2e-2, Off.RELATIVE, false),
    TUBE_ROWS("radiator.rows", RADIATOR, FigureKind.COUNT, 1, 5, Off.EXACT, false),
    TUBE_HEIGHT("radiator.tubeHeightM", RADIATOR, FigureKind.LENGTH, 1.2e-3, 5e-3, Off.RELATIVE, false),
    CORE_BLOCKED("radiator.blockedFaceShare", RADIATOR, FigureKind.SHARE, 0, 0.9, Off.SHARE, false),
    CORE_FOULING("radiator.coolantFoulingM2KPerW", RADIATOR, FigureKind.FOULING, 0, 1e-3, Off.RELATIVE, false),

    FAN_DRIVE("fan.drive", FAN, FanDrive.class, true),
    FAN_COUNT("fan.count", FAN, FigureKind.COUNT, 1, 4, Off.EXACT, true),
    FAN_DIAMETER("fan.diameterM", FAN, FigureKind.LENGTH, 0.12, 0.60, Off.SIZE, true),
    FAN_MOUNTING("fan.mounting", FAN, FanMounting.class, false),
    FAN_FLOW("fan.freeFlowM3PerS", FAN, FigureKind.AIR_FLOW, 0.03, 3.5, Off.FAN_FLOW, true),
    FAN_SHUT_OFF("fan.shutOffPa", FAN, FigureKind.PRESSURE_DIFFERENCE, 20, 1500, Off.RELATIVE, false),
    FAN_CURRENT("fan.currentA", FAN, FigureKind.CURRENT, 1, 80, Off.RELATIVE, true),
    FAN_START_CURRENT("fan.startCurrentA", FAN, FigureKind.CURRENT, 1, 200, Off.RELATIVE, false),
    FAN_COVER("fan.shroudCoverage", FAN, FigureKind.SHARE, 0.05, 1, Off.SHARE, true),
    FAN_FLAPS("fan.shroudFlaps", FAN, YesNo.class, false),
    FAN_RATIO("fan.clutchSpeedRatio", FAN, FigureKind.RATIO, 0.3, 1.6, Off.RELATIVE, false),

    CONTROL_KIND("fanControl.kind", FAN_CONTROL, FanControlKind.class, false),
    CONTROL_SET("fanControl.setK", FAN_CONTROL, FigureKind.TEMPERATURE, 313.15, 393.15, Off.TEMPERATURE, false),
    CONTROL_BAND("fanControl.bandK", FAN_CONTROL, FigureKind.TEMPERATURE_DIFFERENCE, 1, 40, Off.EXACT, false),
    CONTROL_MIN_DUTY("fanControl.minimumDuty", FAN_CONTROL, FigureKind.SHARE, 0, 1, Off.EXACT, false),
    CONTROL_LOW_SET("fanControl.lowSetK", FAN_CONTROL, FigureKind.TEMPERATURE, 313.15, 393.15, Off.TEMPERATURE, false),
    CONTROL_LOW_DUTY("fanControl.lowDuty", FAN_CONTROL, FigureKind.SHARE, 0.05, 1, Off.EXACT, false),
    CONTROL_SOFT_START("fanControl.softStartS", FAN_CONTROL, FigureKind.TIME, 0, 30, Off.EXACT, false),
    CONTROL_ROW_1_K("fanControl.row1K", FAN_CONTROL, FigureKind.TEMPERATURE, 273.15, 403.15, Off.EXACT, false),
    CONTROL_ROW_1_DUTY("fanControl.row1Duty", FAN_CONTROL, FigureKind.SHARE, 0, 1, Off.EXACT, false),
    CONTROL_ROW_2_K("fanControl.row2K", FAN_CONTROL, FigureKind.TEMPERATURE, 273.15, 403.15, Off.EXACT, false),
    CONTROL_ROW_2_DUTY("fanControl.row2Duty", FAN_CONTROL, FigureKind.SHARE, 0, 1, Off.EXACT, false),
    CONTROL_ROW_3_K("fanControl.row3K", FAN_CONTROL, FigureKind.TEMPERATURE, 273.15, 403.15, Off.EXACT, false),
    CONTROL_ROW_3_DUTY("fanControl.row3Duty", FAN_CONTROL, FigureKind.SHARE, 0, 1, Off.EXACT, false),
    CONTROL_ROW_4_K("fanControl.row4K", FAN_CONTROL, FigureKind.TEMPERATURE, 273.15, 403.15, Off.EXACT, false),
    CONTROL_ROW_4_DUTY("fanControl.row4Duty", FAN_CONTROL, FigureKind.SHARE, 0, 1, Off.EXACT, false),
    CONTROL_ROW_5_K("fanControl.row5K", FAN_CONTROL, FigureKind.TEMPERATURE, 273.15, 403.15, Off.EXACT, false),
    CONTROL_ROW_5_DUTY("fanControl.row5Duty", FAN_CONTROL, FigureKind.SHARE, 0, 1, Off.EXACT, false),

    COOLANT_BASE("coolant.base", COOLANT, CoolantBase.class, true),
    COOLANT_GLYCOL("coolant.glycolVolumeShare", COOLANT, FigureKind.SHARE, 0, 0.65, Off.SHARE, true),
    COOLANT_VOLUME("coolant.volumeM3", COOLANT, FigureKind.VOLUME, 2e-3, 4e-2, Off.RELATIVE, false),
    CAP_PRESSURE("coolant.capGaugePa", COOLANT, FigureKind.PRESSURE_GAUGE, 0, 3e5, Off.RELATIVE, true),
    CAP_HELD("coolant.capHeldShare", COOLANT, FigureKind.SHARE, 0, 1, Off.SHARE, false),

    THERMOSTAT("thermostat.state", FieldGroup.THERMOSTAT, ThermostatFitting.class, true),
    THERMOSTAT_OPENING(
            "thermostat.openingK",
            FieldGroup.THERMOSTAT,
            FigureKind.TEMPERATURE,
            323.15,
            383.15,
            Off.TEMPERATURE,
            false),
    THERMOSTAT_BYPASS("thermostat.bypass", FieldGroup.THERMOSTAT, BypassState.class, false),

    PUMP_DRIVE("pump.drive", PUMP, PumpDrive.class, false),
    PUMP_FLOW("pump.maxFlowM3PerS", PUMP, FigureKind.LIQUID_FLOW, 2e-4, 2.5e-2, Off.RELATIVE, false),
    PUMP_HEAD("pump.headPa", PUMP, FigureKind.PRESSURE_GAUGE, 1e4, 4e5, Off.RELATIVE, false),
    PUMP_RUN_ON("pump.runOnS", PUMP, FigureKind.TIME, 0, 1800, Off.EXACT, false),
    HOSE_DIAMETER("hose.innerDiameterM", PUMP, FigureKind.LENGTH, 0.012, 0.06, Off.SIZE, false),

    GAUGE_SENSOR("sensor.gaugePlace", SENSOR, SensorPlacement.class, false),
    FAN_SENSOR("sensor.fanPlace", SENSOR, SensorPlacement.class, false),

    OIL_COOLER("oil.cooler", OIL, OilCooling.class, false),
    OIL_COOLER_CONDUCTANCE("oil.airCoolerWPerK", OIL, FigureKind.CONDUCTANCE, 20, 1500, Off.RELATIVE, false),
    OIL_COOLER_PLACE("oil.airCoolerPlace", OIL, OilCoolerPlace.class, false),
    OIL_THERMOSTAT("oil.thermostat", OIL, OilThermostatFitting.class, false),
    OIL_THERMOSTAT_OPENING(
            "oil.thermostatOpeningK", OIL, FigureKind.TEMPERATURE, 323.15, 393.15, Off.TEMPERATURE, false),
    OIL_THERMOSTAT_OPEN("oil.thermostatFullOpenK", OIL, FigureKind.TEMPERATURE, 328.15, 403.15, Off.TEMPERATURE, false),

    AIR_INLET("air.inletAreaM2", AIR, FigureKind.AREA, 0.005, 0.8, Off.RELATIVE, false),
    AIR_DUCT("air.duct", AIR, Ducting.class, false),
    AIR_EXIT("air.exit", AIR, AirExit.class, false),
    AIR_EXIT_AREA("air.exitAreaM2", AIR, FigureKind.AREA, 0.002, 0.8, Off.RELATIVE, false),
    CHARGE_COOLER("air.chargeCoolerInFront", AIR, YesNo.class, false),
    CONDENSER("air.condenserInFront", AIR, YesNo.class, false),

    HOOD_MATERIAL("hood.material", HOOD, HoodMaterial.class, false),
    HOOD_THICKNESS("hood.thicknessM", HOOD, FigureKind.LENGTH, 3e-4, 1.5e-2, Off.RELATIVE, false),

    ALTERNATOR("electric.alternatorA", ELECTRIC, FigureKind.CURRENT, 20, 400, Off.RELATIVE, true),
    BASE_LOAD("electric.baseLoadA", ELECTRIC, FigureKind.CURRENT, 3, 150, Off.RELATIVE, false),

    COOLANT_LIMIT("limit.coolantK", LIMIT, FigureKind.TEMPERATURE, 353.15, 403.15, Off.EXACT, false),
    OIL_LIMIT("limit.oilK", LIMIT, FigureKind.TEMPERATURE, 373.15, 443.15, Off.EXACT, false);

    /** An engine idles below this share of its speed at rated power; modelling choice [-]. */
    public static final double IDLE_BELOW_SHARE = 0.6;

    private final String key;
    private final FieldGroup group;
    private final FigureKind kind;
    private final Range allowed;
    private final Class<? extends Enum<?>> type;
    private final List<String> options;
    private final Off off;
    private final boolean essential;

    BuildField(String key, FieldGroup group, FigureKind kind, double min, double max, Off off, boolean essential) {
        this.key = key;
        this.group = group;
        this.kind = kind;
        this.allowed = Range.of(min, max);
        this.type = null;
        this.options = List.of();
        this.off = off;
        this.essential = essential;
    }

    BuildField(String key, FieldGroup group, Class<? extends Enum<?>> type, boolean essential) {
        this.key = key;
        this.group = group;
        this.kind = null;
        this.allowed = null;
        this.type = type;
        this.options = type == null
                ? List.of()
                : Arrays.stream(type.getEnumConstants()).map(Enum::name).toList();
        this.off = Off.EXACT;
        this.essential = essential;
    }

    /** @return the field with this key, if there is one */
    public static Optional<BuildField> ofKey(String key) {
        return Arrays.stream(values()).filter(f -> f.key.equals(key)).findFirst();
    }

    /** @return stable key with the SI unit in its name, as stored */
    public String key() {
        return key;
    }

    public FieldGroup group() {
        return group;
    }

    /** @return whether the field is a choice rather than a number */
    public boolean isChoice() {
        return kind == null;
    }

    /** @return what a number of this field is a figure of, {@code null} for a choice */
    public FigureKind kind() {
        return kind;
    }

    /** @return allowed values of a number [SI], {@code null} for a choice */
    public Range allowed() {
        return allowed;
    }

    /**
     * @return tokens of a choice in their order; empty for a number, and for {@link #CORE_CLASS}, whose options come
     *     from the installed {@link headertank.calc.coreclass.CoreClassSource}s
     */
    public List<String> options() {
        return options;
    }

    /**
     * @param option one of this field's options
     * @return its token
     * @throws IllegalArgumentException when it is an option of another kind
     */
    public String token(Enum<?> option) {
        if (option.getDeclaringClass() != type) {
            throw new IllegalArgumentException(option.getDeclaringClass().getSimpleName() + "." + option.name()
                    + " is no option of " + key + ": allowed are " + options);
        }
        return option.name();
    }

    /** @return whether the field is one of the handful that move the answer most and should be asked first */
    public boolean essential() {
        return essential;
    }

    /**
     * @param from where a value comes from
     * @return the spread that a value of this field gets when it is stated without one
     */
    public Spread spread(Provenance from) {
        return off.spread(from);
    }

    /** How far a value may be off, by provenance. */
    private enum Off {
        EXACT(null, 0, 0, 0, 0, 1),
        RELATIVE(true, 0.02, 0.05, 0.15, 0.20, 1),
        SIZE(true, 0.01, 0.01, 0.02, 0.08, 1),
        POWER(true, 0.02, 0.04, 0.08, 0.12, 0.95),
        FAN_FLOW(true, 0.03, 0.07, 0.15, 0.20, 0.85),
        TEMPERATURE(false, 1.0, 1.5, 3.0, 4.0, 1),
        SHARE(false, 0.02, 0.04, 0.08, 0.10, 1);

        private final Boolean relative;
        private final double[] sigma;
        private final double advertisedFactor;

        Off(
                Boolean relative,
                double measured,
                double datasheet,
                double advertised,
                double guessed,
                double advertisedFactor) {
            this.relative = relative;
            this.sigma = new double[] {measured, datasheet, advertised, guessed};
            this.advertisedFactor = advertisedFactor;
        }

        Spread spread(Provenance from) {
            double s = sigma[from.ordinal()];
            Spread spread = relative == null || relative ? Spread.relative(s) : Spread.absolute(s);
            return from == Provenance.ADVERTISED ? spread.shifted(advertisedFactor) : spread;
        }
    }
}
