package headertank.app.check.figure;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.app.MessageSources;
import headertank.app.check.stored.CheckFormat;
import headertank.app.check.stored.CheckResult;
import headertank.app.check.stored.StoredMessage;
import headertank.app.unit.UnitSystem;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What was stored under names of before is shown in the words of today. */
class OldCodesTest {

    private final FigureText shown = FigureTextTest.in(UnitSystem.METRIC);

    private static String sample() throws IOException {
        try (var in = CheckFormat.class.getResourceAsStream("result-format-2.json")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).strip();
        }
    }

    @Test
    void everyCodeOfTheSampleHasWords() throws IOException {
        JsonNode tree = JsonMapper.shared().readTree(sample());
        var codes = new TreeSet<String>();
        collect(tree, codes);
        assertThat(codes).hasSizeGreaterThan(80).contains("working.left-of-the-heat-balance");
        var silent = new TreeSet<String>();
        for (String code : codes) {
            String now = "model." + OldCodes.now(code);
            for (Locale locale : List.of(Locale.ENGLISH, Locale.GERMAN)) {
                if (MessageSources.all().getMessage(now, new Object[15], null, locale) == null) {
                    silent.add(locale + " " + now);
                }
            }
        }
        assertThat(silent).isEmpty();
    }

    /** Codes of messages: those with a part before a point. */
    private static void collect(JsonNode node, TreeSet<String> codes) {
        if (node.path("code").asString("").matches("[a-z-]+\\.[a-z0-9.-]+")) {
            codes.add(node.path("code").asString());
        }
        List<JsonNode> inner = new ArrayList<>();
        node.forEach(inner::add);
        inner.forEach(n -> collect(n, codes));
    }

    @Test
    void aFlagOfBeforeReadsAsOneOfToday() throws IOException {
        CheckResult check = CheckFormat.readResult(2, sample());
        assertThat(check.flags()).isNotEmpty().allSatisfy(f -> {
            assertThat(shown.said(f.title())).contains(" ").doesNotContain("rule.");
            assertThat(shown.said(f.reason())).contains(" ").doesNotContain("rule.");
            f.consequences().forEach(c -> assertThat(shown.said(c.what())).doesNotContain("rule."));
        });
        StoredMessage was = new StoredMessage("rule.sensor-in-hose-reading-minus-coolant-two", List.of());
        assertThat(shown.said(was)).isEqualTo("reading minus coolant two minutes after the flow stopped");
    }

    @Test
    void aCodeOfTodayIsNoneOfBefore() throws IOException {
        Properties old = new Properties();
        try (var in = OldCodes.class.getResourceAsStream("/checks/old-codes.properties")) {
            old.load(in);
        }
        assertThat(old).isNotEmpty();
        old.values().forEach(now -> assertThat(OldCodes.now((String) now)).isEqualTo(now));
    }
}
