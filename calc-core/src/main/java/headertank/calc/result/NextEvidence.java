package headertank.calc.result;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Something that a shop could do to know a car better, and how much it is expected to narrow the coolant margin.
 *
 * @param deed what to do
 * @param narrowsK by duty: 5 to 95 % of the margin now less what is expected to be left of it then, at least 0 [K]
 */
public record NextEvidence(Deed deed, Map<String, Double> narrowsK) {

    /** What can be done, how long it takes with getting the tools out and away, and what for tools (modelling choices). */
    public enum Deed {
        /** Ten minutes of the duty with a logger, standing before and after. */
        LOGGED_DRIVE(40, Tool.LOGGER),
        /** A cold start left idling, its times and readings as on the check list. */
        COLD_START(45, Tool.STOPWATCH, Tool.THERMOMETER),
        /** Current of the fans. */
        CLAMP_METER(10, Tool.CLAMP_METER),
        /** Flow of the coolant pump. */
        BUCKET_AND_STOPWATCH(60, Tool.BUCKET, Tool.STOPWATCH),
        /** Air through the core with the car standing and its fans on. */
        ANEMOMETER_GRID(30, Tool.ANEMOMETER),
        /** Share of antifreeze in the coolant. */
        REFRACTOMETER(5, Tool.REFRACTOMETER),
        /** What the cap holds. */
        PRESSURE_TESTER(15, Tool.PRESSURE_TESTER),
        /** Speed of an engine-driven fan. */
        BLADE_TACHOMETER(10, Tool.TACHOMETER),
        /** Mass of the car. */
        WEIGHING(30, Tool.SCALES);

        private final double minutes;
        private final List<Tool> tools;

        Deed(double minutes, Tool... tools) {
            this.minutes = minutes;
            this.tools = List.of(tools);
        }

        /** @return how long it takes [min] */
        public double minutes() {
            return minutes;
        }

        /** @return what it needs */
        public List<Tool> tools() {
            return tools;
        }
    }

    /** A tool. */
    public enum Tool {
        LOGGER,
        STOPWATCH,
        THERMOMETER,
        CLAMP_METER,
        BUCKET,
        ANEMOMETER,
        REFRACTOMETER,
        PRESSURE_TESTER,
        TACHOMETER,
        SCALES
    }

    public NextEvidence {
        narrowsK = Collections.unmodifiableMap(new LinkedHashMap<>(narrowsK));
    }

    /** @return narrowing of all duties together [K] */
    public double inAllK() {
        return narrowsK.values().stream().mapToDouble(k -> k).sum();
    }
}
