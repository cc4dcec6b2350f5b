package headertank.app.part;

import static headertank.calc.carspec.BuildField.CORE_WIDTH;
import static headertank.calc.carspec.BuildField.FAN_CURRENT;
import static headertank.calc.carspec.BuildField.FAN_FLOW;
import static headertank.calc.quantity.Provenance.ADVERTISED;
import static headertank.calc.quantity.Provenance.MEASURED;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
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
import headertank.app.carspec.Revision;
import headertank.app.carspec.Revisions;
import headertank.app.carspec.Spec;
import headertank.app.carspec.SpecBuilder;
import headertank.app.csv.Csv;
import headertank.app.database.DatabaseTest;
import headertank.app.problem.NotFoundException;
import headertank.app.shop.Role;
import headertank.calc.carspec.CarClass;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

/** Parts on cars: from the form to the recall. */
@DatabaseTest
class FittedPartsIT {

    @Autowired
    MockMvc mvc;

    @Autowired
    People people;

    @Autowired
    Cars cars;

    @Autowired
    Revisions revisions;

    @Autowired
    Parts parts;

    @Autowired
    Catalogue catalogue;

    @Autowired
    FittedParts fitted;

    @Autowired
    JdbcClient jdbc;

    long shop;
    long car;
    long fan;
    RequestPostProcessor desk;

    final Spec bare = SpecBuilder.of(CarClass.DRIFT, "drift")
            .set(CORE_WIDTH, "650 mm", MEASURED)
            .spec();
    final Spec fanOnly = SpecBuilder.of(CarClass.DRIFT, "drift")
            .set(FAN_FLOW, "2500 cfm", ADVERTISED)
            .set(FAN_CURRENT, "11 A", MEASURED)
            .spec();

    @BeforeEach
    void aCarAndAFan() {
        shop = people.aShop();
        desk = people.in(shop, Role.FRONT_DESK);
        act();
        car = aCar("AB 12", "Jo Example");
        fan = aFan("Twin twelve", fanOnly);
    }

    private void act() {
        people.actAs(shop, Role.FRONT_DESK, Role.OWNER);
    }

    private long aCar(String plate, String owner) {
        return cars.addCar(new CarForm(null, owner, "000 555 0199", plate, "Nimbrax", "Coupe", "1999", "", null), null);
    }

    private long aFan(String name, Spec said) {
        return parts.add(new PartContent(
                PartKind.FAN, name, "", said.values(), Optional.of(new Price(14990, "EUR")), "2 on the shelf"));
    }

    private Spec withFan(SpecBuilder spec, long part) {
        return spec.spec().withParts(Map.of(PartKind.FAN, catalogue.part(part).ref()));
    }

    private Spec asInCatalogue() {
        return withFan(
                SpecBuilder.from(bare).set(FAN_FLOW, "2500 cfm", ADVERTISED).set(FAN_CURRENT, "11 A", MEASURED), fan);
    }

    private Revision save(long carId, Integer parent, Spec spec) {
        return revisions.save(carId, parent, spec, "because", UUID.randomUUID());
    }

    private MockHttpServletRequestBuilder form(String path) {
        return post("/cars/" + car + path)
                .with(csrf())
                .with(desk)
                .param("key", UUID.randomUUID().toString())
                .param("carClass", "DRIFT")
                .param("duties", "drift");
    }

    @Test
    void choosingAPartFillsItsValuesInAndLosesNothing() throws Exception {
        String page = mvc.perform(form("/spec/fit")
                        .param("part.FAN", Long.toString(fan))
                        .param("radiator.coreWidthM", "wide, to be measured")
                        .param("fan.diameterM", "12 in")
                        .param("reason", "new fans"))
                .andExpect(status().isOk())
                .andExpect(content()
                        .string(allOf(
                                containsString("value=\"2500 cfm\""),
                                containsString("value=\"11 A\""),
                                containsString("value=\"wide, to be measured\""),
                                containsString("new fans"),
                                containsString("as in the catalogue"),
                                containsString("left as it was: Fan diameter"))))
                .andReturn()
                .getResponse()
                .getContentAsString();
        act();
        assertThat(page)
                .as("the catalogue says where its values come from, whoever picks the part")
                .containsPattern(
                        "(?s)name=\"fan.freeFlowM3PerS.from\"(?:(?!</select>).)*value=\"ADVERTISED 2500 cfm\" selected")
                .containsPattern("(?s)name=\"fan.currentA.from\"(?:(?!</select>).)*value=\"MEASURED 11 A\" selected");
        assertThat(page)
                .contains("name=\"part.FAN.fitted\" value=\""
                        + catalogue.part(fan).ref() + "\"");
        assertThat(revisions.all(car)).isEmpty();
    }

    @Test
    void aChosenPartIsNotSavedBeforeItsValuesWereSeen() throws Exception {
        mvc.perform(form("/spec").param("part.FAN", Long.toString(fan)).param("radiator.coreWidthM", "650 mm"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content()
                        .string(allOf(
                                containsString("The values of this part are not in the form yet"),
                                containsString("value=\"" + fan + "\" selected"),
                                containsString("value=\"650 mm\""))));
    }

    @Test
    void theRevisionNamesThePartAndWhatWasChangedFromIt() throws Exception {
        String ref = catalogue.part(fan).ref().toString();
        mvc.perform(form("/spec")
                        .param("part.FAN", Long.toString(fan))
                        .param("part.FAN.fitted", ref)
                        .param("fan.freeFlowM3PerS", "2500 cfm")
                        .param("fan.currentA", "12,5 A"))
                .andExpect(redirectedUrl("/cars/" + car + "/revisions/1"));
        act();
        Revision one = revisions.of(car, 1);
        assertThat(fitted.of(one.id())).singleElement().satisfies(f -> {
            assertThat(f.name()).isEqualTo("Twin twelve");
            assertThat(f.changed()).containsExactly(FAN_CURRENT);
            assertThat(f.ref()).isEqualTo(one.spec().parts().get(PartKind.FAN));
        });
        mvc.perform(get("/cars/" + car + "/revisions/1").with(desk))
                .andExpect(content()
                        .string(allOf(
                                containsString("Twin twelve"),
                                containsString("changed from the catalogue"),
                                containsString("Running current"))));
        mvc.perform(get("/cars/" + car + "/spec").with(desk))
                .andExpect(content()
                        .string(allOf(
                                containsString("Changed from the catalogue: Running current"),
                                containsString("value=\"" + fan + "\" selected"))));
    }

    @Test
    void theRevisionKeepsItsValuesWhateverTheCatalogueSaysLater() throws Exception {
        Revision one = save(car, null, asInCatalogue());
        Spec stronger =
                SpecBuilder.from(fanOnly).set(FAN_FLOW, "2600 cfm", MEASURED).spec();
        parts.change(fan, new PartContent(PartKind.FAN, "Renamed", "", stronger.values(), Optional.empty(), ""), 0);
        assertThat(revisions.of(car, 1)).isEqualTo(one);
        assertThat(fitted.of(one.id())).singleElement().extracting("name").isEqualTo("Twin twelve");
        mvc.perform(get("/cars/" + car + "/spec").with(desk))
                .andExpect(content()
                        .string(allOf(
                                containsString("value=\"2500 cfm\""),
                                containsString("The catalogue says something else by now"),
                                not(containsString("Changed from the catalogue")))));
        act();
        Revision two = save(
                car,
                1,
                SpecBuilder.from(one.spec()).set(CORE_WIDTH, "660 mm", MEASURED).spec());
        assertThat(fitted.of(two.id())).singleElement().satisfies(f -> assertThat(f.changed())
                .isEmpty());
    }

    @Test
    void anotherPartTakesTheOldOnesValuesAway() throws Exception {
        long small = aFan(
                "Small",
                SpecBuilder.of(CarClass.DRIFT, "drift")
                        .set(FAN_FLOW, "900 cfm", ADVERTISED)
                        .spec());
        String ref = catalogue.part(fan).ref().toString();
        mvc.perform(form("/spec/fit")
                        .header("HX-Request", "true")
                        .param("part.FAN", Long.toString(small))
                        .param("part.FAN.fitted", ref)
                        .param("fan.freeFlowM3PerS", "2500 cfm")
                        .param("fan.currentA", "11 A")
                        .param("fan.diameterM", "12 in"))
                .andExpect(content()
                        .string(allOf(
                                containsString("value=\"900 cfm\""),
                                not(containsString("value=\"11 A\"")),
                                containsString("value=\"12 in\""))));
        mvc.perform(form("/spec/fit")
                        .param("part.FAN", "")
                        .param("part.FAN.fitted", ref)
                        .param("fan.currentA", "11 A"))
                .andExpect(content()
                        .string(allOf(
                                containsString("value=\"11 A\""),
                                containsString("name=\"part.FAN.fitted\" value=\"\""))));
    }

    @Test
    void aPartAloneMakesARevisionAndTheComparisonNamesIt() throws Exception {
        Spec without = asInCatalogue().withParts(Map.of());
        save(car, null, without);
        assertThat(save(car, 1, asInCatalogue()).number()).isEqualTo(2);
        assertThat(save(car, 2, asInCatalogue()).number()).as("unchanged").isEqualTo(2);
        mvc.perform(get("/cars/" + car + "/compare?from=1&to=2").with(desk))
                .andExpect(content().string(allOf(containsString("Twin twelve"), containsString("none"))));
    }

    @Test
    void aRecallFindsTheCarsThatHaveThePartAndThoseThatHadIt() throws Exception {
        long had = aCar("CD 34", "Kim Sample");
        long never = aCar("EF 56", "Lu Specimen");
        save(car, null, bare);
        save(car, 1, asInCatalogue());
        save(had, null, asInCatalogue());
        save(had, 1, bare);
        save(never, null, bare);
        String page = mvc.perform(get("/parts/" + fan).with(desk))
                .andReturn()
                .getResponse()
                .getContentAsString();
        int before = page.indexOf("Cars that had it in an older revision");
        assertThat(page.indexOf("AB 12")).isBetween(0, before);
        assertThat(page.indexOf("CD 34")).isGreaterThan(before);
        assertThat(page).doesNotContain("EF 56").contains("Jo Example", "000 555 0199");
        String list = mvc.perform(get("/parts/" + fan + "/cars.csv").with(desk))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString();
        assertThat(Csv.read(list))
                .extracting(l -> l.cells().get(0) + " " + l.cells().get(2) + " "
                        + l.cells().get(6))
                .containsExactly("plate customer on_the_car", "AB 12 Jo Example now", "CD 34 Kim Sample before");
        assertThat(jdbc.sql("select count(*) from audit_entry where shop_id = :s and action = 'part.recall-list'")
                        .param("s", shop)
                        .query(Long.class)
                        .single())
                .isEqualTo(1);
        mvc.perform(get("/parts").with(desk)).andExpect(content().string(containsString("1 car<")));
    }

    @Test
    void whoWasReachedIsTickedAndTheTickCanBeTakenBack() throws Exception {
        save(car, null, asInCatalogue());
        long stranger = aCar("EF 56", "Lu Specimen");
        String recall = "/parts/" + fan + "/recall/";
        for (int twice = 0; twice < 2; twice++) {
            mvc.perform(post(recall + car).with(csrf()).with(desk).param("reached", "true"))
                    .andExpect(redirectedUrl("/parts/" + fan + "#cars"));
        }
        mvc.perform(get("/parts/" + fan).with(desk))
                .andExpect(content().string(containsString("1 of 1 owners reached")));
        assertThat(contacts()).isEqualTo(1);
        mvc.perform(post(recall + car).with(csrf()).with(desk).param("reached", "false"));
        mvc.perform(get("/parts/" + fan).with(desk))
                .andExpect(content().string(containsString("0 of 1 owners reached")));
        assertThat(contacts()).isEqualTo(2);

        mvc.perform(post(recall + stranger).with(csrf()).with(desk).param("reached", "true"))
                .andExpect(status().isNotFound());
        RequestPostProcessor elsewhere = people.in(people.aShop(), Role.OWNER);
        mvc.perform(post(recall + car).with(csrf()).with(elsewhere).param("reached", "true"))
                .andExpect(status().isNotFound());
        mvc.perform(post(recall + car)
                        .with(csrf())
                        .with(people.in(shop, Role.TECHNICIAN))
                        .param("reached", "true"))
                .andExpect(status().isForbidden());
        assertThat(contacts()).isEqualTo(2);
    }

    private long contacts() {
        return jdbc.sql("select count(*) from recall_contact where shop_id = :s")
                .param("s", shop)
                .query(Long.class)
                .single();
    }

    @Test
    void namesOfOwnersAreForThoseWhoPhoneThem() throws Exception {
        save(car, null, asInCatalogue());
        RequestPostProcessor technician = people.in(shop, Role.TECHNICIAN);
        mvc.perform(get("/parts/" + fan).with(technician))
                .andExpect(content()
                        .string(allOf(
                                containsString("AB 12"),
                                not(containsString("Jo Example")),
                                not(containsString("000 555 0199")))));
        mvc.perform(get("/parts/" + fan + "/cars.csv").with(technician)).andExpect(status().isForbidden());
    }

    @Test
    void aPartOfAnotherShopOrKindCannotBeFitted() throws Exception {
        people.actAs(people.aShop(), Role.OWNER);
        long theirs = aFan("Theirs", fanOnly);
        PartRef ref = catalogue.part(theirs).ref();
        mvc.perform(form("/spec/fit").param("part.FAN", Long.toString(theirs))).andExpect(status().isNotFound());
        act();
        assertThatThrownBy(() -> save(car, null, bare.withParts(Map.of(PartKind.FAN, ref))))
                .isInstanceOf(NotFoundException.class);
        PartRef ours = catalogue.part(fan).ref();
        assertThatThrownBy(() -> save(car, null, bare.withParts(Map.of(PartKind.CAP, ours))))
                .isInstanceOf(NotFoundException.class);
        assertThat(revisions.all(car)).isEmpty();
    }

    @Test
    void whatARevisionNamesNeverChanges() {
        save(car, null, asInCatalogue());
        assertThatThrownBy(
                        () -> jdbc.sql("update fitted_part set part_name = 'x'").update())
                .isInstanceOf(DataAccessException.class);
        assertThatThrownBy(() -> jdbc.sql("delete from fitted_part").update()).isInstanceOf(DataAccessException.class);
        assertThatThrownBy(() -> jdbc.sql("delete from part where id = :id")
                        .param("id", fan)
                        .update())
                .isInstanceOf(DataAccessException.class);
    }
}
