package headertank.app.journey;

import static headertank.calc.quantity.Provenance.DATASHEET;
import static headertank.calc.quantity.Provenance.GUESSED;
import static headertank.calc.quantity.Provenance.MEASURED;
import static org.assertj.core.api.Assertions.assertThat;

import headertank.app.account.People;
import headertank.app.carspec.Spec;
import headertank.app.carspec.SpecBuilder;
import headertank.app.carspec.SpecFormat;
import headertank.app.database.DatabaseTest;
import headertank.app.shop.Role;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import headertank.calc.quantity.Provenance;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The counter: a drift car from a sheet of paper by keyboard within three minutes, and nothing typed is ever lost. */
@DatabaseTest
class FrontDeskJourneyIT {

    /** What folds the part of the page that a field is in. */
    private static final String HEAD = """
        const part = document.getElementsByName(arguments[0])[0].closest('details.part');
        return part && part.querySelector('summary')\
        """;

    private static final String IN_ANOTHER_PART = """
        const open = document.activeElement.closest('details');
        return document.querySelector('details.part[open] :focus') !== null && open !== arguments[0].parentElement\
        """;

    private record Entry(String text, Provenance from) {}

    /** The sheet, as it was written at the car: the invented drift car of the demo shop. */
    private static final Map<BuildField, Entry> SHEET = sheet();

    @LocalServerPort
    int port;

    @Autowired
    People people;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    SpecFormat format;

    long shop;
    String desk;

    @BeforeEach
    void aCounter() {
        shop = people.aShop();
        desk = people.anAccount(shop, Role.FRONT_DESK);
    }

    private static Map<BuildField, Entry> sheet() {
        Map<BuildField, Entry> sheet = new LinkedHashMap<>();
        sheet.put(BuildField.ENGINE_CLASS, new Entry("PETROL_TURBO", MEASURED));
        sheet.put(BuildField.ENGINE_DISPLACEMENT, new Entry("2998 cc", DATASHEET));
        sheet.put(BuildField.ENGINE_POWER, new Entry("330 kW", MEASURED));
        sheet.put(BuildField.ENGINE_SPEED, new Entry("6800 rpm", MEASURED));
        sheet.put(BuildField.FUEL, new Entry("E85", MEASURED));
        sheet.put(BuildField.AMBIENT, new Entry("35 C", GUESSED));
        sheet.put(BuildField.CORE_CLASS, new Entry("two-row-aluminium", MEASURED));
        sheet.put(BuildField.CORE_WIDTH, new Entry("600 mm", MEASURED));
        sheet.put(BuildField.CORE_HEIGHT, new Entry("400 mm", MEASURED));
        sheet.put(BuildField.CORE_DEPTH, new Entry("52 mm", MEASURED));
        sheet.put(BuildField.CORE_TILT, new Entry("20", MEASURED));
        sheet.put(BuildField.FAN_DRIVE, new Entry("ELECTRIC", MEASURED));
        sheet.put(BuildField.FAN_COUNT, new Entry("2", MEASURED));
        sheet.put(BuildField.FAN_DIAMETER, new Entry("14 in", DATASHEET));
        sheet.put(BuildField.FAN_MOUNTING, new Entry("PULLING", MEASURED));
        sheet.put(BuildField.FAN_FLOW, new Entry("1900 cfm", DATASHEET));
        sheet.put(BuildField.FAN_CURRENT, new Entry("25 A", MEASURED));
        sheet.put(BuildField.FAN_START_CURRENT, new Entry("30 A", MEASURED));
        sheet.put(BuildField.FAN_COVER, new Entry("90 %", MEASURED));
        sheet.put(BuildField.CONTROL_KIND, new Entry("RAMP", MEASURED));
        sheet.put(BuildField.CONTROL_SET, new Entry("85 C", MEASURED));
        sheet.put(BuildField.CONTROL_BAND, new Entry("15 K", MEASURED));
        sheet.put(BuildField.COOLANT_BASE, new Entry("ETHYLENE_GLYCOL", MEASURED));
        sheet.put(BuildField.COOLANT_GLYCOL, new Entry("30 %", MEASURED));
        sheet.put(BuildField.CAP_PRESSURE, new Entry("1.3 bar", DATASHEET));
        sheet.put(BuildField.THERMOSTAT, new Entry("FITTED", MEASURED));
        sheet.put(BuildField.THERMOSTAT_OPENING, new Entry("78 C", DATASHEET));
        sheet.put(BuildField.GAUGE_SENSOR, new Entry("HEAD", MEASURED));
        sheet.put(BuildField.AIR_EXIT, new Entry("HOOD_VENT", MEASURED));
        sheet.put(BuildField.ALTERNATOR, new Entry("110 A", DATASHEET));
        return sheet;
    }

    private static Spec spec() {
        SpecBuilder spec = SpecBuilder.of(CarClass.DRIFT, "drift");
        SHEET.forEach((field, entry) -> {
            if (field.isChoice()) {
                spec.seen(field, entry.text());
            } else {
                spec.set(field, entry.text(), entry.from());
            }
        });
        return spec.spec();
    }

    @Test
    void aWholeVisitTakesThreeMinutesAndNoMoreThan250KeysByKeyboardAlone(TestReporter report) {
        try (Browser browser = Browser.at(port)) {
            browser.signIn(desk, People.PASSWORD);
            browser.open("/");
            Typist typist = new Typist(browser);
            browser.waitUntil(() -> browser.focused().getText().equals("Log a car"));
            typist.press(Keys.ENTER);
            typist.waitForPage("#q:focus");
            takeIn(browser, typist);
            fillIn(browser, typist);
            typist.think().pressWithControl(Keys.ENTER);
            browser.waitUntil(() -> browser.path().endsWith("/revisions/1"));
            typist.waitForPage(".notice.done");
            assertThat(format.read(saved()).build()).isEqualTo(spec().build());
            assertThat(format.read(saved()).dutyIds()).containsExactly("drift");
            openTheJob(browser, typist);
            report.publishEntry("whole visit of the drift car", typist.toString());
            System.out.println("Whole visit of the drift car: " + typist);
            assertThat(typist.seconds()).as("%s", typist).isBetween(60.0, 180.0);
            assertThat(typist.keys()).as("%s", typist).isBetween(150, 250);
            assertThat(browser.stored()).isEmpty();
            assertThat(browser.complaints()).isEmpty();
        }
    }

    private static void takeIn(Browser browser, Typist typist) {
        typist.think().type("DEMO 02");
        browser.waitUntil(() -> browser.find("#found").getText().contains("Nothing found"));
        typist.press(Keys.ENTER);
        browser.waitUntil(() -> browser.path().contains("q="));
        typist.waitForPage("#make:focus");
        for (String part : List.of("Oskelle", "K6 saloon", "2003", "Bo Sample", "000 555 0102")) {
            typist.think().type(part).press(Keys.TAB);
        }
        typist.think().press(Keys.TAB).press(Keys.ENTER);
        typist.waitForPage("form.spec input:focus");
    }

    /** Most of the sheet was measured: said once at the first field, and only the others say otherwise. */
    private static void fillIn(Browser browser, Typist typist) {
        typist.think();
        while (!"DRIFT".equals(browser.focused().getAttribute("value"))
                || !browser.focused().isSelected()) {
            typist.press(Keys.ARROW_DOWN);
        }
        typist.press(Keys.ENTER).think().press(Keys.SPACE);
        boolean stands = false;
        for (BuildField field : onThePage(browser)) {
            Entry entry = SHEET.get(field);
            goTo(browser, typist.think(), field);
            if (!stands) {
                typist.type("==");
                stands = true;
            }
            if (field.isChoice()) {
                typist.choose(entry.text());
            } else {
                typist.type(asShort(browser, field, entry.text()));
            }
            if (entry.from() != MEASURED) {
                typist.type(mark(entry.from()));
            }
        }
    }

    /** Without its unit where the field takes a bare number in that unit. */
    private static String asShort(Browser browser, BuildField field, String text) {
        String label = browser.find("label[for='" + field.name() + "']").getText();
        String[] parts = text.split(" ");
        String unit = parts.length > 1 ? parts[1].replace("C", "°C") : "";
        return label.endsWith("(" + unit + ")") ? parts[0] : text.replace(" ", "");
    }

    private void openTheJob(Browser browser, Typist typist) {
        browser.waitUntil(() -> browser.focused().getText().equals("Open a job"));
        typist.press(Keys.ENTER);
        typist.waitForPage("#asked:focus");
        typist.think().type("runs hot in the second lap").press(Keys.TAB);
        typist.think().date(LocalDate.now().plusDays(7));
        typist.press(Keys.ENTER);
        browser.waitUntil(() -> browser.path().matches("/jobs/\\d+"));
        typist.waitForPage(".notice.done");
        assertThat(jdbc.sql("select promised_on from job where shop_id = :shop")
                        .param("shop", shop)
                        .query(LocalDate.class)
                        .single())
                .isEqualTo(LocalDate.now().plusDays(7));
    }

    @Test
    void aFieldIsFoundByPartsOfItsNameAndTheKeysAreListed() {
        try (Browser browser = Browser.at(port)) {
            aCar(browser);
            browser.find("[name='engine.ratedPowerW']").click();
            browser.find("[name='engine.ratedPowerW']").sendKeys(Keys.HOME, "/");
            browser.waitFor("#finder[open]");
            assertThat(value(browser, "engine.ratedPowerW")).isEqualTo("350 hp");
            browser.focused().sendKeys("speed idle", Keys.ENTER);
            browser.waitUntil(
                    () -> "engine.idleSpeedPerS".equals(browser.focused().getAttribute("name")));
            browser.focused().sendKeys("700", "?");
            assertThat(value(browser, "engine.idleSpeedPerS")).isEqualTo("700");
            assertThat(value(browser, "engine.idleSpeedPerS.from")).isEqualTo("GUESSED");
            browser.focused().sendKeys("1/min");
            assertThat(value(browser, "engine.idleSpeedPerS")).isEqualTo("7001/min");

            browser.find("input[name=carClass][value=DRIFT]").sendKeys("?");
            browser.waitFor("#keys[open]");
            assertThat(browser.find("#keys").getText()).contains("saves", "Esc");
            browser.find("#keys-single").click();
            browser.focused().sendKeys(Keys.ESCAPE);
            browser.waitUntil(() -> browser.all("#keys[open]").isEmpty());
            browser.find("input[name=carClass][value=DRIFT]").sendKeys("?");
            assertThat(browser.all("#keys[open]")).as("switched off").isEmpty();
        }
    }

    @Test
    void whatNobodyVouchesForSaysSoUntilSomebodyDoes() {
        try (Browser browser = Browser.at(port)) {
            aCar(browser);
            browser.waitUntil(() -> browser.find("#ENGINE_POWER-live").getText().contains("Nobody has said"));
            browser.find("#FUEL").sendKeys("E85");
            browser.waitUntil(() -> browser.find("#FUEL-live").getText().contains("Nobody has said"));
            browser.find("#FUEL").sendKeys("=");
            browser.waitUntil(() -> !browser.find("#FUEL-live").getText().contains("Nobody has said"));
            browser.focused().sendKeys(Keys.chord(Keys.CONTROL, Keys.ENTER));
            browser.waitUntil(() -> browser.path().endsWith("/revisions/1"));
            var entries = format.read(saved()).build();
            assertThat(entries.entry(BuildField.FUEL)).get().extracting("from").isEqualTo(MEASURED);
            assertThat(entries.entry(BuildField.ENGINE_POWER))
                    .get()
                    .extracting("from")
                    .isEqualTo(GUESSED);
            browser.open(browser.path().replace("/revisions/1", "/spec"));
            browser.find("#FUEL").sendKeys("ethanol");
            assertThat(value(browser, "fuel.burnt.from"))
                    .as("what was said of the fuel before says nothing of this one")
                    .isEmpty();
        }
    }

    private static String mark(Provenance from) {
        return switch (from) {
            case MEASURED -> "=";
            case DATASHEET -> "#";
            case ADVERTISED -> "!";
            case GUESSED -> "?";
        };
    }

    /** The fields of the sheet in the order in which the page has them. */
    private static List<BuildField> onThePage(Browser browser) {
        return ((List<?>) browser.script("return Array.from(document.querySelectorAll('.typed'), e => e.name)"))
                .stream()
                        .map(name -> BuildField.ofKey((String) name).orElseThrow())
                        .filter(SHEET::containsKey)
                        .toList();
    }

    /** Enter to the next field; over the heads of folded parts by arrow, in by Enter. */
    private static void goTo(Browser browser, Typist typist, BuildField field) {
        WebElement head = (WebElement) browser.script(HEAD, field.key());
        for (int keys = 0; !field.key().equals(browser.focused().getAttribute("name")); keys++) {
            assertThat(keys).as("keys on the way to %s", field).isLessThan(40);
            WebElement here = browser.focused();
            boolean onAHead = here.getTagName().equals("summary");
            boolean inAnotherPart =
                    head != null && !onAHead && Boolean.TRUE.equals(browser.script(IN_ANOTHER_PART, head));
            typist.press(onAHead && !here.equals(head) ? Keys.ARROW_DOWN : inAnotherPart ? Keys.ESCAPE : Keys.ENTER);
        }
    }

    private String saved() {
        return jdbc.sql("select spec_text from revision where shop_id = :shop")
                .param("shop", shop)
                .query(String.class)
                .single();
    }

    private String aCar(Browser browser) {
        browser.signIn(desk, People.PASSWORD);
        browser.open("/intake").type("plate", "KEPT 1").type("newCustomerName", "Ina Invented");
        browser.press("#new-car button[type=submit]");
        browser.waitFor("form.spec");
        browser.find("input[name=carClass][value=DRIFT]").click();
        browser.find("input[name=duties][value=drift]").click();
        browser.type("engine.ratedPowerW", "350 hp");
        browser.waitUntil(() -> browser.find("#ENGINE_POWER-live").getText().contains("261"));
        return browser.path();
    }

    @Test
    void aClosedTabLosesNothingAndSigningOutLeavesNothing() {
        try (Browser browser = Browser.at(port)) {
            String form = aCar(browser);
            browser.inANewTab(form).waitFor("#draft-bar:not([hidden])");
            assertThat(browser.find("#draft-bar").getText()).contains("Unsaved work from");
            assertThat(value(browser, "engine.ratedPowerW")).isEqualTo("350 hp");
            browser.waitUntil(() -> browser.find("#preview").getText().contains("decided by"));

            browser.press("#draft-drop");
            browser.waitUntil(() -> value(browser, "engine.ratedPowerW").isEmpty());
            assertThat(browser.stored()).isEmpty();

            browser.type("fan.count", "2");
            browser.waitUntil(() -> browser.stored().size() == 1);
            browser.press("form.out button");
            browser.acceptQuestion();
            browser.waitFor("#username");
            assertThat(browser.stored()).isEmpty();
        }
    }

    private static String value(Browser browser, String field) {
        return browser.find("[name='" + field + "']").getAttribute("value");
    }

    @Test
    void aLostConnectionKeepsTheWorkAndSendsItOnceWhenItIsBack() {
        try (Browser browser = Browser.at(port)) {
            aCar(browser);
            browser.offline(true);
            browser.type("radiator.coreWidthM", "25 in");
            browser.waitFor("#resting:not([hidden])");
            browser.focused().sendKeys(Keys.chord(Keys.CONTROL, Keys.ENTER));
            browser.waitFor("#unsent:not([hidden])");
            assertThat(browser.find("#unsent").getText()).contains("Not sent");
            assertThat(value(browser, "radiator.coreWidthM")).isEqualTo("25 in");
            assertThat(browser.stored()).hasSize(1);

            browser.offline(false);
            browser.waitUntil(() -> browser.path().contains("/revisions/1"));
            assertThat(browser.stored()).isEmpty();
            assertThat(format.read(saved()).typed()).containsEntry(BuildField.CORE_WIDTH, "25 in");
        }
    }

    @Test
    void theFirstFaultHasTheFocusAfterSaving() {
        try (Browser browser = Browser.at(port)) {
            aCar(browser);
            browser.type("fan.diameterM", "14 furlongs").type("electric.alternatorA", "many");
            browser.focused().sendKeys(Keys.chord(Keys.CONTROL, Keys.ENTER));
            browser.waitFor("[role=alert] p");
            browser.waitUntil(() -> "fan.diameterM".equals(browser.focused().getAttribute("name")));
            assertThat(value(browser, "electric.alternatorA")).isEqualTo("many");
            browser.inANewTab(browser.path()).waitFor("#draft-bar:not([hidden])");
            assertThat(value(browser, "fan.diameterM")).isEqualTo("14 furlongs");
        }
    }
}
