package headertank.app.journey;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.app.account.People;
import headertank.app.check.Checks;
import headertank.app.check.page.CheckTab;
import headertank.app.database.DatabaseTest;
import headertank.app.demo.DemoData;
import headertank.app.shop.Role;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.openqa.selenium.WebElement;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.context.TestPropertySource;

/**
 * Whoever opens a check sees in one look whether the car may go, why, and what to do first: on a phone, a tablet and a screen,
 * for every demo car that is rated. What stands behind is at most three tablets long.
 */
@DatabaseTest
@TestPropertySource(properties = "headertank.demo=true")
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class FirstScreenIT {

    /** Sizes of windows [px]; a phone and a tablet that are held upright, and a screen on a desk (modelling choice). */
    private static final int[][] WINDOWS = {{390, 844}, {820, 1180}, {1440, 900}};

    private static final int TABLET = 1180;
    private static final int LEAST_VERDICT = 44;
    private static final int LOWEST_VERDICT = 400;
    private static final int LEAST_BUTTON = 56;
    private static final int BUTTONS = 3;
    private static final int MOST_ACTIONS = 3;

    private static final String SEES = "return !document.querySelector('.htmx-request, [hx-trigger=load]')";
    private static final String VERDICT = """
        const words = document.querySelector('.glance-duty .big-verdict strong');
        const sizes = [words, ...words.querySelectorAll('*')].map(e => parseFloat(getComputedStyle(e).fontSize));
        return [Math.min(...sizes), words.getBoundingClientRect().top, words.textContent.trim().length]\
        """;
    private static final String BOTTOM = "return document.querySelector(arguments[0]).getBoundingClientRect().bottom";
    private static final String HEIGHTS =
            "return [...document.querySelectorAll('.glance-do a')].map(a => a.getBoundingClientRect().height)";

    @LocalServerPort
    int port;

    @Autowired
    DemoData demo;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    People people;

    @Autowired
    Checks checks;

    private final List<String> faults = new ArrayList<>();
    private Map<String, Long> ids;
    private List<Long> rated;

    /** Every revision of every demo car is rated. */
    @BeforeAll
    void everyDemoCarIsRated() {
        ids = demo.ensure();
        people.actAs(DemoData.login(Role.TECHNICIAN.name()).getKey());
        jdbc.sql("select car_id, number from revision r where not exists "
                        + "(select 1 from check_run k where k.revision_id = r.id) order by id")
                .query((row, n) -> Map.entry(row.getLong("car_id"), row.getInt("number")))
                .list()
                .forEach(r -> checks.run(r.getKey(), r.getValue()));
        People.nobody();
        rated = jdbc.sql("select id from check_run order by id")
                .query(Long.class)
                .list();
        assertThat(rated).hasSizeGreaterThanOrEqualTo(7);
    }

    @Test
    void goOrNotWhyAndWhatFirstStandOnOneScreen() {
        faults.clear();
        try (Browser browser = Browser.at(port)) {
            signIn(browser);
            for (String language : List.of("en", "de")) {
                speak(browser, language);
                for (long check : rated) {
                    browser.open("/checks/" + check);
                    browser.waitUntil(() -> Boolean.TRUE.equals(browser.script(SEES)));
                    for (int[] window : WINDOWS) {
                        browser.size(window[0], window[1]);
                        look(browser, "check " + check + " in " + language + " at " + window[0] + ": ", window[1]);
                    }
                }
            }
            assertThat(browser.complaints()).isEmpty();
        }
        assertThat(faults).as(String.join("\n", faults)).isEmpty();
    }

    /** Rating takes a moment: the page says so at once, its button rests, and then the check is there. */
    @Test
    void aRatingSaysThatItIsOnItsWay() {
        String form = "form[data-wait]";
        try (Browser browser = Browser.at(port)) {
            signIn(browser);
            browser.open("/checks/" + ids.get("check"));
            assertThat(browser.find(form + " .wait").isDisplayed()).isFalse();
            browser.script("window.addEventListener('submit', sent => sent.preventDefault())");
            browser.press(form + " button")
                    .waitUntil(() -> !browser.find(form + " button").isEnabled());
            assertThat(browser.find(form + " .wait").getText()).contains("variants of this car");
            assertThat(browser.find(form).getAttribute("aria-busy")).isEqualTo("true");

            browser.open("/checks/" + ids.get("check")).press(form + " button").waitFor(".notice");
            assertThat(browser.path()).startsWith("/checks/");
            assertThat(browser.all(form + " .wait")).noneMatch(WebElement::isDisplayed);
        }
    }

    private void look(Browser browser, String place, int height) {
        List<?> verdict = (List<?>) browser.script(VERDICT);
        fault(number(verdict.get(0)) < LEAST_VERDICT, place + "the verdict is smaller than 44 px: " + verdict);
        fault(number(verdict.get(1)) > LOWEST_VERDICT, place + "the verdict begins below 400 px: " + verdict);
        fault(number(verdict.get(2)) == 0, place + "no verdict");
        for (String part :
                List.of(".chance", ".peak", ".margin-bar", ".do-first li", ".why p", ".glance-do", ".safety")) {
            double bottom = number(browser.script(BOTTOM, part));
            fault(bottom == 0, place + part + " is not to be seen");
            fault(bottom > height, place + part + " ends at " + bottom + ", below the fold at " + height);
        }
        List<?> buttons = (List<?>) browser.script(HEIGHTS);
        fault(buttons.size() != BUTTONS, place + buttons.size() + " buttons");
        fault(browser.all(".do-first li").size() > MOST_ACTIONS, place + "more than three things to do first");
        fault(
                browser.all(".do-first li:not(:has(.degrees))").size() > 0,
                place + "something to do without its degrees");
        fault(browser.all(".big-verdict .shape").isEmpty(), place + "a verdict without its sign");
        buttons.forEach(h -> fault(number(h) < LEAST_BUTTON, place + "a button of " + h + " px"));
        fault(browser.scrollsSideways(), place + "scrolls sideways");
    }

    @Test
    void whatStandsBehindIsAtMostThreeTabletsLong() {
        faults.clear();
        try (Browser browser = Browser.at(port)) {
            signIn(browser);
            browser.size(820, TABLET);
            for (long check : rated) {
                for (CheckTab tab : CheckTab.values()) {
                    further(browser, check, tab.path());
                }
                further(browser, check, "sign");
            }
            assertThat(browser.complaints()).isEmpty();
        }
        assertThat(faults).as(String.join("\n", faults)).isEmpty();
    }

    private void further(Browser browser, long check, String page) {
        browser.open("/checks/" + check + "/" + page);
        String place = "/checks/" + check + "/" + page + ": ";
        double length = number(browser.script("return document.documentElement.scrollHeight"));
        fault(length > 3 * TABLET, place + length + " px long");
        fault(browser.all(".check-page, .check-top").isEmpty(), place + "is no page of a check");
        fault(browser.scrollsSideways(), place + "scrolls sideways");
    }

    @Test
    void linksToPlacesOnTheOnePageOfBeforeLeadOn() {
        String check = "/checks/" + ids.get("check");
        try (Browser browser = Browser.at(port)) {
            signIn(browser);
            for (Map.Entry<String, String> old : Map.of(
                            "#sign",
                            "/sign",
                            "#flags",
                            "/flags",
                            "#improvements",
                            "/what-if",
                            "#assumptions",
                            "/assumed")
                    .entrySet()) {
                browser.open("/glossary").open(check + old.getKey());
                browser.waitUntil(() -> browser.path().equals(check + old.getValue()));
            }
        }
    }

    /** What is advised stands in the form of the spec, and nothing of it is saved. */
    @Test
    void eachThingToDoOpensTheSpecWithThatChangeTypedIn() {
        try (Browser browser = Browser.at(port)) {
            signIn(browser);
            browser.size(820, TABLET).open("/checks/" + ids.get("check"));
            String first = browser.find(".do-first .action > span").getText();
            String cover = "[name='fan.shroudCoverage']";
            browser.press(".do-first a.action").waitFor("#typed-in");
            assertThat(browser.find("#typed-in").getText()).contains(first, "not saved yet");
            assertThat(browser.find("#reason").getAttribute("value")).isEqualTo(first);
            assertThat(browser.find(cover).getAttribute("value")).isEqualTo("100 %");
            browser.open("/cars/" + ids.get("car") + "/spec");
            assertThat(browser.find(cover).getAttribute("value")).isEqualTo("55 %");

            browser.open("/checks/" + ids.get("check")).press(".do-first li:last-child a.action");
            browser.waitUntil(() -> browser.path().contains("/spec?measure="));
            String field = browser.path().replaceAll(".*#", "");
            assertThat(browser.find("#" + field).isDisplayed()).isTrue();
            assertThat(browser.find("#" + field + " ~ select").getAttribute("value"))
                    .isEqualTo("MEASURED");
        }
    }

    private void signIn(Browser browser) {
        var technician = DemoData.login(Role.TECHNICIAN.name());
        browser.signIn(technician.getKey(), technician.getValue());
        speak(browser, "en");
    }

    /** The account keeps its language, for the next test too. */
    private static void speak(Browser browser, String language) {
        browser.press("button[name=code][value=" + language + "]").waitFor("html[lang=" + language + "]");
    }

    private void fault(boolean is, String what) {
        if (is) {
            faults.add(what);
        }
    }

    private static double number(Object value) {
        return ((Number) value).doubleValue();
    }
}
