package headertank.calc.verdict;

import java.util.List;

/**
 * Turns an outcome into findings; the verdict is the worst that any of them allows. Found by
 * {@link java.util.ServiceLoader}; every installed policy has its say.
 */
public interface VerdictPolicy {

    /** @return stable name */
    String id();

    /** @return version of its thresholds */
    String version();

    /** @return one line on what its thresholds rest on */
    String source();

    /**
     * @return probabilities of passing the coolant limit at which its findings turn [-]: near one of them a rating samples
     *     more cars
     */
    default List<Double> turns() {
        return List.of();
    }

    /**
     * @param outcome what the physics says
     * @return findings, at least one
     */
    List<Finding> judge(DutyOutcome outcome);
}
