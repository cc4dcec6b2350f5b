package headertank.app.journey;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class PatienceTest {

    private static final Duration SHORT = Duration.ofMillis(100);

    @Test
    void whatComesInTimeIsNotMeasured() {
        Patience patience = new Patience(Duration.ofHours(1), () -> {
            throw new AssertionError("measured");
        });
        AtomicInteger asked = new AtomicInteger();
        assertThat(patience.until(() -> Optional.of("here").filter(h -> asked.incrementAndGet() > 2)))
                .contains("here");
    }

    @Test
    void whatNeverComesEnds() {
        assertThat(new Patience(SHORT, () -> 1).until(Optional::empty)).isEmpty();
    }

    @Test
    void aSlowMachineGetsItsTime() {
        long start = System.nanoTime();
        assertThat(new Patience(SHORT, () -> 5).until(Optional::empty)).isEmpty();
        assertThat(Duration.ofNanos(System.nanoTime() - start)).isGreaterThan(SHORT.multipliedBy(5));
    }

    @Test
    void aMachineThatGotSlowerMeanwhileIsGivenMore() {
        AtomicInteger times = new AtomicInteger(1);
        AtomicInteger asked = new AtomicInteger();
        Patience patience = new Patience(SHORT, () -> Math.min(4, times.incrementAndGet()));
        assertThat(patience.until(
                        () -> Optional.of("late").filter(l -> asked.incrementAndGet() > 1 && times.get() == 4)))
                .contains("late");
    }
}
