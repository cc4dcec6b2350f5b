package headertank.app.journey;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.app.account.People;
import headertank.app.database.DatabaseTest;
import headertank.app.shop.Role;
import java.io.IOException;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/**
 * The whole path in a real browser: log a car, rate it, sign it off, change it, compare, report that it ran hot. Pictures of
 * each page at three widths land in {@code target/screenshots}.
 */
@DatabaseTest
class WholePathIT {

    private static final int[] WIDTHS = {390, 820, 1440};

    /** What is known of the car, as somebody at a counter would type it. */
    private static final Map<String, String> SHEET = Map.ofEntries(
            Map.entry("engine.displacementM3", "3.0 L"),
            Map.entry("engine.ratedPowerW", "400 hp"),
            Map.entry("engine.ratedSpeedPerS", "6800 rpm"),
            Map.entry("use.ambientK", "30 C"),
            Map.entry("radiator.coreWidthM", "680 mm"),
            Map.entry("radiator.coreHeightM", "440 mm"),
            Map.entry("radiator.coreDepthM", "50 mm"),
            Map.entry("fan.count", "2"),
            Map.entry("fan.diameterM", "14 in"),
            Map.entry("fan.freeFlowM3PerS", "1900 cfm"),
            Map.entry("fan.currentA", "24 A"),
            Map.entry("fan.shroudCoverage", "95 %"),
            Map.entry("coolant.glycolVolumeShare", "30 %"),
            Map.entry("coolant.capGaugePa", "1.3 bar"),
            Map.entry("electric.alternatorA", "140 A"));

    @LocalServerPort
    int port;

    @Autowired
    People people;

    @Test
    void aCarIsLoggedRatedSignedChangedComparedAndReported() throws IOException {
        long shop = people.aShop();
        String desk = people.anAccount(shop, Role.FRONT_DESK);
        String technician = people.anAccount(shop, Role.TECHNICIAN);
        String car;
        try (Browser browser = Browser.at(port)) {
            browser.signIn(desk, People.PASSWORD);
            car = logTheCar(browser);
        }
        try (Browser browser = Browser.at(port)) {
            browser.signIn(technician, People.PASSWORD);
            String check = rate(browser, car, 1);
            assertThat(browser.text()).contains("Drift", "chance to pass the", "Why", "Assumed (");
            pictures(browser, check, "check");
            signOff(browser);
            assertThat(browser.text()).contains("Signed");
        }
        try (Browser browser = Browser.at(port)) {
            browser.signIn(desk, People.PASSWORD);
            changeTheFans(browser, car);
            browser.open(car);
            assertThat(browser.text()).contains("Revision 2", "Out of date");
            pictures(browser, car, "car");
            browser.open(car + "/compare?from=1&to=2");
            browser.waitFor(".cost");
            assertThat(browser.text()).contains("costs margin", "Fan mounting");
            pictures(browser, car + "/compare?from=1&to=2", "compare");
            pictures(browser, car + "/history", "history");
            reportItHot(browser, car);
            browser.waitFor(".since");
            assertThat(browser.text()).contains("Fans", "118");
            pictures(browser, browser.path(), "ran-hot");
            assertThat(browser.complaints()).isEmpty();
        }
    }

    private String logTheCar(Browser browser) throws IOException {
        browser.open("/cars/new").type("plate", "SAMPLE 7").type("newCustomerName", "Ines Invented");
        browser.press("main form button[type=submit]");
        browser.waitFor(".notice.done");
        String car = browser.path().replaceAll("[?#].*", "");
        browser.open(car + "/spec");
        browser.find("input[name=carClass][value=DRIFT]").click();
        browser.find("input[name=duties][value=drift]").click();
        SHEET.forEach(browser::type);
        browser.waitUntil(() -> browser.find("#preview").getText().contains("decided by"));
        pictures(browser, null, "spec");
        browser.press("main form button[type=submit]:not(.second)");
        browser.waitUntil(() -> !browser.path().contains("/spec"));
        return car;
    }

    private static String rate(Browser browser, String car, int revision) {
        browser.open(car + "/revisions/" + revision + "/check");
        browser.press("main form button[type=submit]");
        browser.waitUntil(() -> browser.path().startsWith("/checks/"));
        return browser.path().replaceAll("[?#].*", "");
    }

    private static void signOff(Browser browser) {
        boolean refused = browser.find("main").getText().contains("NO-GO");
        browser.press("#sign").waitFor("form#sign");
        browser.all("#sign input[name=accepted]").forEach(WebElement::click);
        boolean conditions = !browser.all("#sign input[name=accepted]").isEmpty();
        String decision = refused ? "HOLD_BACK" : conditions ? "DELIVER_WITH_CONDITIONS" : "DELIVER";
        browser.find("#sign input[name=decision][value=" + decision + "]").click();
        browser.type("remark", "Hot run done, fan starts seen, cap tested.");
        browser.press("#sign button[type=submit]");
        browser.waitUntil(() -> browser.find("main").getText().contains("Signed. What is signed stays."));
    }

    private static void changeTheFans(Browser browser, String car) {
        browser.open(car + "/spec");
        browser.all("details").forEach(d -> {
            if (d.getAttribute("open") == null) {
                d.findElement(By.tagName("summary")).click();
            }
        });
        browser.find("select[name='fan.mounting'] option[value=PUSHING]").click();
        browser.type("fan.currentA", "11 A")
                .type("fan.shroudCoverage", "55 %")
                .type("reason", "Fans swapped for a pair from an offer, mounted in front.");
        browser.press("main form button[type=submit]");
        browser.waitUntil(() -> !browser.path().contains("/spec"));
    }

    private static void reportItHot(Browser browser, String car) {
        browser.open(car + "/incidents/new")
                .type("doing", "third run in a row, fans running")
                .type("ambient", "33 C")
                .type("reading", "118 C");
        browser.find("select[name=duty] option[value=drift]").click();
        browser.press("main form button[type=submit]");
        browser.waitUntil(() -> browser.path().matches("/incidents/\\d+.*"));
    }

    /** Pictures of a page at three widths; none of them may scroll sideways. */
    private static void pictures(Browser browser, String path, String name) throws IOException {
        for (int width : WIDTHS) {
            browser.width(width);
            if (path != null) {
                browser.open(path);
            }
            browser.screenshot(name + "-" + width);
            assertThat(browser.scrollsSideways()).as("%s at %d", name, width).isFalse();
        }
        browser.width(1440);
    }
}
