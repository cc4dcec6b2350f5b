package headertank.app.carspec;

import static headertank.calc.quantity.Provenance.ADVERTISED;
import static headertank.calc.quantity.Provenance.DATASHEET;
import static headertank.calc.quantity.Provenance.GUESSED;
import static headertank.calc.quantity.Provenance.MEASURED;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import headertank.app.account.People;
import headertank.app.car.CarForm;
import headertank.app.car.Cars;
import headertank.app.database.DatabaseTest;
import headertank.app.problem.NotFoundException;
import headertank.app.shop.Role;
import headertank.calc.Rater;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import headertank.calc.quantity.Provenance;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.RequestPostProcessor;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/** Logging and changing a car's cooling spec, on the real database. */
@DatabaseTest
class SpecIT {

    @Autowired
    MockMvc mvc;

    @Autowired
    People people;

    @Autowired
    Cars cars;

    @Autowired
    Revisions revisions;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    PlatformTransactionManager transactions;

    long shop;
    long car;
    RequestPostProcessor desk;

    final Spec first = SpecBuilder.of(CarClass.DRIFT, "drift")
            .set(BuildField.ENGINE_POWER, "300 kW", DATASHEET)
            .set(BuildField.CORE_WIDTH, "650 mm", MEASURED)
            .set(BuildField.FAN_CURRENT, "25 A", MEASURED)
            .seen(BuildField.THERMOSTAT, "FITTED")
            .spec();

    @BeforeEach
    void aCar() {
        shop = people.aShop();
        desk = people.in(shop, Role.FRONT_DESK);
        people.actAs(shop, Role.FRONT_DESK);
        car = cars.addCar(new CarForm(null, "Jo Example", "", "AB 12", "", "", "", "", null), null);
    }

    private Revision save(Integer parent, Spec spec) {
        return revisions.save(car, parent, spec, "because", UUID.randomUUID());
    }

    private Spec wider(String width) {
        return SpecBuilder.from(first)
                .set(BuildField.CORE_WIDTH, width, MEASURED)
                .spec();
    }

    private MockHttpServletRequestBuilder form(String path, Integer parent, UUID key) {
        return post("/cars/" + car + path)
                .with(csrf())
                .with(desk)
                .param("parent", parent == null ? "" : parent.toString())
                .param("key", key.toString())
                .param("carClass", "DRIFT")
                .param("duties", "drift");
    }

    /** Asked in the name of somebody new: a request leaves nobody signed in. */
    private List<Revision> saved() {
        people.actAs(shop, Role.FRONT_DESK);
        return revisions.all(car);
    }

    @Test
    void whatIsSavedReadsBackAndEachSavingMakesTheNextRevision() {
        Revision one = save(null, first);
        Revision two = save(1, wider("680 mm"));
        assertThat(one.number()).isEqualTo(1);
        assertThat(two.number()).isEqualTo(2);
        assertThat(two.parentNumber()).isEqualTo(1);
        assertThat(revisions.of(car, 1).spec()).isEqualTo(first);
        assertThat(revisions.byId(two.id())).isEqualTo(revisions.latest(car).orElseThrow());
        assertThat(revisions.all(car)).extracting(Revision::number).containsExactly(2, 1);
        assertThat(jdbc.sql("select spec #>> '{fields,radiator.coreWidthM,as}' from revision where id = :id")
                        .param("id", two.id())
                        .query(String.class)
                        .single())
                .isEqualTo("680 mm");
        assertThat(jdbc.sql("select count(*) from audit_entry where action = 'revision.saved' and shop_id = :s")
                        .param("s", shop)
                        .query(Long.class)
                        .single())
                .isEqualTo(2);
    }

    @Test
    void anUnchangedSpecMakesNoRevision() throws Exception {
        save(null, first);
        assertThat(save(1, first).number()).isEqualTo(1);
        assertThat(save(1, wider("65 cm")).number())
                .as("the same width in another unit")
                .isEqualTo(1);
    }

    @Test
    void noSettingOfASessionMovesTheMomentOfSaving() {
        TransactionTemplate inOne = new TransactionTemplate(transactions);
        Revision saved = inOne.execute(t -> {
            jdbc.sql("select set_config('headertank.now', '2001-01-01', true)")
                    .query(String.class)
                    .single();
            return save(null, first);
        });
        assertThat(saved.savedAt()).isCloseTo(Instant.now(), within(10, ChronoUnit.MINUTES));
        assertThat(jdbc.sql("""
            select count(*) from information_schema.columns
            where table_schema = current_schema and column_default like '%current_setting%'\
            """).query(Long.class).single())
                .as("defaults that a session could set")
                .isZero();
        assertThat(jdbc.sql("""
            select count(*) from pg_proc p join pg_namespace n on n.oid = p.pronamespace
            where n.nspname = current_schema and p.prosrc like '%current_setting%'\
            """).query(Long.class).single())
                .as("functions that a session could steer")
                .isZero();
    }

    @Test
    void theSecondToSaveFromOneParentIsRefusedAndNothingIsWritten() {
        save(null, first);
        save(1, wider("660 mm"));
        assertThatThrownBy(() -> save(1, wider("670 mm"))).isInstanceOf(OvertakenException.class);
        assertThat(saved()).hasSize(2);
    }

    @Test
    void manyAtOnceMakeOneRevisionEachOrNone() throws Exception {
        save(null, first);
        SecurityContext me = SecurityContextHolder.getContext();
        ExecutorService threads = Executors.newFixedThreadPool(4);
        try {
            List<Callable<String>> savers = List.of("660 mm", "661 mm", "662 mm", "663 mm", "664 mm", "665 mm").stream()
                    .<Callable<String>>map(width -> () -> {
                        SecurityContextHolder.setContext(me);
                        try {
                            return "revision " + save(1, wider(width)).number();
                        } catch (OvertakenException e) {
                            return "overtaken";
                        } finally {
                            SecurityContextHolder.clearContext();
                        }
                    })
                    .toList();
            List<String> answers = new ArrayList<>();
            for (Future<String> f : threads.invokeAll(savers)) {
                answers.add(f.get());
            }
            assertThat(answers).filteredOn("overtaken"::equals).hasSize(5);
            assertThat(answers).contains("revision 2");
        } finally {
            threads.shutdown();
        }
    }

    @Test
    void aFormSentTwiceSavesOnce() throws Exception {
        UUID key = UUID.randomUUID();
        for (int i = 0; i < 2; i++) {
            mvc.perform(form("/spec", null, key).param("engine.ratedPowerW", "400 hp"))
                    .andExpect(redirectedUrl("/cars/" + car + "/revisions/1"));
        }
        assertThat(saved()).hasSize(1);
        assertThat(revisions.of(car, 1).spec().typed()).containsEntry(BuildField.ENGINE_POWER, "400 hp");
        mvc.perform(form("/spec", null, key).param("engine.ratedPowerW", "500 hp"))
                .andExpect(status().isConflict())
                .andExpect(content().string(containsString("value=\"500 hp\"")));
    }

    @Test
    void everyFaultIsToldAtItsFieldAndNothingTypedIsLost() throws Exception {
        save(null, first);
        mvc.perform(form("/spec", 1, UUID.randomUUID())
                        .param("radiator.coreWidthM", "6500 mm")
                        .param("fan.currentA", "25 A")
                        .param("fan.startCurrentA", "20 A")
                        .param("coolant.capGaugePa", "a lot"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content()
                        .string(allOf(
                                containsString("150.0 mm to 1200.0 mm"),
                                containsString("at least the running current, here 25.0\u00a0A"),
                                containsString("does not start with a number"),
                                containsString("Write in a few words why it changes"),
                                containsString("value=\"6500 mm\""),
                                containsString("value=\"a lot\""))));
        assertThat(saved()).hasSize(1);
    }

    @Test
    void theSecondSeesBothSetsOfChangesAndSavesThemJoined() throws Exception {
        save(null, first);
        save(
                1,
                SpecBuilder.from(wider("660 mm"))
                        .seen(BuildField.THERMOSTAT, "REMOVED")
                        .spec());
        mvc.perform(form("/spec", 1, UUID.randomUUID())
                        .param("engine.ratedPowerW", "300 kW")
                        .param("engine.ratedPowerW.from", "DATASHEET")
                        .param("radiator.coreWidthM", "670 mm")
                        .param("radiator.coreWidthM.from", "MEASURED")
                        .param("fan.currentA", "11 A")
                        .param("fan.currentA.from", "MEASURED")
                        .param("thermostat.state", "FITTED")
                        .param("thermostat.state.from", "MEASURED")
                        .param("reason", "new fans"))
                .andExpect(status().isConflict())
                .andExpect(content()
                        .string(allOf(
                                containsString("saved revision 2 while you were typing"),
                                containsString("name=\"parent\" value=\"2\""),
                                containsString("value=\"670 mm\""),
                                containsString("now saved: 660 mm, measured"),
                                containsString("value=\"11 A\""),
                                containsString("value=\"REMOVED\" selected"),
                                containsString("new fans"))));
        assertThat(saved()).hasSize(2);
    }

    @Test
    void thePreviewRatesTheDraftAndKeepsNothing() throws Exception {
        mvc.perform(form("/spec/preview", null, UUID.randomUUID())
                        .header("HX-Request", "true")
                        .param("engine.ratedPowerW", "300 kW")
                        .param("radiator.coreWidthM", "wide"))
                .andExpect(status().isOk())
                .andExpect(content()
                        .string(allOf(
                                containsString("values are assumed"),
                                containsString("left out here: Core width"),
                                containsString("id=\"CORE_WIDTH-live\""),
                                not(containsString("<html")))));
        mvc.perform(form("/spec/preview", null, UUID.randomUUID()).param("radiator.coreWidthM", "wide"))
                .andExpect(content()
                        .string(allOf(
                                containsString("<html"),
                                containsString("left out here: Core width"),
                                containsString("value=\"wide\""))));
        assertThat(saved()).isEmpty();
    }

    @Test
    void theComparisonTellsWhatEachChangeCost() throws Exception {
        save(null, first);
        save(
                1,
                SpecBuilder.from(first)
                        .set(BuildField.FAN_CURRENT, "8 A", MEASURED)
                        .seen(BuildField.FAN_MOUNTING, "PUSHING")
                        .spec());
        for (String path : List.of("/compare?from=1&to=2&whole=", "/compare/costs?from=1&to=2")) {
            mvc.perform(get("/cars/" + car + path).with(people.in(shop, Role.OWNER)))
                    .andExpect(status().isOk())
                    .andExpect(content()
                            .string(allOf(
                                    containsString("Fan mounting"),
                                    containsString("costs margin"),
                                    containsString("class=\"bar\""),
                                    containsString("peak of its runs over time"))));
        }
        mvc.perform(get("/cars/" + car + "/compare?from=1&to=2").with(people.in(shop, Role.OWNER)))
                .andExpect(content().string(containsString("Fan mounting")))
                .andExpect(content().string(containsString("/compare/costs?from=1&amp;to=2")));
        mvc.perform(get("/cars/" + car + "/history").with(people.in(shop, Role.TECHNICIAN)))
                .andExpect(content().string(allOf(containsString("Revision 2 saved"), containsString("because"))));
        mvc.perform(get("/cars/" + car + "/revisions/1").with(people.in(shop, Role.OWNER)))
                .andExpect(content().string(allOf(containsString("650 mm"), containsString("assumed: "))));
    }

    /** From the comparison to the plan: one press types the old fans back in, with what was known of them. */
    @Test
    void aPartOfTheComparisonIsTypedBackIn() throws Exception {
        save(null, first);
        save(
                1,
                SpecBuilder.from(first)
                        .set(BuildField.FAN_CURRENT, "8 A", GUESSED)
                        .set(BuildField.FAN_FLOW, "700 cfm", ADVERTISED)
                        .set(BuildField.CORE_WIDTH, "660 mm", MEASURED)
                        .spec());
        String plan = "/cars/" + car + "/spec?back=FAN&of=1";
        mvc.perform(get("/cars/" + car + "/compare/costs?from=1&to=2").with(desk))
                .andExpect(content()
                        .string(allOf(
                                containsString("data-part=\"FAN\""),
                                containsString("2 values"),
                                containsString("unknown, "),
                                containsString(" was assumed"),
                                containsString("Together"),
                                containsString(plan.replace("&", "&amp;")))));
        mvc.perform(get("/cars/" + car + "/compare/costs?from=1&to=2").with(people.in(shop, Role.OWNER)))
                .andExpect(content().string(not(containsString("/spec?back="))));
        String page = mvc.perform(get(plan).with(desk))
                .andExpect(status().isOk())
                .andExpect(content()
                        .string(allOf(
                                containsString("id=\"typed-in\""),
                                containsString("Fans as in revision 1"),
                                containsString("value=\"25 A\""),
                                containsString("value=\"660 mm\""),
                                not(containsString("700 cfm")))))
                .andReturn()
                .getResponse()
                .getContentAsString();
        assertThat(page).as("measured then").containsPattern(from(BuildField.FAN_CURRENT, MEASURED));
        assertThat(saved()).as("nothing is kept").hasSize(2);
        mvc.perform(get("/cars/" + car + "/spec?back=FAN&of=9").with(desk)).andExpect(status().isNotFound());
    }

    /** What belongs to no part goes back too: how the car is used, and its class. */
    @Test
    void whatIsNoPartIsTypedBackInAsWell() throws Exception {
        save(null, first);
        save(
                1,
                SpecBuilder.of(CarClass.MODERN_STREET, "drift")
                        .set(BuildField.ENGINE_POWER, "300 kW", DATASHEET)
                        .set(BuildField.CORE_WIDTH, "650 mm", MEASURED)
                        .set(BuildField.FAN_CURRENT, "25 A", MEASURED)
                        .seen(BuildField.THERMOSTAT, "FITTED")
                        .set(BuildField.AMBIENT, "41 °C", MEASURED)
                        .spec());
        String plan = "/cars/" + car + "/spec?back=%s&of=1";
        mvc.perform(get("/cars/" + car + "/compare/costs?from=1&to=2").with(desk))
                .andExpect(content()
                        .string(allOf(
                                containsString(plan.formatted("use.ambientK").replace("&", "&amp;")),
                                containsString(plan.formatted("carClass").replace("&", "&amp;")))));
        mvc.perform(get(plan.formatted("use.ambientK")).with(desk))
                .andExpect(content()
                        .string(allOf(
                                containsString("id=\"typed-in\""),
                                containsString(" as in revision 1"),
                                not(containsString("value=\"41 °C\"")),
                                matchesPattern("(?s).*value=\"MODERN_STREET\"[^>]*checked.*"))));
        mvc.perform(get(plan.formatted("carClass")).with(desk))
                .andExpect(content()
                        .string(allOf(
                                containsString("id=\"typed-in\""),
                                containsString("value=\"41 °C\""),
                                matchesPattern("(?s).*value=\"DRIFT\"[^>]*checked.*"))));
        mvc.perform(get(plan.formatted("no.such.field")).with(desk))
                .andExpect(status().isOk())
                .andExpect(content().string(not(containsString("id=\"typed-in\""))));
        assertThat(saved()).as("nothing is kept").hasSize(2);
    }

    private static String from(BuildField field, Provenance chosen) {
        return "(?s)name=\"" + field.key() + ".from\"[^>]*>(?:(?!</select>).)*value=\"" + chosen
                + "( [^\"]*)?\" selected";
    }

    /** What is typed or picked counts as guessed until somebody says where it comes from: in the form, on the page, in the samples. */
    @Test
    void whatNobodyVouchesForIsAGuessEverywhere() throws Exception {
        String renewed = mvc.perform(form("/spec/preview", null, UUID.randomUUID())
                        .header("HX-Request", "true")
                        .param("radiator.coreWidthM", "650 mm")
                        .param("fuel.burnt", "E85"))
                .andReturn()
                .getResponse()
                .getContentAsString();
        assertThat(renewed.split("Nobody has said", -1)).as("at both fields").hasSize(3);
        mvc.perform(form("/spec", null, UUID.randomUUID())
                        .param("radiator.coreWidthM", "650 mm")
                        .param("fuel.burnt", "E85")
                        .param("radiator.coreHeightM", "400 mm")
                        .param("radiator.coreHeightM.from", "MEASURED"))
                .andExpect(status().is3xxRedirection());
        Build build = saved().get(0).spec().build();
        assertThat(build.entry(BuildField.CORE_WIDTH)).get().extracting("from").isEqualTo(GUESSED);
        assertThat(build.entry(BuildField.FUEL)).get().extracting("from").isEqualTo(GUESSED);
        assertThat(build.entry(BuildField.CORE_HEIGHT)).get().extracting("from").isEqualTo(MEASURED);
        mvc.perform(get("/cars/" + car + "/revisions/1").with(desk))
                .andExpect(content()
                        .string(matchesPattern(
                                "(?s).*Core width</th>\\s*<td[^>]*>650 mm</td>\\s*<td[^>]*>guessed</td>.*")));
        Rater rater = Rater.standard();
        assertThat(rater.resolve(build).spread(BuildField.CORE_WIDTH).sigma())
                .as("a guess is sampled more widely than a measurement")
                .isGreaterThan(
                        2 * rater.resolve(build).spread(BuildField.CORE_HEIGHT).sigma());
    }

    /** That somebody means to measure a value does not make a measurement of the guess that stands there. */
    @Test
    void aGuessThatIsAboutToBeMeasuredStaysOneUntilItIs() throws Exception {
        save(
                null,
                SpecBuilder.from(first)
                        .set(BuildField.FAN_FLOW, "1900 cfm", GUESSED)
                        .spec());
        assertThat(measuring(BuildField.FAN_FLOW))
                .containsPattern(from(BuildField.FAN_FLOW, GUESSED))
                .contains("value=\"1900 cfm\"");
        assertThat(measuring(BuildField.CORE_HEIGHT)).containsPattern(from(BuildField.CORE_HEIGHT, MEASURED));
    }

    private String measuring(BuildField field) throws Exception {
        return mvc.perform(get("/cars/" + car + "/spec?measure=" + field.key()).with(desk))
                .andReturn()
                .getResponse()
                .getContentAsString();
    }

    @Test
    void theHistoryHoldsChecksSignOffsAndOverheatingsToo() throws Exception {
        Revision one = save(null, first);
        long check = jdbc.sql("""
            insert into check_run (shop_id, revision_id, author_id, duties, calc_core_version, rule_versions, seed,
                input_format, input_text, input_sha256, result_format, result_text, result_sha256)
            values (:shop, :revision, :author, 'drift', '0.1.0', '', 1, 1, 'i', sha256('i'), 1, 'r', sha256('r'))
            returning id\
            """)
                .param("shop", shop)
                .param("revision", one.id())
                .param("author", one.authorId())
                .query(Long.class)
                .single();
        jdbc.sql("insert into sign_off (shop_id, check_run_id, signer_id, decision, signed_sha256) "
                        + "values (:shop, :check, :author, 'HOLD_BACK', sha256('x'))")
                .param("shop", shop)
                .param("check", check)
                .param("author", one.authorId())
                .update();
        jdbc.sql("insert into incident (shop_id, car_id, revision_id, occurred_at, doing, reading_k, reading_place, "
                        + "reporter_id) values (:shop, :car, :revision, now(), 'third run', 390, 'head', :author)")
                .param("shop", shop)
                .param("car", car)
                .param("revision", one.id())
                .param("author", one.authorId())
                .update();
        save(1, wider("680 mm"));
        mvc.perform(get("/cars/" + car + "/history").with(desk))
                .andExpect(content()
                        .string(allOf(
                                containsString("Check of revision 1"),
                                containsString("Check of revision 1 signed"),
                                containsString("Hold back"),
                                containsString("out of date: the car has a newer revision"),
                                containsString("Ran hot, with revision 1"),
                                containsString("third run"))));
    }

    @Test
    void anotherShopSeesNothing() throws Exception {
        Revision one = save(null, first);
        long other = people.aShop();
        var stranger = people.in(other, Role.FRONT_DESK);
        for (String path : List.of("/spec", "/revisions/1", "/history", "/compare?from=1&to=1")) {
            mvc.perform(get("/cars/" + car + path).with(stranger)).andExpect(status().isNotFound());
        }
        people.actAs(other, Role.FRONT_DESK);
        assertThat(revisions.latest(car)).isEmpty();
        assertThatThrownBy(() -> revisions.byId(one.id())).isInstanceOf(NotFoundException.class);
        assertThatThrownBy(() -> save(1, wider("700 mm"))).isInstanceOf(NotFoundException.class);
    }
}
