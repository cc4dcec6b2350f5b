package headertank.calc.duty;

import java.util.List;

/** Supplies duties; found by {@link java.util.ServiceLoader}. */
public interface DutySource {

    /** @return stable name of this source */
    String id();

    /** @return version of its figures */
    String version();

    /** @return one line on where its figures come from */
    String source();

    /** @return its duties */
    List<Duty> duties();
}
