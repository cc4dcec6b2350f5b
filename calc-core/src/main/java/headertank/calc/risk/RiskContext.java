package headertank.calc.risk;

import headertank.calc.carspec.Build;
import headertank.calc.carspec.Resolved;
import headertank.calc.duty.Duty;
import headertank.calc.duty.OperatingPoint;
import headertank.calc.quantity.Message;
import headertank.calc.quantity.SiFigure;
import headertank.calc.result.PointRating;
import headertank.calc.verdict.DutyVerdict;
import java.util.ArrayList;
import java.util.List;

/** What a rule may look at and compute with. */
public interface RiskContext {

    /** @return what is known of the car */
    Build build();

    /** @return every value it was rated with */
    Resolved resolved();

    /** @return its verdicts, without flags */
    List<DutyVerdict> duties();

    /**
     * Rates another state of this car without uncertainty, e.g. with the thermostat back in.
     *
     * @param other the altered car
     * @param duty one of the duties
     * @return coolant margin that decides: of the run, of a steady state or the smaller, as the duty is judged [K];
     *     without a steady state the margin at the hottest temperature tried, which is only a bound
     */
    double marginK(Resolved other, Duty duty);

    /** @return the altered car at one operating point, steady, without uncertainty */
    PointRating at(Resolved other, OperatingPoint point);

    /** @return this car with another class of core of the same size; every core figure that was stated is dropped */
    Resolved withCoreClass(String coreClassId);

    /** @return margin of {@code other} minus the margin now, for each duty; positive: the other state is better [K] */
    default List<Flag.Consequence> gainedBy(Message what, Resolved other) {
        List<Flag.Consequence> gains = new ArrayList<>();
        for (DutyVerdict d : duties()) {
            double gain = marginK(other, d.duty()) - marginK(resolved(), d.duty());
            gains.add(new Flag.Consequence(what, d.duty().id(), SiFigure.difference(gain)));
        }
        return gains;
    }
}
