package headertank.app.known;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import headertank.app.account.People;
import headertank.app.carlog.Logs;
import headertank.app.check.Checks;
import headertank.app.check.Specs;
import headertank.app.check.stored.CheckInput;
import headertank.app.check.stored.CheckResult;
import headertank.app.check.stored.DutyResult;
import headertank.app.check.stored.StoredCheck;
import headertank.app.database.DatabaseTest;
import headertank.app.given.Given;
import headertank.app.shop.Role;
import headertank.app.stored.Sha256;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.ModelFactor;
import headertank.calc.quantity.Stated;
import headertank.calc.result.NextEvidence;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.MessageSource;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

/** Evidence of a car from the line at the desk to the verdict. */
@DatabaseTest
class EvidenceIT {

    private static final Map<String, String> READING =
            Map.of("shown", "97 °C", "at", "street/hill", "outside", "31 °C", "dial", "NEEDLE");

    /** How long something may be worked out before the test gives up; far more than it takes. */
    private static final Duration FOR_EVER = Duration.ofMinutes(5);

    @Autowired
    MockMvc mvc;

    @Autowired
    Given given;

    @Autowired
    Checks checks;

    @Autowired
    Specs specs;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    MessageSource messages;

    private Given.Workshop workshop;
    private RequestPostProcessor desk;
    private long car;

    @BeforeEach
    void aWorkshop() {
        workshop = given.aWorkshop(Role.values());
        desk = workshop.with(Role.FRONT_DESK);
    }

    @AfterEach
    void nobody() {
        People.nobody();
    }

    private void aStreetCar() {
        workshop.actAs(Role.values());
        car = workshop.aCar(Specs.easy(), "street");
    }

    @Test
    void aReadingIsTypedInOneLineOnTheCarsPageAndCounts() throws Exception {
        aStreetCar();
        StoredCheck before = rated();
        assertThat(before.result().known().orElseThrow().how()).isEqualTo("FROM_THE_SHEET");
        Document page = page("/cars/" + car);
        assertThat(page.select("#evidence .how-known").text()).isEqualTo("from the sheet");
        assertThat(page.select("#evidence form #shown, #evidence form #at, #evidence form #outside"))
                .hasSize(3);
        assertThat(sent("readings", READING, desk).getStatus()).isEqualTo(302);
        String said = jdbc.sql(
                        "select said_text || ' ' || encode(said_sha256, 'hex') from car_evidence where shop_id = :s")
                .param("s", workshop.shop())
                .query(String.class)
                .single();
        String text = said.substring(0, said.lastIndexOf(' '));
        assertThat(said).endsWith(Sha256.hex(text)).contains("370.15", "304.15", "street", "hill");
        assertThat(page("/cars/" + car).select("#evidence ol li").text())
                .contains("97.0 °C", "the car’s gauge", "31.0 °C outside", "Used.");
        assertThat(page("/checks/" + before.line().id()).text())
                .as("the check of before")
                .contains("Other evidence of this car is used since");

        StoredCheck after = rated();
        CheckResult.HowKnown known = after.result().known().orElseThrow();
        assertThat(known.how()).isEqualTo("FROM_ONE_READING");
        assertThat(known.evidence()).containsOnly(Map.entry("SETTLED", 1));
        assertThat(width(after, "street")).isLessThan(width(before, "street"));
        assertThat(page("/checks/" + after.line().id()).text()).contains("Known from one reading (one reading).");
        assertThat(page("/checks/" + after.line().id()).select(".out-of-date")).isEmpty();
        assertThat(rated().line().id()).as("rated again").isEqualTo(after.line().id());
        assertThat(jdbc.sql("select kind from kept_row where shop_id = :s")
                        .param("s", workshop.shop())
                        .query(String.class)
                        .list())
                .as("what is sealed")
                .contains("car_evidence", "car_answer");
        workshop.actAs(Role.values());
        long other = workshop.aCar(Specs.easy(), "street");
        assertThat(knownInTheList(car)).isEqualTo("Known from one reading.");
        assertThat(knownInTheList(other)).isEqualTo("Known from the sheet.");
    }

    @Test
    void whatIsWrongStandsBesideTheFieldAndNothingIsLost() throws Exception {
        aStreetCar();
        Map<String, String> typed =
                Map.of("shown", "hot", "at", "street/nowhere", "outside", "310 °C", "sensor", "TANK", "dial", "DIGITS");
        MockHttpServletResponse answer = sent("readings", typed, desk);
        assertThat(answer.getStatus()).isEqualTo(422);
        Document page = Jsoup.parse(answer.getContentAsString());
        assertThat(page.select("#shown-help .fault").text()).contains("does not start with a number");
        assertThat(page.select("#at-help .fault").text()).contains("Choose what the car did");
        assertThat(page.select("#outside-help .fault").text()).contains("310 °C");
        assertThat(page.select("#shown").val()).isEqualTo("hot");
        assertThat(page.select("#outside").val()).isEqualTo("310 °C");
        assertThat(page.select("#sensor option[selected]").val()).isEqualTo("TANK");
        assertThat(page.select("#dial option[selected]").val()).isEqualTo("DIGITS");
        assertThat(page.select(".error-summary li")).hasSize(3);
        answer = sent("readings", Map.of("shown", "20 °C", "at", "street/hill", "outside", "31 °C"), desk);
        assertThat(Jsoup.parse(answer.getContentAsString())
                        .select("#shown-help .fault")
                        .text())
                .contains("more than the air outside");
        assertThat(workshop.rows("car_evidence")).isZero();
    }

    @Test
    void aPieceIsLeftOutOnlyWithAReasonAndNothingIsOverwritten() throws Exception {
        aStreetCar();
        sent("readings", READING, desk);
        String piece = piece();
        MockHttpServletResponse answer = sent(piece + "/switch", Map.of("then", "LEAVE_OUT", "reason", " "), desk);
        assertThat(answer.getStatus()).isEqualTo(422);
        assertThat(Jsoup.parse(answer.getContentAsString())
                        .select("#piece-" + piece + " .fault")
                        .text())
                .contains("Say why");
        assertThat(sent(piece + "/switch", Map.of("then", "LEAVE_OUT", "reason", "another car"), desk)
                        .getStatus())
                .isEqualTo(302);
        assertThat(page("/cars/" + car + "/evidence").select("#piece-" + piece).text())
                .contains("Left out.", "another car");
        assertThat(rated().result().known().orElseThrow().how()).isEqualTo("FROM_THE_SHEET");
        assertThat(sent(piece + "/switch", Map.of("then", "LEAVE_OUT", "reason", "again"), desk)
                        .getStatus())
                .as("what stands already")
                .isEqualTo(409);
        sent(piece + "/switch", Map.of("then", "USE", "reason", "it was this car"), desk);
        assertThat(workshop.rows("evidence_switch")).isEqualTo(2);
        assertThat(workshop.rows("car_evidence")).isOne();
        assertThat(rated().result().known().orElseThrow().how()).isEqualTo("FROM_ONE_READING");
    }

    @Test
    void anotherShopAndOtherRolesDoNotGetAtIt() throws Exception {
        aStreetCar();
        sent("readings", READING, desk);
        String piece = piece();
        String log = keptLog(Logs.standing(150), "20 °C", "");
        RequestPostProcessor stranger = given.aWorkshop(Role.values()).with(Role.values());
        for (String path : List.of("evidence", "evidence/lesson", "evidence/next", "evidence/next/found")) {
            assertThat(status("/cars/" + car + "/" + path, stranger)).as(path).isEqualTo(404);
        }
        Map<String, String> out = Map.of("then", "LEAVE_OUT", "reason", "r", "log", log);
        for (String path : List.of("readings", "logs", piece + "/switch")) {
            Map<String, String> what = path.equals("readings") ? READING : out;
            assertThat(sent(path, what, stranger).getStatus()).as(path).isEqualTo(404);
            assertThat(sent(path, what, workshop.with(Role.OWNER)).getStatus())
                    .as("%s by the owner", path)
                    .isEqualTo(403);
        }
        workshop.actAs(Role.values());
        long mine = car;
        car = workshop.aCar(Specs.easy(), "street");
        assertThat(sent("logs", Map.of("log", log), desk).getStatus())
                .as("a log of another car")
                .isEqualTo(404);
        assertThat(sent(piece + "/switch", out, desk).getStatus())
                .as("a piece of another car")
                .isEqualTo(404);
        car = mine;
        assertThat(workshop.rows("car_evidence")).isOne();
        assertThat(workshop.rows("evidence_switch")).isZero();
    }

    /** From the log to the verdict, and what becomes of it when the evidence and the car change. */
    @Test
    void aLogSharpensEveryVerdictOfTheCar() throws Exception {
        workshop.actAs(Role.values());
        car = workshop.aCar(Logs.drifter(), "drift");
        StoredCheck before = rated();
        String preview = page("/cars/" + car + "/spec").select("#preview").text();
        String log = keptLog(Logs.drift(), "25 °C", "drift");
        String address = "/cars/" + car + "/logs/" + log;
        assertThat(page(address).select("#use form").attr("action")).endsWith("/evidence/logs");
        assertThat(sent("logs", Map.of("log", log), desk).getRedirectedUrl()).isEqualTo("/cars/" + car + "/evidence");

        Document lesson = workedOut("/cars/" + car + "/evidence/lesson");
        assertThat(lesson.select(".how-known").text()).isEqualTo("from a run");
        List<String> rows =
                lesson.select("table.stacks").get(0).select("tbody tr").eachText();
        assertThat(rows).hasSize(2);
        assertThat(lastDegrees(rows.get(1)))
                .as("width with the log, of %s", rows)
                .isLessThan(0.6 * lastDegrees(rows.get(0)));
        assertThat(rows.get(1)).as("the verdict with the log, of %s", rows).doesNotContain("conditions");
        assertThat(lesson.select("table").text()).as("why").contains("How hard this driver drives");
        assertThat(page(address).select(".residual")).hasSize(2);
        assertThat(page(address).select("polyline[data-curve=after]")).isNotEmpty();
        assertThat(sent("logs", Map.of("log", log), desk).getStatus())
                .as("the same log once more")
                .isEqualTo(302);
        assertThat(workshop.rows("car_evidence")).isOne();

        StoredCheck after = rated();
        assertThat(after.result().known().orElseThrow().how()).isEqualTo("FROM_A_RUN");
        assertThat(width(after, "drift")).isLessThan(0.6 * width(before, "drift"));
        assertThat(page("/cars/" + car + "/spec").select("#preview").text())
                .as("the preview while somebody types")
                .isNotEqualTo(preview);
        CheckInput.LearnedFrom learned = input(after).learned().orElseThrow();
        assertThat(learned.pieces()).extracting(CheckInput.LearnedPiece::kind).containsExactly("LOG");
        assertThat(learned.factors())
                .extracting(CheckInput.LearnedFactor::key)
                .contains(ModelFactor.COOLANT_HEAT.key(), ModelFactor.AIR_SIDE.key());
        assertThat(jdbc.sql("select encode(answer_sha256, 'hex') from car_answer where id = :id")
                        .param("id", learned.lesson())
                        .query(String.class)
                        .single())
                .isEqualTo(learned.lessonSha256());
        assertThat(page("/checks/" + after.line().id() + "/drawing").select("svg"))
                .isNotEmpty();

        String piece = piece();
        sent(piece + "/switch", Map.of("then", "LEAVE_OUT", "reason", "to see"), desk);
        StoredCheck without = rated();
        assertThat(without.result()).as("without the log").isEqualTo(before.result());
        sent(piece + "/switch", Map.of("then", "USE", "reason", "it is this car"), desk);
        StoredCheck again = rated();
        assertThat(again.resultSha256()).as("with it again, to the last digit").isEqualTo(after.resultSha256());
        assertThat(jdbc.sql("select count(*) from car_answer where shop_id = :s and question = 'LEARNED'")
                        .param("s", workshop.shop())
                        .query(Long.class)
                        .single())
                .as("learned once")
                .isOne();

        String another = "/cars/" + car + "/logs/" + keptLog(Logs.drift(), "25.5 °C", "drift");
        assertThat(page(address).select("#use form"))
                .as("the log that it learned from")
                .isEmpty();
        mvc.perform(post(another + "/confirm").with(csrf()).with(desk));
        assertThat(confirmed(another)).startsWith("Confirmed by another run");
        assertThat(rated().result().known().orElseThrow().how()).isEqualTo("CONFIRMED_BY_ANOTHER_RUN");

        specs.save(
                car,
                Logs.drifter().set(BuildField.CORE_WIDTH, Stated.measured(0.7)).build(),
                "drift");
        StoredCheck rebuilt = checks.byId(checks.run(car, 2));
        assertThat(input(rebuilt).learned().orElseThrow().factors())
                .as("after a new core")
                .extracting(CheckInput.LearnedFactor::key)
                .contains(ModelFactor.COOLANT_HEAT.key())
                .doesNotContain(ModelFactor.AIR_SIDE.key());
    }

    /** An engine that idles in a warm workshop and grows colder by half a kelvin every four seconds is none that the model knows. */
    @Test
    void aLogThatCannotBeThisCarsIsDoubted() throws Exception {
        aStreetCar();
        String log = keptLog(Logs.idling(240, 90, 60), "20 °C", "");
        sent("logs", Map.of("log", log), desk);
        StoredCheck check = rated();
        assertThat(check.result().known().orElseThrow().doubted()).isTrue();
        assertThat(page("/checks/" + check.line().id())
                        .select(".notice.caution")
                        .text())
                .contains("does not fit this car");
        assertThat(page("/cars/" + car + "/evidence").select("#lesson .notice").text())
                .contains("This car is not what was logged", "thermostat, fan, clogged core");
    }

    @Test
    void whatToFindOutNextIsSaidWithMinutesToolsAndCautions() throws Exception {
        aStreetCar();
        Document found = workedOut("/cars/" + car + "/evidence/next/found");
        assertThat(found.select("ol.deeds > li")).isNotEmpty();
        for (var deed : found.select("ol.deeds > li")) {
            assertThat(deed.select(".minutes").text()).endsWith("min");
            assertThat(deed.select(".narrows li")).isNotEmpty();
            assertThat(deed.select(".caution").text()).isNotEmpty();
        }
        String best = found.select("ol.deeds > li h2").first().text();
        assertThat(page("/cars/" + car).select("#evidence").text()).contains("Best to find out next: " + best);
    }

    @Test
    void aDriveWithALogIsSaidWithHowToDoItSafely() throws Exception {
        workshop.actAs(Role.values());
        car = workshop.aCar(Logs.drifter(), "drift");
        assertThat(workedOut("/cars/" + car + "/evidence/next/found")
                        .select("#LOGGED_DRIVE .caution")
                        .text())
                .contains("closed course", "never the driver");
    }

    @Test
    void everyDeedAndToolHasWordsInBothLanguages() {
        for (Locale language : List.of(Locale.ENGLISH, Locale.GERMAN)) {
            for (NextEvidence.Deed deed : NextEvidence.Deed.values()) {
                for (String part : List.of("", ".how", ".caution")) {
                    assertThat(messages.getMessage("known.deed." + deed + part, null, null, language))
                            .as("%s%s", deed, part)
                            .isNotNull();
                }
            }
            for (NextEvidence.Tool tool : NextEvidence.Tool.values()) {
                assertThat(messages.getMessage("known.tool." + tool, null, null, language))
                        .as("%s", tool)
                        .isNotNull();
            }
        }
    }

    private StoredCheck rated() {
        workshop.actAs(Role.values());
        return checks.byId(checks.run(car, 1));
    }

    private CheckInput input(StoredCheck check) {
        workshop.actAs(Role.values());
        return checks.input(check.line().id());
    }

    private static double width(StoredCheck check, String duty) {
        DutyResult.Range margin =
                check.result().duty(duty).orElseThrow().marginSpread().orElseThrow();
        return margin.high() - margin.low();
    }

    private String knownInTheList(long id) throws Exception {
        return page("/cars")
                .select("tr:has(a[href=/cars/" + id + "]) .how-known")
                .text();
    }

    /** The last figure in kelvin or degrees of a row, signs aside. */
    private static double lastDegrees(String row) {
        return Double.parseDouble(row.replaceAll("(?s).*?([\\d.]+)\\s*(K|°C)(?!.*\\d\\s*(K|°C)).*", "$1"));
    }

    private String piece() throws Exception {
        return page("/cars/" + car + "/evidence")
                .select("li[id^=piece-]")
                .last()
                .id()
                .substring("piece-".length());
    }

    private String keptLog(String text, String ambient, String drove) throws Exception {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        String address = mvc.perform(multipart("/cars/" + car + "/logs")
                        .file(new MockMultipartFile("file", "logged.csv", "text/csv", bytes))
                        .param("ambient", ambient)
                        .param("drove", drove)
                        .with(csrf())
                        .with(desk))
                .andReturn()
                .getResponse()
                .getRedirectedUrl();
        return address.substring(address.lastIndexOf('/') + 1);
    }

    /** A fragment, once nothing of it is worked out any more. */
    private Document workedOut(String path) throws Exception {
        Instant end = Instant.now().plus(FOR_EVER);
        Document now = page(path);
        while (!now.select("[hx-trigger]").isEmpty()) {
            assertThat(Instant.now()).as("still worked out: %s", now.text()).isBefore(end);
            Thread.sleep(100);
            now = page(path);
        }
        return now;
    }

    /** What came of holding a log against what is known. */
    private String confirmed(String log) throws Exception {
        Instant end = Instant.now().plus(FOR_EVER);
        String now = page(log).select("#use .confirms").text();
        while (now.contains("being driven")) {
            assertThat(Instant.now()).as(now).isBefore(end);
            Thread.sleep(100);
            now = page(log).select("#use .confirms").text();
        }
        return now;
    }

    private MockHttpServletResponse sent(String path, Map<String, String> said, RequestPostProcessor who)
            throws Exception {
        var request = post("/cars/" + car + "/evidence/" + path);
        said.forEach(request::param);
        return mvc.perform(request.param("key", UUID.randomUUID().toString())
                        .with(csrf())
                        .with(who))
                .andReturn()
                .getResponse();
    }

    private int status(String path, RequestPostProcessor who) throws Exception {
        return mvc.perform(get(path).with(who)).andReturn().getResponse().getStatus();
    }

    private Document page(String path) throws Exception {
        MockHttpServletResponse answer = mvc.perform(get(path).with(workshop.with(Role.values())))
                .andReturn()
                .getResponse();
        assertThat(answer.getStatus()).as(path).isEqualTo(200);
        return Jsoup.parse(answer.getContentAsString());
    }
}
