package headertank.app.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import headertank.app.account.People;
import headertank.app.check.Checks;
import headertank.app.check.Specs;
import headertank.app.check.stored.Decision;
import headertank.app.database.DatabaseTest;
import headertank.app.gate.Stage;
import headertank.app.given.Given;
import headertank.app.handover.Lists;
import headertank.app.problem.ConflictException;
import headertank.app.problem.NotFoundException;
import headertank.app.shop.Role;
import headertank.calc.carspec.BuildField;
import headertank.calc.quantity.Stated;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

/** A job's way from the counter to the customer, and who may do what on it. */
@DatabaseTest
class JobsIT {

    private static final LocalDate TODAY = LocalDate.now(ZoneId.systemDefault());

    @Autowired
    Given given;

    @Autowired
    Jobs jobs;

    @Autowired
    Queue queue;

    @Autowired
    Specs specs;

    @Autowired
    Checks checks;

    @Autowired
    Lists lists;

    @Autowired
    People people;

    @Autowired
    MockMvc mvc;

    @Autowired
    JdbcClient jdbc;

    Given.Workshop workshop;
    long shop;
    long car;

    @BeforeEach
    void aCar() {
        workshop = given.aWorkshop(Role.TECHNICIAN);
        shop = workshop.shop();
        car = workshop.aCar();
    }

    @Test
    void theStageFollowsFromWhatIsKnownOfTheCar() {
        long job = jobs.open(car, "look", TODAY);
        assertThat(stage(job)).isEqualTo(Stage.TO_DESCRIBE);
        specs.save(car, Specs.easy().build(), "street");
        assertThat(stage(job)).isEqualTo(Stage.TO_RATE);
        long held = checks.run(car, 1);
        assertThat(stage(job)).isEqualTo(Stage.TO_SIGN);
        workshop.sign(held, Decision.HOLD_BACK);
        assertThat(stage(job)).isEqualTo(Stage.STAYS);
        assertThatThrownBy(() -> jobs.handOver(job, 0, null)).isInstanceOf(ConflictException.class);
        specs.save(
                car,
                Specs.easy().set(BuildField.FAN_CURRENT, Stated.measured(11)).build(),
                "street");
        assertThat(stage(job)).isEqualTo(Stage.TO_RATE);
        long check = checks.run(car, 2);
        workshop.sign(check, Decision.DELIVER);
        assertThat(stage(job)).isEqualTo(Stage.TO_GO_THROUGH);
        assertThatThrownBy(() -> jobs.handOver(job, 0, null)).isInstanceOf(ConflictException.class);
        lists.answerAll(check);
        assertThat(stage(job)).isEqualTo(Stage.TO_GO_THROUGH);
        lists.decideLeaves(check);
        assertThat(stage(job)).isEqualTo(Stage.READY);
        jobs.handOver(job, 0, null);
        assertThat(stage(job)).isEqualTo(Stage.HANDED_OVER);
        assertThat(jobs.byId(job).events())
                .extracting(Job.Event::kind)
                .containsExactly(Job.Kind.OPENED, Job.Kind.HANDED_OVER);
        assertThatThrownBy(() -> jobs.pause(job, "late", 1, null)).isInstanceOf(ConflictException.class);
    }

    @Test
    void anOlderSignatureDoesNotAnswerANewJob() {
        specs.save(car, Specs.easy().build(), "street");
        workshop.sign(checks.run(car, 1), Decision.DELIVER);
        long job = jobs.open(car, "again", TODAY);
        assertThat(stage(job)).isEqualTo(Stage.TO_RATE);
    }

    @Test
    void aPauseHidesTheStageAndItsReasonStays() {
        long job = jobs.open(car, "look", TODAY);
        jobs.pause(job, "waits for a hose", 0, null);
        assertThat(stage(job)).isEqualTo(Stage.PAUSED);
        jobs.resume(job, 1, null);
        assertThat(stage(job)).isEqualTo(Stage.TO_DESCRIBE);
        jobs.callOff(job, "sold", 2, null);
        assertThat(jobs.byId(job).events())
                .extracting(Job.Event::reason)
                .containsExactly("", "waits for a hose", "", "sold");
    }

    @Test
    void twoWhoChangeTheSameJobDoNotOverwriteEachOther() throws Exception {
        long job = jobs.open(car, "look", TODAY);
        jobs.change(job, "look twice", TODAY.plusDays(1), 0, null);
        mvc.perform(change(job, "look thrice", TODAY.plusDays(2).toString(), 0).with(people.in(shop, Role.FRONT_DESK)))
                .andExpect(status().isConflict())
                .andExpect(content().string(containsString("look thrice")))
                .andExpect(content().string(containsString("now saved: look twice")));
        people.actAs(shop, Role.FRONT_DESK);
        assertThat(jobs.byId(job).line().asked()).isEqualTo("look twice");
    }

    @Test
    void theQueueComesByPromisePageByPageAndWithoutOtherShops() {
        long later = jobs.open(specs.aCar(), "later", TODAY.plusDays(3));
        long late = jobs.open(specs.aCar(), "late", TODAY.minusDays(3));
        long due = jobs.open(car, "due", TODAY);
        long same = jobs.open(specs.aCar(), "due too", TODAY);
        people.actAs(people.aShop(), Role.FRONT_DESK);
        jobs.open(specs.aCar(), "elsewhere", TODAY);
        people.actAs(shop, Role.FRONT_DESK);

        var all = queue.open(Queue.Choice.ALL, Queue.Position.START, 9);
        assertThat(all).extracting(JobLine::id).containsExactly(late, due, same, later);
        assertThat(queue.open(Queue.Choice.ALL, Queue.Position.of(all.get(1)), 9))
                .extracting(JobLine::id)
                .containsExactly(same, later);
        assertThat(queue.open(QueueView.DUE.choice(TODAY), Queue.Position.START, 9))
                .extracting(JobLine::id)
                .containsExactly(late, due, same);
        assertThat(queue.open(QueueView.WORKSHOP.choice(TODAY), Queue.Position.START, 9))
                .isEmpty();
    }

    @Test
    void aCarHasOneOpenJobHoweverItIsAskedFor() throws Exception {
        long job = jobs.open(car, "look", TODAY);
        RequestPostProcessor desk = people.in(shop, Role.FRONT_DESK);
        mvc.perform(open(car, "another").with(desk))
                .andExpect(status().isConflict())
                .andExpect(content().string(containsString("There is an open job for this car already.")))
                .andExpect(content().string(containsString("/jobs/" + job)))
                .andExpect(content().string(containsString("another")));
        mvc.perform(get("/cars/" + car).with(desk))
                .andExpect(content().string(not(containsString("/cars/" + car + "/jobs/new"))));
        assertThatThrownBy(() -> jdbc.sql("""
                        insert into job (shop_id, car_id, asked, promised_on, opened_by)
                        select shop_id, car_id, asked, promised_on, opened_by from job where id = :id""").param("id", job).update())
                .isInstanceOf(DataAccessException.class)
                .hasMessageContaining("open job");
        people.actAs(shop, Role.FRONT_DESK);
        jobs.callOff(job, "sold", 0, null);
        mvc.perform(open(car, "another").with(desk)).andExpect(status().is3xxRedirection());
    }

    @Test
    void twoWhoOpenAJobForOneCarAtOnceMakeOne() throws Exception {
        RequestPostProcessor desk = people.in(shop, Role.FRONT_DESK);
        ExecutorService hands = Executors.newFixedThreadPool(4);
        try {
            List<Integer> answers = new ArrayList<>();
            for (Future<Integer> answer : hands.invokeAll(Stream.of("one", "two", "three", "four")
                    .<Callable<Integer>>map(
                            asked -> () -> mvc.perform(open(car, asked).with(desk))
                                    .andReturn()
                                    .getResponse()
                                    .getStatus())
                    .toList())) {
                answers.add(answer.get());
            }
            assertThat(answers).containsExactlyInAnyOrder(302, 409, 409, 409);
        } finally {
            hands.shutdownNow();
        }
        assertThat(workshop.rows("job")).isEqualTo(1);
    }

    @Test
    void aJobIsNotTakenBackBesideANewOne() throws Exception {
        long job = jobs.open(car, "look", TODAY);
        specs.save(car, Specs.easy().build(), "street");
        long check = checks.run(car, 1);
        workshop.sign(check, Decision.DELIVER);
        lists.answerAll(check);
        lists.decideLeaves(check);
        jobs.handOver(job, 0, null);
        long next = jobs.open(car, "again", TODAY);
        mvc.perform(post("/jobs/" + job + "/take-back")
                        .with(csrf())
                        .with(people.in(shop, Role.OWNER))
                        .param("version", "1")
                        .param("reason", "wrong car"))
                .andExpect(status().isConflict());
        people.actAs(shop, Role.OWNER);
        assertThat(stage(job)).isEqualTo(Stage.HANDED_OVER);
        assertThat(stage(next)).isEqualTo(Stage.TO_RATE);
    }

    @Test
    void aJobOfAnotherShopIsNotFound() {
        long job = jobs.open(car, "look", TODAY);
        people.actAs(people.aShop(), Role.FRONT_DESK);
        assertThatThrownBy(() -> jobs.byId(job)).isInstanceOf(NotFoundException.class);
        assertThatThrownBy(() -> jobs.pause(job, "x", 0, null)).isInstanceOf(NotFoundException.class);
        assertThatThrownBy(() -> jobs.open(car, "x", TODAY)).isInstanceOf(NotFoundException.class);
    }

    @Test
    void whatCannotBePromisedComesBackWithASentence() throws Exception {
        var desk = people.in(shop, Role.FRONT_DESK);
        mvc.perform(post("/cars/" + car + "/jobs")
                        .with(csrf())
                        .with(desk)
                        .param("asked", "")
                        .param("promised", "soon"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("Write down what is asked for.")))
                .andExpect(content().string(containsString("“soon” is no date")))
                .andExpect(content().string(containsString("value=\"soon\"")));
        mvc.perform(post("/cars/" + car + "/jobs")
                        .with(csrf())
                        .with(desk)
                        .param("asked", "look")
                        .param("promised", "2001-01-01"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("2001-01-01 cannot be promised")));
        people.actAs(shop, Role.FRONT_DESK);
        long job = jobs.open(car, "look", TODAY.minusDays(5));
        mvc.perform(change(job, "look well", TODAY.minusDays(5).toString(), 0).with(desk))
                .andExpect(status().is3xxRedirection());
        mvc.perform(post("/jobs/" + job + "/stop")
                        .with(csrf())
                        .with(desk)
                        .param("how", "PAUSE")
                        .param("version", "1"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("Give a reason.")));
    }

    @Test
    void eachRoleStartsWithWhatWaitsForIt() throws Exception {
        long late = jobs.open(car, "Hot on the motorway", TODAY.minusDays(2));
        jobs.open(specs.aCar(), "Next week’s work", TODAY.plusDays(7));
        mvc.perform(get("/").with(people.in(shop, Role.FRONT_DESK)))
                .andExpect(content().string(containsString("Hot on the motorway")))
                .andExpect(content().string(containsString("2 days late")))
                .andExpect(content().string(not(containsString("Next week’s work"))))
                .andExpect(content().string(not(containsString("nobody has signed"))));
        mvc.perform(get("/").with(people.in(shop, Role.TECHNICIAN)))
                .andExpect(content().string(containsString("Nothing waits to be rated or signed.")));
        people.actAs(shop, Role.TECHNICIAN);
        specs.save(car, Specs.easy().build(), "street");
        mvc.perform(get("/").with(people.in(shop, Role.TECHNICIAN)))
                .andExpect(content().string(containsString("/cars/" + car + "/revisions/1/check")));
        people.actAs(shop, Role.TECHNICIAN);
        checks.run(car, 1);
        mvc.perform(get("/").with(people.in(shop, Role.OWNER)))
                .andExpect(content().string(containsString("Next week’s work")))
                .andExpect(content().string(containsString("Check of revision 1")))
                .andExpect(content().string(containsString("No changed car waits that long.")));
        mvc.perform(get("/jobs/" + late).with(people.in(shop, Role.TECHNICIAN)))
                .andExpect(status().isOk())
                .andExpect(content().string(not(containsString("Pause or call off"))));
    }

    private static MockHttpServletRequestBuilder open(long car, String asked) {
        return post("/cars/" + car + "/jobs")
                .with(csrf())
                .param("asked", asked)
                .param("promised", TODAY.plusDays(1).toString());
    }

    private static MockHttpServletRequestBuilder change(long job, String asked, String promised, int version) {
        return post("/jobs/" + job)
                .with(csrf())
                .param("asked", asked)
                .param("promised", promised)
                .param("version", String.valueOf(version));
    }

    private Stage stage(long job) {
        return queue.line(job).orElseThrow().stage();
    }
}
