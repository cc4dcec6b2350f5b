package headertank.app.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import headertank.app.account.People;
import headertank.app.check.Checks;
import headertank.app.check.Drifter;
import headertank.app.check.Specs;
import headertank.app.check.figure.FigureTextTest;
import headertank.app.check.stored.CheckResult;
import headertank.app.check.stored.Decision;
import headertank.app.database.DatabaseTest;
import headertank.app.given.Given;
import headertank.app.handover.Handovers;
import headertank.app.handover.Lists;
import headertank.app.handover.page.HandoverText;
import headertank.app.shop.Role;
import headertank.app.unit.UnitSystem;
import headertank.calc.carspec.BuildField;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;

/** The delivery sheet carries what the check says. */
@DatabaseTest
class SheetIT {

    @Autowired
    Given given;

    @Autowired
    MockMvc mvc;

    @Autowired
    People people;

    @Autowired
    Specs specs;

    @Autowired
    Checks checks;

    @Autowired
    Lists lists;

    @Autowired
    Handovers handovers;

    @Autowired
    HandoverText words;

    @Autowired
    JdbcClient jdbc;

    Given.Workshop workshop;
    long shop;
    long car;
    long check;

    @BeforeEach
    void aCheck() {
        workshop = given.aWorkshop(Role.TECHNICIAN);
        shop = workshop.shop();
        car = workshop.aCar(Specs.easy(), "street", "drift");
        check = workshop.aCheck(car);
    }

    @Test
    void anUnsignedSheetSaysSoAndCarriesTheWholeCheck() throws Exception {
        CheckResult result = checks.byId(check).result();
        String text = text(sheet("a4"));
        assertThat(text)
                .contains("NOT SIGNED", "Jo Example", "Nimbrax Coupe 1999", "Street", "Drift", "Coolant margin")
                .contains("Margin at the run’s peak", "Steady margin")
                .contains("Hot coolant under pressure scalds", "local codes and licensed practice")
                .contains("calc-core) " + result.calcCoreVersion(), String.valueOf(result.seed()))
                .contains(checks.byId(check).resultSha256().substring(0, 16))
                .doesNotContain("Out of date", "#", "NaN", "Infinity");
        assertThat(result.flags()).allSatisfy(f -> assertThat(text)
                .contains(FigureTextTest.in(UnitSystem.METRIC).said(f.title())));
        assertThat(text).contains("Assumptions (" + result.assumptions().size() + ")");
    }

    @Test
    void aSignedSheetNamesTheSignerAndALaterRevisionMarksIt() throws Exception {
        workshop.sign(check, Decision.DELIVER_WITH_CONDITIONS, "Drift only with a spare belt");
        String signed = text(sheet("a4"));
        assertThat(signed)
                .contains("signed by Person", "Drift only with a spare belt")
                .doesNotContain("NOT SIGNED");
        specs.save(car, Specs.easy().unknown(BuildField.FAN_FLOW).build(), "street");
        assertThat(text(sheet("a4"))).contains("Out of date.", "Revision 2 was saved after this check");
    }

    @Test
    void eachPrintIsNotedWithTheHashOfItsBytes() throws Exception {
        byte[] pdf = sheet("a4");
        byte[] noted = jdbc.sql("select sheet_sha256 from printed_sheet where check_run_id = :check")
                .param("check", check)
                .query(byte[].class)
                .single();
        assertThat(noted).isEqualTo(MessageDigest.getInstance("SHA-256").digest(pdf));
    }

    @Test
    void everyFontIsInsideTheFile() throws Exception {
        List<String> outside = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(sheet("a4"))) {
            assertThat(document.getPage(0).getMediaBox().getWidth()).isBetween(595f, 596f);
            for (PDPage page : document.getPages()) {
                for (var name : page.getResources().getFontNames()) {
                    var font = page.getResources().getFont(name);
                    if (!font.isEmbedded()) {
                        outside.add(font.getName());
                    }
                }
            }
        }
        assertThat(outside).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"a4,595,842", "letter,612,792"})
    void bothPapersCarryLayoutCurvesPageNumbersAndSignatures(String paper, double width, double height)
            throws Exception {
        byte[] pdf = sheet(paper);
        try (PDDocument document = Loader.loadPDF(pdf)) {
            int pages = document.getNumberOfPages();
            assertThat(pages).isGreaterThan(1);
            for (PDPage page : document.getPages()) {
                assertThat((double) page.getMediaBox().getWidth()).isCloseTo(width, within(1.0));
                assertThat((double) page.getMediaBox().getHeight()).isCloseTo(height, within(1.0));
            }
            String text = text(pdf);
            assertThat(text)
                    .contains("Layout with flows and temperatures", "The drawing in words.", "2 fans, pulling")
                    .contains("Curves and the operating point", "the same air would carry away")
                    .contains("Verdict per duty", "Coolant margin", "For the shop", "Received, customer")
                    .contains("1 / " + pages, pages + " / " + pages, "http://localhost/cars/" + car)
                    .doesNotContain("Invented demonstration data");
        }
    }

    /** What the customer signs for stands on one page; the rest is an annex. */
    @ParameterizedTest
    @ValueSource(strings = {"a4", "letter"})
    void pageOneHoldsVerdictConditionsCautionsReadingsAndSignatures(String paper) throws Exception {
        workshop.sign(check, Decision.DELIVER_WITH_CONDITIONS, "Drift only with a spare belt");
        String page = PageOne.of(sheet(paper));
        CheckResult result = checks.byId(check).result();
        assertThat(page)
                .contains("Verdict per duty", "Street", "Drift", "Hot coolant under pressure scalds")
                .contains("Check list: readings against what was expected", "Readings not entered:")
                .contains("Faults of the car, who cleared them and why", "signed by Person")
                .contains("Drift only with a spare belt", "For the shop", "Received, customer")
                .doesNotContain("Annex", "Assumptions (", "calc-core)");
        for (int i = 1; i <= result.conditions().size(); i++) {
            assertThat(page).contains("accepted " + i + " ");
        }
        assertThat(text(sheet(paper))).contains("Annex: how it was worked out", "Check list, item by item");
    }

    /** However much there is to say of a car, nobody signs on a page that does not hold it. */
    @ParameterizedTest
    @ValueSource(strings = {"a4", "letter"})
    void aFullListAndManyConditionsLeaveTheSignaturesOnPageOne(String paper) throws Exception {
        car = workshop.aCar(
                Drifter.builder().unknown(BuildField.FAN_FLOW).unknown(BuildField.ENGINE_POWER),
                "drift",
                "street",
                "track");
        check = workshop.aCheck(car);
        workshop.sign(check, Decision.DELIVER_WITH_CONDITIONS, "Drift, Street and Track: as agreed, towed away");
        lists.answerAll(check);
        CheckResult result = checks.byId(check).result();
        var readings = handovers.of(check).readings();
        String page = PageOne.of(sheet(paper));
        assertThat(result.conditions()).hasSizeGreaterThan(2);
        assertThat(readings).hasSizeGreaterThan(5);
        String unbroken = page.replaceAll("[\\s\u00a0]", "");
        assertThat(readings).allSatisfy(l -> assertThat(unbroken)
                .as("each reading")
                .contains(words.title(l.item()).replaceAll("[\\s\u00a0]", "")));
        for (int i = 1; i <= result.conditions().size(); i++) {
            assertThat(page).contains("accepted " + i + " ");
        }
        assertThat(page)
                .contains("Hot coolant under pressure scalds", "Check list: readings against what was expected")
                .contains("signed by Person", "For the shop", "Received, customer")
                .doesNotContain("Annex");
    }

    @Test
    void theCodeOnPaperOpensTheCarsPage() throws Exception {
        assertThat(Scanned.firstPage(sheet("letter"))).isEqualTo("http://localhost/cars/" + car);
    }

    @Test
    void theSheetOfAnInventedShopSaysSo() throws Exception {
        jdbc.sql("update shop set invented = true where id = :shop")
                .param("shop", shop)
                .update();
        assertThat(text(sheet("a4"))).contains("Invented demonstration data: no such car");
    }

    @Test
    void bothPapersStandBesideEachOtherThatOfTheShopFirst() throws Exception {
        String both = "(?s)<a [^>]*sheet\\.pdf\\?paper=%s\"[^>]*>[^<]*</a>\\s*<a [^>]*sheet\\.pdf\\?paper=%s\".*";
        assertThat(checkPage()).containsPattern(both.formatted("a4", "letter"));
        jdbc.sql("update shop set paper = 'LETTER' where id = :shop")
                .param("shop", shop)
                .update();
        assertThat(checkPage()).containsPattern(both.formatted("letter", "a4"));
    }

    private String checkPage() throws Exception {
        return mvc.perform(get("/checks/" + check).with(people.in(shop, Role.FRONT_DESK)))
                .andReturn()
                .getResponse()
                .getContentAsString();
    }

    @Test
    void unknownPaperIsRefused() throws Exception {
        mvc.perform(get("/checks/" + check + "/sheet.pdf?paper=a3").with(people.in(shop, Role.FRONT_DESK)))
                .andExpect(status().isUnprocessableContent());
    }

    @Test
    void theLabelNamesTheCarAndNotItsOwner() throws Exception {
        byte[] pdf = bytes("/cars/" + car + "/label.pdf");
        String plate = jdbc.sql("select plate from car where id = :car")
                .param("car", car)
                .query(String.class)
                .single();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getNumberOfPages()).isEqualTo(1);
            assertThat((double) document.getPage(0).getMediaBox().getWidth()).isCloseTo(283.5, within(0.5));
        }
        assertThat(text(pdf))
                .contains(
                        plate,
                        "Nimbrax Coupe 1999",
                        "none open, car " + car,
                        "Revision 1",
                        "Check " + check,
                        "HOT SYSTEM")
                .doesNotContain("Jo Example", "0199");
        assertThat(Scanned.firstPage(pdf)).isEqualTo("http://localhost/cars/" + car);
        mvc.perform(get("/cars/" + car + "/label.pdf").with(people.in(people.aShop(), Role.FRONT_DESK)))
                .andExpect(status().isNotFound());
    }

    @Test
    void theLongestNamesStillFitOnOneLabel() throws Exception {
        jdbc.sql("update car set plate = :plate, make = :make, model = :model where id = :car")
                .param("plate", "WWWWW WWWWW WWWWW WW")
                .param("make", "Wanderwerke Nimbraxia")
                .param("model", "Grand Coupe with the long tail 3.5")
                .param("car", car)
                .update();
        try (PDDocument document = Loader.loadPDF(bytes("/cars/" + car + "/label.pdf"))) {
            assertThat(document.getNumberOfPages()).isEqualTo(1);
        }
    }

    @Test
    void theLabelOfACarWithoutSpecSaysSo() throws Exception {
        car = specs.aCar();
        assertThat(text(bytes("/cars/" + car + "/label.pdf"))).contains("No spec yet", "Not checked yet");
    }

    @Test
    void theDrawingPageShowsThePointAskedForAndRefusesAnUnknownOne() throws Exception {
        String page = page("/checks/" + check + "/drawing?duty=street&point=");
        assertThat(page).contains("data-panel=\"air\"", "data-panel=\"coolant\"", "data-panel=\"heat-curves\"");
        String other = checks.byId(check).result().duty("street").orElseThrow().points().stream()
                .filter(p -> !p.id().equals(checks.byId(check)
                        .result()
                        .duty("street")
                        .orElseThrow()
                        .decidingPoint()))
                .findFirst()
                .orElseThrow()
                .id();
        assertThat(page("/checks/" + check + "/drawing?duty=street&point=" + other))
                .contains("point=" + other + "\" aria-current=\"true\"");
        assertThat(page("/checks/" + check)).contains("/checks/" + check + "/drawing");
        mvc.perform(get("/checks/" + check + "/drawing?duty=none").with(people.in(shop, Role.FRONT_DESK)))
                .andExpect(status().isNotFound());
        mvc.perform(get("/checks/" + check + "/drawing?duty=street&point=none").with(people.in(shop, Role.FRONT_DESK)))
                .andExpect(status().isNotFound());
    }

    private String page(String path) throws Exception {
        return new String(bytes(path), StandardCharsets.UTF_8);
    }

    private byte[] sheet(String paper) throws Exception {
        return bytes("/checks/" + check + "/sheet.pdf?paper=" + paper);
    }

    /** A request ends with nobody signed in: afterwards the technician acts again. */
    private byte[] bytes(String path) throws Exception {
        byte[] answer = mvc.perform(get(path).with(people.in(shop, Role.FRONT_DESK)))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsByteArray();
        people.actAs(shop, Role.TECHNICIAN);
        return answer;
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }
}
