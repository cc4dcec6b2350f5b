package headertank.app.log.read;

import headertank.app.log.file.LogLimits;
import headertank.app.log.file.LogSource;
import java.io.IOException;
import java.util.Locale;

/** How fast a log is read, and in how much memory; see {@code docs/logs.md}. */
final class LogReaderBenchmark {

    private LogReaderBenchmark() {}

    /** @param args number of rows, 10 million when there is none */
    public static void main(String[] args) throws IOException {
        long rows = args.length == 0 ? 10_000_000 : Long.parseLong(args[0]);
        LogSource log = EndlessLog.of(rows);
        measure("warming up", EndlessLog.of(rows / 10), rows / 10);
        measure("measured", log, rows);
        System.out.printf(
                Locale.ROOT,
                "at most %d MB of heap allowed%n",
                Runtime.getRuntime().maxMemory() / 1_048_576);
    }

    private static void measure(String what, LogSource log, long rows) throws IOException {
        long start = System.nanoTime();
        LogSummary summary = LogReader.survey(log, LogLimits.USUAL);
        long between = System.nanoTime();
        LogReader.Tally tally = LogReader.read(log, summary.guessed().orElseThrow(), LogLimits.USUAL, (s, t, si) -> {});
        long end = System.nanoTime();
        if (summary.rows() != rows || tally.rows() != rows || summary.badRows() + tally.badRows() != 0) {
            throw new IllegalStateException("not what was written: " + summary.rows() + " and " + tally.rows());
        }
        System.out.printf(
                Locale.ROOT,
                "%s: %d rows; surveyed at %.0f, read at %.0f rows a second%n",
                what,
                rows,
                rows / (1e-9 * (between - start)),
                rows / (1e-9 * (end - between)));
    }
}
