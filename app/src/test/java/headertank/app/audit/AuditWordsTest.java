package headertank.app.audit;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.app.MessageSources;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.springframework.context.MessageSource;

/**
 * Whatever the audit trail notes, its page says in words: every literal where something is noted, and of the classes that do so
 * every other one that is neither a text's key nor a file's name.
 */
class AuditWordsTest {

    private static final Pattern LITERAL = Pattern.compile("\"([a-z]+\\.[a-z-]+)\"");
    private static final Pattern NOTED = Pattern.compile("audit\\.record[^;]*;");
    private static final Pattern KIND = Pattern.compile("(?m)^ {8}([A-Z_]+)[,;]?$");

    private final MessageSource messages = MessageSources.all();

    @Test
    void everyDeedHasItsWords() throws IOException {
        var noted = new TreeSet<String>();
        var deeds = new TreeSet<String>();
        try (var files = Files.walk(Path.of("src/main/java"))) {
            for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
                String source = Files.readString(file);
                if (source.contains("audit.record")) {
                    NOTED.matcher(source).results().forEach(statement -> LITERAL.matcher(statement.group())
                            .results()
                            .map(m -> m.group(1))
                            .forEach(noted::add));
                    LITERAL.matcher(source).results().map(m -> m.group(1)).forEach(deeds::add);
                }
            }
        }
        deeds.removeIf(d -> d.endsWith(".csv") || messages.getMessage(d, null, null, Locale.ENGLISH) != null);
        deeds.addAll(noted);
        KIND.matcher(Files.readString(Path.of("src/main/java/headertank/app/job/Job.java")))
                .results()
                .map(k -> "job." + k.group(1).toLowerCase(Locale.ROOT).replace('_', '-'))
                .forEach(deeds::add);
        assertThat(deeds)
                .contains("fault.cleared", "job.taken-back", "list.item-left-out")
                .hasSizeGreaterThan(35);
        assertThat(deeds)
                .allSatisfy(d -> assertThat(messages.getMessage("audit.action." + d, null, null, Locale.GERMAN))
                        .as(d)
                        .isNotNull());
    }
}
