package headertank.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The documents of the repository: what they link to is there, and they show every picture that is kept. */
class DocumentsTest {

    private static final Path ROOT = Path.of("..").toAbsolutePath().normalize();
    private static final Path DOCS = ROOT.resolve("docs");
    private static final Path PICTURES = DOCS.resolve("screenshots");
    private static final Pattern LINK = Pattern.compile("]\\(([^)#\\s]+)[^)]*\\)");
    private static final int MOST_PICTURES = 6;

    @Test
    void everyLinkLeadsToAFile() throws IOException {
        List<String> dead = new ArrayList<>();
        for (Path document : documents()) {
            for (String target : links(document)) {
                if (!target.contains("://") && !Files.exists(document.resolveSibling(target))) {
                    dead.add(ROOT.relativize(document) + " links to " + target);
                }
            }
        }
        assertThat(dead).isEmpty();
    }

    @Test
    void fewPicturesAreKeptAndADocumentShowsEach() throws IOException {
        TreeSet<Path> shown = new TreeSet<>();
        for (Path document : documents()) {
            links(document).forEach(l -> shown.add(document.resolveSibling(l).normalize()));
        }
        try (var files = Files.list(PICTURES)) {
            List<Path> kept = files.toList();
            assertThat(kept).hasSizeBetween(1, MOST_PICTURES);
            assertThat(shown).containsAll(kept);
        }
    }

    private static List<Path> documents() throws IOException {
        List<Path> documents = new ArrayList<>();
        try (var root = Files.list(ROOT);
                var docs = Files.walk(DOCS)) {
            root.filter(DocumentsTest::isDocument).forEach(documents::add);
            docs.filter(DocumentsTest::isDocument).forEach(documents::add);
        }
        assertThat(documents).hasSizeGreaterThan(5);
        return documents;
    }

    private static boolean isDocument(Path file) {
        return file.getFileName().toString().endsWith(".md");
    }

    private static List<String> links(Path document) throws IOException {
        List<String> links = new ArrayList<>();
        Matcher link = LINK.matcher(Files.readString(document));
        while (link.find()) {
            links.add(link.group(1));
        }
        return links;
    }
}
