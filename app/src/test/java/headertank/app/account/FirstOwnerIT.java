package headertank.app.account;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestBuilders.formLogin;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.security.test.web.servlet.response.SecurityMockMvcResultMatchers.authenticated;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import headertank.app.database.DatabaseTest;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

/** A new installation: one story, because it can happen only once. */
@DatabaseTest
class FirstOwnerIT {

    @Autowired
    MockMvc mvc;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    FirstOwnerCode code;

    String printed;

    @Test
    void theFirstPersonFoundsTheShopAndNobodyAfterThem() throws Exception {
        printed = code.lines().values().iterator().next().replaceAll(" .*", "");
        mvc.perform(get("/cars")).andExpect(redirectedUrl("/first-owner"));
        mvc.perform(get("/login")).andExpect(redirectedUrl("/first-owner"));
        mvc.perform(get("/css/headertank.css")).andExpect(status().isOk());
        mvc.perform(get("/first-owner")).andExpect(status().isOk());

        mvc.perform(found("first", "short")).andExpect(status().isUnprocessableContent());
        assertThat(accounts()).isZero();

        String right = printed;
        printed = "aaaaa-bbbbb-ccccc-ddddd";
        mvc.perform(found("first", "long enough for one"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("This is not the code")));
        printed = right;
        mvc.perform(found("first", "My shop is my shop")).andExpect(status().isUnprocessableContent());
        assertThat(accounts()).isZero();

        mvc.perform(found("first", "long enough for one").param("timeZone", "Middle/Nowhere"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("No time zone Middle/Nowhere is known here.")));
        assertThat(accounts()).isZero();

        mvc.perform(found("first", "long enough for one").param("timeZone", "Europe/Helsinki"))
                .andExpect(redirectedUrl("/login"));
        assertThat(accounts()).isOne();

        assertThat(jdbc.sql("select time_zone from shop").query(String.class).list())
                .containsExactly("Europe/Helsinki");

        mvc.perform(found("second", "long enough for two")).andExpect(redirectedUrl("/login"));
        mvc.perform(get("/first-owner")).andExpect(redirectedUrl("/login"));
        assertThat(accounts()).isOne();

        mvc.perform(formLogin().user("first").password("long enough for one"))
                .andExpect(authenticated().withRoles("OWNER", "FRONT_DESK"));
    }

    private MockHttpServletRequestBuilder found(String login, String password) {
        return post("/first-owner")
                .with(csrf())
                .param("code", printed)
                .param("shop", "My shop")
                .param("name", "Me")
                .param("login", login)
                .param("password", password)
                .param("alsoHolds", "FRONT_DESK");
    }

    private long accounts() {
        return jdbc.sql("select count(*) from account").query(Long.class).single();
    }
}
