package headertank.calc.cause;

import headertank.calc.quantity.MessageCode;
import java.util.Arrays;
import java.util.List;

/**
 * An answer to a {@link Inquiry}, with how often it is given about a hot car whose cause has nothing to do with it: common practice, no
 * source. The answers to a question share one; needle, lamp and steam have no share of their own, the car's heat says how often.
 */
public enum Observation implements MessageCode {
    NEEDLE_NORMAL(Inquiry.NEEDLE),
    NEEDLE_HIGH(Inquiry.NEEDLE),
    NEEDLE_RED(Inquiry.NEEDLE),
    NEEDLE_CREPT(Inquiry.NEEDLE_MOVED, 0.60),
    NEEDLE_SHOT_UP(Inquiry.NEEDLE_MOVED, 0.28),
    NEEDLE_JUMPED(Inquiry.NEEDLE_MOVED, 0.12),
    LAMP_OFF(Inquiry.LAMP),
    LAMP_ON(Inquiry.LAMP),
    STEAM_NONE(Inquiry.STEAM),
    STEAM_SEEN(Inquiry.STEAM),
    LOSS_NONE(Inquiry.LOSS, 0.62),
    LOSS_SOME(Inquiry.LOSS, 0.28),
    LOSS_MUCH(Inquiry.LOSS, 0.10),
    FAN_LOUD(Inquiry.FAN_HEARD, 0.72),
    FAN_WEAK(Inquiry.FAN_HEARD, 0.12),
    FAN_SILENT(Inquiry.FAN_HEARD, 0.16),
    UPPER_HOSE_HOT(Inquiry.UPPER_HOSE, 0.90),
    UPPER_HOSE_COLD(Inquiry.UPPER_HOSE, 0.10),
    HEATER_HOT(Inquiry.HEATER, 0.90),
    HEATER_COLD(Inquiry.HEATER, 0.10),
    COOLED_AT_SPEED(Inquiry.COOLED_BY, 0.30),
    COOLED_AT_REST(Inquiry.COOLED_BY, 0.45),
    COOLED_BY_NOTHING(Inquiry.COOLED_BY, 0.25),
    ENGINE_SMOOTH(Inquiry.ENGINE_RAN, 0.90),
    ENGINE_ROUGH(Inquiry.ENGINE_RAN, 0.10),
    STARTED_AT_ONCE(Inquiry.STARTED, 0.55),
    STARTED_OVER_WEEKS(Inquiry.STARTED, 0.25),
    STARTED_AFTER_WORK(Inquiry.STARTED, 0.20),
    LOWER_HOSE_HOT(Inquiry.LOWER_HOSE, 0.45),
    LOWER_HOSE_WARM(Inquiry.LOWER_HOSE, 0.43),
    LOWER_HOSE_COLD(Inquiry.LOWER_HOSE, 0.12),
    LEVEL_FULL(Inquiry.LEVEL, 0.85),
    LEVEL_LOW(Inquiry.LEVEL, 0.15),
    FAN_RUN_RIGHT(Inquiry.FAN_RUN, 0.94),
    FAN_RUN_ONE_STANDS(Inquiry.FAN_RUN, 0.02),
    FAN_RUN_NONE(Inquiry.FAN_RUN, 0.01),
    FAN_RUN_CURRENT_OFF(Inquiry.FAN_RUN, 0.02),
    FAN_RUN_WRONG_WAY(Inquiry.FAN_RUN, 0.01),
    FAN_START_RIGHT(Inquiry.FAN_START, 0.93),
    FAN_START_LATE(Inquiry.FAN_START, 0.05),
    FAN_START_NEVER(Inquiry.FAN_START, 0.02),
    CAP_HOLDS(Inquiry.CAP, 0.90),
    CAP_LEAKS(Inquiry.CAP, 0.10),
    POT_RIGHT(Inquiry.POT, 0.94),
    POT_SHUT(Inquiry.POT, 0.01),
    POT_OPEN(Inquiry.POT, 0.02),
    POT_LATE(Inquiry.POT, 0.02),
    POT_FOOT_MISSES(Inquiry.POT, 0.01),
    COLD_PRESSURE_HOLDS(Inquiry.COLD_PRESSURE, 0.90),
    COLD_PRESSURE_FALLS(Inquiry.COLD_PRESSURE, 0.10),
    GAS_NONE(Inquiry.GAS, 0.98),
    GAS_FOUND(Inquiry.GAS, 0.02),
    CORE_FACE_EVEN(Inquiry.CORE_FACE, 0.90),
    CORE_FACE_PATCHY(Inquiry.CORE_FACE, 0.10),
    CORE_LOOK_CLEAR(Inquiry.CORE_LOOK, 0.90),
    CORE_LOOK_SHUT(Inquiry.CORE_LOOK, 0.10),
    BELT_HOLDS(Inquiry.BELT, 0.95),
    BELT_SLIPS(Inquiry.BELT, 0.05),
    TANK_FLOW_STRONG(Inquiry.TANK_FLOW, 0.84),
    TANK_FLOW_WEAK(Inquiry.TANK_FLOW, 0.10),
    TANK_FLOW_BUBBLES(Inquiry.TANK_FLOW, 0.06),
    FORCED_FAN_COOLS(Inquiry.FORCED_FAN, 0.70),
    FORCED_FAN_STAYS_HOT(Inquiry.FORCED_FAN, 0.30),
    SECOND_GAUGE_AGREES(Inquiry.SECOND_GAUGE, 0.93),
    SECOND_GAUGE_LESS(Inquiry.SECOND_GAUGE, 0.03),
    SECOND_GAUGE_SOONER(Inquiry.SECOND_GAUGE, 0.02),
    SECOND_GAUGE_ELSEWHERE(Inquiry.SECOND_GAUGE, 0.02),
    SEALS_SOUND(Inquiry.SEALS, 0.90),
    SEALS_GAPS(Inquiry.SEALS, 0.07),
    SEALS_EXHAUST_NEAR(Inquiry.SEALS, 0.03),
    DAY_AS_AGREED(Inquiry.DAY, 0.88),
    DAY_HOTTER(Inquiry.DAY, 0.05),
    DAY_HIGHER(Inquiry.DAY, 0.02),
    DAY_HARDER(Inquiry.DAY, 0.05),
    SPEC_AS_WRITTEN(Inquiry.SPEC, 0.92),
    SPEC_DIFFERS(Inquiry.SPEC, 0.08),
    HEAT_SOURCES_RIGHT(Inquiry.HEAT_SOURCES, 0.94),
    HEAT_SOURCES_MORE(Inquiry.HEAT_SOURCES, 0.06);

    private final Inquiry inquiry;
    private final double share;

    Observation(Inquiry inquiry) {
        this(inquiry, Double.NaN);
    }

    Observation(Inquiry inquiry, double share) {
        this.inquiry = inquiry;
        this.share = share;
    }

    /** @return the answers to a question, in their order */
    public static List<Observation> of(Inquiry inquiry) {
        return Arrays.stream(values()).filter(o -> o.inquiry == inquiry).toList();
    }

    public Inquiry inquiry() {
        return inquiry;
    }

    /** @return whether the car's heat says how often it is seen */
    public boolean followsHeat() {
        return Double.isNaN(share);
    }

    /**
     * @param signs what a cause changes
     * @return how often it is seen with that cause [-]; not for what follows the heat
     */
    public double share(List<Chance> signs) {
        double stated = 0;
        double untouched = 1;
        for (Chance c : signs) {
            if (c.what() == this) {
                return c.share();
            }
            if (c.what().inquiry == inquiry) {
                stated += c.share();
                untouched -= c.what().share;
            }
        }
        return share * (1 - stated) / untouched;
    }

    @Override
    public String code() {
        return MessageCode.of("seen", this);
    }

    @Override
    public int arguments() {
        return 0;
    }
}
