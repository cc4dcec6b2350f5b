package headertank.app.gate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.flash;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import headertank.app.account.People;
import headertank.app.check.Checks;
import headertank.app.check.Specs;
import headertank.app.check.stored.Decision;
import headertank.app.database.DatabaseTest;
import headertank.app.handover.Lists;
import headertank.app.handover.item.ItemOutcome;
import headertank.app.job.Jobs;
import headertank.app.print.PageOne;
import headertank.app.shop.Role;
import headertank.calc.carspec.BuildField;
import headertank.calc.quantity.Stated;
import java.time.LocalDate;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

/** The hand-over to the customer, and the ways round it. */
@DatabaseTest
class LastClickIT {

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
    Jobs jobs;

    @Autowired
    JdbcClient jdbc;

    long shop;
    long car;
    long check;
    long job;
    RequestPostProcessor desk;
    RequestPostProcessor tech;
    RequestPostProcessor owner;

    @BeforeEach
    void aSignedCarWithAJob() {
        shop = people.aShop();
        desk = people.in(shop, Role.FRONT_DESK);
        tech = people.in(shop, Role.TECHNICIAN);
        owner = people.in(shop, Role.OWNER);
        people.actAs(shop, Role.TECHNICIAN);
        car = specs.aCar();
        job = jobs.open(car, "look", LocalDate.now().plusDays(1));
        specs.save(car, Specs.easy().build(), "street");
        check = checks.run(car, 1);
        lists.sign(check, Decision.DELIVER_WITH_CONDITIONS);
    }

    @AfterEach
    void nobody() {
        People.nobody();
    }

    @Test
    void aCapThatOpensTooEarlyKeepsTheCarFromCheckToCheckUntilItIsCleared() throws Exception {
        lists.answerAll(check);
        lists.enter(check, "cap-test", ItemOutcome.MEASURED, 0.90e5, "");
        assertThat(stage()).isEqualTo("FAULT_OPEN");
        handOver(desk).andExpect(status().isConflict());
        mvc.perform(get("/jobs/" + job + "/hand-over").with(desk))
                .andExpect(content().string(containsString("a fault is open")))
                .andExpect(content().string(not(containsString("name=\"sure\""))));
        mvc.perform(post("/checks/" + check + "/handover/decision")
                        .with(csrf())
                        .with(tech)
                        .param("key", UUID.randomUUID().toString())
                        .param("outcome", "DELIVER"))
                .andExpect(status().isUnprocessableContent());
        mvc.perform(post("/cars/" + car + "/revisions/1/checks").with(csrf()).with(tech))
                .andExpect(redirectedUrl("/checks/" + check))
                .andExpect(flash().attribute("done", "check.unchanged"));
        assertThat(stage()).as("rated again with nothing changed").isEqualTo("FAULT_OPEN");

        people.actAs(shop, Role.TECHNICIAN);
        specs.save(
                car,
                Specs.easy().set(BuildField.FAN_CURRENT, Stated.measured(11)).build(),
                "street");
        check = checks.run(car, 2);
        lists.sign(check, Decision.DELIVER_WITH_CONDITIONS);
        assertThat(stage()).as("on a new check of a new revision").isEqualTo("FAULT_OPEN");
        mvc.perform(get("/cars/" + car).with(desk)).andExpect(content().string(containsString("a fault is open")));
        people.actAs(shop, Role.TECHNICIAN);
        lists.enter(check, "cap-test", ItemOutcome.MEASURED, 1.30e5, "");
        assertThat(stage()).isEqualTo("TO_GO_THROUGH");
        lists.answerAll(check);
        lists.decideLeaves(check);
        assertThat(stage()).isEqualTo("READY");
        assertThat(sheet())
                .contains("cleared by a reading within what is expected", "0.90 bar", "The car leaves: decided by")
                .contains("As expected", "1.30 bar (1.17 bar to 1.43 bar)", "For the shop", "Received, customer")
                .doesNotContain("Annex");
    }

    @Test
    void aListWithMissingItemsIsNotDecidedWhoeverAsksTheDatabase() throws Exception {
        for (String item : new String[] {"hoses", "bleed", "duct"}) {
            mvc.perform(post("/checks/" + check + "/handover/entries")
                    .with(csrf())
                    .with(tech)
                    .param("key", UUID.randomUUID().toString())
                    .param("item", item)
                    .param("outcome", "DONE"));
        }
        mvc.perform(post("/checks/" + check + "/handover/decision")
                        .with(csrf())
                        .with(tech)
                        .param("key", UUID.randomUUID().toString())
                        .param("outcome", "DELIVER"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("Say why this is left out")));
        handOver(desk).andExpect(status().isConflict());
        assertThatThrownBy(() -> jdbc.sql("update job set closed_as = 'HANDED_OVER', closed_at = now() where id = :id")
                        .param("id", job)
                        .update())
                .hasMessageContaining("the car may not leave");
        assertThatThrownBy(() ->
                        jdbc.sql("""
                        insert into handover_decision (shop_id, check_run_id, outcome, items, author_id)
                        select shop_id, :check, 'DELIVER', 'hoses,cap-test', id from account where shop_id = :shop limit 1""").param("check", check).param("shop", shop).update())
                .hasMessageContaining("item cap-test is missing");
        assertThat(stage()).isEqualTo("TO_GO_THROUGH");
    }

    @Test
    void theLastClickAsksOnceAndTheOwnerTakesItBackWithAReason() throws Exception {
        lists.answerAll(check);
        lists.decideLeaves(check);
        mvc.perform(post("/jobs/" + job + "/hand-over").with(csrf()).with(desk).param("version", "0"))
                .andExpect(redirectedUrl("/jobs/" + job + "/hand-over"));
        assertThat(stage()).isEqualTo("READY");
        mvc.perform(get("/jobs/" + job + "/hand-over").with(desk))
                .andExpect(content().string(containsString("Yes, the customer has the car")))
                .andExpect(content().string(containsString("decided by Person")));
        handOver(desk).andExpect(redirectedUrl("/jobs/" + job));
        assertThat(stage()).isEqualTo("HANDED_OVER");
        mvc.perform(post("/checks/" + check + "/handover/entries")
                        .with(csrf())
                        .with(tech)
                        .param("key", UUID.randomUUID().toString())
                        .param("item", "hoses")
                        .param("outcome", "FAULT")
                        .param("note", "late"))
                .andExpect(status().isConflict());

        takeBack(desk, "wrong car").andExpect(status().isForbidden());
        takeBack(owner, " ")
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("error-summary")));
        takeBack(owner, "wrong car").andExpect(redirectedUrl("/jobs/" + job));
        assertThat(stage()).isEqualTo("READY");
        assertThat(jdbc.sql(
                                "select kind || coalesce(':' || nullif(reason, ''), '') from job_event where job_id = :id order by id")
                        .param("id", job)
                        .query(String.class)
                        .list())
                .containsExactly("OPENED", "HANDED_OVER", "TAKEN_BACK:wrong car");
        assertThatThrownBy(() -> jdbc.sql("delete from job_event").update())
                .hasStackTraceContaining("permission denied");
    }

    private ResultActions handOver(RequestPostProcessor who) throws Exception {
        return mvc.perform(post("/jobs/" + job + "/hand-over")
                .with(csrf())
                .with(who)
                .param("version", version())
                .param("sure", "yes"));
    }

    private ResultActions takeBack(RequestPostProcessor who, String reason) throws Exception {
        return mvc.perform(post("/jobs/" + job + "/take-back")
                .with(csrf())
                .with(who)
                .param("version", version())
                .param("reason", reason));
    }

    private String version() {
        return jdbc.sql("select version from job where id = :id")
                .param("id", job)
                .query(String.class)
                .single();
    }

    private String stage() {
        return jdbc.sql("select stage from job_stage where id = :id")
                .param("id", job)
                .query(String.class)
                .single();
    }

    /** What the customer signs for: all of it is on the first page. */
    private String sheet() throws Exception {
        return PageOne.of(mvc.perform(get("/checks/" + check + "/sheet.pdf").with(desk))
                .andReturn()
                .getResponse()
                .getContentAsByteArray());
    }
}
