package headertank.app.language;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import headertank.app.account.People;
import headertank.app.database.DatabaseTest;
import headertank.app.shop.Role;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mock.web.MockHttpSession;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

/** Who reads a page in which language. */
@DatabaseTest
class PageLanguageIT {

    private static final String GERMAN = "<html lang=\"de\"";
    private static final String ENGLISH = "<html lang=\"en\"";

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
        people.anAccount(shop, Role.OWNER);
    }

    @Test
    void whatTheBrowserAsksForCountsUntilSomebodyChooses() throws Exception {
        mvc.perform(get("/login")).andExpect(content().string(containsString(ENGLISH)));
        mvc.perform(get("/login").header("Accept-Language", "fr, de;q=0.8"))
                .andExpect(content().string(containsString(GERMAN)));
    }

    @Test
    void theAccountRemembersAcrossSessions() throws Exception {
        RequestPostProcessor somebody = people.in(shop, Role.FRONT_DESK);
        mvc.perform(get("/cars").with(somebody)).andExpect(content().string(containsString(ENGLISH)));
        mvc.perform(post("/language")
                        .with(somebody)
                        .with(csrf())
                        .param("code", "de")
                        .header("Referer", "http://localhost/cars?q=x"))
                .andExpect(redirectedUrl("/cars?q=x"));
        mvc.perform(get("/cars").with(somebody).session(new MockHttpSession()))
                .andExpect(content().string(containsString(GERMAN)));
        mvc.perform(get("/cars").with(people.in(shop, Role.FRONT_DESK)))
                .andExpect(content().string(containsString(ENGLISH)));
    }

    @Test
    void aLanguageThatIsNotHereIsRefused() throws Exception {
        RequestPostProcessor somebody = people.in(shop, Role.FRONT_DESK);
        mvc.perform(post("/language").with(somebody).with(csrf()).param("code", "xx"))
                .andExpect(status().isNotFound());
        assertThat(jdbc.sql("select count(*) from account where shop_id = :shop and language is not null")
                        .param("shop", shop)
                        .query(Long.class)
                        .single())
                .isZero();
    }
}
