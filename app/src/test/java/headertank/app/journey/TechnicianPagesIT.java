package headertank.app.journey;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.app.database.DatabaseTest;
import headertank.app.demo.DemoData;
import headertank.app.shop.Role;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.TestPropertySource;

/**
 * Every page that a technician may open, on a phone and on a tablet: large enough to hit, its verdict in sight, at most three
 * tablets long, and its words explained where they stand.
 */
@DatabaseTest
@TestPropertySource(properties = "headertank.demo=true")
class TechnicianPagesIT {

    private static final int[] WIDTHS = {390, 820};

    /** Height of a tablet that is held upright [px] (modelling choice). */
    private static final int TABLET = 1180;

    private static final int MOST_TABLETS = 3;
    private static final int LEAST_TERMS = 20;

    private static final String LENGTH = "return document.documentElement.scrollHeight";

    private static final String LED =
            "return [...document.querySelectorAll('main a.term')].map(a => a.hash).filter(h => h !== '')";

    /** Words that the page explains at its foot, that stand alone somewhere and lead nowhere. */
    private static final String LEADS_NOWHERE = """
        const main = document.getElementById('content');
        const alone = [...main.querySelectorAll('th, td, dt, dd, h2, h3, span, strong, p, li')]
          .filter(e => e.closest('a, button, summary, svg, form, dialog, .handover, .only-heard, [hidden], .keep-lines') === null)
          .map(e => e.textContent.trim().toLowerCase());
        return [...document.querySelectorAll('.words dt')]
          .filter(dt => alone.includes(dt.dataset.shown.toLowerCase()))
          .filter(dt => main.querySelector('a.term[href="' + dt.querySelector('a').getAttribute('href') + '"]') === null)
          .map(dt => dt.dataset.shown)\
        """;

    private static final String IS_QUIET =
            "return document.readyState === 'complete' && !document.querySelector('.htmx-request, .htmx-settling,"
                    + " [hx-trigger=load]')";

    private static final String STATUS = "return performance.getEntriesByType('navigation')[0].responseStatus";

    @LocalServerPort
    int port;

    @Autowired
    DemoData demo;

    @Test
    void everythingThatATechnicianTouchesIsLargeEnough() throws IOException {
        Map<String, Long> ids = demo.ensure();
        List<String> faults = new ArrayList<>();
        Set<String> led = new HashSet<>();
        var technician = DemoData.login(Role.TECHNICIAN.name());
        try (Browser browser = Browser.at(port)) {
            browser.signIn(technician.getKey(), technician.getValue());
            List<PageExamples.Example> pages = PageExamples.of(Role.TECHNICIAN);
            assertThat(pages).hasSizeGreaterThan(25);
            for (PageExamples.Example page : pages) {
                browser.width(WIDTHS[0]).open(page.path(ids));
                browser.waitUntil(() -> Boolean.TRUE.equals(browser.script(IS_QUIET)));
                if (!page.name().equals(PageExamples.NOT_FOUND)) {
                    assertThat(((Number) browser.script(STATUS)).intValue())
                            .as(page.path(ids))
                            .isEqualTo(200);
                }
                said(browser, LEADS_NOWHERE).forEach(w -> faults.add(page.name() + ": leads nowhere: " + w));
                led.addAll(said(browser, LED));
                double length = ((Number) browser.size(WIDTHS[1], TABLET).script(LENGTH)).doubleValue();
                if (length > MOST_TABLETS * TABLET) {
                    faults.add(page.name() + ": " + length + " px long");
                }
                for (int width : WIDTHS) {
                    browser.width(width);
                    browser.picture("technician-" + page.name() + "-" + width, true);
                    Touch.openAll(browser);
                    List<String> here = new ArrayList<>(Touch.smallTargets(browser));
                    here.addAll(Touch.misfits(browser, width));
                    here.forEach(f -> faults.add(page.name() + " at " + width + ": " + f));
                }
            }
        }
        assertThat(faults).as(String.join("\n", faults)).isEmpty();
        assertThat(led).as("words that are explained where they stand").hasSizeGreaterThan(LEAST_TERMS);
    }

    @SuppressWarnings("unchecked")
    private static List<String> said(Browser browser, String script) {
        return (List<String>) browser.script(script);
    }
}
