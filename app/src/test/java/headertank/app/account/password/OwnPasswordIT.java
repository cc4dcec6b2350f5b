package headertank.app.account.password;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestBuilders.formLogin;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.security.test.web.servlet.response.SecurityMockMvcResultMatchers.authenticated;
import static org.springframework.security.test.web.servlet.response.SecurityMockMvcResultMatchers.unauthenticated;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import headertank.app.account.People;
import headertank.app.database.DatabaseTest;
import headertank.app.shop.Role;
import jakarta.servlet.http.Cookie;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

/** A password of one's own, and what the owner sees of who signs in. */
@DatabaseTest
class OwnPasswordIT {

    @Autowired
    MockMvc mvc;

    @Autowired
    People people;

    @Autowired
    JdbcClient jdbc;

    long shop;
    String login;

    @BeforeEach
    void somebody() {
        shop = people.aShop();
        login = people.anAccount(shop, Role.TECHNICIAN);
    }

    @Test
    void theNewPasswordOpensAndOtherSessionsEnd() throws Exception {
        Cookie here = signIn(People.PASSWORD);
        Cookie elsewhere = signIn(People.PASSWORD);
        mvc.perform(change(People.PASSWORD, "another-horse-2").cookie(here))
                .andExpect(redirectedUrl("/account/password"));
        mvc.perform(get("/cars").cookie(here)).andExpect(status().isOk());
        mvc.perform(get("/cars").cookie(elsewhere)).andExpect(redirectedUrl("/login"));
        mvc.perform(formLogin().user(login).password(People.PASSWORD)).andExpect(unauthenticated());
        mvc.perform(formLogin().user(login).password("another-horse-2")).andExpect(authenticated());
    }

    @Test
    void withoutTheOldPasswordNothingChanges() throws Exception {
        Cookie here = signIn(People.PASSWORD);
        mvc.perform(change("a-guess-of-mine", "another-horse-2").cookie(here))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("This is not your password so far.")));
        mvc.perform(change(People.PASSWORD, "short").cookie(here))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("At least 15 characters.")));
        assertThat(signIn(People.PASSWORD)).isNotNull();
    }

    @Test
    void theOwnerSeesWhoHasSignedIn() throws Exception {
        var owner = people.in(shop, Role.OWNER);
        mvc.perform(get("/accounts").with(owner)).andExpect(content().string(containsString("Has never signed in.")));
        signIn(People.PASSWORD);
        mvc.perform(get("/accounts").with(owner)).andExpect(content().string(containsString("Last signed in: ")));
    }

    @Test
    void whatIsRefusedStandsBesideItsAccount() throws Exception {
        long lonely = people.aShop();
        var owner = people.in(lonely, Role.OWNER);
        long id = jdbc.sql("select id from account where shop_id = :shop")
                .param("shop", lonely)
                .query(Long.class)
                .single();
        mvc.perform(post("/accounts/" + id + "/switch")
                        .param("on", "false")
                        .with(csrf())
                        .with(owner))
                .andExpect(status().isConflict())
                .andExpect(content().string(containsString("This is the last owner.")));
        mvc.perform(post("/accounts/" + id + "/roles").with(csrf()).with(owner))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("Choose at least one role.")));
    }

    private Cookie signIn(String password) throws Exception {
        return mvc.perform(formLogin().user(login).password(password))
                .andExpect(authenticated())
                .andReturn()
                .getResponse()
                .getCookie("headertank");
    }

    private static MockHttpServletRequestBuilder change(String old, String password) {
        return post("/account/password").with(csrf()).param("old", old).param("password", password);
    }
}
