package headertank.app.check;

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
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrlPattern;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import headertank.app.account.People;
import headertank.app.carspec.Revisions;
import headertank.app.check.figure.ShopFigures;
import headertank.app.check.snapshot.Snapshot;
import headertank.app.check.stored.CheckLine;
import headertank.app.check.stored.CheckResult;
import headertank.app.check.stored.Decision;
import headertank.app.check.stored.DutyResult;
import headertank.app.check.stored.SignOff;
import headertank.app.check.stored.StoredCheck;
import headertank.app.check.stored.StoredVerdict;
import headertank.app.database.DatabaseTest;
import headertank.app.given.Given;
import headertank.app.problem.ConflictException;
import headertank.app.problem.NotFoundException;
import headertank.app.shop.Role;
import headertank.app.stored.Sha256;
import headertank.calc.Rater;
import headertank.calc.carspec.BuildField;
import headertank.calc.quantity.Stated;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

/** A check from the rating to the signature. */
@DatabaseTest
class ChecksIT {

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
    ShopFigures figures;

    @Autowired
    Revisions revisions;

    @Autowired
    Rater rater;

    @Autowired
    JdbcClient jdbc;

    Given.Workshop workshop;
    long shop;
    long technician;
    long car;

    @BeforeEach
    void aCar() {
        workshop = given.aWorkshop(Role.TECHNICIAN);
        shop = workshop.shop();
        technician = workshop.account();
        car = workshop.aCar(Specs.easy(), "street");
    }

    @Test
    void aCheckStoresWhatWentInAndWhatCameOutWithTheirHashes() {
        long id = checks.run(car, 1);
        StoredCheck check = checks.byId(id);
        var revision = revisions.of(car, 1);
        var rating = rater.rate(revision.spec().build(), List.of(rater.duties().get("street")));
        assertThat(check.result()).isEqualTo(Snapshot.result(rating, rater));
        assertThat(checks.input(id).fields().get(BuildField.CORE_WIDTH.key()).value())
                .isEqualTo(0.65);
        var row = jdbc.sql("select input_text, result_text, rule_versions, duties, calc_core_version, seed "
                        + "from check_run where id = :id")
                .param("id", id)
                .query()
                .singleRow();
        assertThat(check.inputSha256()).isEqualTo(CheckStore.hex(Sha256.of((String) row.get("input_text"))));
        assertThat(check.resultSha256()).isEqualTo(CheckStore.hex(Sha256.of((String) row.get("result_text"))));
        assertThat(row).containsEntry("duties", "street").containsEntry("seed", rating.seed());
        assertThat((String) row.get("rule_versions")).contains("standard-policy@1", "sensor-in-hose@");
    }

    @Test
    void theSameValuesGiveTheSameCheckToTheLastDigit() throws Exception {
        long first = checks.run(car, 1);
        assertThat(checks.rate(car, 1, UUID.randomUUID())).isEqualTo(new Checks.Rated(first, true));
        var tech = people.in(shop, Role.TECHNICIAN);
        mvc.perform(post("/cars/" + car + "/revisions/1/checks").with(csrf()).with(tech))
                .andExpect(redirectedUrl("/checks/" + first))
                .andExpect(flash().attribute("done", "check.unchanged"));
        assertThat(ids()).hasSize(1);
        jdbc.sql("update shop set thresholds = 'GO_MARGIN_K=9' where id = :shop")
                .param("shop", shop)
                .update();
        people.actAs(shop, Role.TECHNICIAN);
        assertThat(checks.rate(car, 1, UUID.randomUUID()).unchanged())
                .as("with other thresholds")
                .isFalse();
    }

    @Test
    void aFormThatIsSentTwiceMakesOneCheck() throws Exception {
        var tech = people.in(shop, Role.TECHNICIAN);
        String form = "/cars/" + car + "/revisions/1/check";
        Callable<String> sending = sending(tech, key(tech, form));
        ExecutorService twoHands = Executors.newFixedThreadPool(2);
        List<Future<String>> both;
        try {
            both = twoHands.invokeAll(List.of(sending, sending));
        } finally {
            twoHands.shutdown();
        }
        String check = both.get(0).get();
        assertThat(check).startsWith("/checks/");
        assertThat(both.get(1).get()).isEqualTo(check);
        assertThat(ids()).hasSize(1);
        assertThat(audit()).containsExactly("check.run");

        String again = sending(tech, key(tech, form)).call();
        assertThat(again).as("nothing has changed").isEqualTo(check);
        assertThat(ids()).hasSize(1);
    }

    /** The key that the form of a page carries. */
    private String key(RequestPostProcessor who, String path) throws Exception {
        String page = mvc.perform(get(path).with(who)).andReturn().getResponse().getContentAsString();
        var hidden = Pattern.compile("name=\"key\" value=\"([0-9a-f-]{36})\"").matcher(page);
        assertThat(hidden.find()).as(page).isTrue();
        return hidden.group(1);
    }

    private Callable<String> sending(RequestPostProcessor who, String key) {
        return () -> mvc.perform(post("/cars/" + car + "/revisions/1/checks")
                        .with(csrf())
                        .with(who)
                        .param("key", key))
                .andReturn()
                .getResponse()
                .getRedirectedUrl();
    }

    private List<Long> ids() {
        return jdbc.sql("select id from check_run where shop_id = :shop")
                .param("shop", shop)
                .query(Long.class)
                .list();
    }

    @Test
    void aSignatureStaysAndItsHashCoversWhatWasSigned() {
        long id = checks.run(car, 1);
        SignOffForm form = all(id, Decision.DELIVER_WITH_CONDITIONS, "Looked over");
        checks.sign(id, form);
        StoredCheck check = checks.byId(id);
        SignOff signed = check.line().signOff().orElseThrow();
        assertThat(signed.signerId()).isEqualTo(technician);
        assertThat(signed.decision()).isEqualTo(Decision.DELIVER_WITH_CONDITIONS);
        assertThat(signed.sha256())
                .isEqualTo(CheckStore.hex(Sha256.of(Checks.signedText(check, technician, form, signed.conditions()))));
        assertThatThrownBy(() -> checks.sign(id, form))
                .isInstanceOf(ConflictException.class)
                .hasMessage("gate.signed-so");
        assertThat(audit()).containsExactly("check.run", "check.signed");
    }

    @Test
    void aSignatureIsReplacedWithAReasonAndBothStay() throws Exception {
        long id = checks.run(car, 1);
        checks.sign(id, all(id, Decision.DELIVER_WITH_CONDITIONS, "Looked over"));
        var other = people.in(shop, Role.TECHNICIAN);
        mvc.perform(post("/checks/" + id + "/sign-off").with(csrf()).with(other).param("decision", "HOLD_BACK"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("Say why you sign it otherwise")));
        mvc.perform(post("/checks/" + id + "/sign-off")
                        .with(csrf())
                        .with(other)
                        .param("decision", "HOLD_BACK")
                        .param("remark", "The fan stands still"))
                .andExpect(status().is3xxRedirection());
        people.actAs(shop, Role.TECHNICIAN);
        assertThat(checks.byId(id).line().signOff().orElseThrow().decision()).isEqualTo(Decision.HOLD_BACK);
        assertThat(jdbc.sql("select count(*) from sign_off where check_run_id = :id")
                        .param("id", id)
                        .query(Integer.class)
                        .single())
                .isEqualTo(2);
    }

    @Test
    void theSameSignatureTwiceIsRefused() throws Exception {
        long id = checks.run(car, 1);
        var other = people.in(shop, Role.TECHNICIAN);
        mvc.perform(post("/checks/" + id + "/sign-off").with(csrf()).with(other).param("decision", "HOLD_BACK"))
                .andExpect(status().is3xxRedirection());
        mvc.perform(post("/checks/" + id + "/sign-off")
                        .with(csrf())
                        .with(other)
                        .param("decision", "HOLD_BACK")
                        .param("remark", "again"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("This check is signed so already")));
    }

    @Test
    void onlyATechnicianRatesAndSigns() throws Exception {
        long id = checks.run(car, 1);
        var desk = people.in(shop, Role.FRONT_DESK);
        mvc.perform(post("/cars/" + car + "/revisions/1/checks").with(csrf()).with(desk))
                .andExpect(status().isForbidden());
        mvc.perform(post("/checks/" + id + "/sign-off").with(csrf()).with(desk).param("decision", "HOLD_BACK"))
                .andExpect(status().isForbidden());
        mvc.perform(get("/checks/" + id + "/sign").with(desk))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("A technician signs")))
                .andExpect(content().string(not(containsString("name=\"decision\""))));
    }

    @Test
    void aCheckOfAnotherShopIsNotThere() throws Exception {
        long id = checks.run(car, 1);
        var stranger = people.in(people.aShop(), Role.TECHNICIAN);
        mvc.perform(get("/checks/" + id).with(stranger)).andExpect(status().isNotFound());
        mvc.perform(get("/checks/" + id + "/sheet.pdf").with(stranger)).andExpect(status().isNotFound());
        mvc.perform(post("/checks/" + id + "/sign-off")
                        .with(csrf())
                        .with(stranger)
                        .param("decision", "HOLD_BACK"))
                .andExpect(status().isNotFound());
        people.actAs(people.aShop(), Role.TECHNICIAN);
        assertThatThrownBy(() -> checks.input(id)).isInstanceOf(NotFoundException.class);
    }

    @Test
    void thePageShowsTheHottestDayThatBelongsToItsVerdict() throws Exception {
        long id = checks.run(car, 1);
        DutyResult street = checks.byId(id).result().duty("street").orElseThrow();
        String day = figures.current().hottestDay(street);
        assertThat(day).matches("[\\d.]+\\s°C|above .*");
        mvc.perform(get("/checks/" + id + "/reasons").with(people.in(shop, Role.TECHNICIAN)))
                .andExpect(content().string(containsString("Hottest day it holds")))
                .andExpect(content().string(containsString(day)));
    }

    @Test
    void aNewRevisionMakesTheCheckOutOfDateOnEveryPage() throws Exception {
        var tech = people.in(shop, Role.TECHNICIAN);
        long id = checks.run(car, 1);
        mvc.perform(get("/checks/" + id).with(tech)).andExpect(content().string(not(containsString("Out of date."))));
        people.actAs(shop, Role.TECHNICIAN);
        specs.save(
                car, Specs.easy().set(BuildField.FAN_FLOW, Stated.measured(0.5)).build(), "street");
        for (String page : List.of("/checks/" + id, "/cars/" + car)) {
            mvc.perform(get(page).with(tech))
                    .andExpect(content().string(containsString("Out of date.")))
                    .andExpect(content().string(containsString("Revision 2 was saved after this check")));
        }
        mvc.perform(post("/checks/" + id + "/sign-off").with(csrf()).with(tech).param("decision", "DELIVER"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("rate the newest revision")));
    }

    @Test
    void theRevisionsPageOffersACheckAndThenShowsIt() throws Exception {
        var tech = people.in(shop, Role.TECHNICIAN);
        mvc.perform(get("/cars/" + car + "/revisions/1/check").with(tech))
                .andExpect(content().string(containsString("has not been rated yet")));
        mvc.perform(post("/cars/" + car + "/revisions/1/checks").with(csrf()).with(tech))
                .andExpect(redirectedUrlPattern("/checks/*"));
        mvc.perform(get("/cars/" + car + "/revisions/1/check").with(tech))
                .andExpect(content().string(containsString("chance to pass the")))
                .andExpect(content().string(containsString("/sign\"")));
    }

    @Test
    void aRefusedCarIsNotSignedAsDelivered() throws Exception {
        var tech = people.in(shop, Role.TECHNICIAN);
        specs.save(
                car,
                Specs.easy()
                        .set(BuildField.ENGINE_POWER, Stated.measured(400e3))
                        .set(BuildField.CORE_WIDTH, Stated.measured(0.3))
                        .build(),
                "track");
        long id = checks.run(car, 2);
        assertThat(checks.byId(id).line().verdicts())
                .extracting(CheckLine.DutyVerdictLine::verdict)
                .containsExactly(StoredVerdict.NO_GO);
        mvc.perform(post("/checks/" + id + "/sign-off").with(csrf()).with(tech).param("decision", "DELIVER"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("Refused for Track")));
        people.actAs(shop, Role.TECHNICIAN);
        assertThat(checks.byId(id).isSigned()).isFalse();
        checks.sign(id, new SignOffForm(Decision.HOLD_BACK, "", List.of()));
        assertThat(checks.byId(id).isSigned()).isTrue();
    }

    private SignOffForm all(long id, Decision decision, String remark) {
        return new SignOffForm(
                decision,
                remark,
                checks.byId(id).result().conditions().stream()
                        .map(CheckResult.Condition::key)
                        .toList());
    }

    private List<String> audit() {
        return jdbc.sql("select action from audit_entry where shop_id = :shop and subject_type = 'check_run' order by"
                        + " id")
                .param("shop", shop)
                .query(String.class)
                .list();
    }
}
