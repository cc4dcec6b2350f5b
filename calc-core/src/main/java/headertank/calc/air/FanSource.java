package headertank.calc.air;

import java.util.Comparator;
import java.util.List;
import java.util.ServiceLoader;

/**
 * A place that typical fans come from. Others can be added by a {@link ServiceLoader} entry; an implementation is trusted
 * code, has no state, and answers the same each time.
 */
public interface FanSource {

    /** @return a short name that no other source has, of lower-case letters, digits and hyphens */
    String id();

    /** @return version of the source, to be kept with results */
    String version();

    /** @return one line: where the figures come from */
    String source();

    /** @return the fans, by rising diameter */
    List<TypicalFan> fans();

    /**
     * A typical fan.
     *
     * @param name what it is, in trade words
     * @param fan its figures, one fan
     * @param currentA running current at 13 V [A]; 0 when the engine drives it
     */
    record TypicalFan(String name, FanSpec fan, double currentA) {}

    /** @return all sources on the class path, by id */
    static List<FanSource> loaded() {
        return ServiceLoader.load(FanSource.class, FanSource.class.getClassLoader()).stream()
                .map(ServiceLoader.Provider::get)
                .sorted(Comparator.comparing(FanSource::id))
                .toList();
    }
}
