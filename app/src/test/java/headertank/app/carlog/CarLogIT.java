package headertank.app.carlog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;

import headertank.app.account.People;
import headertank.app.database.DatabaseTest;
import headertank.app.given.Given;
import headertank.app.shop.Role;
import headertank.app.stored.Sha256;
import headertank.calc.carspec.ModelFactor;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import java.util.zip.GZIPInputStream;
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

/** Logs of a car from the file to what they teach. */
@DatabaseTest
class CarLogIT {

    @Autowired
    MockMvc mvc;

    @Autowired
    Given given;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    MessageSource messages;

    private Given.Workshop workshop;
    private RequestPostProcessor technician;
    private long car;

    @BeforeEach
    void aDriftCar() {
        workshop = given.aWorkshop(Role.values());
        technician = workshop.with(Role.TECHNICIAN);
        car = workshop.aCar(Logs.drifter(), "drift");
    }

    @AfterEach
    void nobody() {
        People.nobody();
    }

    @Test
    void aKeptLogIsDrivenAgain() throws Exception {
        assertThat(page("/cars/" + car).select("a[href=/cars/" + car + "/logs]"))
                .as("the link on the car's page")
                .isNotEmpty();
        String address = kept(file(Logs.drift()), Map.of("ambient", "25 °C", "drove", "drift"));
        Document first = page(address);
        assertThat(first.text())
                .contains("logged.csv", "18 min 0 s", "Coolant: column 2 °C", sha256())
                .contains("As its revision says, the car is off by")
                .doesNotContain("by its evidence");
        assertThat(first.select("polyline[data-curve=read]")).isNotEmpty();
        assertThat(page("/cars/" + car + "/logs").select(".log-list a").attr("href"))
                .isEqualTo(address);
    }

    @Test
    void theSameLogReadTheSameWayIsOneRow() throws Exception {
        String log = Logs.standing(150);
        String first = kept(file(log), Map.of("ambient", "20 °C"));
        assertThat(kept(file(log), Map.of("ambient", "20 °C", "name", "again"))).isEqualTo(first);
        assertThat(kept(null, Map.of("ambient", "20 °C", "log", log.replace("\n", "\r\n"))))
                .as("the text of the file, as a browser sends it")
                .isEqualTo(first);
        assertThat(workshop.rows("car_log")).isOne();
        assertThat(kept(file(log), Map.of("ambient", "21 °C")))
                .as("read otherwise")
                .isNotEqualTo(first);
        assertThat(workshop.rows("car_log")).isEqualTo(2);
    }

    @Test
    void anotherShopSeesNoneOfIt() throws Exception {
        String address = kept(file(Logs.standing(150)), Map.of("ambient", "20 °C"));
        String log = address.substring(address.lastIndexOf('/') + 1);
        RequestPostProcessor stranger = given.aWorkshop(Role.values()).with(Role.values());
        for (String path : List.of("/cars/" + car + "/logs", address)) {
            assertThat(status(path, stranger)).as(path).isEqualTo(404);
        }
        assertThat(send(file(Logs.standing(150)), Map.of("ambient", "20 °C"), stranger)
                        .getStatus())
                .isEqualTo(404);
        workshop.actAs(Role.values());
        long other = workshop.aCar();
        assertThat(status("/cars/" + other + "/logs/" + log, technician))
                .as("by way of another car")
                .isEqualTo(404);
    }

    @Test
    void whoMayNotDescribeACarReadsItsLogsAndKeepsNone() throws Exception {
        RequestPostProcessor owner = workshop.with(Role.OWNER);
        assertThat(send(file(Logs.standing(150)), Map.of("ambient", "20 °C"), owner)
                        .getStatus())
                .isEqualTo(403);
        assertThat(Jsoup.parse(mvc.perform(get("/cars/" + car + "/logs").with(owner))
                                .andReturn()
                                .getResponse()
                                .getContentAsString())
                        .select("#log"))
                .isEmpty();
    }

    @Test
    void whatIsMissingStandsBesideTheFieldAndNothingIsLost() throws Exception {
        String noCoolant = Logs.standing(150).replace("Coolant [°C]", "Wheel slip");
        Document page = refused(null, Map.of("log", noCoolant, "ambient", "hot", "name", "mine"));
        assertThat(page.select("#ambient-help .fault").text()).contains("does not start with a number");
        page = refused(null, Map.of("log", noCoolant, "ambient", "20 °C", "name", "mine"));
        assertThat(page.select("#log-help .fault").text()).contains("No column tells the coolant");
        assertThat(page.select("#log").val()).contains("Wheel slip");
        assertThat(page.select("#name").val()).isEqualTo("mine");
        page = refused(file(Logs.standing(150)), Map.of());
        assertThat(page.select("#ambient-help .fault").text()).contains("type it");
        assertThat(page.select("#log").val()).as("the text of the file").contains("850,34,30,0");
        assertThat(page.select("#name").val()).isEqualTo("logged.csv");
        page = refused(file(Logs.standing(60)), Map.of("ambient", "20 °C"));
        assertThat(page.select("#log-help .fault").text()).contains("2 min 0 s");
        page = refused(null, Map.of("log", "Dear shop, here is the log"));
        assertThat(page.select("#log-help .fault").text()).contains("no rows of numbers");
        page = refused(new MockMultipartFile("file", "l.csv", null, new byte[CarLogPages.LARGEST + 1]), Map.of());
        assertThat(page.select("#log-help .fault").text()).contains("too large");
        assertThat(workshop.rows("car_log")).isZero();
    }

    @Test
    void aColumnThatIsTakenForSomethingElseIsCorrectedOnThePreview() throws Exception {
        String log = Logs.standing(150).replace("Coolant [°C]", "Wheel slip");
        Document look = Jsoup.parse(send(null, Map.of("log", log, "ambient", "20 °C", "look", "1"), technician)
                .getContentAsString());
        String set = look.select("input[name=columnSet]").val();
        assertThat(set).isNotEmpty();
        assertThat(workshop.rows("car_log")).as("looking keeps nothing").isZero();
        kept(
                null,
                Map.of("log", log, "ambient", "20 °C", "columnSet", set, "column-COOLANT", "1", "unit-COOLANT", "°C"));
        assertThat(workshop.rows("car_log")).isOne();
    }

    @Test
    void everyFactorOfTheModelHasAName() {
        for (ModelFactor factor : ModelFactor.values()) {
            assertThat(messages.getMessage("carlog.factor." + factor.key(), null, null, Locale.ENGLISH))
                    .as(factor.key())
                    .isNotNull();
        }
    }

    @Test
    void whereTheCarWasIsNotKeptUnlessSomebodyAsks() throws Exception {
        String log = "# from 48.1375 to 11.5755\n"
                + Logs.with(Logs.with(Logs.standing(150), "Latitude", "48.1375"), "Longitude", "11.5755");
        kept(file(log), Map.of("ambient", "20 °C"));
        assertThat(keptText()).doesNotContain("48.1375", "11.5755", "titude").contains("149,86,850,34,30,0");
        assertThat(jdbc.sql("select left_out from car_log where shop_id = :s")
                        .param("s", workshop.shop())
                        .query(Integer.class)
                        .single())
                .isEqualTo(2);
        assertThat(sha256()).isEqualTo(Sha256.hex(keptText()));
        kept(file(log), Map.of("ambient", "20 °C", "positions", "true"));
        assertThat(keptText()).contains("48.1375");
    }

    /** Of the newest log. */
    private String keptText() throws Exception {
        byte[] gzip = jdbc.sql("select gzip from car_log where shop_id = :s order by id desc limit 1")
                .param("s", workshop.shop())
                .query((row, n) -> row.getBytes("gzip"))
                .single();
        try (GZIPInputStream text = new GZIPInputStream(new ByteArrayInputStream(gzip))) {
            return new String(text.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private String sha256() {
        return jdbc.sql("select encode(text_sha256, 'hex') from car_log where shop_id = :s order by id desc limit 1")
                .param("s", workshop.shop())
                .query(String.class)
                .single();
    }

    private static MockMultipartFile file(String text) {
        return new MockMultipartFile("file", "logged.csv", "text/csv", text.getBytes(StandardCharsets.UTF_8));
    }

    private MockHttpServletResponse send(MockMultipartFile file, Map<String, String> said, RequestPostProcessor who)
            throws Exception {
        var request = multipart("/cars/" + car + "/logs");
        if (file != null) {
            request.file(file);
        }
        said.forEach(request::param);
        return mvc.perform(request.param("key", UUID.randomUUID().toString())
                        .with(csrf())
                        .with(who))
                .andReturn()
                .getResponse();
    }

    private String kept(MockMultipartFile file, Map<String, String> said) throws Exception {
        MockHttpServletResponse answer = send(file, said, technician);
        assertThat(answer.getStatus()).as(answer.getContentAsString()).isEqualTo(302);
        return answer.getRedirectedUrl();
    }

    private Document refused(MockMultipartFile file, Map<String, String> said) throws Exception {
        MockHttpServletResponse answer = send(file, said, technician);
        assertThat(answer.getStatus()).isEqualTo(422);
        return Jsoup.parse(answer.getContentAsString());
    }

    private int status(String path, RequestPostProcessor who) throws Exception {
        return mvc.perform(get(path).with(who)).andReturn().getResponse().getStatus();
    }

    private Document page(String path) throws Exception {
        MockHttpServletResponse answer =
                mvc.perform(get(path).with(technician)).andReturn().getResponse();
        assertThat(answer.getStatus()).as(path).isEqualTo(200);
        return Jsoup.parse(answer.getContentAsString());
    }
}
