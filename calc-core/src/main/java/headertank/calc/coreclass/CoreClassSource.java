package headertank.calc.coreclass;

import java.util.List;

/** A supplier of core classes, found by {@link java.util.ServiceLoader}. */
public interface CoreClassSource {

    /** @return short key, stable */
    String id();

    /** @return version of the figures */
    String version();

    /** @return where the figures come from, in a line */
    String source();

    /** @return the classes, each id once */
    List<CoreClass> classes();
}
