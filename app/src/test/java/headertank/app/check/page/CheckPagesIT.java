package headertank.app.check.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import headertank.app.check.Checks;
import headertank.app.check.Specs;
import headertank.app.check.figure.FigureText;
import headertank.app.check.figure.ShopFigures;
import headertank.app.check.stored.CheckResult;
import headertank.app.check.stored.Decision;
import headertank.app.check.stored.DutyResult;
import headertank.app.check.stored.StoredRun;
import headertank.app.database.DatabaseTest;
import headertank.app.given.Given;
import headertank.app.shop.Role;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.quantity.Stated;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.test.web.servlet.MockMvc;

/** What stands on the pages of a check, and in which order: of a car whose first revision was signed, and that was changed since. */
@DatabaseTest
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class CheckPagesIT {

    private static final List<String> DUTIES = List.of("drift", "street", "track");

    @Autowired
    Given given;

    @Autowired
    MockMvc mvc;

    @Autowired
    Specs specs;

    @Autowired
    Checks checks;

    @Autowired
    ShopFigures figures;

    Given.Workshop workshop;
    long car;
    long signed;
    long changed;

    @BeforeAll
    void aCarThatWasChangedAfterItWasSigned() {
        workshop = given.aWorkshop(Role.TECHNICIAN);
        car = workshop.aCar(hot().unknown(BuildField.FAN_FLOW), DUTIES.toArray(String[]::new));
        signed = workshop.aCheck(car);
        workshop.sign(
                signed, Decision.DELIVER_WITH_CONDITIONS, "Drift, Street and Track refused or not: for a show only");
        specs.save(
                car,
                hot().set(BuildField.FAN_FLOW, Stated.measured(0.3))
                        .set(BuildField.CORE_WIDTH, Stated.measured(0.5))
                        .build(),
                DUTIES.toArray(String[]::new));
        changed = checks.run(car, 2);
    }

    private static Build.Builder hot() {
        return Specs.easy().set(BuildField.ENGINE_POWER, Stated.measured(200e3));
    }

    @BeforeEach
    void theirTechnician() {
        workshop.actAs(Role.TECHNICIAN);
    }

    @Test
    void dutiesStandWorstFirst() throws Exception {
        List<String> worstFirst = result(changed).duties().stream()
                .sorted(Comparator.<DutyResult>comparingInt(d -> -d.verdict().ordinal())
                        .thenComparingDouble(DutyResult::coolantMarginK))
                .map(DutyResult::id)
                .toList();
        assertThat(result(changed).duties())
                .extracting(DutyResult::id)
                .as("stored in another order, else this proves nothing")
                .isNotEqualTo(worstFirst);
        Document first = page("/checks/" + changed);
        List<String> shown =
                new ArrayList<>(List.of(first.selectFirst(".glance-duty").id()));
        first.select(".glance-others a").forEach(a -> shown.add(a.id()));
        assertThat(shown)
                .containsExactlyElementsOf(
                        worstFirst.stream().map("duty-"::concat).toList());
        for (String page : List.of("reasons", "what-if", "working")) {
            assertThat(page("/checks/" + changed + "/" + page)
                            .select(".check-duties")
                            .first()
                            .select("a[href*='?duty=']"))
                    .as(page)
                    .extracting(a -> a.attr("href").replaceAll(".*duty=", ""))
                    .containsExactlyElementsOf(worstFirst);
        }
        String last = worstFirst.get(worstFirst.size() - 1);
        assertThat(page("/checks/" + changed + "?duty=" + last)
                        .selectFirst(".glance-duty")
                        .id())
                .isEqualTo("duty-" + last);
    }

    @Test
    void whyNamesTheTwoBiggestUnknownsWhereNothingWasSignedBefore() throws Exception {
        Document first = page("/checks/" + signed);
        DutyResult worst = result(signed).worstFirst().get(0);
        List<String> expected = worst.unknowns().orElseThrow().stream()
                .filter(u -> !u.field().equals(BuildField.AMBIENT.key()))
                .sorted(Comparator.comparingDouble(DutyResult.Unknown::marginK).reversed())
                .limit(2)
                .map(u -> plain(in().label(u.field()) + " \u00b1 " + shown().span(u.marginK()) + " unsure"))
                .toList();
        assertThat(expected).hasSize(2);
        assertThat(first.selectFirst(".why p").text()).startsWith("No earlier revision was signed to leave");
        assertThat(first.select(".why .costs li")).extracting(Element::text).containsExactlyElementsOf(expected);
    }

    @Test
    void whyNamesWhatHasChangedSinceTheLastSignedCheckAndWhatItCost() throws Exception {
        DutyResult worst = result(changed).worstFirst().get(0);
        double before = result(signed).duty(worst.id()).orElseThrow().coolantMarginK();
        Element why = page("/checks/" + changed).selectFirst(".why");
        assertThat(why.selectFirst("p").text())
                .contains(
                        "Since revision 1",
                        plain(shown().span(tenths(before) - tenths(worst.coolantMarginK()))) + " are gone")
                .contains("All changes");
        assertThat(why.select(".costs span")).extracting(Element::text).contains("Core width", "Free flow of each fan");
        Element behind = why.selectFirst("[hx-get]");
        assertThat(behind.attr("hx-trigger")).isEqualTo("load");

        Document costs = page(behind.attr("hx-get"));
        Document compared = page("/cars/" + car + "/compare/costs?from=1&to=2");
        assertThat(costs.select("li")).hasSize(2);
        List<Double> size = costs.select("li .degrees").stream()
                .map(b -> Double.parseDouble(b.text().replaceAll("[^0-9.]", "")))
                .toList();
        assertThat(size).isSortedAccordingTo(Comparator.reverseOrder());
        costs.select("li .degrees")
                .forEach(b -> assertThat(compared.text()).contains(b.text().replace("\u2212", "")));
        assertThat(costs.text())
                .as("an unknown value that became known names the assumption that it replaced")
                .containsPattern("unknown, [\\d ,.]+m\u00b3/h was assumed \u2192 1[ ,]?080")
                .contains("650.0 mm \u2192 500.0 mm");
    }

    @Test
    void theRunIsToldPhaseByPhase() throws Exception {
        DutyResult drift = result(changed).duty("drift").orElseThrow();
        StoredRun run = drift.run().orElseThrow();
        Document page = page("/checks/" + changed + "/run?duty=drift");
        List<Element> rows = page.select("table").first().select("tbody tr");
        assertThat(run.phases()).hasSizeGreaterThan(2);
        assertThat(rows).hasSameSizeAs(run.phases());
        for (int i = 0; i < rows.size(); i++) {
            var phase = run.phases().get(i).summary();
            assertThat(rows.get(i).text())
                    .contains(
                            shown().point(drift, phase.pointId()),
                            plain(shown().temperature(phase.startCoolantK())),
                            plain(shown().temperature(phase.peakCoolantK())),
                            plain(shown().temperature(phase.peakOilK())));
        }
    }

    @Test
    void latAndAtbStandInTheWorkingAlone() throws Exception {
        for (String path : List.of("", "/sign", "/reasons", "/run", "/what-if", "/drawing", "/flags", "/assumed")) {
            assertThat(page("/checks/" + changed + path).text()).as(path).doesNotContainPattern("\\b(LAT|ATB)\\b");
        }
        assertThat(page("/checks/" + changed + "/working").selectFirst("main").text())
                .contains("LAT", "ATB", "linear formula");
    }

    @Test
    void whatWasAssumedStandsInOrderOfWhatItCosts() throws Exception {
        CheckResult result = result(signed);
        List<String> expected = result.assumptions().stream()
                .map(a -> Map.entry(a.field(), most(result, a.field())))
                .filter(e -> e.getValue() > 0)
                .sorted(Map.Entry.<String, Double>comparingByValue().reversed())
                .map(e -> in().label(e.getKey()))
                .toList();
        assertThat(expected).hasSizeGreaterThan(2);
        Document page = page("/checks/" + signed + "/assumed");
        assertThat(page.select(".assumed-lines").first().select(".assumed-what > a"))
                .extracting(Element::text)
                .containsExactlyElementsOf(expected);
        assertThat(page.select(".assumed-lines.few li"))
                .hasSize(result.assumptions().size() - expected.size());
    }

    private static double most(CheckResult result, String field) {
        return result.duties().stream()
                .flatMap(d -> d.unknowns().orElse(List.of()).stream())
                .filter(u -> u.field().equals(field))
                .mapToDouble(DutyResult.Unknown::marginK)
                .max()
                .orElse(0);
    }

    /** Where the code on the windscreen leads. */
    @Test
    void aCarsPageBeginsWithItsNewestVerdictAndWhetherItMayLeave() throws Exception {
        Element begins = page("/cars/" + car).selectFirst("main section").child(0);
        assertThat(begins.className()).isEqualTo("car-first");
        Element verdict = begins.selectFirst("a.car-verdict");
        assertThat(verdict.attr("href")).isEqualTo("/checks/" + changed);
        String worst = result(changed).worstFirst().get(0).verdict().name();
        assertThat(verdict.text()).contains(shown().words("verdict." + worst), "Revision 2");
        assertThat(begins.selectFirst("h2").text()).isEqualTo("May it leave?");
        assertThat(begins.select(".may-leave li")).extracting(Element::text).anyMatch(why -> why.contains("sign"));
    }

    @Test
    void theMarginBarCarriesWhatIsReadOnIt() throws Exception {
        DutyResult duty = result(signed).worstFirst().get(0);
        Element bar = page("/checks/" + signed).selectFirst("svg.margin-bar");
        assertThat(bar.attr("aria-label")).contains(plain(shown().margin(duty.coolantMarginK())));
        assertThat(read(bar, "data-at")).isCloseTo(duty.coolantMarginK(), within(0.1));
        assertThat(read(bar, "data-from"))
                .isCloseTo(duty.marginSpread().orElseThrow().low(), within(0.1));
        assertThat(read(bar, "data-to"))
                .isCloseTo(duty.marginSpread().orElseThrow().high(), within(0.1));
        assertThat(bar.attr("data-left")).isEqualTo("@ K in hand");
    }

    /** The margin at a place of the bar [K], by its two marks. */
    private static double read(Element bar, String place) {
        double[] low = mark(bar.attr("data-low"));
        double[] high = mark(bar.attr("data-high"));
        return low[1] + (Double.parseDouble(bar.attr(place)) - low[0]) / (high[0] - low[0]) * (high[1] - low[1]);
    }

    private static double[] mark(String text) {
        String[] parts = text.replace('\u2212', '-').split("[|]");
        return new double[] {Double.parseDouble(parts[0]), Double.parseDouble(parts[1])};
    }

    private static double tenths(double kelvin) {
        return Math.round(10 * kelvin) / 10.0;
    }

    private CheckResult result(long check) {
        return checks.byId(check).result();
    }

    private ShopFigures in() {
        LocaleContextHolder.setLocale(Locale.ENGLISH);
        return figures;
    }

    private FigureText shown() {
        return in().current();
    }

    /** A request leaves nobody signed in. */
    private Document page(String path) throws Exception {
        String html = mvc.perform(get(path).with(workshop.with(Role.TECHNICIAN)).locale(Locale.ENGLISH))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString(StandardCharsets.UTF_8);
        workshop.actAs(Role.TECHNICIAN);
        return Jsoup.parse(plain(html));
    }

    /** What does not break a line on the page is compared as if it did. */
    private static String plain(String text) {
        return text.replace('\u00a0', ' ').replace("&nbsp;", " ");
    }
}
