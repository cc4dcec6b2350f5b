package headertank.app.log.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import headertank.app.log.file.LogLimits;
import headertank.app.log.file.LogRefused;
import headertank.app.log.file.LogSource;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every file of {@link LogCorpus} comes out as it says. */
class LogCorpusTest {

    private static final int FEWEST = 60;

    static List<LogCase> files() {
        return LogCorpus.all();
    }

    @Test
    void thereAreEnoughFilesAndNoTwoAreTheSame() {
        Set<String> names = new HashSet<>();
        Set<String> contents = new HashSet<>();
        for (LogCase c : files()) {
            assertThat(names.add(c.name)).as(c.name).isTrue();
            assertThat(contents.add(new String(c.bytes, java.nio.charset.StandardCharsets.ISO_8859_1)))
                    .as(c.name)
                    .isTrue();
        }
        assertThat(names).hasSizeGreaterThanOrEqualTo(FEWEST);
    }

    private record Row(int stretch, double timeS, double[] si) {}

    @ParameterizedTest
    @MethodSource("files")
    void comesOutAsItSays(LogCase file) throws IOException {
        LogSource source = LogSource.of(file.bytes);
        if (file.refused != null) {
            assertThatThrownBy(() -> LogReader.survey(source, LogLimits.USUAL))
                    .isInstanceOfSatisfying(
                            LogRefused.class, e -> assertThat(e.reason()).isEqualTo(file.refused));
            return;
        }
        LogSummary summary = LogReader.survey(source, LogLimits.USUAL);
        columns(file, summary);
        assertThat(summary.badRows()).as("bad rows %s", summary.shownBad()).isEqualTo(file.bad);
        file.badLines.forEach((line, fault) -> assertThat(summary.shownBad())
                .anyMatch(b -> b.line() == line && b.fault().name().equals(fault)));
        assertThat(summary.repeated()).as("repeated").isEqualTo(file.repeated);
        assertThat(summary.gaps()).as("gaps").isEqualTo(file.gaps);
        assertThat(summary.comments()).as("comments").isEqualTo(file.comments);
        assertThat(summary.head().time().isEmpty()).as("no time").isEqualTo(file.noTime);
        if (file.noTime) {
            assertThat(summary.guessed()).isEmpty();
            return;
        }
        assertThat(summary.stretchCount()).as("stretches").isEqualTo(file.stretches);
        values(file, source, summary);
    }

    private static void columns(LogCase file, LogSummary summary) {
        file.columns.forEach((quantity, as) -> {
            var guess = summary.guess(quantity);
            assertThat(guess.isPresent())
                    .as("%s of %s", quantity, summary.guesses())
                    .isEqualTo(!as.isEmpty());
            if (!as.isEmpty()) {
                String[] parts = as.split("\\|", -1);
                assertThat(guess.orElseThrow().unit().symbol())
                        .as("unit of %s", quantity)
                        .isEqualTo(parts[1]);
                if (!parts[0].isEmpty()) {
                    assertThat(summary.columns().get(guess.get().column()).heading())
                            .isEqualTo(parts[0]);
                }
            }
        });
    }

    private static void values(LogCase file, LogSource source, LogSummary summary) throws IOException {
        List<Row> rows = new ArrayList<>();
        LogReader.Tally tally = LogReader.read(
                source,
                summary.guessed().orElseThrow(),
                LogLimits.USUAL,
                (s, t, si) -> rows.add(new Row(s, t, si.clone())));
        assertThat(rows).hasSize(file.rows);
        assertThat(tally.rows()).isEqualTo(file.rows);
        assertThat(tally.badRows()).as("bad rows of reading").isEqualTo(file.readBad < 0 ? file.bad : file.readBad);
        assertThat(rows.get(rows.size() - 1).stretch()).isEqualTo(file.stretches - 1);
        for (int i = 0; i < rows.size(); i++) {
            int row = i;
            assertThat(rows.get(i).timeS())
                    .as("time of row %d", i)
                    .isCloseTo(file.timeS.applyAsDouble(i), within(1e-6));
            file.values.forEach((quantity, si) -> {
                double expected = si.applyAsDouble(row);
                double found = rows.get(row).si()[quantity.ordinal()];
                if (Double.isNaN(expected)) {
                    assertThat(found).as("%s of row %d", quantity, row).isNaN();
                } else {
                    assertThat(found)
                            .as("%s of row %d", quantity, row)
                            .isCloseTo(expected, within(1e-9 * (1 + Math.abs(expected))));
                }
            });
        }
    }
}
