package headertank.app.account.guard;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;

/** How many requests of strangers are under way on this instance, all in all and from each place. */
final class Strangers {

    /** Of the 200 threads that the server has; modelling choice. */
    static final int MOST = 120;

    static final int MOST_OF_ONE_PLACE = 40;

    private final AtomicInteger all = new AtomicInteger();
    private final Map<String, Integer> byPlace = new ConcurrentHashMap<>();

    boolean enter(String place) {
        if (all.incrementAndGet() > MOST) {
            all.decrementAndGet();
            return false;
        }
        if (byPlace.merge(place, 1, Integer::sum) > MOST_OF_ONE_PLACE) {
            leave(place);
            return false;
        }
        return true;
    }

    void leave(String place) {
        all.decrementAndGet();
        byPlace.computeIfPresent(place, (p, n) -> n == 1 ? null : n - 1);
    }
}
