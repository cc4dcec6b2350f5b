package headertank.app.form;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import headertank.app.account.People;
import headertank.app.check.Checks;
import headertank.app.check.Specs;
import headertank.app.database.DatabaseTest;
import headertank.app.shop.Role;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.session.Session;
import org.springframework.session.SessionRepository;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.AbstractMockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

/** What holds for every form: once, whoever sends it twice; a summary of what is wrong; nothing lost. */
@DatabaseTest
class FormsIT {

    private static final Pattern KEY = Pattern.compile("name=\"key\"[^>]*value=\"([0-9a-f-]{36})\"");

    @Autowired
    MockMvc mvc;

    @Autowired
    People people;

    @Autowired
    Specs specs;

    @Autowired
    Checks checks;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    SessionRepository<? extends Session> sessions;

    long shop;
    long car;
    RequestPostProcessor everybody;

    @BeforeEach
    void aCar() {
        shop = people.aShop();
        everybody = people.in(shop, Role.values());
        people.actAs(shop, Role.TECHNICIAN);
        car = specs.aCar();
        specs.save(car, Specs.easy().build(), "street");
    }

    @AfterEach
    void nobody() {
        People.nobody();
    }

    @Test
    void eachFormThatAddsIsDoneOnceHoweverOftenItIsSent() throws Exception {
        once("/customers/new", "/customers", "customer", "name", "Sam Example", "phone", "", "email", "", "note", "");
        once("/cars/new", "/cars", "car", "newCustomerName", "Lee Example", "plate", "TWO 1", "make", "Nimbrax");
        once("/intake", "/intake", "car", "newCustomerName", "Kim Example", "plate", "TWO 2", "make", "Nimbrax");
        once("/parts/new?kind=CAP", "/parts", "part", "kind", "CAP", "name", "Cap 13", "currency", "");
        once(
                "/cars/" + car + "/jobs/new",
                "/cars/" + car + "/jobs",
                "job",
                "asked",
                "look",
                "promised",
                LocalDate.now().plusDays(2).toString());
        once(
                "/cars/" + car + "/incidents/new",
                "/cars/" + car + "/incidents",
                "incident",
                "when",
                "2020-07-01T15:30",
                "doing",
                "queueing",
                "duty",
                "",
                "ambient",
                "35",
                "reading",
                "118",
                "place",
                "HEAD",
                "revision",
                "1");
        once(
                "/accounts",
                "/accounts",
                "account",
                "login",
                "twice" + shop,
                "name",
                "Two Times",
                "password",
                "correct-horse-1",
                "roles",
                "TECHNICIAN");
    }

    /** Sends the form that the page has shown: twice at once, and once more after that. */
    private void once(String page, String path, String table, String... fields) throws Exception {
        String html =
                mvc.perform(get(page).with(everybody)).andReturn().getResponse().getContentAsString();
        var key = KEY.matcher(html);
        assertThat(key.find()).as("a key in the form at %s", page).isTrue();
        int before = count(table);
        Callable<String> sending = () -> {
            var request = post(path).with(csrf()).with(everybody).param("key", key.group(1));
            for (int i = 0; i < fields.length; i += 2) {
                request.param(fields[i], fields[i + 1]);
            }
            var response = mvc.perform(request).andReturn().getResponse();
            assertThat(response.getStatus())
                    .as("%s: %s", path, response.getContentAsString())
                    .isEqualTo(302);
            return response.getRedirectedUrl();
        };
        List<String> answers = new ArrayList<>();
        try (var hands = new Hands()) {
            for (Future<String> answer : hands.both(sending)) {
                answers.add(answer.get());
            }
        }
        answers.add(sending.call());
        assertThat(answers).as(path).hasSize(3).allMatch(a -> a.equals(answers.get(0)));
        assertThat(count(table) - before).as("rows of %s from %s", table, path).isEqualTo(1);
    }

    private static final class Hands implements AutoCloseable {
        private final java.util.concurrent.ExecutorService pool = Executors.newFixedThreadPool(2);

        List<Future<String>> both(Callable<String> sending) throws InterruptedException {
            return pool.invokeAll(List.of(sending, sending));
        }

        @Override
        public void close() {
            pool.shutdown();
        }
    }

    private int count(String table) {
        return jdbc.sql("select count(*) from " + table + " where shop_id = :shop")
                .param("shop", shop)
                .query(Integer.class)
                .single();
    }

    @Test
    void whatIsWrongIsSummedUpAtTheTopWithALinkToItsField() throws Exception {
        long check = checks.run(car, 1);
        String list = "/checks/" + check + "/handover";
        String key = UUID.randomUUID().toString();
        refused(post("/customers").param("name", ""), "name");
        refused(post("/cars").param("plate", ""), "plate");
        refused(post("/cars/" + car + "/jobs").param("asked", "").param("promised", "soon"), "asked");
        refused(post("/checks/" + check + "/sign-off").param("remark", "kept words"), "decision")
                .andExpect(content().string(containsString("kept words")));
        refused(
                post(list + "/decision")
                        .param("key", key)
                        .param("outcome", "SEND_BACK")
                        .param("reason", ""),
                "reason");
        refused(
                        multipart(list + "/photos")
                                .param("key", key)
                                .param("item", "hoses")
                                .param("caption", "kept words"),
                        "file-hoses")
                .andExpect(content().string(containsString("kept words")));
        refused(
                post(list + "/entries").param("key", key).param("item", "hoses").param("outcome", "FAULT"),
                "note-hoses");
        refused(post("/parts").param("kind", "CAP").param("name", ""), "name");
        refused(
                post("/cars/" + car + "/incidents")
                        .param("when", "")
                        .param("place", "HEAD")
                        .param("revision", "1"),
                "doing");
        refused(post("/accounts").param("login", "").param("name", "kept words"), "login")
                .andExpect(content().string(containsString("kept words")));
        refused(post("/account/password").param("old", "").param("password", "x"), "password");
    }

    private org.springframework.test.web.servlet.ResultActions refused(
            AbstractMockHttpServletRequestBuilder<?> request, String field) throws Exception {
        return mvc.perform(request.with(csrf()).with(everybody))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("error-summary")))
                .andExpect(content().string(containsString("href=\"#" + field + "\"")))
                .andExpect(content().string(containsString("id=\"" + field + "\"")));
    }

    @Test
    void twoAnswersOfOneSessionAtOnceBothLeaveTheirMessage() {
        leaveTwoMessages(sessions);
    }

    private static <S extends Session> void leaveTwoMessages(SessionRepository<S> sessions) {
        S created = sessions.createSession();
        created.setAttribute("signed", "in");
        sessions.save(created);
        S one = sessions.findById(created.getId());
        S other = sessions.findById(created.getId());
        one.setAttribute("flash", "one");
        other.setAttribute("flash", "other");
        sessions.save(one);
        sessions.save(other);
        assertThat((String) sessions.findById(created.getId()).getAttribute("flash"))
                .isEqualTo("other");
    }
}
