package headertank.calc.risk;

import java.util.Optional;

/**
 * Looks for one risky choice and computes what it costs this car. Found by {@link java.util.ServiceLoader}; must be
 * stateless and fast (a few ratings' worth of time).
 */
public interface RiskRule {

    /** @return stable name */
    String id();

    /** @return version of the rule, to be raised when its answer changes */
    String version();

    /** @return one line on what it rests on */
    String source();

    /** @return the flag, or empty when the choice is not on this car */
    Optional<Flag> examine(RiskContext car);
}
