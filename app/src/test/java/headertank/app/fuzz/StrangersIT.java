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

    /** So many of the slow ones have a thread in any case. */
    private static final int FIRST = 10;

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

    /** Whoever has signed in is answered while the server still waits for the first of them, not after it has given them up. */
    @Test
    void manySlowStrangersDoNotHoldUpWhoeverHasSignedIn() throws Exception {
        String login = people.anAccount(people.aShop(), Role.TECHNICIAN);
        List<Socket> slow = new ArrayList<>();
        try (Visitor visitor = new Visitor(port)) {
            visitor.signIn(login, People.PASSWORD);
            byte[] begun = ("POST /login HTTP/1.1\r\nHost: x\r\nContent-Type: " + FORM
                            + "\r\nContent-Length: 1000\r\n\r\nusername=")
                    .getBytes(StandardCharsets.US_ASCII);
            for (int i = 0; i < 250; i++) {
                Socket socket = new Socket(InetAddress.getLoopbackAddress(), port);
                socket.getOutputStream().write(begun);
                slow.add(socket);
            }
            assertThat(visitor.get("/cars").status()).isEqualTo(200);
            assertThat(slow.subList(0, FIRST))
                    .as("strangers that were there before")
                    .allMatch(StrangersIT::isHeld);
        } finally {
            for (Socket socket : slow) {
                socket.close();
            }
        }
    }

    /** Whether the server still waits for what a slow one began to send. */
    private static boolean isHeld(Socket socket) {
        try {
            socket.setSoTimeout(1);
            socket.getInputStream().read();
            return false;
        } catch (SocketTimeoutException e) {
            return true;
        } catch (IOException e) {
            return false;
        }
    }

    private long sessions() {
        return jdbc.sql("select count(*) from spring_session").query(Long.class).single();
    }
}
