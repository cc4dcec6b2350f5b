package headertank.app.log.read;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import headertank.app.log.file.LogLimits;
import headertank.app.log.file.LogRefused;
import headertank.app.log.file.LogSource;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;

/**
 * Good files with bytes lost, doubled, swapped and made up: whatever comes of them, it is an outcome, it is there in time and
 * holds on to no memory. How long it goes on is set by {@code headertank.mutations.seconds}.
 */
class LogMutationsTest {

    private static final int SECONDS = Integer.getInteger("headertank.mutations.seconds", 3);
    private static final long SEED = Long.getLong("headertank.mutations.seed", new Random().nextLong());

    /** A file of a few kilobytes that takes so long hangs. */
    private static final Duration HANGS = Duration.ofMinutes(1);

    /** What a run of any length may add to the memory in use [bytes]. */
    private static final long GROWTH = 32_000_000;

    private static final byte[][] PIECES = {
        {'"'},
        {','},
        {';'},
        {'\t'},
        {'\n'},
        {'\r'},
        {0},
        {' '},
        {'.'},
        {'-'},
        {'#'},
        {':'},
        {'e'},
        {(byte) 0xFF},
        {(byte) 0xC3},
        "\r\n".getBytes(),
        "1e308".getBytes(),
        "-99999999999999999999".getBytes(),
        "NaN".getBytes(),
        "\"\"\"".getBytes(),
        "Time [s],Coolant [°C]\n".getBytes(),
        "2026-02-30T25:61:61Z".getBytes(),
        "99:99:99".getBytes(),
        ",,,,,,,,".getBytes()
    };

    @Test
    void noMutationOfAGoodFileCrashesHangsOrGrows() throws IOException {
        System.out.println("mutations with seed " + SEED);
        Random random = new Random(SEED);
        List<LogCase> good =
                LogCorpus.all().stream().filter(c -> c.refused == null).toList();
        long end = System.nanoTime() + SECONDS * 1_000_000_000L;
        long before = 0;
        int files = 0;
        int refused = 0;
        while (System.nanoTime() < end || files < good.size()) {
            byte[] bytes = good.get(files % good.size()).bytes;
            for (int n = 1 + random.nextInt(4); n > 0; n--) {
                bytes = mutated(bytes, random);
            }
            byte[] file = bytes;
            refused += Assertions.assertTimeoutPreemptively(HANGS, () -> isRead(file)) ? 0 : 1;
            files++;
            before = files == good.size() ? inUse() : before;
        }
        assertThat(inUse() - before).as("growth over %d files", files).isLessThan(GROWTH);
        assertThat(refused).as("refused of %d", files).isLessThan(files);
        System.out.printf("%d files, %d of them refused%n", files, refused);
    }

    private static long inUse() {
        System.gc();
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }

    private static byte[] mutated(byte[] in, Random random) {
        int at = random.nextInt(in.length);
        int length = Math.min(in.length - at, 1 + random.nextInt(random.nextBoolean() ? 3 : 200));
        byte[] head = Arrays.copyOf(in, at);
        byte[] piece = Arrays.copyOfRange(in, at, at + length);
        byte[] tail = Arrays.copyOfRange(in, at + length, in.length);
        return switch (random.nextInt(7)) {
            case 0 -> joined(head, tail);
            case 1 -> joined(head, piece, piece, tail);
            case 2 -> joined(head, PIECES[random.nextInt(PIECES.length)], piece, tail);
            case 3 -> joined(head, PIECES[random.nextInt(PIECES.length)], tail);
            case 4 -> {
                random.nextBytes(piece);
                yield joined(head, piece, tail);
            }
            case 5 -> joined(piece, head, tail);
            default -> head.length == 0 ? in : head;
        };
    }

    private static byte[] joined(byte[]... parts) {
        int length = Arrays.stream(parts).mapToInt(p -> p.length).sum();
        byte[] all = new byte[Math.max(1, length)];
        int at = 0;
        for (byte[] p : parts) {
            System.arraycopy(p, 0, all, at, p.length);
            at += p.length;
        }
        return all;
    }

    /** @return false when it is refused */
    private static boolean isRead(byte[] bytes) throws IOException {
        LogSource source = LogSource.of(bytes);
        long lines = 1
                + new String(bytes, java.nio.charset.StandardCharsets.ISO_8859_1)
                        .chars()
                        .filter(c -> c == '\n' || c == '\r')
                        .count();
        try {
            LogSummary summary = LogReader.survey(source, LogLimits.USUAL);
            assertThat(summary.rows()).isLessThanOrEqualTo(lines);
            assertThat(summary.shownBad()).hasSizeLessThanOrEqualTo(BadRow.SHOWN);
            assertThat(summary.shownBad()).extracting(BadRow::line).doesNotHaveDuplicates();
            if (summary.guessed().isPresent()) {
                Check check = new Check();
                LogReader.Tally tally = LogReader.read(source, summary.guessed().get(), LogLimits.USUAL, check);
                assertThat(tally.rows()).isEqualTo(check.rows).isLessThanOrEqualTo(summary.rows());
                assertThat(check.stretch + 1).isLessThanOrEqualTo(summary.stretchCount());
            }
            return true;
        } catch (LogRefused refused) {
            assertThat(refused.reason()).isNotNull();
            return false;
        }
    }

    /** What holds for every row of every log. */
    private static final class Check implements RowSink {

        private long rows;
        private int stretch = -1;
        private double lastS;

        @Override
        public void row(int number, double timeS, double[] si) {
            if (number == stretch) {
                assertThat(timeS).isGreaterThan(lastS);
            } else {
                assertThat(number).isEqualTo(stretch + 1);
                assertThat(timeS).isZero();
            }
            for (LogQuantity q : LogQuantity.values()) {
                double v = si[q.ordinal()];
                assertThat(Double.isNaN(v) || q.possible().contains(v))
                        .as("%s %s", q, v)
                        .isTrue();
            }
            rows++;
            stretch = number;
            lastS = timeS;
        }
    }

    /** Rows that are twice as many take no more memory than one could hold by chance. */
    @Test
    void aRowTakesNoMemory() throws IOException {
        allocated(2_000);
        long fewer = allocated(20_000);
        long more = allocated(60_000);
        assertThat((more - fewer) / 40_000.0).as("bytes for each row").isLessThan(64);
    }

    private static long allocated(long rows) throws IOException {
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long id = Thread.currentThread().getId();
        long before = threads.getThreadAllocatedBytes(id);
        LogSource log = EndlessLog.of(rows);
        LogSummary summary = LogReader.survey(log, LogLimits.USUAL);
        LogReader.read(log, summary.guessed().orElseThrow(), LogLimits.USUAL, (s, t, si) -> {});
        return threads.getThreadAllocatedBytes(id) - before;
    }
}
