import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Measures how long each page of a running app takes: {@code java .ci/PageLoad.java http://localhost:8080 desk demo-desk-1}.
 * It signs in, follows the links from the navigation two steps deep (one page of each kind), opens every form it finds there
 * and posts the preview of a spec; then asks for each page 40 times, one request at a time, and prints median and 95 %.
 */
final class PageLoad {

    private static final int WARM_UP = 10;
    private static final int TIMES = 40;
    private static final int DEPTH = 3;
    private static final Pattern LINK = Pattern.compile("href=\"(/[^\"#]*)\"");
    private static final Pattern TOKEN = Pattern.compile("name=\"_csrf\"[^>]*value=\"([^\"]*)\"");
    private static final Pattern FIELD = Pattern.compile("<input[^>]*name=\"([^\"]*)\"[^>]*value=\"([^\"]*)\"");

    private final HttpClient client = HttpClient.newBuilder()
            .cookieHandler(new CookieManager())
            .followRedirects(HttpClient.Redirect.NORMAL)
            .build();
    private final String home;

    private PageLoad(String home) {
        this.home = home;
    }

    public static void main(String[] arguments) throws Exception {
        if (arguments.length != 3) {
            System.err.println("address, login and password, please");
            System.exit(2);
        }
        PageLoad load = new PageLoad(arguments[0]);
        load.signIn(arguments[1], arguments[2]);
        Map<String, String> pages = load.pages();
        System.out.println("| page | median | 95 % |\n|---|---|---|");
        for (Map.Entry<String, String> page : pages.entrySet()) {
            load.measure("GET " + page.getKey(), () -> load.get(page.getValue()));
        }
        String form = pages.get("/cars/{n}/spec");
        if (form != null) {
            String body = load.formOf(form);
            load.measure("POST /cars/{n}/spec/preview", () -> load.post(form + "/preview", body));
        }
    }

    private interface Ask {
        String now() throws IOException, InterruptedException;
    }

    private void measure(String name, Ask ask) throws IOException, InterruptedException {
        for (int i = 0; i < WARM_UP; i++) {
            ask.now();
        }
        double[] took = new double[TIMES];
        for (int i = 0; i < TIMES; i++) {
            long start = System.nanoTime();
            ask.now();
            took[i] = (System.nanoTime() - start) / 1e6;
        }
        Arrays.sort(took);
        System.out.printf(
                Locale.ROOT, "| `%s` | %.0f ms | %.0f ms |%n", name, took[TIMES / 2], took[TIMES * 95 / 100]);
    }

    private void signIn(String login, String password) throws IOException, InterruptedException {
        String page = get("/login");
        String there = post("/login", "username=" + encoded(login) + "&password=" + encoded(password) + "&_csrf="
                + encoded(first(TOKEN, page)));
        if (!there.contains("<nav")) {
            throw new IllegalStateException("these do not open the door");
        }
    }

    /** One address for each kind of page. */
    private Map<String, String> pages() throws IOException, InterruptedException {
        Map<String, String> kinds = new LinkedHashMap<>();
        List<String> step = List.of("/cars");
        for (int depth = 0; depth < DEPTH; depth++) {
            List<String> next = new ArrayList<>();
            for (String path : step) {
                Matcher link = LINK.matcher(get(path));
                while (link.find()) {
                    String to = link.group(1).replace("&amp;", "&");
                    String kind = to.replaceAll("\\?.*", "").replaceAll("/\\d+", "/{n}");
                    boolean page = !to.matches("/(css|js|webjars|icon).*|.*\\.(pdf|csv|zip)(\\?.*)?");
                    if (page && kinds.putIfAbsent(kind, to) == null) {
                        next.add(to);
                    }
                }
            }
            step = next;
        }
        return kinds;
    }

    private String formOf(String path) throws IOException, InterruptedException {
        String page = get(path);
        StringBuilder body = new StringBuilder("carClass=DRIFT&duties=drift");
        Matcher field = FIELD.matcher(page);
        while (field.find()) {
            if (!field.group(1).matches("carClass|duties")) {
                String value = field.group(2).replace("&#39;", "'").replace("&amp;", "&");
                body.append('&').append(encoded(field.group(1))).append('=').append(encoded(value));
            }
        }
        return body.toString();
    }

    private String get(String path) throws IOException, InterruptedException {
        return answer(HttpRequest.newBuilder(URI.create(home + path)).build());
    }

    private String post(String path, String body) throws IOException, InterruptedException {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(home + path))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(body));
        return answer(path.endsWith("/preview") ? request.header("HX-Request", "true").build() : request.build());
    }

    private String answer(HttpRequest request) throws IOException, InterruptedException {
        HttpResponse<String> response = client.send(request, HttpResponse.BodyHandlers.ofString());
        if (response.statusCode() != 200) {
            throw new IllegalStateException(request.uri() + " answers " + response.statusCode());
        }
        return response.body();
    }

    private static String first(Pattern pattern, String text) {
        Matcher matcher = pattern.matcher(text);
        if (!matcher.find()) {
            throw new IllegalStateException("no " + pattern);
        }
        return matcher.group(1);
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
