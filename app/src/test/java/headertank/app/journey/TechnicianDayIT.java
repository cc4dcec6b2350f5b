package headertank.app.journey;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.app.account.People;
import headertank.app.check.Specs;
import headertank.app.database.DatabaseTest;
import headertank.app.job.Jobs;
import headertank.app.shop.Role;
import headertank.calc.carspec.BuildField;
import headertank.calc.quantity.Stated;
import java.io.IOException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.WebElement;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The technician's day on a phone: rate, read, sign, send back, put right, let go; the front desk gives the car back. */
@DatabaseTest
class TechnicianDayIT {

    private static final String LEAK = "Hose at the outlet weeps";

    @LocalServerPort
    int port;

    @Autowired
    People people;

    @Autowired
    Specs specs;

    @Autowired
    Jobs jobs;

    @Autowired
    JdbcClient jdbc;

    String desk;
    String technician;
    String owner;
    long car;
    long job;

    @BeforeEach
    void aChangedCarThatIsPromised() {
        long shop = people.aShop();
        desk = people.anAccount(shop, Role.FRONT_DESK);
        technician = people.anAccount(shop, Role.TECHNICIAN);
        owner = people.anAccount(shop, Role.OWNER);
        people.actAs(desk);
        car = specs.aCar();
        var build = Specs.easy().seen(BuildField.FAN_DRIVE, "ELECTRIC").seen(BuildField.FAN_SENSOR, "RADIATOR_HOSE");
        specs.save(car, build.build(), "drift");
        specs.save(car, build.set(BuildField.FAN_CURRENT, Stated.measured(12)).build(), "drift");
        job = jobs.open(car, "Event on Saturday", LocalDate.now(ZoneId.systemDefault()));
        People.nobody();
    }

    @Test
    void aTechniciansDayIsTouchedFromTheStartPageToTheHandOver() throws IOException {
        try (Browser browser = Browser.at(port)) {
            browser.signIn(technician, People.PASSWORD);
            browser.width(390).touch().open("/");
            String check = rateTheNewest(browser);
            read(browser);
            sign(browser);
            sendBack(browser, check);
            putRight(browser, check);
            letGo(browser);
            assertThat(browser.complaints()).isEmpty();
        }
        try (Browser browser = Browser.at(port)) {
            browser.signIn(desk, People.PASSWORD);
            browser.width(390).touch().open("/");
            browser.tap("a[href='/jobs/" + job + "']").waitFor("a[href$='/hand-over']");
            assertThat(browser.text()).contains("May leave");
            browser.tap("a[href$='/hand-over']").waitFor("form[action$='/hand-over']");
            assertThat(browser.text()).contains("Yes, the customer has the car", "2 were found");
            browser.tap("form[action$='/hand-over'] button").waitFor(".notice.done");
            assertThat(browser.text()).contains("The car is handed over; the job is done.", "Handed over");
        }
        try (Browser browser = Browser.at(port)) {
            browser.signIn(owner, People.PASSWORD);
            browser.open("/jobs/" + job).waitFor("form[action$='/take-back']");
            browser.tap("form[action$='/take-back'] button").waitFor(".error-summary");
            browser.type("reason", "Wrong car")
                    .tap("form[action$='/take-back'] button")
                    .waitFor(".notice.done");
            assertThat(browser.text()).contains("The hand-over is taken back", "Wrong car", "May leave");
        }
    }

    private String rateTheNewest(Browser browser) {
        String newest = "/cars/" + car + "/revisions/2/check";
        assertThat(browser.find("a[href='" + newest + "']").getText()).isEqualTo("To be rated");
        browser.tap("a[href='" + newest + "']").waitFor("form[action$='/revisions/2/checks']");
        browser.tap("form[action$='/revisions/2/checks'] button").waitFor(".big-verdict");
        assertThat(browser.path()).startsWith("/checks/");
        return browser.path().replaceAll("[?#].*", "");
    }

    private static void read(Browser browser) throws IOException {
        assertThat(browser.find(".glance-duty").getText())
                .contains("Drift", "chance to pass")
                .containsPattern("GO");
        assertThat(browser.all(".do-first .action")).isNotEmpty();
        browser.screenshot("technician-day-check");
        browser.tap("#improvements").waitFor("ul.what-ifs li");
        assertThat(browser.all("ul.what-ifs li"))
                .extracting(e -> e.getAttribute("data-kind"))
                .contains("SWITCH", "RAMP", "ONE_FAN_OUT");
        assertThat(browser.scrollsSideways()).isFalse();
        browser.tap(".check-tabs a[href*='/drawing']").waitFor(".layout-drawing");
        assertThat(browser.all(".layout-drawing svg"))
                .isNotEmpty()
                .allSatisfy(s -> assertThat(s.getSize().getHeight()).isGreaterThan(100));
        browser.tap(".check-back").waitFor(".big-verdict");
    }

    private static void sign(Browser browser) {
        browser.tap("#sign").waitFor("form#sign");
        List<WebElement> conditions = browser.all("#sign input[name=accepted]");
        assertThat(conditions).as("the hose sensor asks for a condition").isNotEmpty();
        for (int i = 1; i <= conditions.size(); i++) {
            browser.tap("#sign fieldset label:nth-of-type(" + i + ") input[name=accepted]");
        }
        browser.tap("#sign input[value=DELIVER_WITH_CONDITIONS]").type("remark", "Drift: told the customer.");
        browser.tap("#sign button[type=submit]").waitFor(".notice.done");
        assertThat(browser.find(".glance-line").getText()).contains("Deliver with conditions, signed by");
        browser.tap("#sign").waitFor("#sign .decision");
        assertThat(browser.find("#sign").getText()).contains("Signed off", "Drift: told the customer.");
        browser.tap(".check-back").waitFor(".big-verdict");
    }

    private void sendBack(Browser browser, String check) {
        browser.tap("a[href='" + check + "/handover']").waitFor("#item-hoses");
        browser.tap("a[href='" + check + "/handover/day']").waitFor("#ambient");
        browser.type("ambient", "20 °C").tap(".handover form button").waitFor("#item-hoses");
        browser.tap("#item-hoses button[value=FAULT]");
        browser.waitUntil(() -> browser.find("#note-hoses").isDisplayed());
        assertThat(browser.find("#item-hoses").getText()).contains("Say what is wrong.");
        browser.focused().sendKeys(LEAK);
        browser.tap("#item-hoses button[value=FAULT]");
        browser.waitUntil(
                () -> browser.find("#item-hoses .ho-entered").getText().contains(LEAK));
        browser.tap("a[href='" + check + "/handover/decision']").waitFor("#reason");
        browser.find("#reason").sendKeys("New clamp at the outlet");
        browser.tap("button[value=SEND_BACK]").waitFor(".notice.done");
        assertThat(browser.text()).contains("Noted: the car goes back, with your reason.", "New clamp at the outlet");
        browser.open("/jobs/" + job);
        assertThat(browser.find(".stage").getText()).contains("Sent back");
    }

    private void putRight(Browser browser, String check) {
        browser.open("/").tap(".stage a[href='" + check + "/handover']").waitFor("#item-hoses");
        browser.find("#item-hoses textarea").sendKeys("New clamp, dry");
        browser.tap("#item-hoses button[value=DONE]");
        browser.waitUntil(
                () -> browser.find("#item-hoses .ho-entered").getText().contains("New clamp, dry"));
        browser.open(check + "/handover").waitFor("#faults");
        assertThat(browser.find("#faults").getText()).contains("Sent back").doesNotContain(LEAK);
        browser.find("#faults textarea").sendKeys("Clamp changed");
        browser.tap("#faults button[value=REASON]").waitFor(".notice.done");
        assertThat(browser.all("#faults")).isEmpty();
        browser.tap("a[href='" + check + "/handover/decision']").waitFor("button[value=DELIVER]");
    }

    private static void letGo(Browser browser) {
        assertThat(browser.text()).doesNotContain("Faults that were found");
        browser.all(".handover form input[name^=open]").forEach(i -> i.sendKeys("Test track first"));
        browser.tap("button[value=DELIVER]");
        browser.waitUntil(() -> browser.text().contains("Noted: the car leaves."));
    }
}
