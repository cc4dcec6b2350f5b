package headertank.calc.result;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * What a technician should read off a car that idles in the workshop, and how far a reading may be from that before it says
 * something: 5 to 95 % of sampled cars, widened by what a reading in a workshop is good for.
 *
 * @param ambientK air in the workshop [K]
 * @param bands by figure; a figure that the car does not have, or does not reach within the hour, is absent
 * @param samples number of sampled cars
 */
public record IdleExpectation(double ambientK, Map<Figure, Band> bands, int samples) {

    /** What can be read. */
    public enum Figure {
        /** Time from 40 to 80 deg C on the gauge, for a start from less than 40 [s]. */
        FROM_40_TO_80_S,
        /** Time from the cold start until the thermostat opens [s]. */
        THERMOSTAT_OPENS_S,
        /** Time from the cold start until the electric fans start by themselves [s]. */
        FANS_START_S,
        /** How fast the gauge rises, hot, from its lowest after the fans stopped until they start again [K/s]. */
        HOT_RISE_K_PER_S,
        /** What the gauge shows at that moment [K]. */
        GAUGE_AT_FAN_START_K,
        /** Current of all electric fans at their start [A]. */
        FAN_START_A,
        /** Current of all electric fans once they turn steadily [A]. */
        FAN_RUNNING_A,
        /** Coolant into the radiator less coolant out of it, hot, with the fans turning [K]. */
        CORE_DROP_K,
        /** Voltage at the battery, hot, with the fans turning [V]. */
        VOLTAGE_V
    }

    /**
     * What is expected of one figure, in its SI unit.
     *
     * @param expected from the models as published
     * @param low smallest reading that is as expected
     * @param high largest reading that is as expected; infinite for a time that many sampled cars do not reach
     */
    public record Band(double expected, double low, double high) {
        public Band {
            low = Math.min(low, expected);
            high = Math.max(high, expected);
        }
    }

    public IdleExpectation {
        Map<Figure, Band> copy = new EnumMap<>(Figure.class);
        copy.putAll(bands);
        bands = Collections.unmodifiableMap(copy);
    }
}
