package headertank.calc.carspec;

import static headertank.calc.quantity.Physics.kelvin;

import headertank.calc.air.Fan;
import headertank.calc.air.FanFit;
import headertank.calc.air.FanSpec;
import headertank.calc.oil.OilThermostat;
import headertank.calc.quantity.InputException;
import headertank.calc.quantity.InputProblem;
import headertank.calc.quantity.Spread;
import headertank.calc.quantity.Stated;
import headertank.calc.radiator.CoreClass;
import headertank.calc.radiator.CoreFigure;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hipparchus.util.FastMath;

/**
 * What stands in for a value that nobody stated: the typical value of the class of car, scaled with what is known.
 *
 * <p>All figures are guesses for the class ({@code common practice, no source}) with the spread shown; the spreads are
 * wide on purpose. A gap in the answer is therefore never free: it widens the uncertainty of the rating.
 */
final class ClassDefaults {

    /** Order in which gaps are filled: a default may rest on the fields before it. */
    static final List<BuildField> ORDER = order();

    static final Spread EXACT = Spread.relative(0);

    private final CarClass carClass;
    private final Map<String, CoreClass> coreClasses;
    private final double[] values;
    private final String[] tokens;

    private final ControlDefaults control;

    /**
     * @param values numbers by ordinal, NaN where unknown; filled by the caller as defaults are taken
     * @param tokens options by ordinal, empty where unknown; filled by the caller likewise
     */
    ClassDefaults(CarClass carClass, Map<String, CoreClass> coreClasses, double[] values, String[] tokens) {
        this.carClass = carClass;
        this.coreClasses = coreClasses;
        this.values = values;
        this.tokens = tokens;
        this.control = new ControlDefaults(kelvin(byClass(92, 100, 90, 90)), values, tokens);
    }

    private static List<BuildField> order() {
        List<BuildField> order = new ArrayList<>(Arrays.asList(BuildField.values()));
        order.remove(BuildField.ENGINE_POWER);
        order.add(0, BuildField.ENGINE_POWER);
        order.remove(BuildField.FUEL);
        order.add(0, BuildField.FUEL);
        return List.copyOf(order);
    }

    /** @return the class of core that was stated, or the car class's typical one */
    CoreClass coreClass() {
        String id = token(BuildField.CORE_CLASS);
        CoreClass found = coreClasses.get(id);
        if (found == null) {
            throw new InputException(List.of(new InputProblem(
                    BuildField.CORE_CLASS.key(),
                    id,
                    coreClasses.keySet().stream().sorted().toList().toString(),
                    InputProblem.Code.NOT_UNDERSTOOD)));
        }
        return found;
    }

    /** @return what to assume for the field, or empty when a rating can do without it */
    Optional<Assumption> assume(BuildField f) {
        return switch (f) {
            case FUEL ->
                choice(f, token(BuildField.ENGINE_CLASS).startsWith("DIESEL") ? "DIESEL" : "PETROL_E10", "pump fuel");
            case ENGINE_POWER ->
                number(f, byClass(80e3, 130e3, 220e3, 330e3), Spread.relative(0.25), "typical of the class");
            case ENGINE_CLASS ->
                choice(
                        f,
                        token(BuildField.FUEL).equals("DIESEL")
                                ? "DIESEL_TURBO"
                                : carClass == CarClass.OLD_STREET ? "PETROL_OLD" : "PETROL_NATURAL",
                        "most common in the class");
            case ENGINE_DISPLACEMENT ->
                number(
                        f,
                        value(BuildField.ENGINE_POWER) / wattPerCubicMetre(),
                        Spread.relative(0.15),
                        "from the power, at the class's output per litre");
            case ENGINE_CYLINDERS -> number(f, cylinders(), EXACT, "from the displacement");
            case ENGINE_SPEED ->
                number(f, byClass(5000, 6000, 7000, 6800) / 60, Spread.relative(0.08), "typical of the class");
            case ENGINE_IDLE ->
                number(f, byClass(800, 800, 950, 1000) / 60, Spread.relative(0.08), "typical of the class");
            case CAR_MASS -> number(f, byClass(1400, 1550, 1250, 1350), Spread.relative(0.12), "typical of the class");
            case AMBIENT ->
                number(
                        f,
                        kelvin(byClass(38, 38, 32, 32)),
                        Spread.absolute(3),
                        "hot day of a temperate summer; ask where the car is used");
            case LOWEST_AMBIENT ->
                number(
                        f,
                        kelvin(byClass(-15, -15, -5, -5)),
                        Spread.absolute(5),
                        "cold night of a temperate winter; ask where the car stands");
            case ALTITUDE -> number(f, 100, EXACT, "lowland");
            case HUMIDITY -> number(f, 0.40, Spread.absolute(0.15), "summer day");
            case CORE_CLASS ->
                choice(
                        f,
                        switch (carClass) {
                            case OLD_STREET -> "copper-brass-louvred";
                            case MODERN_STREET -> "thin-original";
                            case TRACK -> "dense-aluminium";
                            case DRIFT -> "two-row-aluminium";
                        },
                        "typical of the class");
            case CORE_WIDTH ->
                number(
                        f,
                        f.allowed()
                                .clamp(
                                        has(BuildField.CORE_HEIGHT)
                                                ? faceArea() / value(BuildField.CORE_HEIGHT)
                                                : Math.sqrt(1.6 * faceArea())),
                        Spread.relative(0.10),
                        "from the power, at the class's core face per kilowatt");
            case CORE_HEIGHT ->
                number(
                        f,
                        faceArea() / value(BuildField.CORE_WIDTH),
                        Spread.relative(0.10),
                        "from the power, at the class's core face per kilowatt");
            case CORE_DEPTH ->
                number(f, byClass(0.040, 0.026, 0.042, 0.052), Spread.relative(0.15), "typical of the class");
            case CORE_TANKS ->
                choice(f, carClass == CarClass.OLD_STREET ? "TOP_AND_BOTTOM" : "SIDES", "typical of the class");
            case CORE_PASSES -> number(f, 1, EXACT, "most radiators have one");
            case CORE_TILT -> number(f, 0, EXACT, "upright");
            case CORE_MATERIAL -> choice(f, coreClass().material().name(), "of the class of core");
            case FIN_KIND -> choice(f, coreClass().finKind().name(), "of the class of core");
            case FIN_PITCH -> ofCore(f, CoreFigure.FIN_PITCH_M);
            case FIN_HEIGHT -> ofCore(f, CoreFigure.FIN_HEIGHT_M);
            case TUBE_ROWS -> number(f, coreClass().rows(), EXACT, "of the class of core");
            case TUBE_HEIGHT -> ofCore(f, CoreFigure.TUBE_HEIGHT_M);
            case CORE_BLOCKED ->
                number(
                        f,
                        byClass(0.08, 0.03, 0.05, 0.05),
                        Spread.absolute(0.03),
                        "insects, stones and bent fins of a used core");
            case CORE_FOULING ->
                number(f, byClass(1e-4, 3.5e-5, 3.5e-5, 3.5e-5), Spread.relative(0.40), "used coolant circuit");
            case FAN_DRIVE ->
                choice(f, carClass == CarClass.OLD_STREET ? "CLUTCH" : "ELECTRIC", "typical of the class");
            case FAN_COUNT ->
                number(f, is(BuildField.FAN_DRIVE, "CLUTCH") ? 1 : byClass(1, 1, 2, 2), EXACT, "typical of the class");
            case FAN_DIAMETER -> number(f, usualFanDiameter(), Spread.relative(0.08), "typical of the class");
            case FAN_MOUNTING -> choice(f, "PULLING", "most fans pull");
            case FAN_FLOW -> number(f, f.allowed().clamp(fanFlow()), Spread.relative(0.15), fanFlowWhy());
            case FAN_SHUT_OFF -> number(f, f.allowed().clamp(shutOff()), Spread.relative(0.20), shutOffWhy());
            case FAN_CURRENT -> number(f, f.allowed().clamp(fanCurrent()), Spread.relative(0.20), "from the diameter");
            case FAN_START_CURRENT ->
                number(
                        f,
                        1.2 * value(BuildField.FAN_CURRENT),
                        Spread.relative(0.10),
                        "1.2 times the running current (common practice, no source)");
            case FAN_COVER -> number(f, byClass(0.95, 1.0, 1.0, 0.85), Spread.absolute(0.05), "typical of the class");
            case FAN_FLAPS -> choice(f, "NO", "most shrouds have none");
            case FAN_RATIO -> number(f, 1.0, Spread.relative(0.12), "pulley ratio times the slip of an engaged clutch");
            case CONTROL_KIND,
                    CONTROL_SET,
                    CONTROL_BAND,
                    CONTROL_MIN_DUTY,
                    CONTROL_LOW_SET,
                    CONTROL_LOW_DUTY,
                    CONTROL_SOFT_START,
                    CONTROL_ROW_1_K,
                    CONTROL_ROW_1_DUTY,
                    CONTROL_ROW_2_K,
                    CONTROL_ROW_2_DUTY,
                    CONTROL_ROW_3_K,
                    CONTROL_ROW_3_DUTY,
                    CONTROL_ROW_4_K,
                    CONTROL_ROW_4_DUTY,
                    CONTROL_ROW_5_K,
                    CONTROL_ROW_5_DUTY -> control.assume(f);
            case COOLANT_BASE -> choice(f, "ETHYLENE_GLYCOL", "most common");
            case COOLANT_GLYCOL ->
                is(BuildField.COOLANT_BASE, "WATER")
                        ? number(f, 0, EXACT, "plain water")
                        : number(
                                f,
                                byClass(0.50, 0.50, 0.30, 0.30),
                                Spread.absolute(carClassIsRace() ? 0.10 : 0.07),
                                "typical of the class");
            case COOLANT_VOLUME ->
                number(f, byClass(0.012, 0.007, 0.008, 0.009), Spread.relative(0.15), "typical of the class");
            case CAP_PRESSURE ->
                number(f, byClass(70e3, 110e3, 130e3, 130e3), Spread.relative(0.12), "typical of the class");
            case THERMOSTAT -> choice(f, "FITTED", "as built");
            case THERMOSTAT_OPENING ->
                number(f, kelvin(byClass(82, 88, 78, 78)), Spread.absolute(2), "typical of the class");
            case THERMOSTAT_BYPASS ->
                choice(
                        f,
                        is(BuildField.THERMOSTAT, "REMOVED") ? "OPEN" : "CLOSES_WITH_LIFT",
                        is(BuildField.THERMOSTAT, "REMOVED") ? "nobody said that it was closed" : "as built");
            case PUMP_DRIVE -> choice(f, "ENGINE", "as built");
            case PUMP_FLOW ->
                number(
                        f,
                        byClass(2.0, 1.6, 1.4, 1.3) / 60e3 * value(BuildField.ENGINE_POWER) / 1000,
                        Spread.relative(0.20),
                        "from the power, at the class's pump flow per kilowatt");
            case PUMP_HEAD ->
                number(f, byClass(110e3, 130e3, 170e3, 170e3), Spread.relative(0.15), "typical of the class");
            case PUMP_RUN_ON ->
                is(BuildField.PUMP_DRIVE, "ELECTRIC")
                        ? number(f, 0, EXACT, "nobody said that it runs on")
                        : Optional.empty();
            case HOSE_DIAMETER ->
                number(
                        f,
                        value(BuildField.ENGINE_POWER) > 2e5 ? 0.038 : 0.034,
                        Spread.relative(0.08),
                        "from the power");
            case GAUGE_SENSOR -> choice(f, "BLOCK", "as built");
            case FAN_SENSOR -> choice(f, "BLOCK", "as built");
            case OIL_COOLER ->
                choice(
                        f,
                        switch (carClass) {
                            case OLD_STREET -> "NONE";
                            case MODERN_STREET -> "COOLANT";
                            case TRACK, DRIFT -> "BOTH";
                        },
                        "typical of the class");
            case OIL_COOLER_CONDUCTANCE ->
                number(f, byClass(200, 200, 280, 380), Spread.relative(0.25), "typical of the class");
            case OIL_THERMOSTAT ->
                hasOilAirCooler() ? choice(f, "FITTED", "common with an air cooler") : Optional.empty();
            case OIL_THERMOSTAT_OPENING ->
                hasOilThermostat()
                        ? number(f, OilThermostat.USUAL_OPENING_K, Spread.absolute(2), "common")
                        : Optional.empty();
            case OIL_THERMOSTAT_OPEN ->
                hasOilThermostat()
                        ? number(
                                f,
                                value(BuildField.OIL_THERMOSTAT_OPENING) + OilThermostat.USUAL_WIDTH_K,
                                Spread.absolute(2),
                                "common width")
                        : Optional.empty();
            case AIR_INLET ->
                number(f, byClass(0.45, 0.42, 0.54, 0.53) * face(), Spread.relative(0.10), "from the core face");
            case AIR_DUCT ->
                choice(
                        f,
                        switch (carClass) {
                            case OLD_STREET, MODERN_STREET, DRIFT -> "PARTLY";
                            case TRACK -> "SEALED";
                        },
                        "typical of the class");
            case AIR_EXIT -> choice(f, "UNDER_CAR", "as built");
            case AIR_EXIT_AREA ->
                number(
                        f,
                        f.allowed()
                                .clamp((is(BuildField.AIR_EXIT, "NO_WAY_OUT") ? 0.25 : byClass(0.50, 0.50, 0.58, 0.56))
                                        * face()),
                        Spread.relative(0.20),
                        "from the core face");
            case CHARGE_COOLER ->
                choice(f, token(BuildField.ENGINE_CLASS).endsWith("TURBO") ? "YES" : "NO", "from the kind of engine");
            case CONDENSER -> choice(f, carClass == CarClass.MODERN_STREET ? "YES" : "NO", "typical of the class");
            case HOOD_MATERIAL -> choice(f, "STEEL", "as built");
            case HOOD_THICKNESS ->
                number(
                        f,
                        is(BuildField.HOOD_MATERIAL, "STEEL") ? 8e-4 : 1.5e-3,
                        Spread.relative(0.2),
                        "typical of the material");
            case ALTERNATOR -> number(f, byClass(55, 120, 90, 90), Spread.relative(0.10), "typical of the class");
            case BASE_LOAD -> number(f, byClass(12, 35, 20, 20), Spread.relative(0.20), "typical of the class");
            case COOLANT_LIMIT ->
                number(f, kelvin(byClass(105, 112, 110, 110)), EXACT, "limit of the class, engine out");
            case OIL_LIMIT -> number(f, kelvin(130), EXACT, "caution limit of the class");
            case FUEL_OF_DONOR, ENGINE_EFFICIENCY -> Optional.empty();
        };
    }

    private boolean hasOilAirCooler() {
        return is(BuildField.OIL_COOLER, "AIR") || is(BuildField.OIL_COOLER, "BOTH");
    }

    private boolean hasOilThermostat() {
        return hasOilAirCooler() && is(BuildField.OIL_THERMOSTAT, "FITTED");
    }

    private double wattPerCubicMetre() {
        double perLitre = byClass(35e3, 60e3, 95e3, 75e3);
        return 1000 * (token(BuildField.ENGINE_CLASS).equals("PETROL_TURBO") ? Math.max(perLitre, 110e3) : perLitre);
    }

    private double cylinders() {
        double litres = 1000 * value(BuildField.ENGINE_DISPLACEMENT);
        return litres < 1.3 ? 3 : litres < 2.6 ? 4 : litres < 4.2 ? 6 : 8;
    }

    private double faceArea() {
        return byClass(0.24, 0.17, 0.10, 0.075) * value(BuildField.ENGINE_POWER) / 1e5;
    }

    private double face() {
        return value(BuildField.CORE_WIDTH) * value(BuildField.CORE_HEIGHT);
    }

    private double usualFanDiameter() {
        return byClass(0.43, 0.40, 0.30, 0.35);
    }

    /** Whether flow and pressure of an electric fan can be had from its current. */
    private boolean fanCurrentIsKnown() {
        return has(BuildField.FAN_CURRENT) && is(BuildField.FAN_DRIVE, "ELECTRIC");
    }

    private double fanElectricW() {
        return Fan.REFERENCE_V * value(BuildField.FAN_CURRENT);
    }

    private double fanFlow() {
        double typical = byClass(1.3, 0.80, 0.60, 0.85);
        double d = value(BuildField.FAN_DIAMETER);
        if (fanCurrentIsKnown()) {
            return FanFit.freeFlowM3PerS(fanElectricW(), FanSpec.annulusM2(d, FanSpec.USUAL_HUB_SHARE * d));
        }
        return typical * FastMath.pow(d / usualFanDiameter(), 2);
    }

    private String fanFlowWhy() {
        return fanCurrentIsKnown()
                ? "from its current: 22 % of the electric power becomes the jet's kinetic power"
                : "from the diameter, typical of the class";
    }

    private double shutOff() {
        if (fanCurrentIsKnown()) {
            return FanFit.shutOffPa(value(BuildField.FAN_FLOW), fanElectricW(), FanSpec.USUAL_SHAPE);
        }
        return byClass(250, 230, 220, 260);
    }

    private String shutOffWhy() {
        return fanCurrentIsKnown() ? "from its current, at 30 % peak efficiency" : "typical of the class";
    }

    private double fanCurrent() {
        return byClass(20, 20, 13, 22) * FastMath.pow(value(BuildField.FAN_DIAMETER) / usualFanDiameter(), 2);
    }

    private boolean carClassIsRace() {
        return carClass == CarClass.TRACK || carClass == CarClass.DRIFT;
    }

    private double byClass(double oldStreet, double modernStreet, double track, double drift) {
        return switch (carClass) {
            case OLD_STREET -> oldStreet;
            case MODERN_STREET -> modernStreet;
            case TRACK -> track;
            case DRIFT -> drift;
        };
    }

    private double value(BuildField f) {
        return values[f.ordinal()];
    }

    private boolean has(BuildField f) {
        return !Double.isNaN(values[f.ordinal()]);
    }

    private String token(BuildField f) {
        return tokens[f.ordinal()];
    }

    private boolean is(BuildField f, String token) {
        return tokens[f.ordinal()].equals(token);
    }

    private Optional<Assumption> ofCore(BuildField f, CoreFigure figure) {
        Stated typical = coreClass().figures().get(figure);
        return number(f, typical.si(), typical.spread(), "of the class of core");
    }

    static Optional<Assumption> number(BuildField f, double value, Spread spread, String why) {
        return Optional.of(new Assumption(f, f.allowed().clamp(value), "", spread, why));
    }

    static Optional<Assumption> choice(BuildField f, String token, String why) {
        return Optional.of(new Assumption(f, Double.NaN, token, EXACT, why));
    }
}
