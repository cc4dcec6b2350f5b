package headertank.app.log.read;

import headertank.app.log.file.LogHead;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What a log holds.
 *
 * @param head how it is laid out
 * @param columns one for each heading
 * @param guesses what columns seem to be, at most one for each quantity
 * @param rows rows that were taken
 * @param badRows rows that were left out or lost a cell
 * @param shownBad the first of them
 * @param repeated rows that say the same as the one above at the same time
 * @param comments lines left out because they are comments
 * @param stretches the first of them
 * @param stretchCount how many there are
 * @param gaps how often time passed unseen
 * @param longestGapS the longest of those [s]
 * @param lengthS of all stretches together, gaps included [s]
 */
public record LogSummary(
        LogHead head,
        List<ColumnSummary> columns,
        List<ColumnGuess> guesses,
        long rows,
        long badRows,
        List<BadRow> shownBad,
        long repeated,
        long comments,
        List<Stretch> stretches,
        int stretchCount,
        long gaps,
        double longestGapS,
        double lengthS) {

    public LogSummary {
        columns = List.copyOf(columns);
        guesses = List.copyOf(guesses);
        shownBad = List.copyOf(shownBad);
        stretches = List.copyOf(stretches);
    }

    /**
     * Rows whose time rises.
     *
     * @param line number of its first line
     */
    public record Stretch(long line, long rows, double lengthS) {}

    public Optional<ColumnGuess> guess(LogQuantity quantity) {
        return guesses.stream().filter(g -> g.quantity() == quantity).findFirst();
    }

    /** Places of the columns that tell where the car was. */
    public List<Integer> positions() {
        return IntStream.range(0, head.headings().size())
                .filter(i -> Positions.isPosition(head.headings().get(i)))
                .boxed()
                .toList();
    }

    /** The guesses as a mapping; empty when no column tells the time. */
    public Optional<LogMapping> guessed() {
        return head.time()
                .map(t -> new LogMapping(
                        t,
                        guesses.stream()
                                .map(g -> new LogMapping.Chosen(g.quantity(), g.column(), g.unit()))
                                .toList()));
    }
}
