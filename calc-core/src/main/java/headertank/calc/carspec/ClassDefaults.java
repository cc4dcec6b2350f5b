package headertank.calc.carspec;

import static headertank.calc.carspec.BuildField.*;
import static headertank.calc.carspec.Default.choice;
import static headertank.calc.carspec.Default.number;
import static headertank.calc.carspec.Default.token;
import static headertank.calc.quantity.Physics.kelvin;
import static headertank.calc.quantity.Spread.absolute;
import static headertank.calc.quantity.Spread.relative;

import headertank.calc.air.Fan;
import headertank.calc.air.FanFit;
import headertank.calc.air.FanSpec;
import headertank.calc.choice.AirExit;
import headertank.calc.choice.BypassState;
import headertank.calc.choice.CoolantBase;
import headertank.calc.choice.Ducting;
import headertank.calc.choice.FanDrive;
import headertank.calc.choice.FanMounting;
import headertank.calc.choice.OilCoolerPlace;
import headertank.calc.choice.OilCooling;
import headertank.calc.choice.OilThermostatFitting;
import headertank.calc.choice.PumpDrive;
import headertank.calc.choice.SensorPlacement;
import headertank.calc.choice.TankPlacement;
import headertank.calc.choice.ThermostatFitting;
import headertank.calc.choice.YesNo;
import headertank.calc.coolant.CircuitSpec;
import headertank.calc.coreclass.CoreFigure;
import headertank.calc.engine.EngineClass;
import headertank.calc.fluid.Fuel;
import headertank.calc.hood.HoodMaterial;
import headertank.calc.oil.OilThermostat;
import headertank.calc.quantity.Spread;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.hipparchus.util.FastMath;

/**
 * What stands in for a value that nobody stated: one table, a row per field, with the typical value of the class of car,
 * scaled with what is known. Numbers by class stand in the order of {@link CarClass}.
 *
 * <p>All figures are guesses for the class ({@code common practice, no source}) with the spread shown; the spreads are
 * wide on purpose. A gap in the answer is therefore never free: it widens the uncertainty of the rating.
 */
final class ClassDefaults {

    /** Order in which gaps are filled: a default may rest on the fields before it. */
    static final List<BuildField> ORDER = order();

    static final Spread EXACT = relative(0);

    private static final AssumptionText OF_CLASS = AssumptionText.TYPICAL_OF_THE_CLASS;
    private static final AssumptionText OF_CORE = AssumptionText.OF_CORE_CLASS;
    private static final AssumptionText AS_BUILT = AssumptionText.AS_BUILT;
    private static final AssumptionText FROM_POWER_AND_FACE = AssumptionText.FROM_POWER_OF_CLASS;

    private static final AssumptionText FROM_POWER = FROM_POWER_AND_FACE;

    /**
     * Free flow of an old car's pump [l/min per kW]. Slow engines had large pumps: what passed the radiator was 2.4 l/min per kW on
     * a car of 1920 and one of 1939, and in 1932 three cores lost 7 to 8 K at full throttle and 30 miles an hour; this default gives
     * 1.9 and 8 K (papers of an English car maker's experimental department; powers from memory).
     */
    private static final double OLD_PUMP = 3.0;

    private static final Map<BuildField, Default> TABLE = table(List.of(
            choice(
                    FUEL,
                    c -> c.is(ENGINE_CLASS, EngineClass.DIESEL_TURBO) ? Fuel.DIESEL : Fuel.PETROL_E10,
                    AssumptionText.PUMP_FUEL),
            number(ENGINE_POWER, byClass(80e3, 130e3, 220e3, 330e3), relative(0.25), OF_CLASS),
            choice(ENGINE_CLASS, ClassDefaults::engineClass, AssumptionText.MOST_COMMON_OF_CLASS),
            number(
                    ENGINE_DISPLACEMENT,
                    c -> c.value(ENGINE_POWER) / wattPerCubicMetre(c),
                    relative(0.15),
                    AssumptionText.POWER_PER_LITRE),
            number(ENGINE_CYLINDERS, ClassDefaults::cylinders, EXACT, AssumptionText.FROM_THE_DISPLACEMENT),
            number(ENGINE_SPEED, perMinute(5000, 6000, 7000, 6800), relative(0.08), OF_CLASS),
            number(ENGINE_IDLE, perMinute(800, 800, 950, 1000), relative(0.08), OF_CLASS),
            number(CAR_MASS, perKilowatt(850, 5.5, 875, 4.2, 1000, 1.2, 1100, 0.8), relative(0.12), FROM_POWER),
            number(AMBIENT, celsius(38, 38, 32, 32), absolute(3), AssumptionText.TEMPERATE_SUMMER_DAY),
            number(LOWEST_AMBIENT, celsius(-15, -15, -5, -5), absolute(5), AssumptionText.TEMPERATE_WINTER_NIGHT),
            number(ALTITUDE, always(100), EXACT, AssumptionText.LOWLAND),
            number(HUMIDITY, always(0.40), absolute(0.15), AssumptionText.SUMMER_DAY),
            token(
                    CORE_CLASS,
                    pick("copper-brass-louvred", "thin-original", "dense-aluminium", "two-row-aluminium"),
                    OF_CLASS),
            number(CORE_WIDTH, ClassDefaults::coreWidth, relative(0.10), FROM_POWER_AND_FACE),
            number(CORE_HEIGHT, c -> faceArea(c) / c.value(CORE_WIDTH), relative(0.10), FROM_POWER_AND_FACE),
            ofCore(CORE_DEPTH, CoreFigure.DEPTH_M),
            choice(
                    CORE_TANKS,
                    pick(TankPlacement.TOP_AND_BOTTOM, TankPlacement.SIDES, TankPlacement.SIDES, TankPlacement.SIDES),
                    OF_CLASS),
            number(CORE_PASSES, always(1), EXACT, AssumptionText.MOST_RADIATORS_HAVE_ONE),
            number(CORE_TILT, always(0), EXACT, AssumptionText.UPRIGHT),
            choice(CORE_MATERIAL, c -> c.coreClass().material(), OF_CORE),
            choice(FIN_KIND, c -> c.coreClass().finKind(), OF_CORE),
            ofCore(FIN_PITCH, CoreFigure.FIN_PITCH_M),
            ofCore(FIN_HEIGHT, CoreFigure.FIN_HEIGHT_M),
            number(TUBE_ROWS, c -> c.coreClass().rows(), EXACT, OF_CORE),
            ofCore(TUBE_HEIGHT, CoreFigure.TUBE_HEIGHT_M),
            number(CORE_BLOCKED, byClass(0.08, 0.03, 0.05, 0.05), absolute(0.03), AssumptionText.USED_CORE),
            number(
                    CORE_FOULING,
                    byClass(1e-4, 3.5e-5, 3.5e-5, 3.5e-5),
                    relative(0.40),
                    AssumptionText.USED_COOLANT_CIRCUIT),
            choice(FAN_DRIVE, pick(FanDrive.CLUTCH, FanDrive.ELECTRIC, FanDrive.ELECTRIC, FanDrive.ELECTRIC), OF_CLASS),
            number(
                    FAN_COUNT,
                    c -> c.is(FAN_DRIVE, FanDrive.CLUTCH)
                            ? 1
                            : byClass(1, 1, 2, 2).from(c),
                    EXACT,
                    OF_CLASS),
            number(FAN_DIAMETER, ClassDefaults::fanDiameter, relative(0.08), AssumptionText.FROM_CORE_HEIGHT),
            choice(FAN_MOUNTING, c -> FanMounting.PULLING, AssumptionText.MOST_FANS_PULL),
            number(FAN_FLOW, ClassDefaults::fanFlow, relative(0.15), OF_CLASS)
                    .why(c -> fanCurrentIsKnown(c)
                            ? AssumptionText.FROM_CURRENT_AS_JET
                            : AssumptionText.FROM_CLASS_DIAMETER),
            number(FAN_SHUT_OFF, ClassDefaults::shutOff, relative(0.20), OF_CLASS)
                    .why(c -> fanCurrentIsKnown(c) ? AssumptionText.FROM_CURRENT_AT_PEAK : OF_CLASS),
            number(
                    FAN_CURRENT,
                    c -> byClass(20, 20, 13, 22).from(c) * bySizeOfFan(c),
                    relative(0.20),
                    AssumptionText.FROM_THE_DIAMETER),
            number(
                    FAN_START_CURRENT,
                    c -> 1.2 * c.value(FAN_CURRENT),
                    relative(0.10),
                    AssumptionText.RUNNING_CURRENT_PLUS_FIFTH),
            number(FAN_COVER, byClass(0.95, 1.0, 1.0, 0.85), absolute(0.05), OF_CLASS),
            choice(FAN_FLAPS, c -> YesNo.NO, AssumptionText.MOST_SHROUDS_HAVE_NONE),
            number(FAN_RATIO, always(1.0), relative(0.12), AssumptionText.PULLEY_RATIO_WITH_SLIP),
            choice(COOLANT_BASE, c -> CoolantBase.ETHYLENE_GLYCOL, AssumptionText.MOST_COMMON),
            number(
                            COOLANT_GLYCOL,
                            c -> c.is(COOLANT_BASE, CoolantBase.WATER)
                                    ? 0
                                    : byClass(0.50, 0.50, 0.30, 0.30).from(c),
                            EXACT,
                            OF_CLASS)
                    .spread(c -> c.is(COOLANT_BASE, CoolantBase.WATER)
                            ? EXACT
                            : absolute(byClass(0.07, 0.07, 0.10, 0.10).from(c)))
                    .why(c -> c.is(COOLANT_BASE, CoolantBase.WATER) ? AssumptionText.PLAIN_WATER : OF_CLASS),
            number(
                    COOLANT_VOLUME,
                    perKilowatt(5e-3, 7e-5, 3.5e-3, 3e-5, 5e-3, 1.4e-5, 5e-3, 1.2e-5),
                    relative(0.15),
                    FROM_POWER),
            number(CAP_PRESSURE, byClass(70e3, 110e3, 130e3, 130e3), relative(0.12), OF_CLASS),
            number(CAP_HELD, byClass(0.85, 0.95, 1, 1), absolute(0.05), AssumptionText.SPRINGS_AND_SEALS_TIRE),
            choice(THERMOSTAT, c -> ThermostatFitting.FITTED, AS_BUILT),
            number(THERMOSTAT_OPENING, celsius(82, 88, 78, 78), absolute(2), OF_CLASS),
            choice(
                            THERMOSTAT_BYPASS,
                            c -> hasNoThermostat(c) ? BypassState.OPEN : BypassState.CLOSES_WITH_LIFT,
                            AS_BUILT)
                    .why(c -> hasNoThermostat(c) ? AssumptionText.NOT_STATED_AS_CLOSED : AS_BUILT),
            choice(PUMP_DRIVE, c -> PumpDrive.ENGINE, AS_BUILT),
            number(
                    PUMP_FLOW,
                    c -> byClass(OLD_PUMP, 1.6, 1.4, 1.3).from(c) / 60e3 * c.value(ENGINE_POWER) / 1000,
                    relative(0.20),
                    AssumptionText.PUMP_FLOW_PER_POWER),
            number(PUMP_HEAD, byClass(110e3, 130e3, 170e3, 170e3), relative(0.15), OF_CLASS),
            number(PUMP_RUN_ON, always(0), EXACT, AssumptionText.NO_RUN_ON_STATED)
                    .onlyIf(c -> c.is(PUMP_DRIVE, PumpDrive.ELECTRIC)),
            number(
                    HOSE_DIAMETER,
                    c -> CircuitSpec.usualHoseM(c.value(ENGINE_POWER)),
                    relative(0.08),
                    AssumptionText.FROM_THE_POWER),
            choice(GAUGE_SENSOR, c -> SensorPlacement.BLOCK, AS_BUILT),
            choice(FAN_SENSOR, c -> SensorPlacement.BLOCK, AS_BUILT),
            choice(OIL_COOLER, pick(OilCooling.NONE, OilCooling.COOLANT, OilCooling.BOTH, OilCooling.BOTH), OF_CLASS),
            number(OIL_COOLER_CONDUCTANCE, byClass(200, 200, 280, 380), relative(0.25), OF_CLASS),
            choice(
                            OIL_COOLER_PLACE,
                            pick(
                                    OilCoolerPlace.BEFORE_CORE,
                                    OilCoolerPlace.BEFORE_CORE,
                                    OilCoolerPlace.ELSEWHERE,
                                    OilCoolerPlace.BEFORE_CORE),
                            OF_CLASS)
                    .onlyIf(ClassDefaults::hasOilAirCooler),
            choice(OIL_THERMOSTAT, c -> OilThermostatFitting.FITTED, AssumptionText.COMMON_WITH_AIR_COOLER)
                    .onlyIf(ClassDefaults::hasOilAirCooler),
            number(OIL_THERMOSTAT_OPENING, always(OilThermostat.USUAL_OPENING_K), absolute(2), AssumptionText.COMMON)
                    .onlyIf(ClassDefaults::hasOilThermostat),
            number(
                            OIL_THERMOSTAT_OPEN,
                            c -> c.value(OIL_THERMOSTAT_OPENING) + OilThermostat.USUAL_WIDTH_K,
                            absolute(2),
                            AssumptionText.COMMON_WIDTH)
                    .onlyIf(ClassDefaults::hasOilThermostat),
            number(
                    AIR_INLET,
                    c -> byClass(0.45, 0.42, 0.54, 0.53).from(c) * face(c),
                    relative(0.10),
                    AssumptionText.FROM_THE_CORE_FACE),
            choice(AIR_DUCT, pick(Ducting.PARTLY, Ducting.PARTLY, Ducting.SEALED, Ducting.PARTLY), OF_CLASS),
            choice(AIR_EXIT, c -> AirExit.UNDER_CAR, AS_BUILT),
            number(
                    AIR_EXIT_AREA,
                    c -> (c.is(AIR_EXIT, AirExit.NO_WAY_OUT)
                                    ? 0.25
                                    : byClass(0.50, 0.50, 0.58, 0.56).from(c))
                            * face(c),
                    relative(0.20),
                    AssumptionText.FROM_THE_CORE_FACE),
            choice(CHARGE_COOLER, c -> isTurbocharged(c) ? YesNo.YES : YesNo.NO, AssumptionText.FROM_ENGINE_KIND),
            choice(CONDENSER, pick(YesNo.NO, YesNo.YES, YesNo.NO, YesNo.NO), OF_CLASS),
            choice(HOOD_MATERIAL, c -> HoodMaterial.STEEL, AS_BUILT),
            number(
                    HOOD_THICKNESS,
                    c -> c.is(HOOD_MATERIAL, HoodMaterial.STEEL) ? 8e-4 : 1.5e-3,
                    relative(0.2),
                    AssumptionText.TYPICAL_OF_THE_MATERIAL),
            number(ALTERNATOR, perKilowatt(55, 0, 70, 0.4, 90, 0, 90, 0), relative(0.10), OF_CLASS),
            number(BASE_LOAD, byClass(12, 35, 20, 20), relative(0.20), OF_CLASS),
            number(COOLANT_LIMIT, celsius(105, 112, 110, 110), EXACT, AssumptionText.CLASS_LIMIT),
            number(OIL_LIMIT, celsius(130, 130, 130, 130), EXACT, AssumptionText.CLASS_CAUTION_LIMIT)));

    private ClassDefaults() {}

    private static Map<BuildField, Default> table(List<Default> rows) {
        Map<BuildField, Default> table = new EnumMap<>(BuildField.class);
        List<Default> all = new ArrayList<>(rows);
        all.addAll(ControlDefaults.ROWS);
        for (Default row : all) {
            if (table.put(row.field(), row) != null) {
                throw new IllegalStateException("two defaults for " + row.field());
            }
        }
        return Collections.unmodifiableMap(table);
    }

    private static List<BuildField> order() {
        List<BuildField> order = new ArrayList<>(Arrays.asList(BuildField.values()));
        order.remove(ENGINE_POWER);
        order.add(0, ENGINE_POWER);
        order.remove(FUEL);
        order.add(0, FUEL);
        return List.copyOf(order);
    }

    /** @return what to assume for the field, or empty when a rating can do without it */
    static Optional<Assumption> assume(BuildField field, Known car) {
        Default row = TABLE.get(field);
        return row == null ? Optional.empty() : row.assume(car);
    }

    private static Default ofCore(BuildField field, CoreFigure figure) {
        return number(field, c -> c.coreClass().figures().get(figure).si(), EXACT, OF_CORE)
                .spread(c -> c.coreClass().figures().get(figure).spread());
    }

    /** @return one of four, by class of car */
    static Default.Amount byClass(double oldStreet, double modernStreet, double track, double drift) {
        return c -> switch (c.carClass()) {
            case OLD_STREET -> oldStreet;
            case MODERN_STREET -> modernStreet;
            case TRACK -> track;
            case DRIFT -> drift;
        };
    }

    private static <T> Function<Known, T> pick(T oldStreet, T modernStreet, T track, T drift) {
        return c -> switch (c.carClass()) {
            case OLD_STREET -> oldStreet;
            case MODERN_STREET -> modernStreet;
            case TRACK -> track;
            case DRIFT -> drift;
        };
    }

    /**
     * An offset and a slope in the rated power by class of car, each from memory of what catalogues of parts and handbooks list:
     * modern street cars have cores of 0.17 m2 at 55 kW to 0.36 at 280, 5 to 12 l of coolant and 1.1 to 2 t with driver. Faces spread by
     * 14 %, 10 % each way: two of 1936 at 93 kW had 14 and 26 % more than this gives old cars (papers of an English car maker).
     */
    private static Default.Amount perKilowatt(
            double old,
            double oldSlope,
            double modern,
            double modernSlope,
            double track,
            double trackSlope,
            double drift,
            double driftSlope) {
        Default.Amount offset = byClass(old, modern, track, drift);
        Default.Amount slope = byClass(oldSlope, modernSlope, trackSlope, driftSlope);
        return c -> offset.from(c) + slope.from(c) * c.value(ENGINE_POWER) / 1000;
    }

    static Default.Amount always(double value) {
        return c -> value;
    }

    /** @return temperatures in degrees Celsius, by class of car [K] */
    static Default.Amount celsius(double oldStreet, double modernStreet, double track, double drift) {
        Default.Amount t = byClass(oldStreet, modernStreet, track, drift);
        return c -> kelvin(t.from(c));
    }

    /** @return speeds in rev/min, by class of car [rev/s] */
    private static Default.Amount perMinute(double oldStreet, double modernStreet, double track, double drift) {
        Default.Amount n = byClass(oldStreet, modernStreet, track, drift);
        return c -> n.from(c) / 60;
    }

    private static Enum<?> engineClass(Known c) {
        if (c.is(FUEL, Fuel.DIESEL)) {
            return EngineClass.DIESEL_TURBO;
        }
        return c.carClass() == CarClass.OLD_STREET ? EngineClass.PETROL_OLD : EngineClass.PETROL_NATURAL;
    }

    private static boolean isTurbocharged(Known c) {
        return c.is(ENGINE_CLASS, EngineClass.PETROL_TURBO) || c.is(ENGINE_CLASS, EngineClass.DIESEL_TURBO);
    }

    private static boolean hasNoThermostat(Known c) {
        return c.is(THERMOSTAT, ThermostatFitting.REMOVED);
    }

    private static boolean hasOilAirCooler(Known c) {
        return c.is(OIL_COOLER, OilCooling.AIR) || c.is(OIL_COOLER, OilCooling.BOTH);
    }

    private static boolean hasOilThermostat(Known c) {
        return hasOilAirCooler(c) && c.is(OIL_THERMOSTAT, OilThermostatFitting.FITTED);
    }

    private static double wattPerCubicMetre(Known c) {
        double perLitre = byClass(35e3, 60e3, 95e3, 75e3).from(c);
        return 1000 * (c.is(ENGINE_CLASS, EngineClass.PETROL_TURBO) ? Math.max(perLitre, 110e3) : perLitre);
    }

    private static double cylinders(Known c) {
        double litres = 1000 * c.value(ENGINE_DISPLACEMENT);
        return litres < 1.3 ? 3 : litres < 2.6 ? 4 : litres < 4.2 ? 6 : 8;
    }

    private static double faceArea(Known c) {
        return perKilowatt(0.13, 1.2e-3, 0.13, 0.85e-3, 0.18, 0.4e-3, 0.20, 0.3e-3)
                .from(c);
    }

    private static double coreWidth(Known c) {
        return c.has(CORE_HEIGHT)
                ? faceArea(c) / c.value(CORE_HEIGHT)
                : Math.sqrt(byClass(1.25, 1.6, 1.5, 1.5).from(c) * faceArea(c));
    }

    private static double face(Known c) {
        return c.value(CORE_WIDTH) * c.value(CORE_HEIGHT);
    }

    private static double usualFanDiameter(Known c) {
        return byClass(0.43, 0.40, 0.30, 0.35).from(c);
    }

    /** A maker's fan fills the height of the core, or two stand beside each other; one of the trade has its own size. */
    private static double fanDiameter(Known c) {
        boolean maker = c.carClass() == CarClass.OLD_STREET || c.carClass() == CarClass.MODERN_STREET;
        double share = c.value(FAN_COUNT) > 1.5 ? 0.82 : 0.95;
        return maker ? share * c.value(CORE_HEIGHT) : usualFanDiameter(c);
    }

    private static double bySizeOfFan(Known c) {
        return FastMath.pow(c.value(FAN_DIAMETER) / usualFanDiameter(c), 2);
    }

    /** Whether flow and pressure of an electric fan can be had from its current. */
    private static boolean fanCurrentIsKnown(Known c) {
        return c.has(FAN_CURRENT) && c.is(FAN_DRIVE, FanDrive.ELECTRIC);
    }

    private static double fanElectricW(Known c) {
        return Fan.REFERENCE_V * c.value(FAN_CURRENT);
    }

    private static double fanFlow(Known c) {
        double d = c.value(FAN_DIAMETER);
        return fanCurrentIsKnown(c)
                ? FanFit.freeFlowM3PerS(fanElectricW(c), FanSpec.annulusM2(d, FanSpec.USUAL_HUB_SHARE * d))
                : byClass(1.3, 0.80, 0.60, 0.85).from(c) * bySizeOfFan(c);
    }

    private static double shutOff(Known c) {
        return fanCurrentIsKnown(c)
                ? FanFit.shutOffPa(c.value(FAN_FLOW), fanElectricW(c), FanSpec.USUAL_SHAPE)
                : byClass(250, 230, 220, 260).from(c);
    }
}
