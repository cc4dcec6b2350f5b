package headertank.app.unit;

import static headertank.app.unit.Unit.of;
import static headertank.app.unit.Unit.withOffset;

import java.util.List;

/**
 * A kind of quantity with the units it may be written in. The first unit of the list is what a bare number means in a metric
 * shop, {@code us} the one in a US shop. Which kind belongs to a field is the field's business: the same {@code kPa} is a gauge
 * pressure on a cap and a difference across a core.
 *
 * <p>Exact by definition: inch 0.0254 m, pound 0.45359237 kg, standard gravity 9.80665 m/s², litre 0.001 m³, US gallon 231
 * cubic inches, bar 100 kPa, metric horsepower 75 kgf m/s, mechanical horsepower 550 ft lbf/s, degree Fahrenheit 5/9 K, standard
 * atmosphere 101325 Pa.
 */
public enum Dimension {
    /** On a thermometer [K]. */
    TEMPERATURE(
            "°C",
            "°F",
            withOffset("°C", 1.0, 273.15, 1, "c", "celsius"),
            withOffset("°F", 5.0 / 9.0, 459.67 * 5.0 / 9.0, 0, "f", "fahrenheit"),
            of("K", 1.0, 1, "kelvin")),
    /** Between two thermometers [K]: 9 °F of difference are 5 K. */
    TEMPERATURE_DIFFERENCE(
            "K", "°F", of("K", 1.0, 1, "kelvin", "c", "celsius"), of("°F", 5.0 / 9.0, 0, "f", "fahrenheit")),
    /** Above the surrounding air, as stamped on a cap [Pa]. */
    PRESSURE_GAUGE(
            "bar",
            "psi",
            of("bar", 1e5, 2, "barg", "bar(g)"),
            of("psi", Factor.PSI, 1, "psig", "lb", "lbs", "lb/in2"),
            of("kPa", 1e3, 0, "kpag"),
            of("mbar", 100.0, 0, "mbarg", "hpa"),
            of("Pa", 1.0, 0)),
    /** Above vacuum, as in a weather report or an inlet manifold [Pa]. */
    PRESSURE_ABSOLUTE(
            "kPa",
            "psi",
            of("kPa", 1e3, 1, "kpaa"),
            of("bar", 1e5, 3, "bara"),
            of("mbar", 100.0, 0),
            of("hPa", 100.0, 0),
            of("psi", Factor.PSI, 2, "psia"),
            of("Pa", 1.0, 0)),
    /** Across a fan, a core, a hose [Pa]. */
    PRESSURE_DIFFERENCE(
            "Pa",
            "inH2O",
            of("Pa", 1.0, 0),
            of("kPa", 1e3, 2),
            of("mbar", 100.0, 1),
            of("bar", 1e5, 3),
            of("psi", Factor.PSI, 2),
            of("inH2O", 25.4 * Factor.GRAVITY, 2, "inwg", "inwc", "\"h2o"),
            of("mmH2O", Factor.GRAVITY, 1, "mmws", "mmwg")),
    /** Of air [m³/s]. */
    AIR_FLOW(
            "m³/h",
            "cfm",
            of("m³/h", 1.0 / 3600.0, 0, "cbm/h", "m3/hr"),
            of("cfm", Factor.FOOT * Factor.FOOT * Factor.FOOT / 60.0, 0, "ft3/min"),
            of("m³/s", 1.0, 3, "cbm/s"),
            of("l/s", 1e-3, 0),
            of("m³/min", 1.0 / 60.0, 2)),
    /** Of coolant, oil, fuel [m³/s]. */
    LIQUID_FLOW(
            "l/min",
            "gpm",
            of("l/min", 1e-3 / 60.0, 1, "lpm", "ltr/min"),
            of("gpm", Factor.GALLON / 60.0, 1, "gal/min", "usgpm"),
            of("l/s", 1e-3, 2),
            of("l/h", 1e-3 / 3600.0, 0, "lph"),
            of("m³/h", 1.0 / 3600.0, 2),
            of("m³/s", 1.0, 5)),
    MASS_FLOW(
            "kg/s",
            "lb/min",
            of("kg/s", 1.0, 3),
            of("g/s", 1e-3, 0),
            of("kg/h", 1.0 / 3600.0, 0),
            of("lb/min", Factor.POUND / 60.0, 1)),
    POWER(
            "kW",
            "hp",
            of("kW", 1e3, 1),
            of("hp", 550.0 * Factor.FOOT * Factor.POUND * Factor.GRAVITY, 0, "bhp"),
            of("PS", 75.0 * Factor.GRAVITY, 0, "cv", "ch"),
            of("W", 1.0, 0)),
    LENGTH(
            "mm",
            "in",
            of("mm", 1e-3, 1),
            of("cm", 1e-2, 1),
            of("m", 1.0, 3),
            of("in", Factor.INCH, 2, "inch", "inches", "\"", "''", "″"),
            of("ft", Factor.FOOT, 2, "'", "′"),
            of("µm", 1e-6, 0)),
    /** Above the sea [m]. */
    ALTITUDE("m", "ft", of("m", 1.0, 0), of("ft", Factor.FOOT, 0, "feet"), of("km", 1e3, 2)),
    AREA(
            "cm²",
            "in²",
            of("cm²", 1e-4, 0, "sqcm"),
            of("mm²", 1e-6, 0),
            of("m²", 1.0, 3, "sqm"),
            of("in²", Factor.INCH * Factor.INCH, 1, "sqin")),
    /** Of an engine or a filling [m³]. */
    VOLUME(
            "L",
            "L",
            of("L", 1e-3, 2, "ltr", "litre", "liter", "dm3"),
            of("cc", 1e-6, 0, "ccm", "cm3", "ml"),
            of("gal", Factor.GALLON, 2, "usgal"),
            of("qt", Factor.GALLON / 4.0, 2),
            of("in³", Factor.INCH * Factor.INCH * Factor.INCH, 0, "cuin", "ci", "cid"),
            of("m³", 1.0, 5)),
    MASS("kg", "lb", of("kg", 1.0, 1), of("g", 1e-3, 0), of("lb", Factor.POUND, 1, "lbs")),
    CURRENT("A", "A", of("A", 1.0, 1, "amp", "amps"), of("mA", 1e-3, 0)),
    /** Electric, of a battery [C]. */
    CHARGE("Ah", "Ah", of("Ah", 3600.0, 2), of("C", 1.0, 0, "as")),
    VOLTAGE("V", "V", of("V", 1.0, 1, "volt", "volts"), of("mV", 1e-3, 0)),
    /** Of a shaft [rad/s]. */
    ROTATION(
            "rpm",
            "rpm",
            of("rpm", Math.PI / 30.0, 0, "1/min", "u/min", "min-1", "r/min"),
            of("rad/s", 1.0, 1),
            of("1/s", 2.0 * Math.PI, 1, "hz")),
    /** A share of one [-]. */
    FRACTION("%", "%", of("%", 0.01, 0, "percent", "pct"), of("of 1", 1.0, 3, "von1")),
    ANGLE("°", "°", of("°", Math.PI / 180.0, 0, "degree", "degrees"), of("rad", 1.0, 3)),
    SPEED("km/h", "mph", of("km/h", 1.0 / 3.6, 0, "kmh", "kph"), of("mph", 0.44704, 0, "mi/h"), of("m/s", 1.0, 1)),
    DURATION(
            "s",
            "s",
            of("s", 1.0, 0, "sec", "seconds"),
            of("ms", 1e-3, 0),
            of("min", 60.0, 1),
            of("h", 3600.0, 2, "hr")),
    /** How close fins stand [1/m]. */
    FINS_PER_LENGTH(
            "fins/dm",
            "fpi",
            of("fins/dm", 10.0, 0, "1/dm"),
            of("fpi", 1.0 / Factor.INCH, 1, "fins/in", "1/in"),
            of("fins/m", 1.0, 0, "1/m")),
    /** How many there are [-]. */
    COUNT("", "", of("", 1.0, 0, "x", "pcs")),
    /** One quantity over another of its kind, where a per cent sign would confuse [-]. */
    RATIO("", "", of("", 1.0, 2, ":1", "to1")),
    /** Heat flow for each degree [W/K]. */
    CONDUCTANCE("W/K", "W/K", of("W/K", 1.0, 0, "w/c"), of("kW/K", 1e3, 2, "kw/c")),
    /** Of deposits on a wall [m²K/W]. */
    FOULING("m²K/kW", "m²K/kW", of("m²K/kW", 1e-3, 3), of("m²K/W", 1.0, 6));

    private final Unit metric;
    private final Unit us;
    private final List<Unit> units;

    Dimension(String metric, String us, Unit... units) {
        this.units = List.of(units);
        this.metric = bySymbol(metric);
        this.us = bySymbol(us);
    }

    private Unit bySymbol(String symbol) {
        return units.stream()
                .filter(u -> u.symbol().equals(symbol))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(symbol));
    }

    Unit unit(UnitSystem system) {
        return system == UnitSystem.US ? us : metric;
    }

    List<Unit> units() {
        return units;
    }

    /** Symbol of the unit that a bare number is taken in, for labels beside a field. */
    public String symbol(UnitSystem system) {
        return unit(system).symbol();
    }

    /** Factors by definition. In a class of their own because an enum's constants come before its static fields. */
    private static final class Factor {
        static final double INCH = 0.0254;
        static final double FOOT = 0.3048;
        static final double POUND = 0.45359237;
        static final double GRAVITY = 9.80665;
        static final double PSI = POUND * GRAVITY / (INCH * INCH);
        static final double GALLON = 231.0 * INCH * INCH * INCH;
    }
}
