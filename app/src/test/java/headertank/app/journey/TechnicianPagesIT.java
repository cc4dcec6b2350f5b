package headertank.app.journey;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.app.database.DatabaseTest;
import headertank.app.demo.DemoData;
import headertank.app.shop.Role;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.TestPropertySource;

/** Every page that a technician may open, on a phone and on a tablet: large enough to hit, and its verdict in sight. */
@DatabaseTest
@TestPropertySource(properties = "headertank.demo=true")
class TechnicianPagesIT {

    private static final int[] WIDTHS = {390, 820};

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
    }
}
