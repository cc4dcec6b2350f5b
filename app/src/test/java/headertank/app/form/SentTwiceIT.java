package headertank.app.form;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;

import headertank.app.account.People;
import headertank.app.account.RouteRights;
import headertank.app.carlog.Logs;
import headertank.app.carspec.Revisions;
import headertank.app.carspec.SpecBuilder;
import headertank.app.check.Checks;
import headertank.app.check.Specs;
import headertank.app.check.stored.Decision;
import headertank.app.database.DatabaseTest;
import headertank.app.duty.OwnDuty;
import headertank.app.field.FieldValues;
import headertank.app.given.Given;
import headertank.app.handover.Lists;
import headertank.app.handover.item.ItemOutcome;
import headertank.app.handover.photo.Pictures;
import headertank.app.job.Jobs;
import headertank.app.part.Catalogue;
import headertank.app.part.PartContent;
import headertank.app.part.PartKind;
import headertank.app.part.Parts;
import headertank.app.shop.Role;
import headertank.calc.carspec.CarClass;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.HttpMethod;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

/**
 * Every form that adds something is sent as its page shows it: twice at the same time, once more after that, and from another tab
 * in which the same page was opened before. The routes are those of {@link RouteRights}: a new one needs its form here, or a
 * reason why it adds nothing.
 */
@DatabaseTest
class SentTwiceIT {

    /** What is changed or worked out there, and added nowhere. */
    private static final Map<String, String> ADDS_NOTHING = Map.ofEntries(
            Map.entry("/first-owner", "is there only while there is no account; FirstOwnerIT sends it twice"),
            Map.entry("/sign-in-again", "keeps what was typed for the form that it leads back to"),
            Map.entry("/go-on", "shows what was typed once more"),
            Map.entry("/backup", "hands out a file"),
            Map.entry("/language", "remembers a choice"),
            Map.entry("/accounts/{id}/roles", "changes an account to what is said; the same again changes nothing"),
            Map.entry("/accounts/{id}/switch", "changes an account to what is said; the same again changes nothing"),
            Map.entry("/accounts/{id}/password", "makes a new password each time; the last one opens"),
            Map.entry("/account/password", "changes an account to what is said; the same again changes nothing"),
            Map.entry("/settings", "changes a version of the settings; an older one is refused"),
            Map.entry("/cars/{id}", "changes a version of the car; an older one is refused"),
            Map.entry("/customers/{id}", "changes a version of the customer; an older one is refused"),
            Map.entry("/parts/{id}", "changes a version of the part; an older one is refused"),
            Map.entry("/parts/{id}/retire", "changes a version of the part; an older one is refused"),
            Map.entry("/duties/from-log", "writes the text of a duty into its form"),
            Map.entry("/parts/import", "shows what a file would do"),
            Map.entry("/cars/{id}/spec/preview", "works out what the form would come to"),
            Map.entry(
                    "/cars/{id}/logs/{log}/confirm",
                    "has an answer worked out, which is kept once by what it follows from"),
            Map.entry("/cars/{id}/spec/fit", "writes a part into the form"));

    /**
     * A form that adds.
     *
     * @param route it is sent to, as in the table of rights
     * @param table that gets the row
     * @param form brings about what it needs, and fills it in
     */
    private record Adding(String route, String table, Filling form) {}

    /** Returns the form twice: as two tabs that were opened one after the other show it. */
    private interface Filling {
        List<FormOnPage> inTwoTabs() throws Exception;
    }

    @Autowired
    MockMvc mvc;

    @Autowired
    Given given;

    @Autowired
    People people;

    @Autowired
    Specs specs;

    @Autowired
    Checks checks;

    @Autowired
    Lists lists;

    @Autowired
    Jobs jobs;

    @Autowired
    OwnDuty ownDuty;

    @Autowired
    Parts parts;

    @Autowired
    Catalogue catalogue;

    @Autowired
    Revisions revisions;

    private final ExecutorService hands = Executors.newFixedThreadPool(2);
    private Given.Workshop workshop;
    private RequestPostProcessor everybody;

    @AfterEach
    void nobody() {
        People.nobody();
        hands.shutdownNow();
    }

    private List<Adding> all() {
        return List.of(
                adds(
                        "/customers",
                        "customer",
                        () -> tabs("/customers/new", "/customers", Map.of("name", "Sam Example"))),
                adds(
                        "/cars",
                        "car",
                        () -> tabs("/cars/new", "/cars", Map.of("newCustomerName", "Lee Example", "plate", "TWO 1"))),
                adds(
                        "/intake",
                        "car",
                        () -> tabs("/intake", "/intake", Map.of("newCustomerName", "Kim Example", "plate", "TWO 2"))),
                adds("/parts", "part", () -> tabs("/parts/new?kind=CAP", "/parts", Map.of("name", "Cap 13"))),
                adds("/parts/import/confirm", "part", this::anImport),
                adds("/parts/{id}/recall/{carId}", "recall_contact", this::aRecall),
                adds(
                        "/accounts",
                        "account",
                        () -> tabs(
                                "/accounts",
                                "/accounts",
                                Map.of(
                                        "login",
                                        "twice" + workshop.shop(),
                                        "name",
                                        "Two Times",
                                        "roles",
                                        "TECHNICIAN"))),
                adds("/duties", "duty_version", this::aDuty),
                adds("/duties/{id}/switch", "duty_version", this::aSwitchedDuty),
                adds(
                        "/duties/{id}/list",
                        "asked_item",
                        () -> tabs(
                                "/duties/street/list",
                                "/duties/street/list",
                                Map.of("reason", "no such cars"),
                                Map.of("item", "duct"))),
                adds("/cars/{id}/spec", "revision", this::aRevision),
                adds("/cars/{id}/logs", "car_log", this::aLog),
                adds("/cars/{id}/evidence/readings", "car_evidence", this::aReading),
                adds("/cars/{id}/evidence/logs", "car_evidence", this::aUsedLog),
                adds("/cars/{id}/evidence/{piece}/switch", "evidence_switch", this::aPieceLeftOut),
                adds("/cars/{id}/revisions/{number}/checks", "check_run", this::aRating),
                adds("/checks/{id}/sign-off", "sign_off", this::aSignature),
                adds(
                        "/checks/{id}/handover/day",
                        "handover_day",
                        () -> onTheList("/day", Map.of("ambient", "20 °C"), Map.of())),
                adds(
                        "/checks/{id}/handover/entries",
                        "measurement",
                        () -> onTheList(
                                "/entries", Map.of("outcome", "FAULT", "note", "rubs"), Map.of("item", "hoses"))),
                adds("/checks/{id}/handover/photos", "handover_photo", this::aPhoto),
                adds("/checks/{id}/handover/faults/{fault}", "fault_clearing", this::aClearing),
                adds("/checks/{id}/handover/decision", "handover_decision", this::aLastWord),
                adds("/cars/{id}/jobs", "job", () -> {
                    String path = "/cars/" + workshop.aCar(Specs.easy(), "street") + "/jobs";
                    return tabs(path + "/new", path, Map.of("asked", "look", "promised", tomorrow()));
                }),
                adds("/jobs/{id}", "job_event", () -> onAJob("/edit", "", Map.of("asked", "look again"))),
                adds(
                        "/jobs/{id}/stop",
                        "job_event",
                        () -> onAJob("", "/stop", Map.of("how", "PAUSE", "reason", "waits for a hose"))),
                adds("/jobs/{id}/resume", "job_event", this::aJobThatGoesOn),
                adds("/jobs/{id}/hand-over", "job_event", () -> theLastClick(false)),
                adds("/jobs/{id}/take-back", "job_event", () -> theLastClick(true)),
                adds("/cars/{id}/incidents", "incident", () -> {
                    String path = "/cars/" + workshop.aCar(Specs.easy(), "street") + "/incidents";
                    return tabs(
                            path + "/new",
                            path,
                            Map.of("when", "2020-07-01T15:30", "doing", "queueing", "ambient", "35", "reading", "118"));
                }),
                adds("/incidents/{id}/answers", "incident_answer", this::anAnswer));
    }

    private static Adding adds(String route, String table, Filling form) {
        return new Adding(route, table, form);
    }

    @Test
    void everyRouteIsSentTwiceOrAddsNothing() {
        Set<String> routes = RouteRights.rows().stream()
                .filter(r -> r.method().equals(HttpMethod.POST))
                .map(r -> r.pattern().getPatternString())
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(Stream.concat(all().stream().map(Adding::route), ADDS_NOTHING.keySet().stream()))
                .as("a route of its own for each form, in exactly one of the two lists")
                .containsExactlyInAnyOrderElementsOf(routes);
    }

    @TestFactory
    Stream<DynamicTest> aFormThatIsSentTwiceAddsOnce() {
        return all().stream().map(adding -> dynamicTest(adding.route(), () -> sentTwice(adding)));
    }

    private void begin() {
        workshop = given.aWorkshop(Role.values());
        everybody = workshop.with(Role.values());
    }

    private void sentTwice(Adding adding) throws Exception {
        begin();
        List<FormOnPage> tabs = adding.form().inTwoTabs();
        FormOnPage form = tabs.get(0).requireKey();
        long before = workshop.rows(adding.table());
        Callable<String> sending = () -> sent(form);
        List<String> answers = new ArrayList<>();
        for (Future<String> answer : hands.invokeAll(List.of(sending, sending))) {
            answers.add(answer.get());
        }
        answers.add(sending.call());
        assertThat(answers).as("where it led").hasSize(3).allMatch(a -> a.equals(answers.get(0)));
        assertThat(workshop.rows(adding.table()) - before).as("rows").isEqualTo(1);

        int status = status(tabs.get(1));
        assertThat(status).as("the other tab").isLessThan(500);
        assertThat(workshop.rows(adding.table()) - before)
                .as("rows after the other tab, which answered %s", status)
                .isEqualTo(1);
    }

    @TestFactory
    Stream<DynamicTest> twoTabsAtTheSameMomentAddOnce() {
        return all().stream()
                .map(adding -> dynamicTest(adding.route(), () -> {
                    begin();
                    List<FormOnPage> tabs = adding.form().inTwoTabs();
                    long before = workshop.rows(adding.table());
                    List<Callable<Integer>> sending = tabs.stream()
                            .<Callable<Integer>>map(tab -> () -> status(tab))
                            .toList();
                    for (Future<Integer> answer : hands.invokeAll(sending)) {
                        assertThat(answer.get()).isLessThan(500);
                    }
                    assertThat(workshop.rows(adding.table()) - before).isEqualTo(1);
                }));
    }

    @Test
    void theSameFromAFormThatIsOpenedAfterwardsIsMeantSo() throws Exception {
        begin();
        Map<String, String> sam = Map.of("name", "Sam Example");
        for (int customers = 1; customers <= 5; customers++) {
            sent(tabs("/customers/new", "/customers", sam).get(0));
            assertThat(workshop.rows("customer")).isEqualTo(customers);
        }
        List<FormOnPage> tabs = tabs("/customers/new", "/customers", sam);
        sent(tabs.get(0));
        sent(tabs.get(1).with(Map.of("name", "Kim Example")));
        assertThat(workshop.rows("customer")).as("other words in the other tab").isEqualTo(7);
    }

    @Test
    void aFaultThatWasClearedIsFoundAnewFromAnOlderTab() throws Exception {
        begin();
        long check = aCheck();
        String list = "/checks/" + check + "/handover";
        List<FormOnPage> tabs =
                tabs(list, list + "/entries", Map.of("outcome", "FAULT", "note", "rubs"), Map.of("item", "hoses"));
        sent(tabs.get(0));
        String fault = page(list).replaceAll("(?s).*?id=\"fault-(\\d+)\".*", "$1");
        sent(tabs(list, list + "/faults/" + fault, Map.of("how", "REASON", "reason", "moved"))
                .get(0));
        sent(tabs.get(1));
        assertThat(workshop.rows("car_fault")).isEqualTo(2);
    }

    private String sent(FormOnPage form) throws Exception {
        var answer = mvc.perform(form.request().with(csrf()).with(everybody))
                .andReturn()
                .getResponse();
        assertThat(answer.getStatus())
                .as("%s: %s", form, answer.getContentAsString())
                .isEqualTo(302);
        return answer.getRedirectedUrl();
    }

    private int status(FormOnPage form) throws Exception {
        return mvc.perform(form.request().with(csrf()).with(everybody))
                .andReturn()
                .getResponse()
                .getStatus();
    }

    private String page(String path) throws Exception {
        var answer = mvc.perform(get(path).with(everybody)).andReturn().getResponse();
        assertThat(answer.getStatus()).as(path).isEqualTo(200);
        return answer.getContentAsString();
    }

    private List<FormOnPage> tabs(String page, String action, Map<String, String> typed) throws Exception {
        return tabs(page, action, typed, Map.of());
    }

    /** @param holds what tells the form from others of the page that are sent to the same address */
    private List<FormOnPage> tabs(String page, String action, Map<String, String> typed, Map<String, String> holds)
            throws Exception {
        return List.of(
                FormOnPage.of(page(page), action, holds).with(typed),
                FormOnPage.of(page(page), action, holds).with(typed));
    }

    private static String tomorrow() {
        return LocalDate.now().plusDays(2).toString();
    }

    private List<FormOnPage> anAnswer() throws Exception {
        String path = "/cars/" + workshop.aCar(Specs.easy(), "street") + "/incidents";
        String report = sent(tabs(
                        path + "/new",
                        path,
                        Map.of("when", "2020-07-01T15:30", "doing", "queueing", "ambient", "35", "reading", "118"))
                .get(0));
        return tabs(
                report + "/causes", report + "/answers", Map.of("answer", "STEAM_SEEN"), Map.of("question", "STEAM"));
    }

    private List<FormOnPage> anImport() throws Exception {
        List<FormOnPage> tabs = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            byte[] file = "kind,name\nCAP,Cap 15\n".getBytes(StandardCharsets.UTF_8);
            var answer = mvc.perform(multipart("/parts/import")
                            .file(new MockMultipartFile("file", "parts.csv", "text/csv", file))
                            .with(csrf())
                            .with(everybody))
                    .andReturn()
                    .getResponse();
            tabs.add(FormOnPage.of(answer.getContentAsString(), "/parts/import/confirm", Map.of()));
        }
        return tabs;
    }

    private List<FormOnPage> aRecall() throws Exception {
        long car = workshop.aCar();
        workshop.actAs(Role.values());
        long part = parts.add(new PartContent(PartKind.CAP, "Cap 17", "", FieldValues.none(), Optional.empty(), ""));
        var spec = SpecBuilder.of(CarClass.DRIFT, "drift").spec();
        revisions.save(
                car,
                null,
                spec.withParts(Map.of(PartKind.CAP, catalogue.part(part).ref())),
                "because",
                UUID.randomUUID());
        return tabs("/parts/" + part, "/parts/" + part + "/recall/" + car, Map.of());
    }

    private List<FormOnPage> aDuty() throws Exception {
        return tabs("/duties/new", "/duties", Map.of("text", OwnDuty.text()));
    }

    private List<FormOnPage> aSwitchedDuty() throws Exception {
        ownDuty.add(workshop.account());
        return tabs("/duties", "/duties/" + OwnDuty.ID + "/switch", Map.of());
    }

    private List<FormOnPage> aRevision() throws Exception {
        String path = "/cars/" + workshop.aCar(Specs.easy(), "street") + "/spec";
        return tabs(path, path, Map.of("fan.currentA", "11 A", "reason", "measured anew"));
    }

    private List<FormOnPage> aLog() throws Exception {
        String path = "/cars/" + workshop.aCar(Specs.easy(), "street") + "/logs";
        return tabs(path, path, Map.of("log", Logs.standing(150), "ambient", "20 °C"));
    }

    private List<FormOnPage> aReading() throws Exception {
        String path = "/cars/" + workshop.aCar(Specs.easy(), "street") + "/evidence";
        return tabs(path, path + "/readings", Map.of("shown", "97 °C", "at", "street/hill", "outside", "31 °C"));
    }

    private List<FormOnPage> aUsedLog() throws Exception {
        long car = workshop.aCar(Specs.easy(), "street");
        String logs = "/cars/" + car + "/logs";
        String log = sent(
                FormOnPage.of(page(logs), logs, Map.of()).with(Map.of("log", Logs.standing(150), "ambient", "20 °C")));
        return tabs(log, "/cars/" + car + "/evidence/logs", Map.of());
    }

    private List<FormOnPage> aPieceLeftOut() throws Exception {
        String evidence = "/cars/" + workshop.aCar(Specs.easy(), "street") + "/evidence";
        sent(FormOnPage.of(page(evidence), evidence + "/readings", Map.of())
                .with(Map.of("shown", "97 °C", "at", "street/hill", "outside", "31 °C")));
        String piece = page(evidence).replaceAll("(?s).*?id=\"piece-(\\d+)\".*", "$1");
        return tabs(evidence, evidence + "/" + piece + "/switch", Map.of("then", "LEAVE_OUT", "reason", "another car"));
    }

    private List<FormOnPage> aRating() throws Exception {
        String path = "/cars/" + workshop.aCar(Specs.easy(), "street") + "/revisions/1/check";
        return tabs(path, path + "s", Map.of());
    }

    private long aCheck() {
        workshop.actAs(Role.values());
        return workshop.aCheck(workshop.aCar(Specs.easy(), "street"));
    }

    private List<FormOnPage> aSignature() throws Exception {
        String check = "/checks/" + aCheck();
        return tabs(
                check + "/sign",
                check + "/sign-off",
                Map.of("decision", "DELIVER_WITH_CONDITIONS", "remark", "Signed with Street in mind."));
    }

    private List<FormOnPage> onTheList(String what, Map<String, String> typed, Map<String, String> holds)
            throws Exception {
        String list = "/checks/" + aCheck() + "/handover";
        return tabs(what.equals("/day") ? list + what : list, list + what, typed, holds);
    }

    private List<FormOnPage> aPhoto() throws Exception {
        byte[] picture = picture();
        return onTheList("/photos", Map.of("caption", "Hose"), Map.of("item", "hoses")).stream()
                .map(f -> f.withFile("file", picture))
                .toList();
    }

    private static byte[] picture() throws IOException {
        return Pictures.of("png", 40, 20);
    }

    private List<FormOnPage> aClearing() throws Exception {
        long check = aCheck();
        lists.enter(check, "hoses", ItemOutcome.FAULT, null, "rubs");
        String list = "/checks/" + check + "/handover";
        String fault = page(list).replaceAll("(?s).*?id=\"fault-(\\d+)\".*", "$1");
        return tabs(list, list + "/faults/" + fault, Map.of("how", "REASON", "reason", "moved"));
    }

    private List<FormOnPage> aLastWord() throws Exception {
        long check = aCheck();
        lists.sign(check, Decision.DELIVER_WITH_CONDITIONS);
        lists.answerAll(check);
        String path = "/checks/" + check + "/handover/decision";
        return tabs(path, path, Map.of("outcome", "DELIVER"));
    }

    private List<FormOnPage> onAJob(String page, String deed, Map<String, String> typed) throws Exception {
        String job = "/jobs/"
                + jobs.open(
                        workshop.aCar(Specs.easy(), "street"),
                        "look",
                        LocalDate.now().plusDays(1));
        return tabs(job + page, job + deed, typed);
    }

    private List<FormOnPage> aJobThatGoesOn() throws Exception {
        List<FormOnPage> stop = onAJob("", "/stop", Map.of("how", "PAUSE", "reason", "waits for a hose"));
        sent(stop.get(0));
        String job = stop.get(0).action().replace("/stop", "");
        return tabs(job, job + "/resume", Map.of());
    }

    private List<FormOnPage> theLastClick(boolean andBack) throws Exception {
        long car = workshop.aCar();
        String job = "/jobs/" + jobs.open(car, "look", LocalDate.now().plusDays(1));
        specs.save(car, Specs.easy().build(), "street");
        long check = checks.run(car, 1);
        lists.sign(check, Decision.DELIVER_WITH_CONDITIONS);
        lists.answerAll(check);
        lists.decideLeaves(check);
        List<FormOnPage> last = tabs(job + "/hand-over", job + "/hand-over", Map.of());
        if (!andBack) {
            return last;
        }
        sent(last.get(0));
        return tabs(job, job + "/take-back", Map.of("reason", "wrong car"));
    }
}
