package headertank.calc.cause;

import headertank.calc.quantity.MessageCode;
import java.util.Arrays;
import java.util.List;

/**
 * An answer to a {@link Question}, with how often it is given about a hot car whose cause has nothing to do with it: common practice, no
 * source. The answers to a question share one; needle, lamp and steam have no share of their own, the car's heat says how often.
 */
public enum Observation implements MessageCode {
    NEEDLE_NORMAL(Question.NEEDLE),
    NEEDLE_HIGH(Question.NEEDLE),
    NEEDLE_RED(Question.NEEDLE),
    NEEDLE_CREPT(Question.NEEDLE_MOVED, 0.60),
    NEEDLE_SHOT_UP(Question.NEEDLE_MOVED, 0.28),
    NEEDLE_JUMPED(Question.NEEDLE_MOVED, 0.12),
    LAMP_OFF(Question.LAMP),
    LAMP_ON(Question.LAMP),
    STEAM_NONE(Question.STEAM),
    STEAM_SEEN(Question.STEAM),
    LOSS_NONE(Question.LOSS, 0.62),
    LOSS_SOME(Question.LOSS, 0.28),
    LOSS_MUCH(Question.LOSS, 0.10),
    FAN_LOUD(Question.FAN_HEARD, 0.72),
    FAN_WEAK(Question.FAN_HEARD, 0.12),
    FAN_SILENT(Question.FAN_HEARD, 0.16),
    UPPER_HOSE_HOT(Question.UPPER_HOSE, 0.90),
    UPPER_HOSE_COLD(Question.UPPER_HOSE, 0.10),
    HEATER_HOT(Question.HEATER, 0.90),
    HEATER_COLD(Question.HEATER, 0.10),
    COOLED_AT_SPEED(Question.COOLED_BY, 0.30),
    COOLED_AT_REST(Question.COOLED_BY, 0.45),
    COOLED_BY_NOTHING(Question.COOLED_BY, 0.25),
    ENGINE_SMOOTH(Question.ENGINE_RAN, 0.90),
    ENGINE_ROUGH(Question.ENGINE_RAN, 0.10),
    STARTED_AT_ONCE(Question.STARTED, 0.55),
    STARTED_OVER_WEEKS(Question.STARTED, 0.25),
    STARTED_AFTER_WORK(Question.STARTED, 0.20),
    LOWER_HOSE_HOT(Question.LOWER_HOSE, 0.45),
    LOWER_HOSE_WARM(Question.LOWER_HOSE, 0.43),
    LOWER_HOSE_COLD(Question.LOWER_HOSE, 0.12),
    LEVEL_FULL(Question.LEVEL, 0.85),
    LEVEL_LOW(Question.LEVEL, 0.15),
    FAN_RUN_RIGHT(Question.FAN_RUN, 0.94),
    FAN_RUN_ONE_STANDS(Question.FAN_RUN, 0.02),
    FAN_RUN_NONE(Question.FAN_RUN, 0.01),
    FAN_RUN_CURRENT_OFF(Question.FAN_RUN, 0.02),
    FAN_RUN_WRONG_WAY(Question.FAN_RUN, 0.01),
    FAN_START_RIGHT(Question.FAN_START, 0.93),
    FAN_START_LATE(Question.FAN_START, 0.05),
    FAN_START_NEVER(Question.FAN_START, 0.02),
    CAP_HOLDS(Question.CAP, 0.90),
    CAP_LEAKS(Question.CAP, 0.10),
    POT_RIGHT(Question.POT, 0.94),
    POT_SHUT(Question.POT, 0.01),
    POT_OPEN(Question.POT, 0.02),
    POT_LATE(Question.POT, 0.02),
    POT_FOOT_MISSES(Question.POT, 0.01),
    COLD_PRESSURE_HOLDS(Question.COLD_PRESSURE, 0.90),
    COLD_PRESSURE_FALLS(Question.COLD_PRESSURE, 0.10),
    GAS_NONE(Question.GAS, 0.98),
    GAS_FOUND(Question.GAS, 0.02),
    CORE_FACE_EVEN(Question.CORE_FACE, 0.90),
    CORE_FACE_PATCHY(Question.CORE_FACE, 0.10),
    CORE_LOOK_CLEAR(Question.CORE_LOOK, 0.90),
    CORE_LOOK_SHUT(Question.CORE_LOOK, 0.10),
    BELT_HOLDS(Question.BELT, 0.95),
    BELT_SLIPS(Question.BELT, 0.05),
    TANK_FLOW_STRONG(Question.TANK_FLOW, 0.84),
    TANK_FLOW_WEAK(Question.TANK_FLOW, 0.10),
    TANK_FLOW_BUBBLES(Question.TANK_FLOW, 0.06),
    FORCED_FAN_COOLS(Question.FORCED_FAN, 0.70),
    FORCED_FAN_STAYS_HOT(Question.FORCED_FAN, 0.30),
    SECOND_GAUGE_AGREES(Question.SECOND_GAUGE, 0.93),
    SECOND_GAUGE_LESS(Question.SECOND_GAUGE, 0.03),
    SECOND_GAUGE_SOONER(Question.SECOND_GAUGE, 0.02),
    SECOND_GAUGE_ELSEWHERE(Question.SECOND_GAUGE, 0.02),
    SEALS_SOUND(Question.SEALS, 0.90),
    SEALS_GAPS(Question.SEALS, 0.07),
    SEALS_EXHAUST_NEAR(Question.SEALS, 0.03),
    DAY_AS_AGREED(Question.DAY, 0.88),
    DAY_HOTTER(Question.DAY, 0.05),
    DAY_HIGHER(Question.DAY, 0.02),
    DAY_HARDER(Question.DAY, 0.05),
    SPEC_AS_WRITTEN(Question.SPEC, 0.92),
    SPEC_DIFFERS(Question.SPEC, 0.08),
    HEAT_SOURCES_RIGHT(Question.HEAT_SOURCES, 0.94),
    HEAT_SOURCES_MORE(Question.HEAT_SOURCES, 0.06);

    private final Question question;
    private final double share;

    Observation(Question question) {
        this(question, Double.NaN);
    }

    Observation(Question question, double share) {
        this.question = question;
        this.share = share;
    }

    /** @return the answers to a question, in their order */
    public static List<Observation> of(Question question) {
        return Arrays.stream(values()).filter(o -> o.question == question).toList();
    }

    public Question question() {
        return question;
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
            if (c.what().question == question) {
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
