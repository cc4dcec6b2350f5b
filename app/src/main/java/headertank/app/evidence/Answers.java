package headertank.app.evidence;

import headertank.app.problem.NotFoundException;
import jakarta.annotation.PreDestroy;
import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.security.concurrent.DelegatingSecurityContextRunnable;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.core.context.SecurityContextImpl;
import org.springframework.stereotype.Component;

/**
 * Answers to questions that take seconds: worked out once, behind whoever asks, who may go away meanwhile. While one is worked out no
 * transaction is open. After a restart it is begun anew.
 */
@Component
public class Answers {

    private static final Logger LOG = LoggerFactory.getLogger("headertank");
    private static final int MOST_WAITING = 100;

    private final AnswerStore store;
    private final ThreadPoolExecutor behind = new ThreadPoolExecutor(
            1, 1, 1, TimeUnit.MINUTES, new ArrayBlockingQueue<>(MOST_WAITING), work -> new Thread(work, "learning"));

    Answers(AnswerStore store) {
        this.store = store;
        behind.allowCoreThreadTimeOut(true);
    }

    @PreDestroy
    void stop() {
        behind.shutdownNow();
    }

    /** What was worked out before. */
    public Optional<Answer> kept(Question question) {
        return store.kept(question);
    }

    /** @throws NotFoundException when the car has no such answer */
    Answer byId(long shop, long car, long id) {
        return store.byId(shop, car, id).orElseThrow(() -> new NotFoundException("answer of car " + car, id));
    }

    /** Whether a log that was not learned from came out as a lesson says. */
    boolean isConfirmed(long shop, long car, String lessonSha256) {
        return store.isConfirmed(shop, car, lessonSha256);
    }

    /** Since when it is being worked out; empty when it is not. */
    public Optional<Instant> begun(Question question) {
        return store.begun(question);
    }

    /** Has it worked out, unless it is, or somebody does it already. */
    public void start(Question question, Supplier<String> work) {
        if (store.kept(question).isPresent() || !store.begin(question)) {
            return;
        }
        var who = new SecurityContextImpl(SecurityContextHolder.getContext().getAuthentication());
        try {
            behind.execute(new DelegatingSecurityContextRunnable(() -> workedOut(question, work), who));
        } catch (RejectedExecutionException full) {
            LOG.warn(
                    "Too many questions wait to be worked out; {} of car {} is asked again later",
                    question.kind(),
                    question.car());
        }
    }

    private void workedOut(Question question, Supplier<String> work) {
        try {
            store.keep(question, work.get());
        } catch (RuntimeException e) {
            LOG.warn("{} of car {} was not worked out", question.kind(), question.car(), e);
        }
    }

    /** The answer, worked out in place where it is not kept yet. Never to be called within a transaction. */
    public Answer ready(Question question, Supplier<String> work) {
        return store.kept(question).orElseGet(() -> {
            store.keep(question, work.get());
            return store.kept(question).orElseThrow();
        });
    }
}
