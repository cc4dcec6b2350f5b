package headertank.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Decision 9 in the text of the statements: rows that are kept come from one store, and nothing is edited by SQL. */
class StatementsTest {

    private static final Pattern INSERT = Pattern.compile("insert\\s+into\\s+(\\w+)");
    private static final Pattern EDIT = Pattern.compile("\"\\s*(update\\s+[a-z_]+\\s|delete\\s+from|truncate\\s)");

    /**
     * One counts tries of signing in and forgets them again: what nobody has entered and nobody relies on. One empties a database that
     * was just made, before what a backup kept comes back into it. One forgets that somebody computes, once there is an answer.
     */
    private static final Set<String> EDITS = Set.of("SignInStore.java", "RowStore.java", "AnswerStore.java");

    private static Map<Path, String> sources() throws IOException {
        Map<Path, String> texts = new TreeMap<>();
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            files.filter(f -> f.toString().endsWith(".java")).forEach(f -> {
                try {
                    texts.put(f, Files.readString(f));
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            });
        }
        assertThat(texts).hasSizeGreaterThan(100);
        return texts;
    }

    @Test
    void aTableIsAddedToFromOneStore() throws IOException {
        Map<String, Set<String>> writers = new TreeMap<>();
        sources().forEach((file, text) -> {
            Matcher insert = INSERT.matcher(text);
            while (insert.find()) {
                writers.computeIfAbsent(insert.group(1), t -> new TreeSet<>())
                        .add(file.getFileName().toString());
            }
        });
        assertThat(writers).containsKeys("revision", "audit_entry", "incident");
        writers.forEach((table, files) ->
                assertThat(files).as("who inserts into " + table).hasSize(1).allMatch(f -> f.endsWith("Store.java")));
    }

    @Test
    void nothingIsEditedBySql() throws IOException {
        sources().forEach((file, text) -> {
            boolean repository = text.contains("extends Repository<") || text.contains("extends JpaRepository<");
            if (!repository && !EDITS.contains(file.getFileName().toString())) {
                assertThat(EDIT.matcher(text).results().map(m -> m.group(1)).toList())
                        .as("statements in " + file)
                        .isEmpty();
            }
        });
    }
}
