package headertank.calc.result;

import headertank.calc.fluid.Air;

/**
 * The hottest day on which a car is expected to hold a duty, judged as the duty is: where the peak of its run or the steady state
 * that counts meets the coolant's limit.
 *
 * @param ambientK air around the car, before what a point adds to it [K]; infinite when the car still holds at the hottest air that
 *     a rating takes, minus infinity when it does not hold at the coldest
 * @param decidingPointId the operating point that decides there
 * @param byRun whether the peak of the run meets the limit there rather than a steady state
 */
public record HottestDay(double ambientK, String decidingPointId, boolean byRun) {

    /** Hottest air that is tried [K]. */
    public static final double HOTTEST_K = Air.AMBIENT_K.max();

    /** Coldest air that is tried [K]. */
    public static final double COLDEST_K = Air.AMBIENT_K.min();
}
