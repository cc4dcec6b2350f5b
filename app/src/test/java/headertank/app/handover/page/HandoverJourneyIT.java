package headertank.app.handover.page;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.app.account.People;
import headertank.app.check.Checks;
import headertank.app.check.Specs;
import headertank.app.database.DatabaseTest;
import headertank.app.given.Given;
import headertank.app.handover.Handovers;
import headertank.app.handover.photo.Pictures;
import headertank.app.journey.Browser;
import headertank.app.shop.Role;
import headertank.calc.carspec.BuildField;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.WebElement;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The check list on a phone whose connection comes and goes. */
@DatabaseTest
class HandoverJourneyIT {

    private static final int TARGET_PX = 56;
    private static final double TENTH_OF_A_PHONE_PX = 84.4;

    @LocalServerPort
    int port;

    @Autowired
    Given given;

    @Autowired
    People people;

    @Autowired
    Checks checks;

    @Autowired
    Handovers handovers;

    @Autowired
    JdbcClient jdbc;

    long check;
    String login;

    @BeforeEach
    void aRatedCar() {
        var workshop = given.aWorkshop(Role.TECHNICIAN);
        login = people.anAccount(workshop.shop(), Role.TECHNICIAN);
        long car = workshop.aCar(Specs.easy().seen(BuildField.FAN_DRIVE, "ELECTRIC"), "street");
        check = workshop.aCheck(car);
        handovers.setDay(check, 293.15, UUID.randomUUID());
    }

    @Test
    void whatIsEnteredWithoutAConnectionIsSentLaterAndOnce(@TempDir Path folder) throws IOException {
        Path photo = Files.write(folder.resolve("belt.jpg"), Pictures.held(1, 800, 600));
        String list = "/checks/" + check + "/handover";
        try (Browser browser = Browser.at(port)) {
            browser.signIn(login, People.PASSWORD);
            browser.width(390).touch().open(list);
            unfold(browser);
            browser.offline(true);
            browser.tap("#item-hoses button[value=DONE]");
            browser.find("#item-voltage input[name=value]").sendKeys("13.4 V");
            browser.tap("#item-voltage button[value=MEASURED]");
            browser.tap("#item-belt-run .ho-more summary");
            browser.find("#item-belt-run input[type=file]").sendKeys(photo.toString());
            browser.find("#item-belt-run input[name=caption]").sendKeys("Belt from the front");
            browser.tap("#item-belt-run .ho-photo button");
            browser.tap("#item-leaks-hot .ho-more summary");
            browser.find("#item-leaks-hot textarea").sendKeys("only typed");
            browser.waitUntil(() -> bar(browser).contains("Waiting to send: 3"));
            assertThat(browser.find("#item-hoses").getText()).contains("waiting to be sent");
            assertThat(rows("measurement")).isZero();
            reloadInVain(browser, list);

            browser.offline(false).open(list);
            browser.waitUntil(() -> bar(browser).contains("All sent"));
            unfold(browser);
            assertThat(rows("measurement")).isEqualTo(2);
            assertThat(rows("handover_photo")).isEqualTo(1);
            assertThat(browser.find("#item-voltage").getText()).contains("13.4 V", "As expected");
            assertThat(browser.find("#item-belt-run img").getAttribute("alt")).isEqualTo("Belt from the front");
            assertThat(browser.find("#item-leaks-hot textarea").getAttribute("value"))
                    .isEqualTo("only typed");
            assertThat(browser.find(".ho-progress").getText()).contains(", 2 done, ");
            browser.open(list);
            assertThat(browser.find(".ho-progress").getText()).contains(", 2 done, ");
            assertThat(rows("measurement")).isEqualTo(2);
        }
    }

    @Test
    void theNextOpenItemIsOneTapAwayAndSoIsTheDecision() {
        try (Browser browser = Browser.at(port)) {
            browser.signIn(login, People.PASSWORD);
            browser.width(390).touch().open("/checks/" + check + "/handover");
            assertThat(browser.all(".ho-stage[open]"))
                    .as("the stage that is worked on")
                    .hasSize(1);
            assertThat(browser.all(".ho-stage .ho-caution")).isNotEmpty();
            for (WebElement stage : browser.all(".ho-stage")) {
                assertThat(stage.findElements(By.cssSelector(".ho-caution")).stream()
                                .map(c -> c.getAttribute("textContent"))
                                .toList())
                        .doesNotHaveDuplicates();
            }
            for (String item : List.of("hoses", "cap-test")) {
                List<WebElement> two = browser.all("#item-" + item + " .ho-line .ho-two button");
                assertThat(two).hasSize(2).allSatisfy(b -> assertThat(b.isDisplayed())
                        .isTrue());
                assertThat(two.get(0).getLocation().getY())
                        .isEqualTo(two.get(1).getLocation().getY());
            }
            assertThat(browser.find("#item-cap-test .ho-line input[name=value]").isDisplayed())
                    .isTrue();

            List<String> open = browser.all(".ho-item[data-open=true]").stream()
                    .map(e -> e.getAttribute("id"))
                    .toList();
            List<String> visited = new ArrayList<>();
            for (int i = 0; i < open.size(); i++) {
                visited.add(nextItem(browser));
                assertThat(heightOfTheBar(browser)).isLessThanOrEqualTo(TENTH_OF_A_PHONE_PX);
            }
            assertThat(visited).as("one tap for each").isEqualTo(open);
            assertThat(nextItem(browser)).as("and round again").isEqualTo(open.get(0));
            browser.tap("#" + open.get(1) + " button[value=FAULT]");
            assertThat(browser.focused().getAttribute("id"))
                    .as("a fault needs words")
                    .isEqualTo(open.get(1).replace("item-", "note-"));
            assertThat(rows("measurement")).isZero();
            browser.tap(".ho-bar a:last-child");
            browser.waitUntil(() -> browser.path().endsWith("/handover/decision"));
        }
    }

    @Test
    void theCountsInTheBarAddUpWhileThePageIsWorkedOn() {
        try (Browser browser = Browser.at(port)) {
            browser.signIn(login, People.PASSWORD);
            browser.width(390).touch().open("/checks/" + check + "/handover");
            unfold(browser);
            int all = browser.all(".ho-item").size();
            assertThat(counts(browser)).containsExactly(all, 0, 0, all);
            browser.tap("#item-hoses button[value=DONE]");
            browser.waitUntil(() -> counts(browser).equals(List.of(all - 1, 1, 0, all)));
            int cold = browser.all(".ho-stage:first-of-type .ho-item").size();
            assertThat(browser.find(".ho-stage:first-of-type .ho-count").getText())
                    .isEqualTo((cold - 1) + " open of " + cold);
            browser.tap("#item-bleed .ho-more summary");
            browser.waitUntil(() -> browser.find("#note-bleed").isDisplayed());
            browser.find("#note-bleed").sendKeys("done yesterday");
            browser.tap("#item-bleed button[value=NOT_APPLICABLE]");
            browser.waitUntil(() -> counts(browser).equals(List.of(all - 2, 1, 1, all)));
            assertThat(browser.find("#item-hoses").getText()).contains("✓ entered");
            assertThat(browser.find("#item-bleed").getText()).contains("left out", "done yesterday");
            browser.find("#value-cap-test").sendKeys("0.9 bar");
            browser.tap("#item-cap-test button[value=MEASURED]");
            browser.waitUntil(() -> browser.find("#item-cap-test").getText().contains("✕ fault"));
            assertThat(counts(browser)).containsExactly(all - 2, 1, 1, all);
            browser.open("/checks/" + check + "/handover");
            assertThat(counts(browser)).containsExactly(all - 2, 1, 1, all);
        }
    }

    /** Stages beside the one that is worked on are folded. */
    private static void unfold(Browser browser) {
        while (!browser.all(".ho-stage:not([open]) > summary").isEmpty()) {
            browser.tap(".ho-stage:not([open]) > summary");
        }
    }

    /** Open, done, left out, all. */
    private static List<Integer> counts(Browser browser) {
        return Pattern.compile("\\d+")
                .matcher(browser.find(".ho-progress").getText())
                .results()
                .map(n -> Integer.valueOf(n.group()))
                .toList();
    }

    private static double heightOfTheBar(Browser browser) {
        return browser.find(".ho-bar").getSize().getHeight();
    }

    /** Where the way to the next open item leads. */
    private static String nextItem(Browser browser) {
        browser.find("#ho-next").click();
        return (String) browser.script("return document.activeElement.closest('.ho-item').id");
    }

    @Test
    void everythingThatIsTouchedIsLargeAndThePageNeverScrollsSideways() throws IOException {
        String list = "/checks/" + check + "/handover";
        try (Browser browser = Browser.at(port)) {
            browser.signIn(login, People.PASSWORD);
            for (String page : List.of(list, list + "/day", list + "/decision")) {
                for (int width : new int[] {390, 820, 1440}) {
                    browser.width(width).open(page);
                    browser.screenshot(
                            "handover" + page.substring(list.length()).replace('/', '-') + "-" + width);
                    assertThat(browser.scrollsSideways())
                            .as("%s at %d", page, width)
                            .isFalse();
                }
                browser.width(390).open(page);
                assertThat(browser.all(
                                ".handover button, .handover a, .handover summary, .handover input:not([type=hidden]), "
                                        + ".handover textarea"))
                        .filteredOn(WebElement::isDisplayed)
                        .isNotEmpty()
                        .allSatisfy(e -> assertThat(e.getSize().getHeight())
                                .as(e.getTagName() + " " + e.getText())
                                .isGreaterThanOrEqualTo(TARGET_PX));
            }
            assertThat(browser.complaints()).isEmpty();
        }
    }

    /** A page that is loaded anew without a connection shows the browser's own error. */
    private static void reloadInVain(Browser browser, String list) {
        try {
            browser.open(list);
        } catch (WebDriverException noConnection) {
            assertThat(noConnection.getMessage()).contains("ERR_INTERNET_DISCONNECTED");
        }
    }

    private static String bar(Browser browser) {
        return browser.find(".ho-sending").getText();
    }

    private long rows(String table) {
        return jdbc.sql("select count(*) from " + table + " where check_run_id = :check")
                .param("check", check)
                .query(Long.class)
                .single();
    }
}
