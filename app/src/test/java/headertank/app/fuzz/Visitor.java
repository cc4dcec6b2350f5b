package headertank.app.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Somebody with a session, as a browser keeps it. */
final class Visitor implements AutoCloseable {

    private static final Pattern TOKEN = Pattern.compile("X-CSRF-TOKEN&quot;: &quot;([^&]+)&quot;");
    private static final String FORM = "application/x-www-form-urlencoded";

    private final RawHttp http;
    private String cookie = "";
    private String token = "";

    Visitor(int port) {
        http = new RawHttp(port);
    }

    /** Signs in; whoever was signed in before is forgotten. */
    void signIn(String login, String password) throws IOException {
        cookie = "";
        readToken(send("GET", "/login", Map.of(), null));
        RawHttp.Answer in = send(
                "POST",
                "/login",
                Map.of("Content-Type", FORM),
                ("username=" + encoded(login) + "&password=" + encoded(password)).getBytes(StandardCharsets.UTF_8));
        assertThat(in.header("Location")).as("where signing in leads").doesNotContain("login");
        readToken(send("GET", "/glossary", Map.of(), null));
    }

    private void readToken(RawHttp.Answer page) {
        Matcher found = TOKEN.matcher(page.body());
        assertThat(found.find()).as("a token in the page").isTrue();
        token = found.group(1);
    }

    RawHttp.Answer get(String path) throws IOException {
        return send("GET", path, Map.of(), null);
    }

    /** Sends with cookie and token, unless the headers say otherwise. */
    RawHttp.Answer send(String method, String path, Map<String, String> headers, byte[] body) throws IOException {
        Map<String, String> all = new LinkedHashMap<>();
        if (!cookie.isEmpty()) {
            all.put("Cookie", cookie);
        }
        if (!token.isEmpty()) {
            all.put("X-CSRF-TOKEN", token);
        }
        all.putAll(headers);
        RawHttp.Answer answer = http.send(method, path, all, body);
        String set = answer.header("Set-Cookie");
        if (set.contains("=") && !headers.containsKey("Cookie")) {
            cookie = set.split(";")[0];
        }
        return answer;
    }

    static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    @Override
    public void close() throws IOException {
        http.close();
    }
}
