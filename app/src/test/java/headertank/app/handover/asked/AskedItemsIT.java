package headertank.app.handover.asked;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import headertank.app.account.People;
import headertank.app.check.Checks;
import headertank.app.check.Specs;
import headertank.app.check.stored.Decision;
import headertank.app.database.DatabaseTest;
import headertank.app.given.Given;
import headertank.app.handover.Handover;
import headertank.app.handover.Handovers;
import headertank.app.handover.Lists;
import headertank.app.handover.item.ChecklistLine;
import headertank.app.handover.item.ChecklistTask;
import headertank.app.handover.item.ItemOutcome;
import headertank.app.job.Jobs;
import headertank.app.shop.Role;
import headertank.calc.carspec.BuildField;
import headertank.calc.quantity.Stated;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.UUID;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

/** The owner decides what check lists ask; nobody gets a car past a fault by it. */
@DatabaseTest
class AskedItemsIT {

    private static final String WHY = "No duct work on these cars";

    @Autowired
    MockMvc mvc;

    @Autowired
    Given given;

    @Autowired
    Specs specs;

    @Autowired
    Checks checks;

    @Autowired
    Handovers handovers;

    @Autowired
    Lists lists;

    @Autowired
    Jobs jobs;

    @Autowired
    JdbcClient jdbc;

    Given.Workshop workshop;
    RequestPostProcessor owner;
    RequestPostProcessor tech;
    long car;
    long check;

    @BeforeEach
    void aRatedCar() {
        workshop = given.aWorkshop(Role.TECHNICIAN);
        owner = workshop.with(Role.OWNER);
        tech = workshop.with(Role.TECHNICIAN);
        car = workshop.aCar(Specs.easy().seen(BuildField.FAN_DRIVE, "ELECTRIC"), "street");
        check = workshop.aCheck(car);
    }

    @AfterEach
    void nobody() {
        People.nobody();
    }

    @Test
    void anItemThatIsLeftOutStandsOnListTrailAndSheetWithItsReason() throws Exception {
        change("street", "duct", false, "  ")
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("href=\"#reason-duct\"")))
                .andExpect(content().string(containsString("id=\"reason-duct\"")));
        change("street", "duct", false, WHY).andExpect(redirectedUrl("/duties/street/list#item-duct"));
        mvc.perform(get("/duties/street/list").with(owner))
                .andExpect(content().string(containsString(WHY)))
                .andExpect(content().string(containsString("Ask again")));
        assertThat(line(check, "duct").isMissing())
                .as("the list of an earlier check")
                .isTrue();

        int all = state(check).lines().size();
        check = anotherCheck("street");
        ChecklistLine duct = line(check, "duct");
        assertThat(duct.isMissing()).isFalse();
        assertThat(duct.isLeftOut()).isTrue();
        assertThat(state(check).lines()).hasSize(all);
        mvc.perform(get(list()).with(tech))
                .andExpect(content().string(containsString("Left out by this shop")))
                .andExpect(content().string(containsString(WHY)))
                .andExpect(content().string(containsString((all - 1) + " open, 0 done, 1 left out, of " + all)));

        workshop.actAs(Role.TECHNICIAN);
        lists.sign(check, Decision.DELIVER_WITH_CONDITIONS);
        lists.answerAll(check);
        lists.decideLeaves(check);
        assertThat(state(check).isDecided()).isTrue();
        assertThat(state(check).last().orElseThrow().openItems())
                .as("what the last word left out")
                .anySatisfy(o -> assertThat(o.item() + " " + o.reason()).isEqualTo("duct " + WHY));
        assertThat(sheet()).contains("Left out by this shop", WHY);
        mvc.perform(get("/audit?action=list.item-left-out").with(owner))
                .andExpect(content().string(containsString("street duct")));
        assertThatThrownBy(() -> jdbc.sql("update asked_item set asked = true").update())
                .hasStackTraceContaining("permission denied");
    }

    @Test
    void countsAddUpWhateverBecomesOfTheItems() throws Exception {
        change("street", "duct", false, WHY);
        check = anotherCheck("street");
        addsUp();
        workshop.actAs(Role.TECHNICIAN);
        lists.enter(check, "hoses", ItemOutcome.DONE, null, "");
        lists.enter(check, "bleed", ItemOutcome.NOT_APPLICABLE, null, "done yesterday");
        lists.enter(check, "cap-test", ItemOutcome.MEASURED, 0.9e5, "");
        lists.enter(check, "voltage", ItemOutcome.MEASURED, 13.4, "");
        lists.enter(check, "duct", ItemOutcome.FAULT, null, "torn after all");
        addsUp();
        Handover now = state(check);
        assertThat(now.done()).extracting(l -> l.item().key()).containsExactly("hoses");
        assertThat(now.leftOut()).extracting(l -> l.item().key()).containsExactly("bleed");
        assertThat(now.open()).extracting(l -> l.item().key()).contains("cap-test", "voltage", "duct");
    }

    private void addsUp() {
        Handover now = state(check);
        assertThat(now.open().size() + now.done().size() + now.leftOut().size())
                .isEqualTo(now.lines().size());
    }

    @Test
    void aCarIsAskedWhatOneOfItsDutiesAsks() throws Exception {
        change("street", "duct", false, WHY);
        assertThat(line(anotherCheck("street", "drift"), "duct").isMissing()).isTrue();
        change("drift", "duct", false, "Nor on those");
        assertThat(line(anotherCheck("street", "drift"), "duct").isLeftOut()).isTrue();
        assertThat(line(anotherCheck("street", "drift"), "duct")
                        .newest()
                        .orElseThrow()
                        .note())
                .as("the newest of the reasons")
                .isEqualTo("Nor on those");
        change("street", "duct", true, "A torn one was missed");
        assertThat(line(anotherCheck("street", "drift"), "duct").isMissing()).isTrue();
    }

    @Test
    void whatGuardsPeopleAndEnginesIsAlwaysAsked() throws Exception {
        for (ChecklistTask task : ChecklistTask.values()) {
            if (!task.mayBeLeftOut()) {
                change("street", task.key(), false, WHY).andExpect(status().isConflict());
            }
        }
        change("street", "flag-thermostat-removed", false, WHY).andExpect(status().isNotFound());
        change("no-duty", "duct", false, WHY).andExpect(status().isNotFound());
        assertThat(workshop.rows("asked_item")).isZero();
        jdbc.sql("""
                        insert into asked_item (shop_id, duty_id, item, asked, reason, author_id)
                        values (:shop, 'street', 'cap-test', false, 'past the page', :author)""")
                .param("shop", workshop.shop())
                .param("author", workshop.account())
                .update();
        assertThat(line(anotherCheck("street"), "cap-test").isMissing())
                .as("a row that came some other way")
                .isTrue();
        mvc.perform(get("/duties/street/list").with(owner))
                .andExpect(content().string(not(containsString("past the page"))));
    }

    @Test
    void onlyTheOwnerDecidesAndOnlyForTheOwnShop() throws Exception {
        for (RequestPostProcessor who : Arrays.asList(tech, workshop.with(Role.FRONT_DESK))) {
            mvc.perform(get("/duties/street/list").with(who)).andExpect(status().isForbidden());
            owner = who;
            change("street", "duct", false, WHY).andExpect(status().isForbidden());
        }
        owner = given.aWorkshop(Role.OWNER).with(Role.OWNER);
        change("street", "duct", false, WHY).andExpect(status().is3xxRedirection());
        workshop.actAs(Role.TECHNICIAN);
        assertThat(line(anotherCheck("street"), "duct").isMissing()).isTrue();
    }

    @Test
    void aFaultStaysOpenWhateverTheListAsks() throws Exception {
        long job = jobs.open(car, "look", LocalDate.now().plusDays(1));
        lists.enter(check, "duct", ItemOutcome.FAULT, null, "torn");
        change("street", "duct", false, WHY).andExpect(status().is3xxRedirection());
        workshop.actAs(Role.TECHNICIAN);
        specs.save(
                car,
                Specs.easy().set(BuildField.FAN_CURRENT, Stated.measured(11)).build(),
                "street");
        check = checks.run(car, 2);
        assertThat(line(check, "duct").isFault()).isTrue();
        workshop.actAs(Role.TECHNICIAN);
        lists.sign(check, Decision.DELIVER_WITH_CONDITIONS);
        entry("duct", "NOT_APPLICABLE", "", "the owner says so").andExpect(status().isUnprocessableContent());
        workshop.actAs(Role.TECHNICIAN);
        lists.answerAll(check);
        decide().andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("fault")));
        mvc.perform(post("/jobs/" + job + "/hand-over")
                        .with(csrf())
                        .with(owner)
                        .param("version", "0")
                        .param("sure", "yes"))
                .andExpect(status().isConflict());
        change("street", "duct", true, "asked again").andExpect(status().is3xxRedirection());
        assertThat(line(check, "duct").isFault()).isTrue();
        entry("duct", "DONE", "", "sealed anew").andExpect(status().is3xxRedirection());
        assertThat(state(check).openFaults()).isEmpty();
    }

    @Test
    void aDecidedListStaysDecidedWhenMoreIsAskedLater() throws Exception {
        change("street", "duct", false, WHY);
        check = anotherCheck("street");
        workshop.actAs(Role.TECHNICIAN);
        lists.sign(check, Decision.DELIVER_WITH_CONDITIONS);
        lists.answerAll(check);
        lists.decideLeaves(check);
        change("street", "duct", true, "A torn one was missed");
        assertThat(state(check).isDecided()).isTrue();
        assertThat(state(check).standing().mayLeave())
                .as("the list and the gate agree")
                .isTrue();
    }

    @Test
    void aReadingThatNobodyCouldJudgeIsJudgedBeforeItsItemIsLeftOut() throws Exception {
        workshop.sign(check, Decision.DELIVER_WITH_CONDITIONS, "Signed with Street in mind.");
        entry("voltage", "MEASURED", "10.1 V", "").andExpect(status().is3xxRedirection());
        entry("voltage", "NOT_APPLICABLE", "", "never mind")
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("A reading waits to be judged here")));
        decide().andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("A reading waits to be judged here")));
        workshop.actAs(Role.TECHNICIAN);
        handovers.setDay(check, Lists.WORKSHOP_K, UUID.randomUUID());
        assertThat(line(check, "voltage").isFault()).isTrue();
        entry("voltage", "NOT_APPLICABLE", "", "never mind").andExpect(status().isUnprocessableContent());
        decide().andExpect(content().string(containsString("fault")));
        assertThat(workshop.rows("handover_decision")).isZero();
    }

    private long anotherCheck(String... duties) {
        workshop.actAs(Role.TECHNICIAN);
        car = workshop.aCar(
                Specs.easy().seen(BuildField.FAN_DRIVE, "ELECTRIC").set(BuildField.FAN_CURRENT, Stated.measured(11)),
                duties);
        return workshop.aCheck(car);
    }

    private Handover state(long of) {
        workshop.actAs(Role.TECHNICIAN);
        return handovers.of(of);
    }

    private ChecklistLine line(long of, String item) {
        return state(of).line(item).orElseThrow();
    }

    private String list() {
        return "/checks/" + check + "/handover";
    }

    private ResultActions change(String duty, String item, boolean asked, String reason) throws Exception {
        return mvc.perform(post("/duties/" + duty + "/list")
                .with(csrf())
                .with(owner)
                .param("key", UUID.randomUUID().toString())
                .param("item", item)
                .param("asked", String.valueOf(asked))
                .param("reason", reason));
    }

    private ResultActions entry(String item, String outcome, String value, String note) throws Exception {
        return mvc.perform(post(list() + "/entries")
                .with(csrf())
                .with(tech)
                .param("key", UUID.randomUUID().toString())
                .param("item", item)
                .param("outcome", outcome)
                .param("value", value)
                .param("note", note));
    }

    /** The last word, with a reason for whatever is missing. */
    private ResultActions decide() throws Exception {
        var request = post(list() + "/decision")
                .with(csrf())
                .with(tech)
                .param("key", UUID.randomUUID().toString())
                .param("outcome", "DELIVER");
        state(check).missing().forEach(l -> request.param("open[" + l.item().key() + "]", "never mind"));
        return mvc.perform(request);
    }

    private String sheet() throws Exception {
        byte[] pdf = mvc.perform(get("/checks/" + check + "/sheet.pdf").with(tech))
                .andReturn()
                .getResponse()
                .getContentAsByteArray();
        try (var document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }
}
