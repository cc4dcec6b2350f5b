package headertank.app.log.read;

import headertank.app.unit.Dimension;
import headertank.calc.quantity.Range;
import java.util.List;

/**
 * What a column of a log may tell of a car. The names are terms of SAE J1979 and J1930 (from memory) and everyday ones, English
 * and German; {@link ColumnNames} says how a heading is compared with them.
 */
public enum LogQuantity {
    /** Coolant where its sensor sits. */
    COOLANT(
            Dimension.TEMPERATURE,
            Range.of(223, 473),
            Range.of(240, 425),
            8,
            "engine coolant temperature|coolant temperature|coolant|coolant temp|ect|clt|water temperature|water temp|engine temp"
                    + "|engine temperature|t coolant|t water|temp coolant|temp water|twater|tcoolant|kuehlmittel|kuehlmitteltemperatur"
                    + "|kuehlmitteltemp|wassertemperatur|wassertemp|kuehlwasser|kuehlwassertemperatur|t kuehl|t km|motortemperatur|tmot",
            "pressure level flow fan target setpoint out outlet radiator oil druck stand soll 2 loss pump"),
    /** Turns of the crankshaft. */
    ENGINE_SPEED(
            Dimension.ROTATION,
            Range.of(0, 2200),
            Range.of(0, 1600),
            1500,
            "engine speed|engine rpm|rpm|engine revs|revs|engine|n engine|nengine|nmot|n mot|n|motordrehzahl|drehzahl|crank speed"
                    + "|crankshaft speed",
            "wheel fan turbo turbine input output shaft target limit pump vehicle road load torque time temp temperature oil"
                    + " coolant run luefter soll idle"),
    /** In the inlet manifold, above vacuum. */
    MANIFOLD_PRESSURE(
            Dimension.PRESSURE_ABSOLUTE,
            Range.of(0, 600_000),
            Range.of(8_000, 420_000),
            2e6,
            "intake manifold absolute pressure|intake manifold pressure|manifold absolute pressure|manifold pressure|map|manifold"
                    + "|inlet manifold pressure|inlet pressure|saugrohrdruck|ladedruck absolut|p manifold|pman|saugrohr",
            "temp temperature oil fuel coolant baro barometric target throttle sensor voltage"),
    /** In the inlet manifold, above the surrounding air. */
    BOOST(
            Dimension.PRESSURE_GAUGE,
            Range.of(-101_325, 500_000),
            Range.of(-101_000, 400_000),
            2e6,
            "boost|boost pressure|manifold gauge pressure|ladedruck|turbo pressure|charge pressure",
            "target duty solenoid temp temperature soll control"),
    /** Of the surrounding air. */
    BAROMETER(
            Dimension.PRESSURE_ABSOLUTE,
            Range.of(40_000, 120_000),
            Range.of(55_000, 110_000),
            5_000,
            "barometric pressure|absolute barometric pressure|barometer|baro|ambient pressure|atmospheric pressure|luftdruck"
                    + "|umgebungsdruck",
            "temp"),
    /** How far the throttle is open. */
    THROTTLE(
            Dimension.FRACTION,
            Range.of(-0.1, 1.1),
            Range.of(-0.05, 1.05),
            30,
            "throttle|throttle position|absolute throttle position|throttle pos|tps|tp|throttle angle|throttle valve|drosselklappe"
                    + "|drosselklappenstellung|dk|relative throttle position|throttle body",
            "target commanded voltage sensor motor actuator b c limit"),
    /** How far the driver presses. */
    PEDAL(
            Dimension.FRACTION,
            Range.of(-0.1, 1.1),
            Range.of(-0.05, 1.05),
            30,
            "accelerator pedal position|pedal|pedal position|accelerator|accelerator position|gaspedal|fahrpedal|pedalstellung|app"
                    + "|pedal d",
            "brake clutch bremse kupplung voltage e"),
    /** Torque over the most that the engine gives at that speed, as the controller reckons it. */
    LOAD(
            Dimension.FRACTION,
            Range.of(-0.1, 4),
            Range.of(-0.05, 3),
            30,
            "engine load|calculated engine load|calculated load|load|calculated load value|motorlast|last|relative load|load value"
                    + "|absolute load|berechnete last|engine torque percent",
            "cell temp axle limit fuel trim"),
    /** Brake power over rated power. */
    POWER(
            Dimension.FRACTION,
            Range.of(-0.1, 1.1),
            Range.of(-0.05, 1.05),
            30,
            "power|engine power|brake power|leistung|motorleistung|power share",
            "steering voltage loss window take"),
    /** Of the car over the ground. */
    ROAD_SPEED(
            Dimension.SPEED,
            Range.of(0, 130),
            Range.of(0, 100),
            40,
            "vehicle speed|road speed|speed|ground speed|car speed|gps speed|wheel speed|velocity|v|vss|geschwindigkeit"
                    + "|fahrgeschwindigkeit|fahrzeuggeschwindigkeit|tempo|v fzg|vfzg|speed over ground|kmh|mph|vehicle|speed gps",
            "engine fan pump limit accuracy target wind air vertical angular yaw luefter motor direction rpm"),
    /** Air on its way into the engine. */
    INTAKE_AIR(
            Dimension.TEMPERATURE,
            Range.of(223, 473),
            Range.of(240, 420),
            20,
            "intake air temperature|intake air temp|intake air|iat|inlet air temperature|charge air temperature|air temp|air temperature"
                    + "|mat|manifold air temperature|ansauglufttemperatur|ansaugluft|ladelufttemperatur|inlet air|act|intake temp"
                    + "|charge temp|intake temperature",
            "ambient outside pressure mass flow coolant outlet cabin"),
    /** Air around the car. */
    AMBIENT(
            Dimension.TEMPERATURE,
            Range.of(213, 338),
            Range.of(233, 328),
            2,
            "ambient air temperature|ambient temperature|ambient temp|ambient|outside temperature|outside temp|aussentemperatur"
                    + "|umgebungstemperatur|outside air temperature|aat|umgebung|t ambient|t amb",
            "pressure light druck"),
    /** Engine oil where its sensor sits. */
    OIL(
            Dimension.TEMPERATURE,
            Range.of(223, 523),
            Range.of(240, 460),
            8,
            "engine oil temperature|oil temperature|oil temp|eot|t oil|oel temperatur|oeltemperatur|oeltemp|oil t|motoroeltemperatur"
                    + "|temp oil|toil|oil",
            "pressure level druck stand transmission gearbox diff life getriebe"),
    /** How much of what the fan can do is asked of it; a switch is 0 or 1. */
    FAN(
            Dimension.FRACTION,
            Range.of(-0.1, 1.1),
            Range.of(-0.05, 1.05),
            1000,
            "fan|fan duty|radiator fan|cooling fan|fan 1|fan pwm|fan state|fan on|fan output|fan relay|fan duty cycle|luefter"
                    + "|luefterstufe|luefteransteuerung|kuehlerluefter|fan control|cooling fan duty",
            "speed rpm current temp target ac 2 drehzahl strom"),
    FAN_CURRENT(
            Dimension.CURRENT,
            Range.of(-5, 300),
            Range.of(-1, 200),
            1000,
            "fan current|fan amps|luefterstrom|radiator fan current|i fan|cooling fan current",
            "pump"),
    /** Of the electric system. */
    VOLTAGE(
            Dimension.VOLTAGE,
            Range.of(0, 60),
            Range.of(5, 50),
            50,
            "control module voltage|battery voltage|voltage|battery|vbat|v bat|u bat|ubat|system voltage|bordspannung|batteriespannung"
                    + "|batt|spannung|supply voltage|ecu voltage|vbatt",
            "sensor o2 lambda throttle map injector knock target bank b1s1"),
    /** Air that the engine takes in. */
    AIR_MASS_FLOW(
            Dimension.MASS_FLOW,
            Range.of(0, 2),
            Range.of(0, 1.2),
            20,
            "mass air flow|maf|mass air flow rate|air mass flow|air flow|airflow|luftmasse|luftmassenstrom|air mass|mass airflow",
            "voltage frequency temp fuel volume"),
    /** Air over what the fuel needs. */
    LAMBDA(
            Dimension.RATIO,
            Range.of(0, 20),
            Range.of(0.5, 16),
            200,
            "lambda|equivalence ratio lambda|air fuel equivalence ratio|lambda 1|lambda actual|luftverhaeltnis",
            "target trim voltage correction heater soll commanded"),
    /** Of the steering wheel. */
    STEERING(
            Dimension.ANGLE,
            Range.of(-20, 20),
            Range.of(-16, 16),
            60,
            "steering angle|steering wheel angle|steering|lenkwinkel|lenkradwinkel|steer angle|lenkung",
            "rate torque speed power"),
    /** Turning of the car about its upright axis. */
    YAW_RATE(
            Dimension.ROTATION,
            Range.of(-6, 6),
            Range.of(-4, 4),
            100,
            "yaw rate|yaw|gierrate|yaw velocity|gyro z",
            "acceleration angle");

    private final Dimension dimension;
    private final Range possible;
    private final Range usual;
    private final double fastestPerS;
    private final List<String> names;
    private final List<String> others;

    /**
     * @param possible readings that a sensor in order can give [SI]
     * @param usual readings of a car in use [SI]
     * @param fastestPerS quickest change that a healthy reading shows over a second [SI/s]; modelling choice, likewise the ranges
     * @param names parted by bars
     * @param others words that tell that a column is something else
     */
    LogQuantity(Dimension dimension, Range possible, Range usual, double fastestPerS, String names, String others) {
        this.dimension = dimension;
        this.possible = possible;
        this.usual = usual;
        this.fastestPerS = fastestPerS;
        this.names = List.of(names.split("\\|"));
        this.others = List.of(others.split(" "));
    }

    public Dimension dimension() {
        return dimension;
    }

    /** Readings outside of it are taken for a fault of the sensor and left out [SI]. */
    public Range possible() {
        return possible;
    }

    Range usual() {
        return usual;
    }

    double fastestPerS() {
        return fastestPerS;
    }

    List<String> names() {
        return names;
    }

    List<String> others() {
        return others;
    }
}
