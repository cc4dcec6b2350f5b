package headertank.app.backup;

import java.util.List;

/** What a feature can tell about records that were brought back. */
@FunctionalInterface
public interface Proof {

    /** What is not as it should be, each in a few words; empty when all is well. */
    List<String> faults(long shop);
}
