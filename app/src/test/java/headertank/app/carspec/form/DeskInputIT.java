package headertank.app.carspec.form;

import static headertank.calc.quantity.Provenance.DATASHEET;
import static headertank.calc.quantity.Provenance.GUESSED;
import static headertank.calc.quantity.Provenance.MEASURED;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import headertank.app.account.People;
import headertank.app.carspec.Revisions;
import headertank.app.carspec.Spec;
import headertank.app.carspec.SpecBuilder;
import headertank.app.database.DatabaseTest;
import headertank.app.field.FieldValues;
import headertank.app.form.FormOnPage;
import headertank.app.given.Given;
import headertank.app.part.PartContent;
import headertank.app.part.PartKind;
import headertank.app.part.Parts;
import headertank.app.shop.Role;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import headertank.calc.quantity.Entry;
import headertank.calc.quantity.Provenance;
import headertank.calc.quantity.Stated;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.AbstractMockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

/** What people write at the counter, through the form as a browser without scripts sends it: read, shown back, or asked about. */
@DatabaseTest
class DeskInputIT {

    /** What no message may hold: a list that is empty, a place that nobody filled, a unit with a word of the other language. */
    private static final Pattern HOLE =
            Pattern.compile("\\{\\d|one of [.,]|eine von [.,]|Eine von +verwenden|“”|„“|: +to |: +bis |\\bnull\\b");

    private static final List<BuildField> TYPED_OVER =
            List.of(BuildField.CORE_WIDTH, BuildField.FAN_CURRENT, BuildField.FUEL, BuildField.CAP_PRESSURE);

    @Autowired
    MockMvc mvc;

    @Autowired
    Given given;

    @Autowired
    Revisions revisions;

    @Autowired
    Parts parts;

    private Given.Workshop workshop;
    private RequestPostProcessor desk;
    private long car;

    @BeforeEach
    void aCarAtTheCounter() {
        workshop = given.aWorkshop(Role.values());
        car = workshop.aCar();
        desk = workshop.with(Role.FRONT_DESK, Role.OWNER);
    }

    @AfterEach
    void nobody() {
        People.nobody();
    }

    private void reads(String language) throws Exception {
        mvc.perform(post("/language").with(desk).with(csrf()).param("code", language));
    }

    private FormOnPage form() throws Exception {
        String spec = "/cars/" + car + "/spec";
        return FormOnPage.of(answer(get(spec)).html(), spec, Map.of())
                .with(Map.of("carClass", "DRIFT", "duties", "drift", "reason", "as found"));
    }

    private record Answer(int status, Document page, String html) {

        /** What stands beside a field. */
        String beside(BuildField field) {
            return page.getElementById(field.name() + "-help").text();
        }

        String value(BuildField field) {
            return page.getElementById(field.name()).val();
        }

        Optional<String> asked(BuildField field) {
            return page.select("button.meant[data-field=" + field.name() + "]").stream()
                    .map(b -> b.attr("data-text"))
                    .findFirst();
        }
    }

    private Answer answer(AbstractMockHttpServletRequestBuilder<?> request) throws Exception {
        var response = mvc.perform(request.with(csrf()).with(desk)).andReturn().getResponse();
        String html = response.getContentAsString();
        return new Answer(response.getStatus(), Jsoup.parse(html), html);
    }

    private Answer previewed(Map<String, String> typed) throws Exception {
        FormOnPage form = form().with(typed);
        var request = post(form.action() + "/preview");
        form.values().forEach(request::param);
        return answer(request);
    }

    private Answer saved(Map<String, String> typed) throws Exception {
        return answer(form().with(typed).request());
    }

    private Entry entry(BuildField field) {
        workshop.actAs(Role.values());
        return revisions.latest(car).orElseThrow().spec().build().entry(field).orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "de"})
    void whatIsWrittenShortIsReadShownBackAndKeptWithItsSource(String language) throws Exception {
        reads(language);
        boolean german = language.equals("de");
        Map<String, String> typed = new HashMap<>(Map.of(
                "coolant.glycolVolumeShare", "50/50",
                "coolant.capGaugePa", "1300 mbar",
                "use.ambientK", "35 deg",
                "fan.shroudCoverage", german ? "0,5" : "0.5",
                "radiator.coreWidthM", german ? "700,5x420x52" : "700.5x420x52"));
        List.copyOf(typed.keySet()).forEach(field -> typed.put(field + ".from", "MEASURED"));
        Answer shown = previewed(typed);
        assertThat(shown.status()).isEqualTo(200);
        assertThat(shown.beside(BuildField.COOLANT_GLYCOL)).contains("= 50 %");
        assertThat(shown.beside(BuildField.CAP_PRESSURE)).contains(german ? "= 1,30 bar" : "= 1.30 bar");
        assertThat(shown.beside(BuildField.AMBIENT)).contains(german ? "= 35,0 °C" : "= 35.0 °C");
        assertThat(shown.beside(BuildField.FAN_COVER)).contains("= 50 %");
        assertThat(shown.value(BuildField.CORE_WIDTH)).isEqualTo(german ? "700,5" : "700.5");
        assertThat(shown.value(BuildField.CORE_HEIGHT)).isEqualTo("420");
        assertThat(shown.value(BuildField.CORE_DEPTH)).isEqualTo("52");

        assertThat(saved(typed).status()).isEqualTo(302);
        Map<BuildField, Double> si = Map.of(
                BuildField.COOLANT_GLYCOL, 0.5,
                BuildField.CAP_PRESSURE, 1.3e5,
                BuildField.AMBIENT, 308.15,
                BuildField.FAN_COVER, 0.5,
                BuildField.CORE_WIDTH, 0.7005,
                BuildField.CORE_HEIGHT, 0.42,
                BuildField.CORE_DEPTH, 0.052);
        si.forEach((field, value) -> {
            Stated stated = (Stated) entry(field);
            assertThat(stated.si()).as(field.name()).isCloseTo(value, within(1e-9 * value));
            assertThat(stated.from()).as(field.name()).isEqualTo(MEASURED);
        });
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "de"})
    void whatCanBeReadInTwoWaysIsAskedAbout(String language) throws Exception {
        reads(language);
        boolean german = language.equals("de");
        Map<String, String> typed = Map.of(
                "fan.diameterM", "14",
                "coolant.capGaugePa", german ? "1.300 mbar" : "1,300 mbar",
                "fan.freeFlowM3PerS", german ? "4.250" : "4,250",
                "coolant.glycolVolumeShare", "60/40",
                "engine.ratedPowerW", "300 kW");
        Answer refused = saved(typed);
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.asked(BuildField.FAN_DIAMETER)).contains("14 in");
        assertThat(refused.asked(BuildField.CAP_PRESSURE)).contains("1300 mbar");
        assertThat(refused.asked(BuildField.FAN_FLOW)).contains("4250");
        assertThat(refused.beside(BuildField.FAN_DIAMETER)).contains(german ? "14 in gemeint?" : "Did you mean 14 in?");
        assertThat(refused.beside(BuildField.COOLANT_GLYCOL)).contains("60/40");
        typed.forEach((field, text) -> assertThat(
                        refused.value(BuildField.ofKey(field).orElseThrow()))
                .as("nothing typed is lost")
                .isEqualTo(text));
        Answer preview = previewed(typed);
        assertThat(preview.asked(BuildField.FAN_DIAMETER))
                .as("while somebody types")
                .contains("14 in");
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "de"})
    void noMessageHasAHole(String language) throws Exception {
        reads(language);
        for (String text : List.of("much", "7 parsecs", "-1e9", "1,2,3", "0.00001", "12 34 56")) {
            Map<String, String> typed = new HashMap<>();
            for (BuildField field : BuildField.values()) {
                typed.put(field.key(), text);
            }
            Answer refused = saved(typed);
            assertThat(refused.status()).isEqualTo(422);
            List<String> faults =
                    refused.page().select(".fault, .error-summary li").eachText();
            assertThat(faults).as(text).hasSizeGreaterThan(100).noneMatch(String::isBlank);
            assertThat(faults).as(text).noneMatch(f -> HOLE.matcher(f).find());
        }
    }

    @Test
    void aValueThatIsTypedOverAnotherIsNotVouchedForByWhatWasSaidOfThatOne() throws Exception {
        workshop.actAs(Role.values());
        revisions.save(car, null, measured(), "as found", UUID.randomUUID());
        Answer shown = previewed(Map.of("radiator.coreWidthM", "660 mm", "fuel.burnt", "E85"));
        assertThat(shown.beside(BuildField.CORE_WIDTH)).contains("counts as guessed");
        assertThat(shown.beside(BuildField.FUEL)).contains("counts as guessed");
        assertThat(shown.beside(BuildField.FAN_CURRENT)).doesNotContain("counts as guessed");

        Map<String, String> typed = Map.of(
                "radiator.coreWidthM",
                "660 mm",
                "fuel.burnt",
                "E85",
                "fan.currentA",
                "26 A",
                "fan.currentA.from",
                "DATASHEET");
        assertThat(saved(typed).status()).isEqualTo(302);
        assertThat(sources()).containsExactly(GUESSED, DATASHEET, GUESSED, MEASURED);
        String revision = answer(get("/cars/" + car + "/revisions/2")).page().text();
        assertThat(revision).contains("660 mm guessed");

        assertThat(saved(Map.of("radiator.coreWidthM.from", "MEASURED")).status())
                .isEqualTo(302);
        assertThat(sources())
                .as("somebody says it of this one")
                .containsExactly(MEASURED, DATASHEET, GUESSED, MEASURED);
    }

    private static Spec measured() {
        return SpecBuilder.of(CarClass.DRIFT, "drift")
                .set(BuildField.CORE_WIDTH, "650 mm", MEASURED)
                .set(BuildField.FAN_CURRENT, "25 A", MEASURED)
                .set(BuildField.CAP_PRESSURE, "1.3 bar", MEASURED)
                .seen(BuildField.FUEL, "PETROL_E10")
                .spec();
    }

    private List<Provenance> sources() {
        return TYPED_OVER.stream().map(f -> entry(f).from()).toList();
    }

    @Test
    void aPartsValueThatIsTypedOverIsAGuessToo() throws Exception {
        workshop.actAs(Role.values());
        FieldValues values = SpecBuilder.of(CarClass.DRIFT, "drift")
                .set(BuildField.FAN_CURRENT, "11 A", MEASURED)
                .set(BuildField.FAN_FLOW, "2500 cfm", MEASURED)
                .spec()
                .values();
        long part = parts.add(new PartContent(PartKind.FAN, "Twelve", "", values, Optional.empty(), ""));
        FormOnPage edit = FormOnPage.of(answer(get("/parts/" + part + "/edit")).html(), "/parts/" + part, Map.of());
        assertThat(answer(edit.with(Map.of("fan.currentA", "12 A")).request()).status())
                .isEqualTo(302);
        Document again = answer(get("/parts/" + part + "/edit")).page();
        assertThat(again.select("select[name=fan.currentA.from] option[selected]")
                        .val())
                .isEqualTo("GUESSED 12 A");
        assertThat(again.select("select[name=fan.freeFlowM3PerS.from] option[selected]")
                        .val())
                .isEqualTo("MEASURED 2500 cfm");
    }

    @ParameterizedTest
    @ValueSource(strings = {"MEASURED", "ADVERTISED", ""})
    void whatAPartImpliesIsKnownAsWellAsThePart(String from) throws Exception {
        workshop.actAs(Role.values());
        FieldValues said = from.isEmpty()
                ? FieldValues.none()
                : SpecBuilder.of(CarClass.DRIFT, "drift")
                        .set(BuildField.THERMOSTAT_OPENING, "82 °C", Provenance.valueOf(from))
                        .spec()
                        .values();
        long part = parts.add(new PartContent(PartKind.THERMOSTAT, "Eighty-two", "", said, Optional.empty(), ""));
        FormOnPage form = form().with(Map.of("part.THERMOSTAT", Long.toString(part)));
        var fit = post(form.action() + "/fit");
        form.values().forEach(fit::param);
        Document filled = answer(fit).page();
        assertThat(filled.select("select[name=thermostat.state] option[selected]")
                        .val())
                .isEqualTo("FITTED");
        assertThat(filled.select("select[name=thermostat.state.from] option[selected]")
                        .val())
                .isEqualTo((from.isEmpty() ? "GUESSED" : from) + " FITTED");
    }
}
