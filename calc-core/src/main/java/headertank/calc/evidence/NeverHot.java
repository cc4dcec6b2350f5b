package headertank.calc.evidence;

import headertank.calc.quantity.OutOfRangeException;

/**
 * The car was driven on the street and never ran hot. It says what the car is not, which no normal distribution says: the cars that
 * would have run hot weigh less among those that a rating samples.
 *
 * @param upToK hottest day of the time, 283 to 323 [K]
 * @param summers for how many summers, above 0 to 40
 */
public record NeverHot(double upToK, double summers) implements Evidence {

    public NeverHot {
        OutOfRangeException.require("neverHot.upToK", upToK, 283.15, 323.15);
        OutOfRangeException.require("neverHot.summers", summers, 0.1, 40);
    }
}
