package headertank.app.handover.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrlPattern;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import headertank.app.account.People;
import headertank.app.check.Checks;
import headertank.app.check.Specs;
import headertank.app.check.stored.Decision;
import headertank.app.database.DatabaseTest;
import headertank.app.given.Given;
import headertank.app.handover.Delivered;
import headertank.app.handover.Handover;
import headertank.app.handover.Handovers;
import headertank.app.handover.SentBack;
import headertank.app.handover.item.ChecklistLine;
import headertank.app.handover.item.ReadingComparison;
import headertank.app.handover.item.WorkshopDay;
import headertank.app.handover.photo.PhotoLine;
import headertank.app.handover.photo.Pictures;
import headertank.app.shop.Role;
import headertank.calc.carspec.BuildField;
import headertank.calc.quantity.Stated;
import headertank.calc.result.IdleExpectation.Figure;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.context.event.ApplicationEvents;
import org.springframework.test.context.event.RecordApplicationEvents;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

/** A car's check list from the first entry to the last word. */
@DatabaseTest
@RecordApplicationEvents
class HandoverIT {

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
    Handovers handovers;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    ApplicationEvents events;

    Given.Workshop workshop;
    long shop;
    long car;
    long check;
    RequestPostProcessor tech;

    @BeforeEach
    void aRatedCar() {
        workshop = given.aWorkshop(Role.TECHNICIAN);
        shop = workshop.shop();
        car = workshop.aCar(Specs.easy().seen(BuildField.FAN_DRIVE, "ELECTRIC"), "street");
        check = workshop.aCheck(car);
        tech = workshop.with(Role.TECHNICIAN);
    }

    @Test
    void whatIsExpectedFollowsFromTheAirInTheWorkshop() throws Exception {
        mvc.perform(get(list()).with(tech))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("Say how warm the workshop is")));
        mvc.perform(post(list() + "/day")
                        .with(csrf())
                        .with(tech)
                        .param("key", key())
                        .param("ambient", "hot"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("does not start with a number")));
        mvc.perform(post(list() + "/day")
                        .with(csrf())
                        .with(tech)
                        .param("key", key())
                        .param("ambient", "90 °C"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("cannot be meant here")));
        mvc.perform(post(list() + "/day")
                        .with(csrf())
                        .with(tech)
                        .param("key", key())
                        .param("ambient", "68 °F"))
                .andExpect(redirectedUrlPattern("/checks/*/handover"));
        WorkshopDay day = state().day().orElseThrow();
        assertThat(day.ambientK()).isBetween(293.1, 293.2);
        assertThat(day.bands()).containsKeys(Figure.FANS_START_S, Figure.FAN_RUNNING_A, Figure.CORE_DROP_K);
        assertThat(day.bands().get(Figure.FAN_RUNNING_A).expected()).isBetween(18.0, 20.5);
    }

    @Test
    void aReadingStandsBesideWhatIsExpectedAndSaysWhatItMayMean() throws Exception {
        handovers.setDay(check, 293.15, UUID.randomUUID());
        enter(key(), "fan-running-current", "MEASURED", "9 A", "").andExpect(status().is3xxRedirection());
        ChecklistLine line = state().line("fan-running-current").orElseThrow();
        assertThat(line.comparison().orElseThrow().verdict()).isEqualTo(ReadingComparison.Verdict.TOO_LOW);
        assertThat(line.isOpen()).isTrue();
        assertThat(line.isFault())
                .as("outside what is expected is a fault by itself")
                .isTrue();
        mvc.perform(get(list()).with(tech))
                .andExpect(content().string(containsString("Lower than expected")))
                .andExpect(content().string(containsString("One fan may stand still")));
        enter(key(), "fan-running-current", "MEASURED", "19.5 A", "").andExpect(status().is3xxRedirection());
        ChecklistLine again = state().line("fan-running-current").orElseThrow();
        assertThat(again.comparison().orElseThrow().verdict()).isEqualTo(ReadingComparison.Verdict.AS_EXPECTED);
        assertThat(again.isOpen()).isFalse();
        assertThat(workshop.rows("measurement")).isEqualTo(2);
    }

    @Test
    void anEntryThatIsSentTwiceIsStoredOnce() throws Exception {
        String key = key();
        for (int i = 0; i < 2; i++) {
            mvc.perform(entry(key, "hoses", "DONE", "", "").header("X-Handover", "1"))
                    .andExpect(status().isOk())
                    .andExpect(content().string(containsString("Done, all right")))
                    .andExpect(content().string(not(containsString("<html"))));
        }
        assertThat(workshop.rows("measurement")).isEqualTo(1);
        people.actAs(shop, Role.TECHNICIAN);
        UUID day = UUID.randomUUID();
        handovers.setDay(check, 293.15, day);
        handovers.setDay(check, 293.15, day);
        assertThat(workshop.rows("handover_day")).isEqualTo(1);
    }

    @Test
    void whatIsNotUnderstoodComesBackAsItWasTyped() throws Exception {
        mvc.perform(entry(key(), "fans-start", "MEASURED", "12", "gauge at 95").header("X-Handover", "1"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("could be minutes or seconds")))
                .andExpect(content().string(containsString("gauge at 95")))
                .andExpect(content().string(containsString("value=\"12\"")));
        mvc.perform(entry(key(), "hoses", "FAULT", "", ""))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("Say what is wrong")));
        enter(key(), "no-such-item", "DONE", "", "").andExpect(status().isNotFound());
        enter("no key", "hoses", "DONE", "", "kept words")
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("“no key” cannot be taken.")))
                .andExpect(content().string(containsString("kept words")));
        assertThat(workshop.rows("measurement")).isZero();
    }

    @Test
    void aPhotoIsKeptWithoutWhatTheCameraHidAndServedAsNothingButAPicture() throws Exception {
        String key = key();
        for (int i = 0; i < 2; i++) {
            photo(key, Pictures.held(6, 400, 200), "Belt, from the front").andExpect(status().is3xxRedirection());
        }
        List<PhotoLine> photos = state().line("hoses").orElseThrow().photos();
        assertThat(photos).hasSize(1);
        assertThat(photos.get(0).height()).isEqualTo(400);
        String address = "/handover-photos/" + photos.get(0).id();
        for (String version : List.of(address, address + "/small")) {
            mvc.perform(get(version).with(people.in(shop, Role.FRONT_DESK)))
                    .andExpect(status().isOk())
                    .andExpect(header().string("Content-Type", "image/jpeg"))
                    .andExpect(header().string("X-Content-Type-Options", "nosniff"));
            mvc.perform(get(version).with(people.in(people.aShop(), Role.TECHNICIAN)))
                    .andExpect(status().isNotFound());
        }
        mvc.perform(get(list()).with(tech)).andExpect(content().string(containsString("alt=\"Belt, from the front\"")));
    }

    @Test
    void aPhotoNeedsNoWords() throws Exception {
        photo(key(), Pictures.of("jpeg", 40, 20), " ").andExpect(status().is3xxRedirection());
        mvc.perform(get(list()).with(tech)).andExpect(content().string(containsString("alt=\"Photo: Hoses")));
    }

    @Test
    void aFileOfAnotherContentIsRefusedWhateverItIsCalled() throws Exception {
        photo(key(), "<script>alert(1)</script>".getBytes(), "x")
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("This is not a picture")));
        assertThat(workshop.rows("handover_photo")).isZero();
    }

    @Test
    void aCarIsSentBackWithAReasonAndLeavesOnlyWhenNothingIsOpen() throws Exception {
        decide("SEND_BACK", "reason", " ")
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("Say what has to be put right")));
        decide("SEND_BACK", "reason", "Hose rubs on the pulley").andExpect(status().is3xxRedirection());
        assertThat(events.stream(SentBack.class)).containsExactly(new SentBack(car, check, "Hose rubs on the pulley"));
        mvc.perform(get("/cars/" + car).with(people.in(shop, Role.OWNER)))
                .andExpect(content().string(containsString("Hose rubs on the pulley")));

        decide("DELIVER", "reason", "")
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("The check is not signed yet")))
                .andExpect(content().string(containsString("Say why this is left out")));
        sign(Decision.DELIVER_WITH_CONDITIONS);
        deliverWithReasons()
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("A fault is open")));
        clear(openFault(), "REASON", "hose moved").andExpect(status().is3xxRedirection());
        enter(key(), "hoses", "FAULT", "", "rubs").andExpect(status().is3xxRedirection());
        deliverWithReasons()
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("A fault is open")));
        enter(key(), "hoses", "DONE", "", "")
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("say how it was put right")));
        enter(key(), "hoses", "NOT_APPLICABLE", "", "no time").andExpect(status().isUnprocessableContent());
        enter(key(), "hoses", "DONE", "", "moved").andExpect(status().is3xxRedirection());
        deliverWithReasons().andExpect(status().is3xxRedirection());
        Handover left = state();
        assertThat(left.isDecided()).isTrue();
        assertThat(left.decisions()).hasSize(2);
        assertThat(left.missing()).isEmpty();
        assertThat(left.last().orElseThrow().openItems()).isNotEmpty().allSatisfy(o -> assertThat(o.reason())
                .isEqualTo("no tester here"));
        assertThat(events.stream(Delivered.class)).containsExactly(new Delivered(car, check));
        enter(key(), "hoses", "FAULT", "", "late").andExpect(status().is3xxRedirection());
        assertThat(state().isDecided()).isFalse();
    }

    @Test
    void aCheckThatHoldsTheCarBackOrIsOutOfDateLetsNothingLeave() throws Exception {
        sign(Decision.HOLD_BACK);
        deliverWithReasons()
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("holds the car back")));
        people.actAs(shop, Role.TECHNICIAN);
        specs.save(
                car, Specs.easy().set(BuildField.FAN_FLOW, Stated.measured(0.5)).build(), "street");
        deliverWithReasons().andExpect(content().string(containsString("This check does not count any more")));
        assertThat(workshop.rows("handover_decision")).isZero();
    }

    @Test
    void anotherShopSeesNothingAndOnlyATechnicianWrites() throws Exception {
        var stranger = people.in(people.aShop(), Role.TECHNICIAN);
        for (String page : List.of("", "/day", "/decision")) {
            mvc.perform(get(list() + page).with(stranger)).andExpect(status().isNotFound());
        }
        tech = stranger;
        enter(key(), "hoses", "DONE", "", "").andExpect(status().isNotFound());
        photo(key(), Pictures.of("png", 40, 20), "x").andExpect(status().isNotFound());
        decide("SEND_BACK", "reason", "x").andExpect(status().isNotFound());
        mvc.perform(post(list() + "/day")
                        .with(csrf())
                        .with(tech)
                        .param("key", key())
                        .param("ambient", "20 °C"))
                .andExpect(status().isNotFound());
        tech = people.in(shop, Role.FRONT_DESK, Role.OWNER);
        mvc.perform(get(list()).with(tech))
                .andExpect(status().isOk())
                .andExpect(content().string(not(containsString("ho-entry"))));
        enter(key(), "hoses", "DONE", "", "").andExpect(status().isForbidden());
        photo(key(), Pictures.of("png", 40, 20), "x").andExpect(status().isForbidden());
        assertThat(workshop.rows("measurement")).isZero();
    }

    @Test
    void whatWasEnteredIsNeverChangedOrRemoved() throws Exception {
        handovers.setDay(check, 293.15, UUID.randomUUID());
        enter(key(), "hoses", "DONE", "", "");
        photo(key(), Pictures.of("png", 40, 20), "Hose");
        decide("SEND_BACK", "reason", "x");
        for (String table : List.of(
                "handover_day",
                "expected_reading",
                "measurement",
                "handover_photo",
                "handover_decision",
                "handover_open_item")) {
            assertThatThrownBy(() -> jdbc.sql("delete from " + table).update())
                    .as(table)
                    .hasStackTraceContaining("permission denied");
            assertThatThrownBy(() -> jdbc.sql("truncate " + table + " cascade").update())
                    .as(table)
                    .hasStackTraceContaining("permission denied");
        }
    }

    private String list() {
        return "/checks/" + check + "/handover";
    }

    private Handover state() {
        people.actAs(shop, Role.TECHNICIAN);
        return handovers.of(check);
    }

    private static String key() {
        return UUID.randomUUID().toString();
    }

    private MockHttpServletRequestBuilder entry(String key, String item, String outcome, String value, String note) {
        return post(list() + "/entries")
                .with(csrf())
                .with(tech)
                .param("key", key)
                .param("item", item)
                .param("outcome", outcome)
                .param("value", value)
                .param("note", note);
    }

    private ResultActions enter(String key, String item, String outcome, String value, String note) throws Exception {
        return mvc.perform(entry(key, item, outcome, value, note));
    }

    private ResultActions photo(String key, byte[] file, String caption) throws Exception {
        return mvc.perform(multipart(list() + "/photos")
                .file(new MockMultipartFile("file", "photo.jpg", "image/jpeg", file))
                .param("key", key)
                .param("item", "hoses")
                .param("caption", caption)
                .with(csrf())
                .with(tech));
    }

    private ResultActions decide(String outcome, String... parameters) throws Exception {
        var request = post(list() + "/decision")
                .with(csrf())
                .with(tech)
                .param("key", key())
                .param("outcome", outcome);
        for (int i = 0; i < parameters.length; i += 2) {
            request.param(parameters[i], parameters[i + 1]);
        }
        return mvc.perform(request);
    }

    private long openFault() {
        return state().openFaults().get(0).id();
    }

    private ResultActions clear(long fault, String how, String reason) throws Exception {
        return mvc.perform(post(list() + "/faults/" + fault)
                .with(csrf())
                .with(tech)
                .param("key", key())
                .param("how", how)
                .param("reason", reason));
    }

    private ResultActions deliverWithReasons() throws Exception {
        String[] reasons = state().missing().stream()
                .flatMap(l -> List.of("open[" + l.item().key() + "]", "no tester here").stream())
                .toArray(String[]::new);
        return decide("DELIVER", reasons);
    }

    private void sign(Decision decision) {
        workshop.actAs(Role.TECHNICIAN);
        workshop.sign(check, decision, "Signed with Street in mind.");
    }
}
