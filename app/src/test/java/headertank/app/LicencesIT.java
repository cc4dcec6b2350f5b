package headertank.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * What the jar is made of has a licence that we take, and stands in {@code docs/NOTICE}. The list of parts is made with the jar.
 * {@code -Dheadertank.docs.write=true} writes it anew.
 */
class LicencesIT {

    private static final Path PARTS = Path.of("target", "classes", "META-INF", "sbom", "application.cdx.json");
    private static final Path NOTICE = Path.of("..", "docs", "NOTICE");

    /** Names and SPDX identifiers that stand for a licence that lets us pass the part on with an Apache-2.0 program. */
    private static final List<String> TAKEN = List.of(
            "Apache-2.0",
            "Apache License",
            "MIT",
            "MIT-0",
            "0BSD",
            "BSD-2-Clause",
            "BSD-3-Clause",
            "Bouncy Castle",
            "EPL-1.0",
            "EPL-2.0",
            "EDL",
            "Eclipse Distribution License",
            "LGPL-2.1",
            "PostgreSQL",
            "CC0-1.0",
            "Public Domain",
            "MPL-2.0",
            "ISC");

    @Test
    void everyPartHasALicenceThatWeTakeAndStandsInTheNotice() throws IOException {
        Map<String, Set<String>> parts = parts();
        assertThat(parts).hasSizeGreaterThan(60);
        assertThat(parts)
                .allSatisfy((part, licences) -> assertThat(licences).as(part).anyMatch(l -> TAKEN.stream()
                        .anyMatch(l::startsWith)));
        StringBuilder text = new StringBuilder(
                "Header Tank\n\nIt is made of these parts of others, each under its own licence:\n\n");
        parts.forEach((part, licences) -> text.append(part)
                .append("  ")
                .append(String.join("; ", licences))
                .append('\n'));
        text.append("DejaVu fonts  app/src/main/resources/fonts/LICENSE-DejaVu.txt\n");
        if (Boolean.getBoolean("headertank.docs.write")) {
            Files.writeString(NOTICE, text);
        }
        assertThat(Files.readString(NOTICE)).isEqualTo(text.toString());
    }

    private static Map<String, Set<String>> parts() throws IOException {
        Map<String, Set<String>> parts = new TreeMap<>();
        for (JsonNode part :
                JsonMapper.builder().build().readTree(Files.readString(PARTS)).path("components")) {
            String group = part.path("group").asString("");
            if (group.equals("headertank")) {
                continue;
            }
            Set<String> licences = new TreeSet<>();
            for (JsonNode licence : part.path("licenses")) {
                JsonNode one = licence.path("license");
                licences.add(
                        licence.has("expression")
                                ? licence.path("expression").asString("")
                                : one.has("id")
                                        ? one.path("id").asString("")
                                        : one.path("name").asString(""));
            }
            parts.put(
                    group + ":" + part.path("name").asString("") + ":"
                            + part.path("version").asString(""),
                    licences);
        }
        return parts;
    }
}
