package headertank.app.journey;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.locks.LockSupport;
import java.util.function.DoubleSupplier;
import java.util.function.Supplier;

/**
 * How long the tests in a browser wait for something before they say that it never comes: a time that is ample on an idle
 * machine, times how much slower than such a machine this one is at that moment. What comes in time costs no measurement.
 */
final class Patience {

    /** What an idle machine never needs. */
    private static final Duration AMPLE = Duration.ofSeconds(20);

    /** Processor time of {@link #work} on one core of 2023; measured. */
    private static final Duration WORK = Duration.ofMillis(160);

    private static final long PAUSE_NS = 50_000_000;
    private static final byte[] BLOCK = new byte[1 << 20];
    private static final int BLOCKS = 256;

    private final Duration ample;
    private final DoubleSupplier slowness;

    Patience() {
        this(AMPLE, Patience::slowness);
    }

    Patience(Duration ample, DoubleSupplier slowness) {
        this.ample = ample;
        this.slowness = slowness;
    }

    /** Asks again and again until there is an answer; empty when it never came. */
    <T> Optional<T> until(Supplier<Optional<T>> answer) {
        long start = System.nanoTime();
        double slow = 1;
        while (true) {
            Optional<T> got = answer.get();
            if (got.isPresent()) {
                return got;
            }
            if (spent(start) > slow) {
                slow = Math.max(slow, slowness.getAsDouble());
                if (spent(start) > slow) {
                    return Optional.empty();
                }
            }
            LockSupport.parkNanos(PAUSE_NS);
        }
    }

    private double spent(long start) {
        return (double) (System.nanoTime() - start) / ample.toNanos();
    }

    /** How much longer a small piece of work takes now than on an idle machine, at least 1. */
    private static double slowness() {
        long start = System.nanoTime();
        work();
        return Math.max(1, (double) (System.nanoTime() - start) / WORK.toNanos());
    }

    private static void work() {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            for (int i = 0; i < BLOCKS; i++) {
                digest.update(BLOCK);
            }
            digest.digest();
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
