package headertank.app.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.app.account.People;
import headertank.app.database.DatabaseTest;
import headertank.app.demo.DemoData;
import headertank.app.shop.Role;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.context.TestPropertySource;

/** What somebody reads whose request is refused: which field, what was sent, what is allowed; and what was typed is still there. */
@DatabaseTest
@TestPropertySource(properties = "headertank.demo=true")
class RefusedPageIT {

    @LocalServerPort
    int port;

    @Autowired
    DemoData demo;

    @Autowired
    People people;

    @Autowired
    JdbcClient jdbc;

    Visitor visitor;
    String car;

    @BeforeEach
    void signIn() throws IOException {
        car = demo.ensure().get("car").toString();
        long shop = jdbc.sql("select min(id) from shop").query(Long.class).single();
        visitor = new Visitor(port);
        visitor.signIn(people.anAccount(shop, Role.values()), People.PASSWORD);
    }

    @AfterEach
    void leave() throws IOException {
        visitor.close();
    }

    @Test
    void theFieldItsValueAndWhatIsAllowedAreNamedAndWhatWasTypedStays() throws Exception {
        String jobs = "/cars/" + car + "/jobs";
        says(
                post(jobs, "asked=Look+at+the+fan&promised=2026-07-01&version=soon"),
                422,
                "“soon” cannot be taken",
                "whole number");
        says(
                post(jobs, "asked=Look+at+the+fan&promised=2026-07-01&key=none"),
                400,
                "key: “none” cannot",
                "key that the page");
        says(post(jobs, "asked=Look+at+the+fan&asked%5B0%5D=x"), 400, "name: “asked[0]” cannot", "names of the fields");
        says(post(jobs, "asked=Look+at+the+fan&promised=a%00b"), 400, "promised: “a□b” cannot", "without control");
        says(
                post("/jobs/1/stop", "reason=Look+at+the+fan&version=1&how=LATER"),
                422,
                "“LATER” cannot",
                "PAUSE, CALL_OFF");
        says(post("/jobs/1/hand-over", "note=Look+at+the+fan&version="), 400, "version", "whole number");
        partsThatEndAmidstAreRefused();
    }

    private void partsThatEndAmidstAreRefused() throws Exception {
        RawHttp.Answer answer = visitor.send(
                "POST",
                "/parts/import",
                Map.of("Content-Type", "multipart/form-data; boundary=b"),
                "--b\r\nContent-Disposition: form-data; name=\"file\"; filename=\"x\"\r\n\r\nkind"
                        .getBytes(StandardCharsets.UTF_8));
        assertThat(answer.status()).isEqualTo(400);
        assertThat(answer.body()).contains("a form as a browser sends it");
    }

    private RawHttp.Answer post(String path, String body) throws IOException {
        return visitor.send(
                "POST",
                path,
                Map.of("Content-Type", "application/x-www-form-urlencoded"),
                body.getBytes(StandardCharsets.UTF_8));
    }

    private static void says(RawHttp.Answer answer, int status, String what, String allowed) {
        assertThat(answer.status()).as(answer.body()).isEqualTo(status);
        assertThat(Jsoup.parse(answer.body()).text()
                        + Jsoup.parse(answer.body()).select("input, textarea").outerHtml())
                .contains(what, allowed)
                .contains("Look at the fan");
    }
}
