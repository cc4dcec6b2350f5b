package headertank.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The tour of the code stays short, and passes files that are there. */
class GuidedTourTest {

    private static final Pattern STATION = Pattern.compile("^\\d+\\. `([^`]+)`", Pattern.MULTILINE);
    private static final int MOST = 20;

    @Test
    void theTourPassesAtMostTwentyFilesAndEachIsThere() throws IOException {
        Path root = Path.of("").toAbsolutePath().getParent();
        List<String> stations = STATION.matcher(Files.readString(root.resolve("docs/guided-tour.md")))
                .results()
                .map((MatchResult m) -> m.group(1))
                .toList();
        assertThat(stations).hasSizeBetween(10, MOST).doesNotHaveDuplicates();
        assertThat(stations).allSatisfy(s -> assertThat(root.resolve(s)).isRegularFile());
    }
}
