package headertank.app.journey;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

/** Asks axe-core what on the page on show breaks WCAG 2.2, levels A and AA, or its best practices. */
final class Axe {

    private static final String SCRIPT = read();

    private static final String ASK = """
            const done = arguments[arguments.length - 1];
            axe.run(document, {
              ...arguments[0],
              resultTypes: ['violations']
            }).then(
              found => done(found.violations.map(v => v.id + ' (' + v.impact + '): ' + v.help + ' '
                + v.nodes.length + 'x, ' + v.nodes.slice(0, 3).map(n =>
                    n.target.join(' ') + ' ' + n.html.slice(0, 160) + ' [' + n.failureSummary.replace(/\\s+/g, ' ').slice(0, 200) + ']')
                  .join(' | '))),
              error => done(['axe failed: ' + error]));""";

    private static final Map<String, Object> EVERYTHING = Map.of(
            "runOnly",
            Map.of(
                    "type",
                    "tag",
                    "values",
                    List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice")),
            "rules",
            Map.of("target-size", Map.of("enabled", true)));

    private static final Map<String, Object> COLOURS =
            Map.of("runOnly", Map.of("type", "rule", "values", List.of("color-contrast", "link-in-text-block")));

    private Axe() {}

    /** Looks from the top: what a bar that stays in sight covers halfway down is reached by scrolling, and no fault. */
    static List<String> violations(Browser browser) {
        return violations(browser, EVERYTHING);
    }

    /** Only what another scheme of colours changes. */
    static List<String> violationsOfColours(Browser browser) {
        return violations(browser, COLOURS);
    }

    @SuppressWarnings("unchecked")
    private static List<String> violations(Browser browser, Map<String, Object> options) {
        browser.script("document.activeElement.blur(); window.scrollTo(0, 0)");
        if (!Boolean.TRUE.equals(browser.script("return 'axe' in window"))) {
            browser.script(SCRIPT);
        }
        return (List<String>) browser.awaited(ASK, options);
    }

    private static String read() {
        try (InputStream script = Axe.class.getResourceAsStream("/axe.min.js")) {
            return new String(script.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
