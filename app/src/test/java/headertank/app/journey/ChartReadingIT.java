package headertank.app.journey;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.app.database.DatabaseTest;
import headertank.app.demo.DemoData;
import headertank.app.shop.Role;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.TestPropertySource;

/** Drawings say their values where somebody points, touches, or goes by the arrow keys. */
@DatabaseTest
@TestPropertySource(properties = "headertank.demo=true")
class ChartReadingIT {

    /** What a tick of the first panel says, and what is read on a line at the height of that tick. */
    private static final String HOVER = """
        const chart = document.querySelector('svg[data-read]');
        const box = chart.getBoundingClientRect();
        chart.dispatchEvent(new PointerEvent('pointermove', {
          clientX: box.left + 0.95 * box.width, clientY: box.top + 5, pointerType: 'mouse', bubbles: true}));
        """;

    private static final String TICKS = """
        const svg = document.querySelector('svg[data-read]');
        const line = svg.querySelector('polyline[data-low]');
        return [line.dataset.low.split('|')[1], line.dataset.high.split('|')[1], svg.dataset.low.split('|')[1], svg.dataset.high.split('|')[1]];\
        """;

    private static final String HOVER_BAR = """
        const bar = document.querySelector('.bar-reader input');
        const box = bar.getBoundingClientRect();
        bar.dispatchEvent(new PointerEvent('pointermove', {
          clientX: box.left + 0.02 * box.width, clientY: box.top + 5, pointerType: 'mouse', bubbles: true}));
        """;

    @LocalServerPort
    int port;

    @Autowired
    DemoData demo;

    @Test
    void aDrawingIsReadByKeysAndByTouch() {
        Map<String, Long> ids = demo.ensure();
        try (Browser browser = Browser.at(port)) {
            var desk = DemoData.login(Role.FRONT_DESK.name());
            browser.signIn(desk.getKey(), desk.getValue());
            browser.open("/duties").press(".duty summary").waitFor(".reader input");
            browser.find(".reader input").sendKeys(Keys.HOME, Keys.ARROW_RIGHT);
            String first = browser.find(".reader output").getText();
            assertThat(first).contains(" min: ", "km/h");
            browser.find(".reader input").sendKeys(Keys.END);
            String last = browser.find(".reader output").getText();
            assertThat(last).isNotEqualTo(first);
            List<?> ticks = (List<?>) browser.script(TICKS);
            double end = Double.parseDouble(last.split(" ")[0]);
            assertThat(end).isGreaterThanOrEqualTo(Double.parseDouble((String) ticks.get(3)) * 0.99);

            browser.touch().tap("svg[data-read]");
            String middle = browser.find(".reader output").getText();
            assertThat(Double.parseDouble(middle.split(" ")[0])).isBetween(0.3 * end, 0.7 * end);

            browser.script(HOVER);
            String near = browser.find(".reader output").getText();
            assertThat(Double.parseDouble(near.split(" ")[0])).isBetween(0.8 * end, end);

            browser.open("/checks/" + ids.get("check") + "/drawing").press("#curves summary");
            browser.waitUntil(() -> browser.find(".reader input").isDisplayed());
            browser.find(".reader input").sendKeys(Keys.END);
            assertThat(browser.find(".reader output").getText()).contains(";");

            for (String page : List.of("/run", "/what-if")) {
                browser.open("/checks/" + ids.get("check") + page).waitFor(".reader input");
                browser.find(".reader input").sendKeys(Keys.HOME, Keys.ARROW_RIGHT);
                assertThat(browser.find(".reader output").getText()).as(page).contains(" min: ");
                browser.tap("svg[data-read]");
                String tapped = browser.find(".reader output").getText();
                browser.script(HOVER);
                assertThat(browser.find(".reader output").getText()).as(page).isNotEqualTo(tapped);
            }
            theMarginBarIsReadLikewise(browser, "/checks/" + ids.get("check"));
            assertThat(browser.complaints()).isEmpty();
        }
    }

    private static void theMarginBarIsReadLikewise(Browser browser, String check) {
        browser.open(check).waitFor(".bar-reader input");
        assertThat(browser.find(".bar-reader output").isDisplayed()).isFalse();
        browser.find(".bar-reader input").sendKeys(Keys.ARROW_RIGHT, Keys.ARROW_LEFT);
        String expected = browser.find(".bar-reader output").getText();
        assertThat(expected).endsWith(": expected");
        assertThat(browser.find(".peak").getText())
                .as("the bar says what the sentence says")
                .contains(expected.substring(0, expected.indexOf(':')));
        browser.find(".bar-reader input").sendKeys(Keys.HOME);
        assertThat(browser.find(".bar-reader output").getText()).contains("over the limit: outside the range");
        browser.tap(".bar-reader input");
        assertThat(browser.find(".bar-reader output").getText()).endsWith(": within the range");
        browser.script(HOVER_BAR);
        assertThat(browser.find(".bar-reader output").getText()).contains("over the limit: outside the range");
    }
}
