package headertank.app.unit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What the numbers of a logged column mean: SI value = number × factor + offset. Knows the units of {@link Dimension} and those
 * that only devices write: steps of eight bits, degrees a second, inches of mercury, microseconds.
 *
 * @param symbol how the unit is shown
 */
public record Scaling(String symbol, double factor, double offset) {

    /** 3386.389 Pa in an inch of mercury at 0 °C: NIST SP 811, from memory. */
    private static final double INCH_OF_MERCURY_PA = 3386.389;

    private static final Map<Dimension, List<Scaling>> OF_DEVICES = Map.of(
            Dimension.FRACTION, List.of(new Scaling("of 255", 1.0 / 255, 0)),
            Dimension.DURATION, List.of(new Scaling("µs", 1e-6, 0)),
            Dimension.ROTATION, List.of(new Scaling("°/s", Math.PI / 180, 0)),
            Dimension.PRESSURE_ABSOLUTE, List.of(new Scaling("inHg", INCH_OF_MERCURY_PA, 0)));

    /** Spellings of devices, in the plain form of {@link UnitText}, to those of {@link Dimension}. */
    private static final Map<String, String> SPELLINGS = Map.ofEntries(
            Map.entry("degreesc", "c"),
            Map.entry("degreec", "c"),
            Map.entry("gradc", "c"),
            Map.entry("gradcelsius", "c"),
            Map.entry("degreesf", "f"),
            Map.entry("degreef", "f"),
            Map.entry("kmph", "km/h"),
            Map.entry("km/hr", "km/h"),
            Map.entry("kmperh", "km/h"),
            Map.entry("milesperhour", "mph"),
            Map.entry("mperh", "m/h"),
            Map.entry("mpers", "m/s"),
            Map.entry("1permin", "rpm"),
            Map.entry("permin", "rpm"),
            Map.entry("/min", "rpm"),
            Map.entry("upm", "rpm"),
            Map.entry("rev/min", "rpm"),
            Map.entry("revs", "rpm"),
            Map.entry("radpers", "rad/s"),
            Map.entry("deg/s", "°/s"),
            Map.entry("degpers", "°/s"),
            Map.entry("dps", "°/s"),
            Map.entry("prozent", "%"),
            Map.entry("perc", "%"),
            Map.entry("bit", "of255"),
            Map.entry("8bit", "of255"),
            Map.entry("0-255", "of255"),
            Map.entry("0..255", "of255"),
            Map.entry("0-1", "of1"),
            Map.entry("0..1", "of1"),
            Map.entry("0-100", "%"),
            Map.entry("second", "s"),
            Map.entry("secs", "s"),
            Map.entry("sek", "s"),
            Map.entry("sekunden", "s"),
            Map.entry("msec", "ms"),
            Map.entry("millis", "ms"),
            Map.entry("millisec", "ms"),
            Map.entry("milliseconds", "ms"),
            Map.entry("millisekunden", "ms"),
            Map.entry("usec", "us"),
            Map.entry("minutes", "min"),
            Map.entry("minuten", "min"),
            Map.entry("gpers", "g/s"),
            Map.entry("gm/s", "g/s"),
            Map.entry("grams/sec", "g/s"),
            Map.entry("g/sec", "g/s"),
            Map.entry("kgperh", "kg/h"),
            Map.entry("lperh", "l/h"),
            Map.entry("vdc", "v"),
            Map.entry("ampere", "a"));

    private static final Set<String> NAMES = names();

    private static Set<String> names() {
        Set<String> names = new HashSet<>();
        for (Dimension d : Dimension.values()) {
            d.units().forEach(u -> names.addAll(u.spellings()));
        }
        OF_DEVICES.values().forEach(all -> all.forEach(s -> names.add(plain(s.symbol()))));
        names.remove("");
        return Set.copyOf(names);
    }

    /** SI value of a number in this unit. */
    public double toSi(double number) {
        return number * factor + offset;
    }

    /** Number in this unit of an SI value. */
    public double fromSi(double si) {
        return (si - offset) / factor;
    }

    /** All that numbers of a kind may be written in, the usual one first. */
    public static List<Scaling> of(Dimension dimension) {
        List<Scaling> all = new ArrayList<>();
        for (Unit u : dimension.units()) {
            all.add(new Scaling(u.symbol(), u.factor(), u.offset()));
        }
        all.addAll(OF_DEVICES.getOrDefault(dimension, List.of()));
        return all;
    }

    /** The unit that was written, however it is spelt; empty when the dimension has none of that name. */
    public static Optional<Scaling> find(String written, Dimension dimension) {
        String plain = plain(written);
        for (Unit u : dimension.units()) {
            if (u.spellings().contains(plain) && !plain.isEmpty()) {
                return Optional.of(new Scaling(u.symbol(), u.factor(), u.offset()));
            }
        }
        return OF_DEVICES.getOrDefault(dimension, List.of()).stream()
                .filter(s -> !plain.isEmpty() && plain(s.symbol()).equals(plain))
                .findFirst();
    }

    /** Whether a text is the name of any unit. */
    public static boolean isUnit(String written) {
        return NAMES.contains(plain(written));
    }

    private static String plain(String written) {
        String ascii = written.replaceAll("[^\\p{ASCII}°µμ²³·]", "");
        String plain = UnitText.plain(ascii).replace("_", "").toLowerCase(Locale.ROOT);
        return SPELLINGS.getOrDefault(plain, plain);
    }
}
