package headertank.app.journey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import headertank.app.account.People;
import headertank.app.check.Checks;
import headertank.app.check.SignOffForm;
import headertank.app.check.Specs;
import headertank.app.check.stored.Decision;
import headertank.app.csv.Csv;
import headertank.app.database.DatabaseTest;
import headertank.app.shop.Role;
import headertank.calc.carspec.BuildField;
import headertank.calc.quantity.Stated;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

/** What an owner looks through: who did what, hot cars, jobs open and closed, the way in for an empty shop. */
@DatabaseTest
class OwnerListsIT {

    @Autowired
    People people;

    @Autowired
    Specs specs;

    @Autowired
    Checks checks;

    @Autowired
    MockMvc mvc;

    @Autowired
    JdbcClient jdbc;

    long shop;
    RequestPostProcessor owner;
    RequestPostProcessor desk;

    @BeforeEach
    void aShop() {
        shop = people.aShop();
        owner = people.in(shop, Role.OWNER);
        desk = people.in(shop, Role.FRONT_DESK);
    }

    @AfterEach
    void nobody() {
        People.nobody();
    }

    private String page(String path, RequestPostProcessor who) throws Exception {
        return mvc.perform(get(path).with(who))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString();
    }

    private List<List<String>> file(String path, RequestPostProcessor who) throws Exception {
        return Csv.read(page(path, who)).stream().map(Csv.Line::cells).toList();
    }

    private void add(String plate, String make, String customer) throws Exception {
        mvc.perform(post("/cars")
                        .with(csrf())
                        .with(desk)
                        .param("plate", plate)
                        .param("make", make)
                        .param("newCustomerName", customer))
                .andExpect(status().is3xxRedirection());
    }

    private long car(String plate) {
        return jdbc.sql("select id from car where shop_id = :shop and plate = :plate")
                .param("shop", shop)
                .param("plate", plate)
                .query(Long.class)
                .single();
    }

    private void job(String plate, String asked, int inDays) throws Exception {
        mvc.perform(post("/cars/" + car(plate) + "/jobs")
                        .with(csrf())
                        .with(desk)
                        .param("asked", asked)
                        .param("promised", LocalDate.now().plusDays(inDays).toString()))
                .andExpect(status().is3xxRedirection());
    }

    @Test
    void theTrailIsReadFilteredAndTakenHomeAndThatLeavesALine() throws Exception {
        add("AT 1", "Oskelle", "Ann Example");
        add("AT 2", "Nimbrax", "=cmd|Bo");
        String all = page("/audit", owner);
        assertThat(all).contains("Car added", "Customer added", "/cars/" + car("AT 1"), "/cars/" + car("AT 2"));
        String cars = page("/audit?action=car.added", owner);
        assertThat(cars).contains("/cars/" + car("AT 1")).doesNotContain("/customers/");
        assertThat(page("/audit?action=car.added&until=" + LocalDate.now().minusDays(1), owner))
                .contains("Nothing fits")
                .doesNotContain("/cars/" + car("AT 1"));
        long somebodyElse = jdbc.sql("select id from account where shop_id = :s order by id limit 1")
                .param("s", shop)
                .query(Long.class)
                .single();
        assertThat(page("/audit?account=" + somebodyElse, owner)).doesNotContain("/cars/" + car("AT 1"));

        List<List<String>> lines = file("/audit.csv?action=car.added", owner);
        assertThat(lines.get(0)).containsExactly("id", "at", "who", "action", "subject_type", "subject_id", "detail");
        assertThat(lines.subList(1, lines.size()))
                .extracting(l -> l.get(5))
                .containsExactly("" + car("AT 2"), "" + car("AT 1"));
        assertThat(file("/audit.csv?action=audit.exported", owner)).hasSize(2);

        long other = people.aShop();
        assertThat(page("/audit", people.in(other, Role.OWNER))).doesNotContain("Car added");
        mvc.perform(get("/audit").with(desk)).andExpect(status().isForbidden());
        mvc.perform(get("/audit.csv").with(people.in(shop, Role.TECHNICIAN))).andExpect(status().isForbidden());
    }

    @Test
    void aLongTrailGoesOnPageByPage() throws Exception {
        jdbc.sql("insert into audit_entry (shop_id, action, subject_type, subject_id) "
                        + "select :s, 'car.changed', 'car', n from generate_series(1, 150) n")
                .param("s", shop)
                .update();
        String first = page("/audit", owner);
        assertThat(first).contains(">car 150<", ">car 51<").doesNotContain(">car 50<");
        String next = first.replaceAll("(?s).*href=\"(/audit\\?[^\"]*before=\\d+)\".*", "$1")
                .replace("&amp;", "&");
        assertThat(page(next, owner)).contains(">car 50<", ">car 1<").doesNotContain(">car 51<", "before=");
    }

    @Test
    void jobsAreFoundByWordsInAnyOrderThroughASlipOfOneLetter() throws Exception {
        add("Q 11", "Oskelle", "Bo Sample");
        add("Q 22", "Nimbrax", "Ann Example");
        job("Q 11", "boils in the second lap", 3);
        job("Q 22", "fan runs on", 1);
        assertThat(page("/jobs", desk)).contains("2 jobs").containsSubsequence("Q 22", "Q 11");
        assertThat(page("/jobs?sort=plate", desk)).containsSubsequence("Q 11", "Q 22");
        for (String words : List.of("lap boils", "sample oskelle", "oskele", "Oskolle bo", "boils", "q11")) {
            assertThat(page("/jobs?q=" + words, desk))
                    .as(words)
                    .contains("One job", "Q 11")
                    .doesNotContain("Q 22");
        }
        for (String words : List.of("oskxxle", "lap nimbrax", "q 33", "%")) {
            assertThat(page("/jobs?q=" + URLEncoder.encode(words, StandardCharsets.UTF_8), desk))
                    .as(words)
                    .contains("No job");
        }
        assertThat(file("/jobs.csv?q=oskele", desk)).hasSize(2).last().satisfies(l -> assertThat(l)
                .contains("Q 11", "Bo Sample"));
        mvc.perform(get("/jobs.csv").with(people.in(shop, Role.TECHNICIAN))).andExpect(status().isForbidden());
        assertThat(file("/audit.csv?action=job.exported", owner)).hasSize(2);
    }

    @Test
    void aClosedJobLeavesTheQueueAndStaysToBeFound() throws Exception {
        add("C 1", "Oskelle", "Bo Sample");
        job("C 1", "changed their mind", 2);
        long job = jdbc.sql("select id from job where shop_id = :s")
                .param("s", shop)
                .query(Long.class)
                .single();
        assertThat(page("/jobs?show=closed", desk)).contains("No closed job here");
        mvc.perform(post("/jobs/" + job + "/stop")
                        .with(csrf())
                        .with(desk)
                        .param("how", "CALL_OFF")
                        .param("reason", "sold the car")
                        .param("version", "0"))
                .andExpect(status().is3xxRedirection());
        assertThat(page("/jobs", desk)).contains("No open job here");
        assertThat(page("/jobs?show=closed", desk)).contains("One job", "C 1", "Called off");
        assertThat(page("/jobs?show=closed&q=mind", desk)).contains("C 1");
        assertThat(page("/jobs?show=closed", people.in(people.aShop(), Role.OWNER)))
                .doesNotContain("C 1");
    }

    @Test
    void hotCarsStandInOneListWithWhatWasChangedSince() throws Exception {
        people.actAs(shop, Role.TECHNICIAN);
        long first = specs.aCar();
        specs.save(first, Specs.easy().build(), "street");
        long second = specs.aCar();
        specs.save(second, Specs.easy().build(), "street");
        report(first, "queueing at the ferry", "2026-07-01T15:30");
        report(second, "third lap", "2026-07-03T15:30");
        String list = page("/incidents", owner);
        assertThat(list).contains("2 reports", "118.0").containsSubsequence("third lap", "queueing at the ferry");
        assertThat(list).doesNotContain("/compare?from=1");
        assertThat(page("/incidents?q=fery queueing", owner))
                .contains("One report")
                .doesNotContain("third lap");
        people.actAs(shop, Role.TECHNICIAN);
        people.actAs(shop, Role.TECHNICIAN);
        specs.save(
                first,
                Specs.easy().set(BuildField.FAN_COUNT, Stated.measured(1)).build(),
                "street");
        assertThat(page("/incidents", owner)).contains("/cars/" + first + "/compare?from=1&amp;to=2");
        assertThat(page("/incidents", people.in(people.aShop(), Role.OWNER))).contains("No report");
    }

    private void report(long car, String doing, String when) throws Exception {
        mvc.perform(post("/cars/" + car + "/incidents")
                        .with(csrf())
                        .with(desk)
                        .param("when", when)
                        .param("doing", doing)
                        .param("reading", "118")
                        .param("place", "HEAD")
                        .param("revision", "1"))
                .andExpect(status().is3xxRedirection());
    }

    @Test
    void anEmptyShopIsLedThroughItsFirstStepsUntilACheckIsSigned() throws Exception {
        assertThat(page("/", owner)).contains("First steps", "Log the first car");
        assertThat(done()).as("there are accounts").isEqualTo(1);
        assertThat(page("/", desk)).doesNotContain("First steps");
        people.actAs(shop, Role.TECHNICIAN);
        long car = specs.aCar();
        specs.save(car, Specs.easy().build(), "street");
        long check = checks.run(car, 1);
        assertThat(done()).isEqualTo(4);
        assertThat(page("/", owner)).contains("First steps");
        people.actAs(shop, Role.TECHNICIAN);
        checks.sign(check, new SignOffForm(Decision.DELIVER, "", List.of()));
        assertThat(page("/", owner)).doesNotContain("First steps");
        assertThat(done()).isEqualTo(5);
    }

    private int done() throws Exception {
        return page("/first-steps", owner).split("is-done", -1).length - 1;
    }
}
