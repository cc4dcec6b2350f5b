package headertank.app.journey;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.app.account.People;
import headertank.app.check.Checks;
import headertank.app.check.Specs;
import headertank.app.check.stored.Decision;
import headertank.app.database.DatabaseTest;
import headertank.app.duty.OwnDuty;
import headertank.app.given.Given;
import headertank.app.job.Jobs;
import headertank.app.shop.Role;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The owner's day by keyboard alone: what is late, the catalogue, the thresholds, the duties, the accounts. */
@DatabaseTest
class OwnerDayIT {

    private static final String NEW_PASSWORD = "another-horse-2";

    @LocalServerPort
    int port;

    @Autowired
    Given given;

    @Autowired
    People people;

    @Autowired
    Checks checks;

    @Autowired
    Jobs jobs;

    @Autowired
    OwnDuty ownDuty;

    @Autowired
    JdbcClient jdbc;

    Given.Workshop workshop;
    String owner;
    String technician;
    long late;
    long unsigned;
    long signed;

    @BeforeEach
    void aShopThatHasWork() {
        workshop = given.aWorkshop(Role.TECHNICIAN);
        technician = people.anAccount(workshop.shop(), Role.TECHNICIAN);
        people.actAs(technician);
        long car = rated();
        late = jobs.open(
                car, "Runs hot uphill", LocalDate.now(ZoneId.systemDefault()).minusDays(3));
        unsigned = workshop.aCheck(car);
        signed = workshop.aCheck(rated());
        workshop.sign(signed, Decision.DELIVER);
        long changed = rated();
        workshop.sign(workshop.aCheck(changed), Decision.DELIVER);
        changedLongAgo(changed);
        owner = people.anAccount(workshop.shop(), Role.OWNER);
        ownDuty.add(owner);
    }

    private long rated() {
        return workshop.aCar(Specs.easy(), "street");
    }

    /** A revision of forty days ago, as nothing that is stored can be made older later. */
    private void changedLongAgo(long car) {
        jdbc.sql("""
            insert into revision (shop_id, car_id, number, parent_number, spec_format, spec_text, spec_sha256,
                                  author_id, reason, saved_at)
            select shop_id, car_id, 2, 1, spec_format, spec_text, spec_sha256, author_id, 'long ago',
                   now() - interval '40 days'
            from revision where car_id = :car and number = 1\
            """).param("car", car).update();
    }

    @Test
    void anOwnersDayNeedsNoMouse(@TempDir Path folder) throws IOException {
        try (Browser browser = Browser.at(port)) {
            browser.signIn(owner, People.PASSWORD);
            Keyboard keyboard = new Keyboard(browser);
            readTheStartPage(browser);
            promiseAnew(browser, keyboard);
            addAPart(browser, keyboard);
            importParts(browser, keyboard, folder);
            judgeMoreStrictly(browser, keyboard);
            switchTheDutyOff(browser, keyboard);
            hire(browser, keyboard);
            assertThat(browser.complaints()).isEmpty();
        }
    }

    private void readTheStartPage(Browser browser) {
        assertThat(text(browser, "tr.late")).contains("3 days late", "Runs hot uphill");
        assertThat(browser.all("a[href='/checks/" + unsigned + "']")).isNotEmpty();
        assertThat(browser.all("a[href='/checks/" + signed + "']")).isEmpty();
        assertThat(browser.all("main table"))
                .last()
                .extracting(WebElement::getText)
                .asString()
                .contains("Revision 1", "Revision 2", "compare");
    }

    private void promiseAnew(Browser browser, Keyboard keyboard) {
        keyboard.skipHead().to("a[href='/jobs/" + late + "']").enter(".job-history");
        keyboard.skipHead().to("a[href='/jobs/" + late + "/edit']").enter("#promised");
        String before = browser.find("#promised").getAttribute("value");
        keyboard.to("#promised").press(Keys.ARROW_RIGHT, Keys.ARROW_RIGHT, Keys.ARROW_UP);
        String after = browser.find("#promised").getAttribute("value");
        assertThat(LocalDate.parse(after)).isEqualTo(LocalDate.parse(before).plusYears(1));
        keyboard.to("main button[type=submit]").enter(".job-history");
        assertThat(browser.text()).contains("The job is changed.").doesNotContain("days late");
        assertThat(browser.all(".job-history li")).hasSize(2);
        assertThat(jdbc.sql("select promised_on from job where id = :id")
                        .param("id", late)
                        .query(LocalDate.class)
                        .single())
                .isEqualTo(LocalDate.parse(after));
    }

    private static void goTo(Browser browser, Keyboard keyboard, String page) {
        keyboard.to("nav a[href='" + page + "']").press(Keys.ENTER);
        browser.waitUntil(() -> browser.path().equals(page));
    }

    private static void addAPart(Browser browser, Keyboard keyboard) {
        browser.open("/");
        goTo(browser, keyboard, "/parts");
        keyboard.to("main a[href='/parts/new']").enter("a[href='/parts/new?kind=CAP']");
        keyboard.to("a[href='/parts/new?kind=CAP']").enter("input[name=name]");
        keyboard.to("input[name=name]").type("Cap of the house");
        keyboard.to("input[name=price]").type("9.50");
        keyboard.to("input[name=currency]").replace("EUR");
        keyboard.to("input[name='coolant.capGaugePa']").type("1.2 bar");
        keyboard.to("main button[type=submit]").enter(".notice.done");
        assertThat(browser.text()).contains("The part is saved.", "Cap of the house");
    }

    private static void importParts(Browser browser, Keyboard keyboard, Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("parts.csv"), """
            kind,name,price,currency,coolant.capGaugePa
            CAP,Cap of the house,12.00,EUR,1.2 bar
            CAP,Cap from the file,8.00,EUR,1.1 bar
            """);
        browser.open("/");
        goTo(browser, keyboard, "/parts");
        keyboard.to("main a[href='/parts/import']").enter("#file");
        keyboard.to("#file").type(file.toString());
        keyboard.to("main button[type=submit]").enter("input[name=fingerprint]");
        assertThat(browser.text()).contains("One part would be added, 1 changed, 0 left as they are.");
        keyboard.to("form[action='/parts/import/confirm'] button").enter("#found");
        assertThat(browser.text()).contains("The file is imported.", "Cap from the file", "12.00");
    }

    /** A stricter threshold makes signed checks out of date, and says that this is why. */
    private void judgeMoreStrictly(Browser browser, Keyboard keyboard) {
        goTo(browser, keyboard, "/settings");
        keyboard.to("#goBoiling").replace("30 K");
        keyboard.to("main button[type=submit]").enter(".notice.done");
        assertThat(browser.text()).contains("The settings are saved.");
        browser.open("/checks/" + signed);
        assertThat(text(browser, ".out-of-date"))
                .contains("Out of date.", "The shop has moved its thresholds or limits since.");
        browser.open("/checks/" + signed + "/sign");
        assertThat(text(browser, "#sign")).contains("Signed off");
    }

    private static void switchTheDutyOff(Browser browser, Keyboard keyboard) {
        goTo(browser, keyboard, "/duties");
        String duty = "#duty-" + OwnDuty.ID;
        assertThat(text(browser, duty)).contains(OwnDuty.LABEL).doesNotContain("switched off");
        keyboard.to(duty + " form button").enter(".notice.done");
        assertThat(text(browser, duty)).contains(OwnDuty.LABEL, "switched off");
    }

    private void hire(Browser browser, Keyboard keyboard) {
        String login = "new." + owner;
        goTo(browser, keyboard, "/accounts");
        keyboard.to("#name").type("Nia Newly-Invented");
        keyboard.to("#login").type(login);
        keyboard.to("form[action='/accounts'] input[value=FRONT_DESK]").press(Keys.SPACE);
        keyboard.to("form[action='/accounts'] button").enter(".notice.done");
        assertThat(browser.text()).contains("The account is added.", "Nia Newly-Invented");
        String first = text(browser, "#made");

        long account = jdbc.sql("select id from account where login = :login")
                .param("login", technician)
                .query(Long.class)
                .single();
        keyboard.skipHead()
                .to("form[action='/accounts/" + account + "/password'] button")
                .enter(".notice.done");
        String second = text(browser, "#made");
        signInAnew(browser, technician, second);
        signInAnew(browser, login, first);
        keyboard.to("#old").type(first);
        keyboard.to("#password").type(NEW_PASSWORD).enter(".notice.done");
        assertThat(browser.text()).contains("Your password is changed.");
    }

    private static void signInAnew(Browser browser, String login, String password) {
        browser.signOut();
        browser.signIn(login, password);
        assertThat(text(browser, "form.out")).contains(login.startsWith("new.") ? "Nia" : login);
    }

    private static String text(Browser browser, String css) {
        return browser.find(css).getText();
    }
}
