package headertank.app.settings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrlPattern;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import headertank.app.account.People;
import headertank.app.carspec.Revision;
import headertank.app.check.Checks;
import headertank.app.check.Specs;
import headertank.app.check.stored.StoredCheck;
import headertank.app.database.DatabaseTest;
import headertank.app.shop.Paper;
import headertank.app.shop.Role;
import headertank.app.shop.Shop;
import headertank.app.shop.Shops;
import headertank.app.unit.UnitSystem;
import headertank.calc.carspec.BuildField;
import headertank.calc.quantity.Physics;
import headertank.calc.verdict.Threshold;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

/** What an owner decides, and what follows from it. */
@DatabaseTest
class SettingsIT {

    @Autowired
    MockMvc mvc;

    @Autowired
    People people;

    @Autowired
    Specs specs;

    @Autowired
    Checks checks;

    @Autowired
    Shops shops;

    @Autowired
    JdbcClient jdbc;

    long shop;
    RequestPostProcessor owner;
    Map<String, String> form;

    @BeforeEach
    void aShop() {
        shop = people.aShop();
        owner = people.in(shop, Role.OWNER);
        form = new LinkedHashMap<>();
        Shop now = shops.byId(shop);
        form.put("name", now.name());
        form.put("unitSystem", "METRIC");
        form.put("language", "en");
        form.put("paper", "A4");
        form.put("timeZone", "UTC");
        form.put("recheckDays", "30");
        form.put("version", "0");
    }

    @Test
    void thePageShowsWhatIsUsualWhatIsAllowedAndWhatItRestsOn() throws Exception {
        mvc.perform(get("/settings").with(owner))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("Usual: 5 %; modelling choice. Allowed: 0.5 % to 15 %.")))
                .andExpect(content().string(containsString("common practice, no source")))
                .andExpect(content().string(containsString("value=\"10.0 K\"")));
    }

    @Test
    void everySettingIsKeptAndEachChangeIsNoted() throws Exception {
        form.put("name", "Cold Corner");
        form.put("unitSystem", "US");
        form.put("language", "de");
        form.put("paper", "LETTER");
        form.put("recheckDays", "14");
        form.put("goProbability", "2 %");
        form.put("coolantLimit", "105");
        send().andExpect(status().is3xxRedirection());
        Shop then = shops.byId(shop);
        assertThat(then.name()).isEqualTo("Cold Corner");
        assertThat(then.unitSystem()).isEqualTo(UnitSystem.US);
        assertThat(then.language()).isEqualTo("de");
        assertThat(then.paper()).isEqualTo(Paper.LETTER);
        assertThat(then.recheckDays()).isEqualTo(14);
        assertThat(then.thresholdsText()).isEqualTo("GO_PROBABILITY=0.02");
        assertThat(then.thresholds().value(Threshold.GO_PROBABILITY)).isEqualTo(0.02);
        assertThat(then.figures()).containsEntry(BuildField.COOLANT_LIMIT, Physics.kelvin(105));
        assertThat(audit())
                .containsExactly(
                        "figures: none -> limit.coolantK=378.15",
                        "language: en -> de",
                        "name",
                        "paper: A4 -> LETTER",
                        "recheckDays: 30 -> 14",
                        "thresholds: usual -> GO_PROBABILITY=0.02",
                        "units: METRIC -> US");
    }

    @Test
    void daysAndTimesAreThoseOfTheShopWhateverTheMachineIsSetTo() throws Exception {
        people.actAs(shop, Role.FRONT_DESK);
        Revision saved = specs.save(specs.aCar(), Specs.easy().build(), "street");
        String page = "/cars/" + saved.carId() + "/revisions/" + saved.number();
        TimeZone machine = TimeZone.getDefault();
        try {
            TimeZone.setDefault(TimeZone.getTimeZone("Asia/Tokyo"));
            int version = 0;
            for (String zone : List.of("Pacific/Kiritimati", "Pacific/Honolulu", "UTC")) {
                form.put("timeZone", zone);
                form.put("version", String.valueOf(version++));
                send().andExpect(status().is3xxRedirection());
                String there = DateTimeFormatter.ofPattern("d MMM yyyy, HH:mm", Locale.ENGLISH)
                        .format(saved.savedAt().atZone(ZoneId.of(zone)));
                mvc.perform(get(page).with(people.in(shop, Role.FRONT_DESK)))
                        .andExpect(content().string(containsString(there)));
            }
        } finally {
            TimeZone.setDefault(machine);
        }
        assertThat(audit()).contains("timeZone: UTC -> Pacific/Kiritimati");
    }

    @Test
    void aZoneThatNobodyKnowsIsRefusedBesideItsField() throws Exception {
        form.put("timeZone", "Middle/Nowhere");
        send().andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("Choose one of these.")));
        assertThat(shops.byId(shop).timeZone()).isEqualTo("UTC");
    }

    @Test
    void whatIsSentBackAsItWasShownChangesNothingInEitherSystem() throws Exception {
        form.put("unitSystem", "US");
        form.put("goMargin", "12.3");
        form.put("oilLimit", "125.5");
        send().andExpect(status().is3xxRedirection());
        Shop before = shops.byId(shop);
        SettingsForm shown = SettingsForm.of(before, before.settingsVersion());
        for (SettingField field : SettingField.values()) {
            form.put(field.key(), shown.typed(field));
        }
        form.put("version", "1");
        send().andExpect(status().is3xxRedirection());
        Shop after = shops.byId(shop);
        assertThat(after.thresholdsText()).isEqualTo(before.thresholdsText()).isEqualTo("GO_MARGIN_K=12.3");
        assertThat(after.figuresText()).isEqualTo(before.figuresText());
    }

    @Test
    void faultsStandBesideTheirFieldsAndNothingIsLost() throws Exception {
        form.put("name", " ");
        form.put("recheckDays", "soon");
        form.put("goProbability", "40 %");
        form.put("goBoiling", "5 K");
        form.put("coolantLimit", "300 °C");
        form.put("goDeficit", "a lot");
        form.put("paper", "A3");
        send().andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("“soon” is not accepted. Allowed: whole days, 1 to 730.")))
                .andExpect(content().string(containsString("“40 %” is not accepted. Allowed: 0.5 % to 15 %.")))
                .andExpect(content().string(containsString("“5 K” is not accepted. Allowed: 10.0 K to 30.0 K.")))
                .andExpect(content().string(containsString("“300 °C” is not accepted.")))
                .andExpect(content().string(containsString("does not start with a number")))
                .andExpect(content().string(containsString("Choose one of these.")))
                .andExpect(content().string(containsString("value=\"a lot\"")));
        form.put("name", "N");
        form.put("recheckDays", "30");
        form.put("goBoiling", "12 K");
        form.put("leastBoiling", "15 K");
        form.put("goProbability", "");
        form.put("coolantLimit", "");
        form.put("goDeficit", "");
        form.put("paper", "A4");
        form.put("timeZone", "UTC");
        send().andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("“15 K” is not accepted. Allowed: 5.0 K to 12.0 K.")));
        assertThat(audit()).isEmpty();
    }

    @Test
    void onlyAnOwnerMayAndTheSecondOfTwoOwnersIsTold() throws Exception {
        mvc.perform(request().with(people.in(shop, Role.TECHNICIAN, Role.FRONT_DESK)))
                .andExpect(status().isForbidden());
        form.put("recheckDays", "10");
        send().andExpect(status().is3xxRedirection());
        form.put("recheckDays", "20");
        send().andExpect(status().isConflict())
                .andExpect(content().string(containsString("now saved: 10")))
                .andExpect(content().string(containsString("name=\"version\" value=\"1\"")));
        assertThat(shops.byId(shop).recheckDays()).isEqualTo(10);
    }

    @Test
    void aStricterPolicyChangesTheVerdictAndMakesChecksOutOfDate() throws Exception {
        people.actAs(shop, Role.TECHNICIAN);
        long car = specs.aCar();
        specs.save(car, Specs.easy().build(), "street");
        RequestPostProcessor tech = people.in(shop, Role.TECHNICIAN);
        StoredCheck before = check(run(car, tech));
        assertThat(before.line().outOfDate()).isFalse();

        form.put("coolantLimit", "85 °C");
        send().andExpect(status().is3xxRedirection());
        for (String page : List.of("/checks/" + before.line().id(), "/cars/" + car)) {
            mvc.perform(get(page).with(tech))
                    .andExpect(content().string(containsString("The shop has moved its thresholds or limits since.")));
        }
        mvc.perform(get("/cars/" + car + "/history").with(tech))
                .andExpect(content().string(containsString("the shop judges by other thresholds or limits now")));
        StoredCheck hot = check(run(car, tech));
        assertThat(hot.result().coolantLimitK()).isEqualTo(Physics.kelvin(85));
        assertThat(hot.line().outOfDate()).isFalse();
        assertThat(hot.result().duties().get(0).verdict().ordinal())
                .isGreaterThan(before.result().duties().get(0).verdict().ordinal());

        form.put("version", "1");
        form.put("coolantLimit", "");
        form.put("goBoiling", "30 K");
        send().andExpect(status().is3xxRedirection());
        assertThat(check(before.line().id()).line().changedPolicy()).isTrue();
        StoredCheck strict = check(run(car, tech));
        assertThat(strict.line().changedPolicy()).isFalse();
        assertThat(strict.result().plugIns())
                .anyMatch(p -> p.id().equals("standard-policy") && p.version().equals("1+GO_BOILING_K=30.0"));

        form.put("version", "2");
        form.put("goBoiling", "");
        send().andExpect(status().is3xxRedirection());
        assertThat(check(before.line().id()).line().outOfDate()).isFalse();
        mvc.perform(get("/checks/" + before.line().id()).with(tech))
                .andExpect(content().string(not(containsString("Out of date."))));
    }

    /** A request signs everybody out of this thread. */
    private StoredCheck check(long id) {
        people.actAs(shop, Role.TECHNICIAN);
        return checks.byId(id);
    }

    private long run(long car, RequestPostProcessor who) throws Exception {
        String at = mvc.perform(post("/cars/" + car + "/revisions/1/checks")
                        .with(csrf())
                        .with(who))
                .andExpect(redirectedUrlPattern("/checks/*"))
                .andReturn()
                .getResponse()
                .getRedirectedUrl();
        return Long.parseLong(at.substring("/checks/".length()));
    }

    private ResultActions send() throws Exception {
        return mvc.perform(request().with(owner));
    }

    private MockHttpServletRequestBuilder request() {
        MockHttpServletRequestBuilder request = post("/settings").with(csrf());
        form.forEach(request::param);
        return request;
    }

    private List<String> audit() {
        return jdbc.sql("select detail from audit_entry where shop_id = :s and action = 'settings.changed' order by"
                        + " detail")
                .param("s", shop)
                .query(String.class)
                .list();
    }
}
