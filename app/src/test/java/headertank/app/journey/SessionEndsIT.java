package headertank.app.journey;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.app.account.People;
import headertank.app.check.Specs;
import headertank.app.database.DatabaseTest;
import headertank.app.given.Given;
import headertank.app.shop.Role;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The session ends while a form is filled in: sign in on the spot and go on, nothing is lost, and it is saved once. */
@DatabaseTest
class SessionEndsIT {

    private static final String ODD = "Pat <Example> & \"Sons\"";

    @LocalServerPort
    int port;

    @Autowired
    Given given;

    @Autowired
    People people;

    @Autowired
    JdbcClient jdbc;

    Given.Workshop workshop;
    String desk;
    String technician;

    @BeforeEach
    void aWorkshop() {
        workshop = given.aWorkshop(Role.TECHNICIAN);
        desk = people.anAccount(workshop.shop(), Role.FRONT_DESK);
        technician = people.anAccount(workshop.shop(), Role.TECHNICIAN);
    }

    @Test
    void whatTheDeskTypedIsSavedOnceAfterSigningInAgain() {
        long car = workshop.aCar(Specs.easy(), "street");
        try (Browser browser = Browser.at(port)) {
            browser.signIn(desk, People.PASSWORD);
            browser.open("/customers/new").type("name", ODD).type("note", "one\ntwo");
            sendAndGoOn(browser, desk);
            assertThat(browser.text()).contains(ODD);
            assertThat(customers()).isEqualTo(1);
            assertThat(browser.text()).contains("one\ntwo");

            browser.open("/cars/" + car + "/jobs/new").type("asked", "Look at the fans");
            browser.script(
                    "document.getElementById('promised').value = arguments[0]",
                    LocalDate.now(ZoneOffset.UTC).plusDays(2).toString());
            sendAndGoOn(browser, desk);
            assertThat(workshop.rows("job")).isEqualTo(1);

            browser.open("/cars/" + car + "/spec");
            Map.of("fan.currentA", "11 A", "reason", "Measured, " + ODD).forEach(browser::type);
            sendAndGoOn(browser, desk);
            assertThat(workshop.rows("revision")).isEqualTo(2);
            assertThat(browser.path()).endsWith("/revisions/2");
            assertThat(browser.text()).contains("Measured, " + ODD);
            assertThat(browser.complaints())
                    .as("a session that ended is told by its status; a preview on the way is refused")
                    .allMatch(c ->
                            c.matches(".*status of (401|409).*") || c.contains("/spec/preview") && c.contains("403"));
        }
    }

    @Test
    void aWrongPasswordOnTheWayLosesNothing() {
        try (Browser browser = Browser.at(port)) {
            browser.signIn(desk, People.PASSWORD);
            browser.open("/customers/new").type("name", ODD);
            endSessions(desk);
            browser.press("main form button[type=submit]").waitFor("#password");
            browser.type("username", desk).type("password", "wrong-1");
            browser.press("main form button[type=submit]");
            browser.waitUntil(() -> browser.text().contains("still kept"));
            browser.type("username", desk).type("password", People.PASSWORD);
            browser.press("main form button[type=submit]").waitFor("form[action='/customers']");
            browser.press("main form button[type=submit]").waitFor(".notice.done");
            assertThat(browser.text()).contains(ODD);
            assertThat(customers()).isEqualTo(1);
        }
    }

    @Test
    void whatATechnicianEnteredWaitsUntilSomebodySignsInAgain() {
        String list = "/checks/" + workshop.aCheck(workshop.aCar(Specs.easy(), "street")) + "/handover";
        try (Browser browser = Browser.at(port)) {
            browser.signIn(technician, People.PASSWORD);
            browser.width(390).touch().open(list).waitFor("#item-hoses");
            endSessions(technician);
            browser.tap("#item-hoses button[value=DONE]");
            browser.waitUntil(() -> browser.find(".ho-sending").getText().contains("sign in again"));
            assertThat(workshop.rows("measurement")).isZero();
            browser.signIn(technician, People.PASSWORD);
            browser.open(list)
                    .waitUntil(() -> browser.find("#item-hoses").getText().contains("entered"));
            assertThat(workshop.rows("measurement")).isEqualTo(1);
        }
    }

    private void sendAndGoOn(Browser browser, String login) {
        endSessions(login);
        browser.press("main form button[type=submit]").waitFor("#password");
        assertThat(browser.text()).contains("Sign in");
        browser.type("username", login).type("password", People.PASSWORD);
        browser.press("main form button[type=submit]");
        browser.waitUntil(() -> browser.all("#password").isEmpty());
        browser.press("main form button[type=submit]").waitFor(".notice.done");
    }

    private int customers() {
        return jdbc.sql("select count(*) from customer where shop_id = :shop and name = :name")
                .param("shop", workshop.shop())
                .param("name", ODD)
                .query(Integer.class)
                .single();
    }

    private void endSessions(String login) {
        int ended = jdbc.sql("delete from spring_session where principal_name = :login")
                .param("login", login)
                .update();
        assertThat(ended).isPositive();
    }
}
