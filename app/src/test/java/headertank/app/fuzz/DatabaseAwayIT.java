package headertank.app.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.app.account.People;
import headertank.app.database.DatabaseTest;
import headertank.app.database.DatabaseWatch;
import headertank.app.database.OwnersHand;
import headertank.app.shop.Role;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Map;
import java.util.UUID;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.context.TestPropertySource;

/**
 * What opens while the database is away, and that it all goes on by itself. That the first request which meets no database tells
 * the watch, and how long it takes, is for {@code KilledIT}: here nobody waits for a pool whose patience is made for slow machines.
 */
@DatabaseTest
@TestPropertySource(
        properties = {
            "headertank.demo=true",
            // Shorter than a visitor waits: a request that finds the database gone before anybody has told is answered
            // in time.
            "spring.datasource.hikari.connection-timeout=20000"
        })
class DatabaseAwayIT {

    /** Nobody waits so long: only a service that never comes back fails by this. */
    private static final Duration NEVER = Duration.ofMinutes(2);

    private static final String FORM = "application/x-www-form-urlencoded";

    @LocalServerPort
    int port;

    @Autowired
    People people;

    @Autowired
    OwnersHand owner;

    @Autowired
    DatabaseWatch watch;

    @Autowired
    JdbcClient jdbc;

    Visitor visitor;
    long shop;

    @BeforeEach
    void signIn() throws IOException {
        shop = people.aShop();
        visitor = new Visitor(port);
        visitor.signIn(people.anAccount(shop, Role.FRONT_DESK), People.PASSWORD);
    }

    @AfterEach
    void comesBack() throws Exception {
        owner.reach(true);
        long start = System.nanoTime();
        while (visitor.get("/cars").status() == 503 && System.nanoTime() - start < NEVER.toNanos()) {
            Thread.sleep(200);
        }
        visitor.close();
    }

    @Test
    void aFormComesBackWithWhatWasTypedAndGoesThroughOnceTheDatabaseIsThereAgain() throws Exception {
        String typed = "name=Vera+Invented&phone=555+01&note=calls+%3Cback%3E&key=" + UUID.randomUUID();
        goesAway();
        RawHttp.Answer refused = post(typed);
        assertThat(refused.status()).isEqualTo(503);
        assertThat(refused.header("Retry-After")).isNotEmpty();
        Element again = Jsoup.parse(refused.body()).selectFirst("form[action=/customers]");
        assertThat(again).as("a form that is sent again").isNotNull();
        assertThat(again.selectFirst("[name=note]").val()).isEqualTo("calls <back>");
        assertThat(Jsoup.parse(refused.body()).text()).contains("cannot be reached", "Vera Invented");
        owner.reach(true);
        RawHttp.Answer through = post(typed);
        for (long since = System.nanoTime(); through.status() == 503 && System.nanoTime() - since < NEVER.toNanos(); ) {
            Thread.sleep(200);
            through = post(typed);
        }
        assertThat(through.status()).isEqualTo(302);
        assertThat(post(typed).status()).isEqualTo(302);
        assertThat(jdbc.sql("select count(*) from customer where shop_id = :shop")
                        .param("shop", shop)
                        .query(Long.class)
                        .single())
                .isOne();
    }

    @Test
    void filesAndThePageForSigningInOpenWithoutIt() throws Exception {
        goesAway();
        assertThat(visitor.get("/cars").status()).isEqualTo(503);
        assertThat(visitor.get("/css/headertank.css").status()).isEqualTo(200);
        assertThat(visitor.get("/login").body()).contains("name=\"password\"");
        try (RawHttp stranger = new RawHttp(port)) {
            assertThat(stranger.send("GET", "/login", Map.of(), null).status()).isEqualTo(200);
        }
        RawHttp.Answer guess = visitor.send(
                "POST",
                "/login",
                Map.of("Content-Type", FORM),
                "username=x&password=a-secret-that-was-typed".getBytes(StandardCharsets.US_ASCII));
        assertThat(guess.status()).isEqualTo(503);
        assertThat(guess.body()).doesNotContain("a-secret-that-was-typed");
        assertThat(visitor.send(
                                "POST",
                                "/backup",
                                Map.of("Content-Type", FORM),
                                "passphrase=another-secret-typed".getBytes(StandardCharsets.US_ASCII))
                        .body())
                .doesNotContain("another-secret-typed");
    }

    private void goesAway() throws InterruptedException {
        owner.reach(false);
        long start = System.nanoTime();
        while (!watch.isAway() && System.nanoTime() - start < NEVER.toNanos()) {
            watch.failed();
            Thread.sleep(50);
        }
    }

    private RawHttp.Answer post(String body) throws IOException {
        return visitor.send(
                "POST", "/customers", Map.of("Content-Type", FORM), body.getBytes(StandardCharsets.US_ASCII));
    }
}
