package headertank.app.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.app.account.People;
import headertank.app.database.DatabaseTest;
import headertank.app.shop.Role;
import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.context.TestPropertySource;

/** What strangers leave behind, and how little they can hold. */
@DatabaseTest
@TestPropertySource(properties = "headertank.demo=true")
class StrangersIT {

    private static final String FORM = "application/x-www-form-urlencoded";

    private static final int SLOW = 250;

    /** So many of one place are let in at once. */
    private static final int OF_ONE_PLACE = 40;

    /** For so long the server waits for what somebody began to send: {@code server.tomcat.connection-timeout}. */
    private static final Duration PATIENCE = Duration.ofSeconds(10);

    @LocalServerPort
    int port;

    @Autowired
    People people;

    @Autowired
    JdbcClient jdbc;

    @Test
    void fourHundredRequestsOfStrangersMakeNoSessionAndNoAddressNamesTheHostThatTheySay() throws Exception {
        String login = people.anAccount(people.aShop(), Role.TECHNICIAN);
        long before = sessions();
        List<String> leads = new ArrayList<>();
        try (RawHttp stranger = new RawHttp(port)) {
            for (int i = 0; i < 100; i++) {
                for (String path : List.of("/login", "/cars/1?x=1", "/")) {
                    leads.add(stranger.send("GET", path, Map.of("Host", "evil.example"), null)
                            .headers()
                            .toString());
                }
                byte[] guess = ("username=" + login + "&password=wrong").getBytes(StandardCharsets.UTF_8);
                leads.add(stranger.send("POST", "/login", Map.of("Host", "evil.example", "Content-Type", FORM), guess)
                        .headers()
                        .toString());
            }
        }
        assertThat(sessions()).isEqualTo(before);
        assertThat(leads).hasSize(400).noneMatch(h -> h.contains("evil"));
        try (Visitor visitor = new Visitor(port)) {
            visitor.signIn(login, People.PASSWORD);
            assertThat(visitor.get("/cars").status()).isEqualTo(200);
        }
        assertThat(sessions()).isEqualTo(before + 1);
    }

    /**
     * Whoever has signed in is answered, for strangers are refused as soon as those of their place hold what one place may. Who of
     * them is let in, and how long each is waited for, is up to the machine: a place that is held for the server's patience may
     * have been held by as many others as often as that patience has passed.
     */
    @Test
    void manySlowStrangersDoNotHoldUpWhoeverHasSignedIn() throws Exception {
        String login = people.anAccount(people.aShop(), Role.TECHNICIAN);
        List<Socket> slow = new ArrayList<>();
        try (Visitor visitor = new Visitor(port)) {
            visitor.signIn(login, People.PASSWORD);
            byte[] begun = ("POST /login HTTP/1.1\r\nHost: x\r\nContent-Type: " + FORM
                            + "\r\nContent-Length: 1000\r\n\r\nusername=")
                    .getBytes(StandardCharsets.US_ASCII);
            long start = System.nanoTime();
            for (int i = 0; i < SLOW; i++) {
                Socket socket = new Socket(InetAddress.getLoopbackAddress(), port);
                socket.getOutputStream().write(begun);
                slow.add(socket);
            }
            assertThat(visitor.get("/cars").status()).isEqualTo(200);
            assertThat(areRefused(slow, start))
                    .as("strangers were refused at once, all but those of one place that may be inside")
                    .isTrue();
        } finally {
            for (Socket socket : slow) {
                socket.close();
            }
        }
    }

    /** Waits until all but those that can have been let in are refused, or for so long that none can be expected any more. */
    private static boolean areRefused(List<Socket> slow, long start) throws IOException {
        List<Socket> unanswered = new ArrayList<>(slow);
        int refused = 0;
        while (!unanswered.isEmpty()) {
            for (var socket = unanswered.iterator(); socket.hasNext(); ) {
                String answer = firstLine(socket.next());
                if (answer == null) {
                    continue;
                }
                socket.remove();
                refused += answer.contains(" 503") ? 1 : 0;
            }
            double patiencesPassed = (double) (System.nanoTime() - start) / PATIENCE.toNanos();
            if (refused >= Math.max(1, SLOW - OF_ONE_PLACE * (1 + patiencesPassed))) {
                return true;
            }
        }
        return false;
    }

    /** What the server said first, empty when it closed; null while it still waits for what a slow one began to send. */
    private static String firstLine(Socket socket) {
        try {
            socket.setSoTimeout(1);
            byte[] line = new byte[16];
            return new String(line, 0, Math.max(0, socket.getInputStream().read(line)), StandardCharsets.US_ASCII);
        } catch (SocketTimeoutException e) {
            return null;
        } catch (IOException e) {
            return "";
        }
    }

    private long sessions() {
        return jdbc.sql("select count(*) from spring_session").query(Long.class).single();
    }
}
