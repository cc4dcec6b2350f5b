package headertank.app.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import headertank.app.account.People;
import headertank.app.check.CheckResult;
import headertank.app.check.Checks;
import headertank.app.check.Decision;
import headertank.app.check.SignOffForm;
import headertank.app.check.Specs;
import headertank.app.database.DatabaseTest;
import headertank.app.shop.Role;
import java.io.IOException;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;

/** The delivery sheet carries what the check says. */
@DatabaseTest
class SheetIT {

    @Autowired
    MockMvc mvc;

    @Autowired
    People people;

    @Autowired
    Specs specs;

    @Autowired
    Checks checks;

    @Autowired
    Sheets sheets;

    @Autowired
    JdbcClient jdbc;

    long shop;
    long car;
    long check;

    @BeforeEach
    void aCheck() {
        shop = people.aShop();
        people.actAs(shop, Role.TECHNICIAN);
        car = specs.aCar();
        specs.save(car, Specs.easy().build(), "street", "drift");
        check = checks.run(car, 1);
    }

    @AfterEach
    void nobody() {
        People.nobody();
    }

    @Test
    void anUnsignedSheetSaysSoAndCarriesTheWholeCheck() throws IOException {
        CheckResult result = checks.byId(check).result();
        String text = text(sheets.print(check).pdf());
        assertThat(text)
                .contains("NOT SIGNED", "Jo Example", "Nimbrax Coupe 1999", "Street", "Drift", "Coolant margin")
                .contains("Margin at the run’s peak", "Steady margin")
                .contains("Hot coolant under pressure scalds", "local codes and licensed practice")
                .contains("calc-core) " + result.calcCoreVersion(), String.valueOf(result.seed()))
                .contains(checks.byId(check).resultSha256().substring(0, 16))
                .doesNotContain("Out of date", "#", "NaN", "Infinity");
        assertThat(result.flags()).allSatisfy(f -> assertThat(text).contains(f.title()));
        assertThat(text).contains("Assumptions (" + result.assumptions().size() + ")");
    }

    @Test
    void aSignedSheetNamesTheSignerAndALaterRevisionMarksIt() throws IOException {
        checks.sign(
                check,
                new SignOffForm(
                        Decision.DELIVER_WITH_CONDITIONS,
                        "Drift only with a spare belt",
                        checks.byId(check).result().conditions().stream()
                                .map(CheckResult.Condition::key)
                                .toList()));
        String signed = text(sheets.print(check).pdf());
        assertThat(signed)
                .contains("signed by Person", "Drift only with a spare belt")
                .doesNotContain("NOT SIGNED");
        specs.save(
                car,
                Specs.easy().unknown(headertank.calc.build.BuildField.FAN_FLOW).build(),
                "street");
        assertThat(text(sheets.print(check).pdf())).contains("Out of date.", "Revision 2 was saved after this check");
    }

    @Test
    void eachPrintIsNotedWithTheHashOfItsBytes() throws Exception {
        byte[] pdf = mvc.perform(get("/checks/" + check + "/sheet.pdf").with(people.in(shop, Role.FRONT_DESK)))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsByteArray();
        byte[] noted = jdbc.sql("select sheet_sha256 from printed_sheet where check_run_id = :check")
                .param("check", check)
                .query(byte[].class)
                .single();
        assertThat(noted).isEqualTo(MessageDigest.getInstance("SHA-256").digest(pdf));
    }

    @Test
    void everyFontIsInsideTheFile() throws IOException {
        List<String> outside = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(sheets.print(check).pdf())) {
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

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }
}
