package headertank.app.check;

import headertank.app.problem.ConflictException;
import java.time.Duration;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Supplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionSynchronizationManager;

/**
 * Where ratings are computed: without a connection to the database, a few at once, and none for ever. What takes too long is told
 * to end and left to itself; a plug-in that does not listen keeps a thread, but no place here and nobody else's rating.
 */
@Component
public class RatingBench {

    private static final Logger LOG = LoggerFactory.getLogger("headertank");

    /** Ratings at once for each processor: one computes while another one's parts wait for the rest. Modelling choice. */
    private static final int FOR_EACH_PROCESSOR = 2;

    /** So many may wait for a place, so that threads are left for everybody else. Modelling choice. */
    private static final int MOST_WAITING = 40;

    private final Semaphore places =
            new Semaphore(FOR_EACH_PROCESSOR * Runtime.getRuntime().availableProcessors(), true);
    private final Duration longest;

    /** @param longest after which a rating is given up; whoever waits for a place waits so long too */
    RatingBench(@Value("${headertank.longest-rating}") Duration longest) {
        this.longest = longest;
    }

    /**
     * @param work what is computed; it may not ask the database
     * @throws ConflictException when there was no place for so long, or the work took too long
     */
    public <T> T compute(Supplier<T> work) {
        if (TransactionSynchronizationManager.isActualTransactionActive()) {
            return work.get();
        }
        try {
            if (places.getQueueLength() >= MOST_WAITING
                    || !places.tryAcquire(longest.toMillis(), TimeUnit.MILLISECONDS)) {
                throw new ConflictException("check.bench.full");
            }
            try {
                return given(work);
            } finally {
                places.release();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new ConflictException("check.bench.slow", longest.toSeconds());
        }
    }

    private <T> T given(Supplier<T> work) throws InterruptedException {
        FutureTask<T> task = new FutureTask<>(work::get);
        Thread thread = new Thread(task, "rating");
        thread.setDaemon(true);
        thread.start();
        try {
            return task.get(longest.toMillis(), TimeUnit.MILLISECONDS);
        } catch (TimeoutException e) {
            LOG.error(
                    "A rating was given up after {} s; it was at {}.",
                    longest.toSeconds(),
                    thread.getStackTrace().length == 0 ? "its end" : thread.getStackTrace()[0]);
            throw new ConflictException("check.bench.slow", longest.toSeconds());
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException failure) {
                throw failure;
            }
            throw new IllegalStateException(e.getCause());
        } finally {
            task.cancel(true);
        }
    }
}
