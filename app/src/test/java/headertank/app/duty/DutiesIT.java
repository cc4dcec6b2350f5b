package headertank.app.duty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import headertank.app.account.People;
import headertank.app.check.Checks;
import headertank.app.check.Specs;
import headertank.app.check.stored.StoredCheck;
import headertank.app.database.DatabaseTest;
import headertank.app.duty.log.LapReadingTest;
import headertank.app.problem.ConflictException;
import headertank.app.shop.Role;
import headertank.calc.Rater;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

/** A shop's own duties from the text to the check. */
@DatabaseTest
class DutiesIT {

    static final String OWN = String.join(
            "\n",
            "# id: hill-climb",
            "# label: Hill climb",
            "# source: three runs in June, from memory",
            "# start_coolant_C: 80",
            "point,label,duration_s,road_speed_km_per_h,demand,engine_speed_share,modes",
            "climb,\"Up, flat out\",90,95,mix,0.85,0.7:0.95:0.9 0.3:0:0.7",
            "queue,Waiting,120,0,idle,0.15,",
            "");

    @Autowired
    MockMvc mvc;

    @Autowired
    People people;

    @Autowired
    Specs specs;

    @Autowired
    Checks checks;

    @Autowired
    Rater installed;

    @Autowired
    JdbcClient jdbc;

    long shop;
    RequestPostProcessor owner;

    @BeforeEach
    void aShop() {
        shop = people.aShop();
        owner = people.in(shop, Role.OWNER);
    }

    @Test
    void theFilesThatComeWithTheServiceAreInstalledBesideTheStandardDutiesWhichStayAsTheyAre() throws Exception {
        assertThat(installed.duties())
                .containsAllEntriesOf(Rater.standard().duties())
                .containsKeys("street-day", "track-session", "drift-event");
        mvc.perform(get("/duties").with(people.in(shop, Role.FRONT_DESK)))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("duty-track-session")))
                .andExpect(content().string(containsString("modelling choice; a lap of 90 s")))
                .andExpect(content().string(not(containsString("Write or upload"))));
        mvc.perform(get("/duties/street-day/csv").with(people.in(shop, Role.TECHNICIAN)))
                .andExpect(status().isOk())
                .andExpect(content().contentType("text/csv;charset=UTF-8"))
                .andExpect(content().string(containsString("# id: street-day")));
    }

    @Test
    void anOwnDutyIsRatedAndTheCheckKeepsItAsItWas() throws Exception {
        save(OWN).andExpect(redirectedUrl("/duties#duty-hill-climb"));
        people.actAs(shop, Role.TECHNICIAN);
        long car = specs.aCar();
        specs.save(car, Specs.easy().build(), "hill-climb", "street");
        StoredCheck check = checks.byId(checks.run(car, 1));
        assertThat(check.result().duty("hill-climb").orElseThrow().label()).isEqualTo("Hill climb");
        assertThat(check.result().plugIns())
                .anyMatch(p ->
                        p.id().equals("shop-duty-hill-climb") && p.version().startsWith("1-"));
        String frozen = checks.input(check.line().id()).duties().toString();
        assertThat(frozen).contains("hill-climb").contains("seconds=90.0");
        mvc.perform(multipart("/duties")
                        .with(csrf())
                        .with(owner)
                        .param("text", OWN.replace(",90,95", ",45,95"))
                        .param("id", "hill-climb")
                        .param("number", "1"))
                .andExpect(status().is3xxRedirection());
        people.actAs(shop, Role.TECHNICIAN);
        assertThat(checks.input(check.line().id()).duties()).hasToString(frozen);
        assertThat(jdbc.sql("select number || ' ' || active from duty_version where shop_id = :s order by number")
                        .param("s", shop)
                        .query(String.class)
                        .list())
                .containsExactly("1 true", "2 true");
    }

    @Test
    void aSwitchedOffDutyIsRefusedWithTheReason() throws Exception {
        save(OWN);
        people.actAs(shop, Role.TECHNICIAN, Role.FRONT_DESK);
        long car = specs.aCar();
        specs.save(car, Specs.easy().build(), "hill-climb");
        mvc.perform(post("/duties/hill-climb/switch").with(csrf()).with(owner).param("on", "false"))
                .andExpect(status().is3xxRedirection());
        mvc.perform(get("/duties").with(owner)).andExpect(content().string(containsString("switched off")));
        people.actAs(shop, Role.TECHNICIAN);
        assertThatThrownBy(() -> checks.run(car, 1))
                .isInstanceOf(ConflictException.class)
                .hasMessage("check.duty-off");
        mvc.perform(get("/cars/" + car + "/spec").with(people.in(shop, Role.FRONT_DESK)))
                .andExpect(content().string(containsString("hill-climb (switched off)")));
        mvc.perform(post("/cars/" + car + "/spec")
                        .with(csrf())
                        .with(people.in(shop, Role.FRONT_DESK))
                        .param("carClass", "MODERN_STREET")
                        .param("duties", "hill-climb")
                        .param("parent", "1")
                        .param("reason", "r"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("Not a duty of this shop any more: hill-climb")));
        mvc.perform(post("/duties/hill-climb/switch").with(csrf()).with(owner).param("on", "true"));
        mvc.perform(get("/cars/" + car + "/spec").with(people.in(shop, Role.FRONT_DESK)))
                .andExpect(content().string(not(containsString("(switched off)"))));
        assertThat(audit()).containsExactly("duty.saved", "duty.switched-off", "duty.switched-on");
    }

    @Test
    void faultsAreNamedWithLineColumnValueAndRangeAndNothingIsLost() throws Exception {
        String bad = OWN.replace(",90,95", ",90,950").replace("idle", "idling");
        save(bad)
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("2 places are")))
                .andExpect(content().string(containsString("road_speed_km_per_h</td>")))
                .andExpect(content().string(containsString("0 to 324")))
                .andExpect(content().string(containsString("one of idle, road, mix, engine_off")))
                .andExpect(content().string(containsString("# source: three runs in June, from memory")));
        MockMultipartFile file =
                new MockMultipartFile("file", "mine.csv", "text/csv", bad.getBytes(StandardCharsets.UTF_8));
        mvc.perform(multipart("/duties").file(file).with(csrf()).with(owner).param("text", ""))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("# source: three runs in June, from memory")));
        save(OWN.replace("hill-climb", "street"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("an id that no installed duty has")));
        MockMultipartFile binary = new MockMultipartFile("file", "x", "text/csv", new byte[] {(byte) 0xff, 0});
        mvc.perform(multipart("/duties").file(binary).with(csrf()).with(owner))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("UTF-8")));
        assertThat(audit()).isEmpty();
    }

    @Test
    void whoSavesFromAnOldVersionIsToldAndKeepsTheText() throws Exception {
        save(OWN);
        String second = OWN.replace("Waiting", "In the queue");
        mvc.perform(change(second, 1)).andExpect(status().is3xxRedirection());
        mvc.perform(change(OWN.replace("Waiting", "At the start"), 1))
                .andExpect(status().isConflict())
                .andExpect(content().string(containsString("Somebody else has saved version 2")))
                .andExpect(content().string(containsString("At the start")))
                .andExpect(content().string(containsString("name=\"number\" value=\"2\"")));
    }

    @Test
    void onlyAnOwnerWritesAndAnotherShopSeesNothing() throws Exception {
        for (Role role : List.of(Role.FRONT_DESK, Role.TECHNICIAN)) {
            mvc.perform(multipart("/duties")
                            .with(csrf())
                            .with(people.in(shop, role))
                            .param("text", OWN))
                    .andExpect(status().isForbidden());
            mvc.perform(get("/duties/new").with(people.in(shop, role))).andExpect(status().isForbidden());
        }
        save(OWN);
        long other = people.aShop();
        RequestPostProcessor stranger = people.in(other, Role.OWNER);
        mvc.perform(get("/duties").with(stranger)).andExpect(content().string(not(containsString("hill-climb"))));
        mvc.perform(get("/duties/hill-climb/csv").with(stranger)).andExpect(status().isNotFound());
        mvc.perform(get("/duties/hill-climb/edit").with(stranger)).andExpect(status().isNotFound());
        mvc.perform(post("/duties/hill-climb/switch")
                        .with(csrf())
                        .with(stranger)
                        .param("on", "false"))
                .andExpect(status().isNotFound());
        people.actAs(other, Role.TECHNICIAN);
        long car = specs.aCar();
        specs.save(car, Specs.easy().build(), "hill-climb");
        assertThatThrownBy(() -> checks.run(car, 1))
                .isInstanceOf(ConflictException.class)
                .hasMessage("check.duty-unknown");
    }

    @Test
    void aLogBecomesTextToLookOverAndNothingIsKept() throws Exception {
        MockMultipartFile file = new MockMultipartFile(
                "file",
                "lap.csv",
                "text/csv",
                LapReadingTest.log("Time [s],Speed [km/h],RPM,Load [%]").getBytes());
        mvc.perform(multipart("/duties/from-log")
                        .file(file)
                        .with(csrf())
                        .with(owner)
                        .param("id", "lap-1")
                        .param("label", "Our lap")
                        .param("ratedSpeed", "7000")
                        .param("startCoolant", "80 °C")
                        .param("meaning", "LOAD"))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("# id: lap-1")))
                .andExpect(content().string(containsString("pull-180")))
                .andExpect(content().string(containsString("Nothing is kept yet")));
        assertThat(audit()).isEmpty();
        mvc.perform(multipart("/duties/from-log")
                        .file(file)
                        .with(csrf())
                        .with(owner)
                        .param("look", "1"))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("600 rows, 1 min 0 s, 4 columns.")))
                .andExpect(content().string(containsString("called “speed”; km/h stands in the heading")))
                .andExpect(content().string(containsString("Time [s],Speed [km/h],RPM,Load [%]")));
        mvc.perform(multipart("/duties/from-log")
                        .with(csrf())
                        .with(owner)
                        .param("id", "lap 1")
                        .param("log", "time,speed\n1,2")
                        .param("ratedSpeed", "70")
                        .param("startCoolant", "hot"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("1000 rpm to 20000 rpm")))
                .andExpect(content().string(containsString("1 to 60 letters")))
                .andExpect(content().string(containsString("does not start with a number")))
                .andExpect(content().string(containsString("time,speed")));
        mvc.perform(multipart("/duties/from-log")
                        .file(file)
                        .with(csrf())
                        .with(owner)
                        .param("id", "lap 1"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("fault\">")))
                .andExpect(content().string(containsString("Time [s],Speed [km/h],RPM,Load [%]")));
        mvc.perform(multipart("/duties/from-log")
                        .with(csrf())
                        .with(owner)
                        .param("look", "1")
                        .param("log", "Dear shop, here is the log"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("It holds no rows of numbers")));
    }

    private org.springframework.test.web.servlet.ResultActions save(String text) throws Exception {
        return mvc.perform(multipart("/duties").with(csrf()).with(owner).param("text", text));
    }

    private org.springframework.test.web.servlet.RequestBuilder change(String text, int from) {
        return multipart("/duties")
                .with(csrf())
                .with(owner)
                .param("text", text)
                .param("id", "hill-climb")
                .param("number", String.valueOf(from));
    }

    private List<String> audit() {
        return jdbc.sql("select action from audit_entry where shop_id = :s and subject_type = 'duty_version' order by"
                        + " id")
                .param("s", shop)
                .query(String.class)
                .list();
    }
}
