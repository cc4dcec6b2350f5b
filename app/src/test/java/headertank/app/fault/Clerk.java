package headertank.app.fault;

import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;

/** Somebody who works with an instance through its pages, as a browser does. */
final class Clerk {

    static final String LOGIN = "owner";
    static final String PASSWORD = "an invented sentence for a fault";

    private final HttpClient http = HttpClient.newBuilder()
            .cookieHandler(new CookieManager())
            .connectTimeout(Duration.ofSeconds(30))
            .build();
    private final int port;
    private String token = "";

    Clerk(int port) {
        this.port = port;
    }

    /** Becomes the owner of an instance that has none. */
    void found(String code) throws IOException, InterruptedException {
        token = token(get("/first-owner").body());
        send(
                "/first-owner",
                Map.of(
                        "code",
                        code,
                        "shop",
                        "Faulty invented shop",
                        "timeZone",
                        "UTC",
                        "name",
                        "Somebody Invented",
                        "login",
                        LOGIN,
                        "password",
                        PASSWORD,
                        "alsoHolds",
                        "FRONT_DESK"));
        signIn();
    }

    void signIn() throws IOException, InterruptedException {
        token = token(get("/login").body());
        send("/login", Map.of("username", LOGIN, "password", PASSWORD));
        HttpResponse<String> page = get("/customers/new");
        if (page.statusCode() != 200) {
            throw new AssertionError("not signed in: " + page.statusCode() + " " + page.body());
        }
        token = token(page.body());
    }

    private static String token(String page) {
        Element field = Jsoup.parse(page).selectFirst("input[name=_csrf]");
        return field == null ? "" : field.val();
    }

    /** Adds a customer; true when the page says that it is kept. */
    boolean adds(String name) throws IOException, InterruptedException {
        return send("/customers", Map.of("name", name, "key", UUID.randomUUID().toString()))
                        .statusCode()
                == 302;
    }

    HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return http.send(
                HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path))
                        .timeout(Duration.ofMinutes(2))
                        .build(),
                HttpResponse.BodyHandlers.ofString());
    }

    HttpResponse<byte[]> send(String path, Map<String, String> fields) throws IOException, InterruptedException {
        Map<String, String> all = new LinkedHashMap<>(fields);
        all.put("_csrf", token);
        String body = all.entrySet().stream()
                .map(f -> f.getKey() + "=" + URLEncoder.encode(f.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
        return http.send(
                HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path))
                        .timeout(Duration.ofMinutes(2))
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(HttpRequest.BodyPublishers.ofString(body))
                        .build(),
                HttpResponse.BodyHandlers.ofByteArray());
    }
}
