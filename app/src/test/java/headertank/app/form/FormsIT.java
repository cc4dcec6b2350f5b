package headertank.app.form;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import headertank.app.account.People;
import headertank.app.check.Checks;
import headertank.app.check.Specs;
import headertank.app.database.DatabaseTest;
import headertank.app.job.Jobs;
import headertank.app.shop.Role;
import java.time.LocalDate;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.session.Session;
import org.springframework.session.SessionRepository;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.AbstractMockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

/** What holds for every form: a summary of what is wrong, nothing lost; {@link SentTwiceIT} sees to it that it adds once. */
@DatabaseTest
class FormsIT {

    @Autowired
    MockMvc mvc;

    @Autowired
    People people;

    @Autowired
    Specs specs;

    @Autowired
    Checks checks;

    @Autowired
    Jobs jobs;

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
        refused(post(list + "/day").param("key", key).param("ambient", "kept words"), "ambient")
                .andExpect(content().string(containsString("kept words")));
        refused(
                post("/duties/street/list")
                        .param("item", "duct")
                        .param("asked", "false")
                        .param("reason", " "),
                "reason-duct");
        refused(post("/settings").param("name", "").param("coolantLimit", "kept words"), "coolantLimit")
                .andExpect(content().string(containsString("kept words")));
        refused(post("/jobs/" + aJob() + "/stop").param("version", "0").param("reason", "kept words"), "how")
                .andExpect(content().string(containsString("kept words")));
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

    private long aJob() {
        people.actAs(shop, Role.FRONT_DESK);
        return jobs.open(car, "look", LocalDate.now().plusDays(1));
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
