package headertank.app.account;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import headertank.app.database.DatabaseTest;
import headertank.app.shop.Role;
import jakarta.servlet.http.Cookie;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;

/** Whoever guesses waits, and keeps nobody else out. */
@DatabaseTest
class SignInBrakeIT {

    private static final String GUESSER = "192.0.2.7";
    private static final String ELSEWHERE = "198.51.100.9";

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
        jdbc.sql("delete from sign_in_brake").update();
        shop = people.aShop();
        login = people.anAccount(shop, Role.TECHNICIAN);
    }

    @Test
    void sixtyGuessesAndThenTheRightPasswordDoNotOpenButItsOwnerGetsIn() throws Exception {
        Cookie device = tryFrom(ELSEWHERE, People.PASSWORD).getCookie("headertank-device");
        assertThat(device).isNotNull();
        List<Callable<Void>> guesses = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            String guess = "guess " + i;
            guesses.add(() -> {
                tryFrom(GUESSER, guess);
                return null;
            });
        }
        var hands = Executors.newFixedThreadPool(4);
        try {
            hands.invokeAll(guesses).forEach(f -> assertThat(f.isDone()).isTrue());
        } finally {
            hands.shutdownNow();
        }
        MockHttpServletResponse braked = tryFrom(GUESSER, People.PASSWORD);
        assertThat(braked.getRedirectedUrl()).isEqualTo("/login?wait");
        assertThat(Integer.parseInt(braked.getHeader("Retry-After"))).isBetween(1, 900);
        assertThat(isIn(tryFrom(ELSEWHERE, People.PASSWORD))).isTrue();
        assertThat(isIn(tryFrom("203.0.113.5", People.PASSWORD))).isTrue();
        assertThat(isIn(tryFrom(GUESSER, People.PASSWORD, device)))
                .as("a device that the account knows")
                .isTrue();
        assertThat(noted("account.sign-in-refused")).isBetween(4, 10);
        assertThat(noted("account.signed-in")).isEqualTo(4);
        passes();
        assertThat(isIn(tryFrom(GUESSER, People.PASSWORD))).isTrue();
    }

    @Test
    void oneDeviceOrPlaceWaitsTooWhateverAccountItTries() throws Exception {
        for (int i = 0; i < 22; i++) {
            tryFor("nobody" + i, GUESSER, "a guess");
        }
        assertThat(tryFrom(GUESSER, People.PASSWORD).getRedirectedUrl()).isEqualTo("/login?wait");
        assertThat(isIn(tryFrom(ELSEWHERE, People.PASSWORD))).isTrue();
        Cookie device = tryFrom("203.0.113.5", People.PASSWORD).getCookie("headertank-device");
        for (int i = 0; i < 12; i++) {
            tryFrom("203.0.113.5", "a guess", device);
        }
        assertThat(tryFrom("203.0.113.5", People.PASSWORD, device).getRedirectedUrl())
                .isEqualTo("/login?wait");
    }

    private void passes() {
        jdbc.sql("update sign_in_brake set until = now() - interval '1 second'").update();
    }

    private int noted(String action) {
        return jdbc.sql("select count(*)::int from audit_entry where shop_id = :shop and action = :action")
                .param("shop", shop)
                .param("action", action)
                .query(Integer.class)
                .single();
    }

    private static boolean isIn(MockHttpServletResponse answer) {
        return "/".equals(answer.getRedirectedUrl());
    }

    private MockHttpServletResponse tryFrom(String address, String password, Cookie... device) throws Exception {
        return tryFor(login, address, password, device);
    }

    private MockHttpServletResponse tryFor(String who, String address, String password, Cookie... device)
            throws Exception {
        var request = post("/login")
                .with(csrf())
                .param("username", who)
                .param("password", password)
                .with(r -> {
                    r.setRemoteAddr(address);
                    return r;
                });
        if (device.length > 0) {
            request.cookie(device);
        }
        return mvc.perform(request).andReturn().getResponse();
    }
}
