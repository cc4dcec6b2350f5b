package headertank.app.account;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestBuilders.formLogin;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.security.test.web.servlet.response.SecurityMockMvcResultMatchers.authenticated;
import static org.springframework.security.test.web.servlet.response.SecurityMockMvcResultMatchers.unauthenticated;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import headertank.app.database.DatabaseTest;
import headertank.app.shop.Role;
import jakarta.servlet.http.Cookie;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.MediaType;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.crypto.bcrypt.BCryptPasswordEncoder;
import org.springframework.test.web.servlet.MockMvc;

/** Signing in and out, tokens, and what somebody meets who is not signed in. */
@DatabaseTest
class SignInIT {

    @Autowired
    MockMvc mvc;

    @Autowired
    People people;

    @Autowired
    JdbcClient jdbc;

    long shop;

    @BeforeEach
    void aShop() {
        shop = people.aShop();
    }

    @Test
    void theRightPasswordOpensAndAWrongOneDoesNot() throws Exception {
        String login = people.anAccount(shop, Role.TECHNICIAN);
        mvc.perform(formLogin().user(login.toUpperCase()).password(People.PASSWORD))
                .andExpect(authenticated().withRoles("TECHNICIAN"))
                .andExpect(redirectedUrl("/"));
        mvc.perform(formLogin().user(login).password("wrong-password"))
                .andExpect(unauthenticated())
                .andExpect(redirectedUrl("/login?failed"));
    }

    @Test
    void theStoredPasswordIsAHash() {
        String login = people.anAccount(shop, Role.TECHNICIAN);
        String hash = jdbc.sql("select password_hash from account where login = :login")
                .param("login", login)
                .query(String.class)
                .single();
        assertThat(hash).startsWith("{argon2id}$argon2id$v=19$m=19456,t=2,p=1$").doesNotContain(People.PASSWORD);
    }

    @Test
    void aHashOfBeforeOpensAndIsRenewed() throws Exception {
        String login = people.anAccount(shop, Role.TECHNICIAN);
        jdbc.sql("update account set password_hash = :hash where login = :login")
                .param("hash", "{bcrypt}" + new BCryptPasswordEncoder(4).encode("old and long enough"))
                .param("login", login)
                .update();
        mvc.perform(formLogin().user(login).password("old and long enough")).andExpect(authenticated());
        assertThat(jdbc.sql("select password_hash from account where login = :login")
                        .param("login", login)
                        .query(String.class)
                        .single())
                .startsWith("{argon2id}");
        mvc.perform(formLogin().user(login).password("old and long enough")).andExpect(authenticated());
    }

    @Test
    void aPasswordThatWasMadeUpOpensOnceAndIsReplacedBeforeAnythingElse() throws Exception {
        String login = people.anAccount(shop, Role.TECHNICIAN);
        long id = jdbc.sql("select id from account where login = :login")
                .param("login", login)
                .query(Long.class)
                .single();
        String made = (String)
                mvc.perform(post("/accounts/" + id + "/password").with(csrf()).with(people.in(shop, Role.OWNER)))
                        .andExpect(redirectedUrl("/accounts"))
                        .andReturn()
                        .getFlashMap()
                        .get("made");
        assertThat(made).matches("([a-z2-9]{5}-){3}[a-z2-9]{5}");
        mvc.perform(formLogin().user(login).password(People.PASSWORD)).andExpect(unauthenticated());
        Cookie here = mvc.perform(formLogin().user(login).password(made))
                .andExpect(authenticated())
                .andReturn()
                .getResponse()
                .getCookie("headertank");
        mvc.perform(get("/cars").cookie(here)).andExpect(redirectedUrl("/account/password"));
        mvc.perform(post("/cars/1/spec").with(csrf()).cookie(here)).andExpect(redirectedUrl("/account/password"));
        mvc.perform(formLogin().user(login).password(made)).andExpect(unauthenticated());
        mvc.perform(post("/account/password")
                        .with(csrf())
                        .cookie(here)
                        .param("old", made)
                        .param("password", "a sentence of my own"))
                .andExpect(redirectedUrl("/account/password"));
        mvc.perform(get("/cars").cookie(here)).andExpect(status().isOk());
        mvc.perform(formLogin().user(login).password("a sentence of my own")).andExpect(authenticated());
    }

    @Test
    void thePasswordsOfTheDemoOpenNothingWithoutIt() throws Exception {
        String login = people.anAccount(shop, Role.OWNER);
        jdbc.sql("update account set password_hash = :hash where login = :login")
                .param("hash", "{bcrypt}" + new BCryptPasswordEncoder(4).encode("demo-owner-1"))
                .param("login", login)
                .update();
        mvc.perform(formLogin().user(login).password("demo-owner-1")).andExpect(unauthenticated());
    }

    @Test
    void aPostWithoutTokenIsRefusedAndTheHeaderOfHtmxIsEnough() throws Exception {
        var desk = people.in(shop, Role.FRONT_DESK);
        mvc.perform(post("/customers").with(desk).param("name", "A")).andExpect(status().isForbidden());
        mvc.perform(post("/customers").with(desk).with(csrf().asHeader()).param("name", "A"))
                .andExpect(status().is3xxRedirection());
        mvc.perform(get("/customers").with(desk))
                .andExpect(content().string(containsString("hx-headers=\"{&quot;X-CSRF-TOKEN&quot;: &quot;")));
    }

    @Test
    void somebodyNotSignedInIsSentToTheLoginPageAndAProgramIsTold() throws Exception {
        people.anAccount(shop, Role.OWNER);
        mvc.perform(get("/cars")).andExpect(redirectedUrl("/login"));
        mvc.perform(get("/cars").header("HX-Request", "true"))
                .andExpect(header().string("HX-Refresh", "true"))
                .andExpect(content().string(not(containsString("password"))));
        mvc.perform(get("/api/cars"))
                .andExpect(status().isUnauthorized())
                .andExpect(content().contentType(MediaType.APPLICATION_PROBLEM_JSON))
                .andExpect(jsonPath("$.status").value(401));
    }

    @Test
    void anUnknownAddressIsNotFoundForAMember() throws Exception {
        var desk = people.in(shop, Role.FRONT_DESK);
        mvc.perform(get("/nowhere").with(desk)).andExpect(status().isNotFound());
        mvc.perform(get("/api/nowhere").with(desk))
                .andExpect(status().isNotFound())
                .andExpect(content().contentType(MediaType.APPLICATION_PROBLEM_JSON));
    }

    @Test
    void pagesForbidScriptsOfOthersAndInlineOnes() throws Exception {
        people.anAccount(shop, Role.OWNER);
        mvc.perform(get("/login"))
                .andExpect(header().string("Content-Security-Policy", containsString("script-src 'self';")))
                .andExpect(header().string("Permissions-Policy", containsString("camera=()")))
                .andExpect(header().string("Cross-Origin-Opener-Policy", "same-origin"))
                .andExpect(header().doesNotExist("Strict-Transport-Security"))
                .andExpect(content().string(not(containsString("<script>"))))
                .andExpect(content().string(not(containsString("style="))));
    }

    @Test
    void behindEncryptionTheCookieIsBoundToTheHostAndBrowsersStayThere() throws Exception {
        String login = people.anAccount(shop, Role.TECHNICIAN);
        Cookie cookie = mvc.perform(post("/login")
                        .secure(true)
                        .with(csrf())
                        .param("username", login)
                        .param("password", People.PASSWORD))
                .andExpect(header().string("Strict-Transport-Security", containsString("max-age=31536000")))
                .andReturn()
                .getResponse()
                .getCookie("__Host-headertank");
        assertThat(cookie).isNotNull();
        assertThat(cookie.getSecure()).isTrue();
        assertThat(cookie.isHttpOnly()).isTrue();
        assertThat(cookie.getPath()).isEqualTo("/");
        assertThat(cookie.getDomain()).isNull();
        mvc.perform(get("/cars").secure(true).cookie(cookie)).andExpect(status().isOk());
        mvc.perform(get("/cars").cookie(cookie)).andExpect(redirectedUrl("/login"));
    }

    @Test
    void whoIsSwitchedOffIsSignedOutAtOnce() throws Exception {
        String login = people.anAccount(shop, Role.TECHNICIAN);
        Cookie cookie = mvc.perform(formLogin().user(login).password(People.PASSWORD))
                .andReturn()
                .getResponse()
                .getCookie("headertank");
        mvc.perform(get("/cars").cookie(cookie)).andExpect(status().isOk());
        long id = jdbc.sql("select id from account where login = :login")
                .param("login", login)
                .query(Long.class)
                .single();
        mvc.perform(post("/accounts/" + id + "/switch")
                        .param("on", "false")
                        .with(csrf())
                        .with(people.in(shop, Role.OWNER)))
                .andExpect(redirectedUrl("/accounts"));
        mvc.perform(get("/cars").cookie(cookie)).andExpect(redirectedUrl("/login"));
        mvc.perform(formLogin().user(login).password(People.PASSWORD)).andExpect(unauthenticated());
    }

    @Test
    void theLastOwnerStaysOne() throws Exception {
        long lonely = people.aShop();
        var owner = people.in(lonely, Role.OWNER);
        long id = jdbc.sql("select id from account where shop_id = :shop")
                .param("shop", lonely)
                .query(Long.class)
                .single();
        mvc.perform(post("/accounts/" + id + "/roles")
                        .param("roles", "TECHNICIAN")
                        .with(csrf())
                        .with(owner))
                .andExpect(status().isConflict());
    }

    @Test
    void anOwnerSeesNoAccountOfAnotherShop() throws Exception {
        String stranger = people.anAccount(people.aShop(), Role.TECHNICIAN);
        var owner = people.in(shop, Role.OWNER);
        mvc.perform(get("/accounts").with(owner)).andExpect(content().string(not(containsString(stranger))));
        long id = jdbc.sql("select id from account where login = :login")
                .param("login", stranger)
                .query(Long.class)
                .single();
        mvc.perform(post("/accounts/" + id + "/switch")
                        .param("on", "false")
                        .with(csrf())
                        .with(owner))
                .andExpect(status().isNotFound());
    }
}
