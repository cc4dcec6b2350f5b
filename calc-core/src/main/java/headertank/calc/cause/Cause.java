package headertank.calc.cause;

import headertank.calc.carspec.Resolved;
import headertank.calc.quantity.Message;
import java.util.List;
import java.util.Optional;

/**
 * Something that makes a car run hot, or makes it seem so: a model of a fault. Found by {@link java.util.ServiceLoader}; must be stateless
 * and fast.
 */
public interface Cause {

    /** @return stable name */
    String id();

    /** @return one line on what its prior, its severities and its chances rest on */
    String source();

    /** @return what it is called */
    Message name();

    /**
     * @param car the car on the day it ran hot
     * @param seen what is known of that day
     * @return how often it is behind a car that comes back hot, in parts of about a hundred; 0 when this car cannot have it. Only its
     *     size against that of the others counts
     */
    double prior(Resolved car, Sighting seen);

    /**
     * @param car a car without the cause
     * @param severity how bad it is, evenly spread from 0, where a mechanic would begin to speak of it, to 1, as bad as it gets
     * @return the car with it
     */
    Fault on(Fault car, double severity);

    /** @return how bad it is at a severity, with its figure; empty where it is there or not */
    default Optional<Message> amount(double severity) {
        return Optional.empty();
    }

    /**
     * @return what is seen with it otherwise than on a hot car without it, at most some options of each question; what its heat shows on
     *     the gauge, at the lamp and as steam is computed and needs no line here
     */
    List<Chance> signs();
}
