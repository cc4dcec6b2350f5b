package headertank.calc;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.calc.carspec.Build;
import headertank.calc.duty.Duty;
import headertank.calc.quantity.Physics;
import headertank.calc.result.IdleExpectation;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ForkJoinPool;
import org.junit.jupiter.api.Test;

/** A rating uses every core it is given; how many there are must not change a digit. Parallel streams run in the pool they are called from. */
class CoresTest {

    private static final Rater RATER = Rater.standard();
    private static final int SAMPLES = 33;

    @Test
    void aRatingIsTheSameOnAnyNumberOfCores() throws Exception {
        List<Duty> duties = List.copyOf(RATER.duties().values());
        for (Build build : List.of(Builds.road(), Builds.track(), Builds.drift())) {
            Rating alone = on(1, () -> RATER.rate(build, duties, SAMPLES));
            Rating together = on(4, () -> RATER.rate(build, duties, SAMPLES));
            assertThat(alone.duties()).hasSameSizeAs(duties);
            assertThat(alone.improvements()).isEqualTo(together.improvements());
            for (int i = 0; i < duties.size(); i++) {
                assertThat(alone.duties().get(i).outcome().marginSpread()).isPresent();
                assertThat(alone.duties().get(i).toString())
                        .isEqualTo(together.duties().get(i).toString());
            }
        }
    }

    @Test
    void whatToExpectAtIdleIsTheSameOnAnyNumberOfCores() throws Exception {
        IdleExpectation alone = on(1, () -> RATER.idleInWorkshop(Builds.drift(), Physics.kelvin(20)));
        assertThat(alone.bands()).isNotEmpty();
        assertThat(on(4, () -> RATER.idleInWorkshop(Builds.drift(), Physics.kelvin(20))))
                .isEqualTo(alone);
    }

    private static <T> T on(int cores, Callable<T> work) throws Exception {
        ForkJoinPool pool = new ForkJoinPool(cores);
        try {
            return pool.submit(work).get();
        } finally {
            pool.shutdown();
        }
    }
}
