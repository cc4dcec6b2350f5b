package headertank.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A room that holds too much to be looked over is parted, or says in its package-info why it is not. */
class PackageSizesTest {

    private static final int MOST = 15;
    private static final String REASON = "Why so many: ";

    @Test
    void aLargePackageSaysWhy() throws IOException {
        try (Stream<Path> all = Files.walk(Path.of("src/main/java/headertank/app"))) {
            List<Path> folders = all.filter(Files::isDirectory).toList();
            assertThat(folders).hasSizeGreaterThan(20);
            for (Path folder : folders) {
                long types = types(folder);
                if (types > MOST) {
                    assertThat(Files.readString(folder.resolve("package-info.java")))
                            .as("%s holds %d types; part it, or write \"%s\" and the reason", folder, types, REASON)
                            .contains(REASON);
                }
            }
        }
    }

    @Test
    void aReasonGoesWithTheSize() throws IOException {
        try (Stream<Path> all = Files.walk(Path.of("src/main/java/headertank/app"))) {
            for (Path info : all.filter(f -> f.endsWith("package-info.java")).toList()) {
                if (Files.readString(info).contains(REASON)) {
                    assertThat(types(info.getParent()))
                            .as("types beside %s", info)
                            .isGreaterThan(MOST);
                }
            }
        }
    }

    /** Whoever looks for a name finds one file, in whichever module. */
    @Test
    void noNameStandsForTwoFiles() throws IOException {
        Map<String, List<Path>> byName = new TreeMap<>();
        for (String module : List.of("src/main/java", "../calc-core/src/main/java")) {
            try (Stream<Path> all = Files.walk(Path.of(module))) {
                all.filter(f -> f.toString().endsWith(".java") && !f.endsWith("package-info.java"))
                        .forEach(f -> byName.computeIfAbsent(f.getFileName().toString(), n -> new ArrayList<>())
                                .add(f));
            }
        }
        assertThat(byName).hasSizeGreaterThan(500);
        byName.values().removeIf(files -> files.size() == 1);
        assertThat(byName).isEmpty();
    }

    private static long types(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(f -> f.toString().endsWith(".java") && !f.endsWith("package-info.java"))
                    .count();
        }
    }
}
