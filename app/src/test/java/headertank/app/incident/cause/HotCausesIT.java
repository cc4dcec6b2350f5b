package headertank.app.incident.cause;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import headertank.app.check.Specs;
import headertank.app.database.DatabaseTest;
import headertank.app.given.Given;
import headertank.app.shop.Role;
import headertank.calc.cause.Inquiry;
import java.util.List;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;

/** From a report to a cause, by taps. */
@DatabaseTest
class HotCausesIT {

    @Autowired
    Given given;

    @Autowired
    MockMvc mvc;

    @Autowired
    JdbcClient jdbc;

    Given.Workshop workshop;
    long car;
    String report;

    @BeforeEach
    void aHotCar() throws Exception {
        workshop = given.aWorkshop(Role.TECHNICIAN);
        car = workshop.aCar(Specs.easy(), "street");
        report = mvc.perform(post("/cars/" + car + "/incidents")
                        .with(csrf())
                        .with(workshop.with(Role.FRONT_DESK))
                        .param("when", "2020-07-01T15:30")
                        .param("doing", "standing in a jam")
                        .param("duty", "street")
                        .param("ambient", "30 °C")
                        .param("reading", "118 °C")
                        .param("place", "BLOCK")
                        .param("revision", "1"))
                .andReturn()
                .getResponse()
                .getRedirectedUrl();
    }

    @Test
    void wordsAndATestLeadToACause() throws Exception {
        List<String> before = causes(page());
        tap(Role.FRONT_DESK, "DOING", "jam", 302);
        tap(Role.FRONT_DESK, "FAN_HEARD", "FAN_SILENT", 302);
        tap(Role.FRONT_DESK, "COOLED_BY", "COOLED_AT_SPEED", 302);
        Document said = page();
        assertThat(causes(said)).isNotEqualTo(before);
        assertThat(causes(said).get(0)).isEqualTo("fans-out");
        assertThat(said.text()).contains("For it: fans silent", "times as often as without it");
        String test = said.select("[data-test]").first().attr("data-test");
        assertThat(said.select("[data-test] .caution")).hasSameSizeAs(said.select("[data-test]"));
        assertThat(List.of("FAN_RUN", "FAN_START")).contains(test);
        double likely = likely(said);
        tap(Role.TECHNICIAN, "FAN_START", "FAN_START_NEVER", 302);
        Document tested = page();
        assertThat(causes(tested).get(0)).isEqualTo("fans-out");
        assertThat(likely(tested)).isGreaterThan(likely);
        assertThat(tested.text()).contains("The first answer is likely enough");
        assertThat(tested.select("[data-test=FAN_START]")).as("asked already").isEmpty();
    }

    /** The newest answer counts, an empty one takes it back, and nothing is lost. */
    @Test
    void anAnswerIsTakenBackAndStaysWritten() throws Exception {
        List<String> before = causes(page());
        tap(Role.TECHNICIAN, "GAS", "GAS_FOUND", 302);
        assertThat(causes(page())).isNotEqualTo(before).contains("gas-in-coolant");
        tap(Role.TECHNICIAN, "GAS", "GAS_FOUND", 302);
        tap(Role.TECHNICIAN, "GAS", "", 302);
        assertThat(causes(page())).isEqualTo(before);
        assertThat(jdbc.sql("select answer from incident_answer where shop_id = :s order by id")
                        .param("s", workshop.shop())
                        .query(String.class)
                        .list())
                .containsExactly("GAS_FOUND", "");
        assertThat(page().text()).contains("2 answers, newest first");
        assertThat(jdbc.sql("select count(*) from audit_entry where action = 'incident.answered' and shop_id = :s")
                        .param("s", workshop.shop())
                        .query(Long.class)
                        .single())
                .isEqualTo(2);
        assertThat(jdbc.sql("select count(*) from kept_row where kind = 'incident_answer' and shop_id = :s")
                        .param("s", workshop.shop())
                        .query(Long.class)
                        .single())
                .isEqualTo(2);
    }

    @Test
    void whatIsNoAnswerIsRefused() throws Exception {
        tap(Role.TECHNICIAN, "GAS", "STEAM_SEEN", 404);
        tap(Role.TECHNICIAN, "MOOD", "STEAM_SEEN", 404);
        tap(Role.TECHNICIAN, "DOING", "laps", 404);
        tap(Role.OWNER, "STEAM", "STEAM_SEEN", 403);
        assertThat(workshop.rows("incident_answer")).isZero();
        Given.Workshop others = given.aWorkshop(Role.TECHNICIAN);
        mvc.perform(get(report + "/causes").with(others.with(Role.TECHNICIAN))).andExpect(status().isNotFound());
        mvc.perform(post(report + "/answers")
                        .with(csrf())
                        .with(others.with(Role.TECHNICIAN))
                        .param("question", "STEAM")
                        .param("answer", "STEAM_SEEN"))
                .andExpect(status().isNotFound());
    }

    @Test
    void everyTestSaysHowAndWhatItCanDoToSomebody() throws Exception {
        for (String language : List.of("en", "de")) {
            Document page = Jsoup.parse(mvc.perform(get(report + "?whole=")
                            .header("Accept-Language", language)
                            .with(workshop.with(Role.OWNER)))
                    .andExpect(status().isOk())
                    .andReturn()
                    .getResponse()
                    .getContentAsString());
            assertThat(page.select("#causes [data-cause]")).isNotEmpty();
            assertThat(page.select("#causes form")).as("the owner only reads").isEmpty();
        }
        assertThat(Stream.of(Inquiry.values()).filter(Inquiry::isTest))
                .allSatisfy(q -> assertThat(TestHazard.of(q)).isNotNull());
    }

    private Document page() throws Exception {
        return Jsoup.parse(mvc.perform(get(report + "/causes").with(workshop.with(Role.TECHNICIAN)))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString());
    }

    private static List<String> causes(Document page) {
        return page.select("[data-cause]").eachAttr("data-cause");
    }

    private static double likely(Document page) {
        return Double.parseDouble(
                page.select("[data-answer]").first().attr("data-answer").replaceAll("[^0-9.]", ""));
    }

    private void tap(Role role, String question, String answer, int expected) throws Exception {
        mvc.perform(post(report + "/answers")
                        .with(csrf())
                        .with(workshop.with(role))
                        .param("question", question)
                        .param("answer", answer))
                .andExpect(status().is(expected));
    }
}
