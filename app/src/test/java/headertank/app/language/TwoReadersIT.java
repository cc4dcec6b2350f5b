package headertank.app.language;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import headertank.app.check.Specs;
import headertank.app.database.DatabaseTest;
import headertank.app.given.Given;
import headertank.app.shop.Role;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.quantity.Stated;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.RequestPostProcessor;
import org.springframework.web.util.HtmlUtils;

/** One car before a German and a US reader: the same figures, each in his words and units. */
@DatabaseTest
class TwoReadersIT {

    /** What neither reader is to see: no number, an SI symbol of a log, a code without words. */
    private static final Pattern NOBODYS =
            Pattern.compile("NaN|Infinity|∞|\\bmodel\\.|\\b(?:input|contradiction|verdict|slow)\\.[a-z]+-|\\[SI]");

    /** So far above or below, where the words say already which way. */
    private static final Pattern TWICE_BELOW =
            Pattern.compile("[−-]\\d[\\d.,]*[\\s\u00a0](?:K|°F)[\\s\u00a0](?:über|unter|above|below)");

    private static final Pattern FIGURE =
            Pattern.compile("([−+]?\\d+(?:[.,]\\d+)?)[\\s\u00a0](°C|°F|K|mm|in)(?![\\w²³])");

    /** What a whole degree and a tenth of another may be apart. */
    private static final double ROUNDING = 0.7;

    @Autowired
    MockMvc mvc;

    @Autowired
    Given given;

    @Autowired
    JdbcClient jdbc;

    /** Somebody of a shop of his own, who reads so. */
    private record Reader(Given.Workshop shop, RequestPostProcessor who) {}

    private Reader german() throws Exception {
        Reader reader = reader();
        mvc.perform(post("/language").with(reader.who()).with(csrf()).param("code", "de"));
        return reader;
    }

    private Reader american() {
        Reader reader = reader();
        jdbc.sql("update shop set unit_system = 'US' where id = :shop")
                .param("shop", reader.shop().shop())
                .update();
        return reader;
    }

    private Reader reader() {
        Given.Workshop shop = given.aWorkshop(Role.OWNER, Role.FRONT_DESK, Role.TECHNICIAN);
        return new Reader(shop, shop.with(Role.OWNER, Role.FRONT_DESK, Role.TECHNICIAN));
    }

    /** The preview of a draft, as one line of text. */
    private String preview(Reader reader, String carClass, String... fields) throws Exception {
        reader.shop().actAs(Role.FRONT_DESK);
        long car = reader.shop().aCar();
        MockHttpServletRequestBuilder form = post("/cars/" + car + "/spec/preview")
                .with(csrf())
                .with(reader.who())
                .header("HX-Request", "true")
                .param("carClass", carClass)
                .param("duties", "drift")
                .param("duties", "track");
        for (int i = 0; i < fields.length; i += 2) {
            form.param(fields[i], fields[i + 1]).param(fields[i] + ".from", "MEASURED");
        }
        String page = mvc.perform(form)
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString();
        return text(page, "<div id=\"preview\"", "<a id=\"bar\"");
    }

    private String slowCoolant(Reader reader, Build.Builder build) throws Exception {
        reader.shop().actAs(Role.FRONT_DESK, Role.TECHNICIAN);
        long check = reader.shop().aCheck(reader.shop().aCar(build, "drift"));
        String page = mvc.perform(get("/checks/" + check + "/what-if").with(reader.who()))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString();
        return text(page, "(Kühlt langsameres|Does slower coolant)", "</details>");
    }

    /** What can be read between two places of a page. */
    private static String text(String page, String from, String to) {
        Matcher part = Pattern.compile(from + ".*?" + to, Pattern.DOTALL).matcher(page);
        assertThat(part.find()).as(page).isTrue();
        return HtmlUtils.htmlUnescape(part.group().replaceAll("<[^>]*>?", " ").replaceAll("[ \\n]+", " "));
    }

    private static void eachInHisWordsAndUnits(String german, String american) {
        assertThat(german)
                .doesNotContainPattern(NOBODYS)
                .doesNotContainPattern("\\d\\.\\d")
                .doesNotContain("°F");
        assertThat(american)
                .doesNotContainPattern(NOBODYS)
                .doesNotContainPattern("\\d,\\d")
                .doesNotContain("°C");
        assertThat(american).doesNotContainPattern("\\d[\\s\u00a0]K\\b").doesNotContainPattern(TWICE_BELOW);
        assertThat(german).doesNotContainPattern(TWICE_BELOW);
        List<Double> here = figures(german);
        List<Double> there = figures(american);
        assertThat(here).as(german).isNotEmpty();
        assertThat(there).as(german + "\n" + american).hasSameSizeAs(here);
        for (int i = 0; i < here.size(); i++) {
            assertThat(there.get(i)).as(german + "\n" + american).isCloseTo(here.get(i), within(ROUNDING));
        }
    }

    /** Temperatures, differences of them and lengths in °F and inches, by size. */
    private static List<Double> figures(String text) {
        List<Double> found = new ArrayList<>();
        Matcher figure = FIGURE.matcher(text);
        while (figure.find()) {
            double shown = Double.parseDouble(
                    figure.group(1).replace('−', '-').replace("+", "").replace(',', '.'));
            found.add(
                    switch (figure.group(2)) {
                        case "°C" -> 1.8 * shown + 32;
                        case "K" -> 1.8 * shown;
                        case "mm" -> shown / 25.4;
                        default -> shown;
                    });
        }
        found.sort(Double::compare);
        return found;
    }

    @Test
    void whyADraftCannotBeRated() throws Exception {
        String german = preview(german(), "OLD_STREET", "radiator.rows", "5", "radiator.coreWidthM", "650 mm");
        String american = preview(american(), "OLD_STREET", "radiator.rows", "5", "radiator.coreWidthM", "650 mm");
        assertThat(german).contains("Das lässt sich nicht bewerten: Das decken die Modelle nicht: Breite eines Rohrs");
        assertThat(american).contains("This cannot be rated: The models do not cover this: width of a tube");
        eachInHisWordsAndUnits(german, american);
    }

    @Test
    void whatKeepsADraftFromAGo() throws Exception {
        String[] hot = {"engine.ratedPowerW", "450 kW", "radiator.coreWidthM", "500 mm", "use.ambientK", "38 °C"};
        String german = preview(german(), "DRIFT", hot);
        String american = preview(american(), "DRIFT", hot);
        assertThat(german).contains("über seiner Grenze");
        assertThat(american).contains("above its limit");
        eachInHisWordsAndUnits(german, american);
    }

    @Test
    void aDraftThatNeverBalances() throws Exception {
        String[] hopeless = {
            "engine.ratedPowerW", "1100 kW", "radiator.coreWidthM", "200 mm", "radiator.coreHeightM", "110 mm"
        };
        String german = preview(german(), "DRIFT", hopeless);
        String american = preview(american(), "DRIFT", hopeless);
        assertThat(german).contains("Reserve keine: Wärme und Kühlung kommen nie ins Gleichgewicht");
        assertThat(american).contains("margin none: heat and cooling never balance");
        eachInHisWordsAndUnits(german, american);
    }

    @Test
    void slowCoolant() throws Exception {
        Build.Builder car = Specs.easy().set(BuildField.ENGINE_POWER, Stated.measured(200e3));
        String german = slowCoolant(german(), car);
        String american = slowCoolant(american(), car);
        eachInHisWordsAndUnits(german, american);
    }
}
