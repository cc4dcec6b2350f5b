package headertank.calc.judged;

import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.Resolved;
import headertank.calc.duty.Duty;
import headertank.calc.quantity.OutOfRangeException;
import headertank.calc.rating.Margin;
import headertank.calc.rating.Plant;
import headertank.calc.rating.RisingRoot;
import headertank.calc.rating.SteadySolver;
import headertank.calc.result.HottestDay;
import headertank.calc.verdict.DutyOutcome;

/**
 * Looks for the {@link HottestDay} of a rated duty: the root of its margin over the ambient, from the margin that was rated.
 *
 * <p>The runs of the search are those of sampling, whose peaks lie within 20 mK of a whole run; what is left between the two on
 * the day that was rated, and what is known of the car beside its values, is carried along, so that the search starts at the very
 * margin of the rating and the day that it finds never contradicts that margin's sign. Five to seven runs, and a whole one at the
 * day that is found.
 */
public final class DayThatHolds {

    private static final double TOLERANCE_K = 0.02;

    private DayThatHolds() {}

    /**
     * @param car every value that the duty was rated with
     * @param rated the duty as it was rated
     * @return the hottest day on which it holds
     */
    public static HottestDay of(Resolved car, DutyOutcome rated) {
        Duty duty = rated.duty();
        double day = car.value(BuildField.AMBIENT);
        double onTheDay = marginK(car, duty);
        double beside = Double.isFinite(rated.coolantMarginK()) ? rated.coolantMarginK() - onTheDay : 0;
        double found = RisingRoot.find(
                ambient -> -(marginK(inAir(car, ambient), duty) + beside),
                HottestDay.COLDEST_K,
                HottestDay.HOTTEST_K,
                day,
                -(onTheDay + beside),
                1,
                TOLERANCE_K,
                TOLERANCE_K);
        DutyOutcome there = Double.isInfinite(found) ? rated : outcome(inAir(car, found), rated);
        return new HottestDay(found, there.decidingPointId(), there.decidedByRun());
    }

    /** A day outside what a model accepts is one on which the car does not hold. */
    private static double marginK(Resolved car, Duty duty) {
        try {
            return DutyRater.finiteMarginK(Plant.of(car), duty);
        } catch (OutOfRangeException outside) {
            return Margin.coolantK(car, SteadySolver.HOTTEST_K);
        }
    }

    private static DutyOutcome outcome(Resolved car, DutyOutcome rated) {
        try {
            return DutyRater.outcome(Plant.of(car), rated.duty());
        } catch (OutOfRangeException outside) {
            return rated;
        }
    }

    private static Resolved inAir(Resolved car, double ambientK) {
        return car.with(BuildField.AMBIENT, ambientK);
    }
}
