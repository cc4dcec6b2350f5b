package headertank.calc.learning;

import headertank.calc.quantity.OutOfRangeException;
import java.util.Optional;

/** What one piece of evidence says of a car that this one might be. */
interface Likelihood {

    /** @return how many unknowns of its own it has, each standard normal: what the day or the sensor may be off */
    default int nuisances() {
        return 0;
    }

    /**
     * @param car a car
     * @param nuisance its own unknowns
     * @return what was seen less what the car would have shown, each over its standard deviation and independent but the first, of which
     *     {@link #leftover} says how they hang together; always as many, null where the car has no answer
     * @throws OutOfRangeException where a model does not accept the car
     */
    double[] residuals(Candidate car, double[] nuisance);

    /** @return what the first residuals may be off, for those that are readings of a log [K] */
    default Optional<Leftover> leftover() {
        return Optional.empty();
    }
}
