package headertank.app.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.app.account.People;
import headertank.app.database.DatabaseTest;
import headertank.app.demo.DemoData;
import headertank.app.shop.Role;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.FormElement;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.context.TestPropertySource;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;

/**
 * Sends what no page of ours would: to every route that the handlers declare, with the fields that they declare, and the forms of
 * the pages themselves with some of their values spoilt. {@code -Dheadertank.fuzz.requests=50000} makes it long,
 * {@code -Dheadertank.fuzz.seed} another one.
 */
@DatabaseTest
@TestPropertySource(properties = "headertank.demo=true")
class FuzzIT {

    private static final int REQUESTS = Integer.getInteger("headertank.fuzz.requests", 300);
    private static final long SEED = Long.getLong("headertank.fuzz.seed", 20_260_701L);
    private static final long MOST_LOG = 1_000;
    private static final Pattern TRACE = Pattern.compile("\\tat |Exception|org\\.springframework|org\\.postgresql");
    private static final Pattern VARIABLE = Pattern.compile("\\{[^}]+}");

    /** Routes that rate a car: correct requests to them are seldom sent, they take a second each. */
    private static final Pattern RATES = Pattern.compile("/checks$|/since$|/costs$");

    /** What signing in keeps, what waits for no form, and what is worked out behind whoever asked for it before. */
    private static final String KEPT_APART =
            "spring_session|spring_session_attributes|flyway_schema_history|sign_in_brake|known_device"
                    + "|car_question|car_answer";

    /** A form of a page: where it leads and what a browser would send. */
    private record PageForm(String action, boolean multipart, List<String[]> fields) {}

    /** @param fields name and value; a value that is bytes is a file */
    private record Shot(
            String method, String path, Map<String, String> headers, List<Object[]> fields, boolean multipart) {}

    @LocalServerPort
    int port;

    @Autowired
    DemoData demo;

    @Autowired
    People people;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    List<RequestMappingHandlerMapping> mappings;

    private final Noise noise = new Noise(new Random(SEED));
    private final List<String> faults = new ArrayList<>();
    private final Map<String, Long> times = new TreeMap<>();
    private final Map<Integer, Integer> answers = new TreeMap<>();
    private Map<String, Long> ids;
    private String login;
    private Visitor visitor;
    private String rows;
    private long mostLog;
    private int bare;

    @Test
    void whateverIsSentIsAnsweredAndWhatIsRefusedChangesNothing() throws Exception {
        System.out.println("seed " + SEED);
        ids = demo.ensure();
        String rowsOfAll = rowsOfAll();
        try (Visitor one = new Visitor(port);
                LogGrowth log = LogGrowth.watch()) {
            visitor = one;
            signInAnew();
            List<Route> routes = Route.of(mappings);
            List<PageForm> forms = forms(routes);
            assertThat(forms).as("forms on pages").hasSizeGreaterThan(25);
            rows = jdbc.sql(rowsOfAll).query(String.class).single();
            for (int i = 0; i < REQUESTS && faults.size() < 40; i++) {
                Shot shot = noise.oneIn(2) ? ofRoute(noise.any(routes)) : ofForm(noise.any(forms));
                if (!RATES.matcher(shot.path()).find() || noise.oneIn(20)) {
                    shoot(i, shot, rowsOfAll, log);
                }
            }
        }
        times.entrySet().stream()
                .sorted(Map.Entry.<String, Long>comparingByValue().reversed())
                .limit(12)
                .forEach(t -> System.out.println(t.getValue() + " ms " + t.getKey()));
        System.out.println(
                "answers " + answers + ", most bytes of log for a refusal " + mostLog + ", bare pages " + bare);
        assertThat(faults).as(String.join("\n", faults)).isEmpty();
        assertThat(answers.keySet()).contains(200, 302, 400, 404, 422);
    }

    private void signInAnew() throws IOException {
        login = people.anAccount(
                jdbc.sql("select min(id) from shop").query(Long.class).single(), Role.values());
        visitor.signIn(login, People.PASSWORD);
    }

    /** One text that changes with every row that is added, changed or removed. */
    private String rowsOfAll() {
        return jdbc
                .sql(
                        "select relname from pg_class where relnamespace = 'headertank'::regnamespace and relkind = 'r' order by 1")
                .query(String.class)
                .list()
                .stream()
                .filter(t -> !t.matches(KEPT_APART))
                .map(t -> "(select '" + t + "=' || count(*) || ':' || coalesce(max(xmin::text::bigint), 0) || ' ' from "
                        + t + ")")
                .collect(Collectors.joining(" || ", "select ", ""));
    }

    private void shoot(int number, Shot shot, String rowsOfAll, LogGrowth log) throws IOException {
        long logBefore = log.bytes();
        long begun = System.nanoTime();
        RawHttp.Answer answer = visitor.send(shot.method(), shot.path(), headers(shot), body(shot));
        long ms = (System.nanoTime() - begun) / 1_000_000;
        String kind = shot.method() + " " + shot.path().replaceAll("\\?.*", "").replaceAll("\\d+", "9");
        times.merge(kind.length() > 60 ? "long path" : kind, ms, Long::sum);
        answers.merge(answer.status(), 1, Integer::sum);
        String what = number + " " + shot.method() + " " + Noise.shown(shot.path()) + " " + shot.headers() + " "
                + shot.fields().stream()
                        .map(f -> Noise.shown(f[0] + "=" + (f[1] instanceof byte[] b ? b.length + " bytes" : f[1])))
                        .toList()
                + " -> " + answer.status();
        if (answer.status() >= 500 || answer.status() == 0) {
            faults.add(what + ": " + log.last());
        }
        if (answer.status() >= 400 && TRACE.matcher(answer.body()).find()) {
            faults.add(what + ": shows the inside");
        }
        if (answer.status() >= 400 && shot.headers().isEmpty() && answer.body().contains("<h1>HTTP Status")) {
            bare++;
        }
        String now = jdbc.sql(rowsOfAll).query(String.class).single();
        if (answer.status() >= 400) {
            long grown = log.bytes() - logBefore;
            mostLog = Math.max(mostLog, grown);
            if (grown >= MOST_LOG) {
                faults.add(what + ": log grew by " + grown + ": " + log.last());
            }
            if (!now.equals(rows)) {
                faults.add(what + ": changed\n  " + rows + "\n  " + now);
            }
        }
        rows = now;
        if (answer.header("Location").contains("/login") || shot.path().contains("password")) {
            signInAnew();
            rows = jdbc.sql(rowsOfAll).query(String.class).single();
        }
    }

    /** The forms of all pages that open, each once. */
    private List<PageForm> forms(List<Route> routes) throws IOException {
        Map<String, PageForm> forms = new LinkedHashMap<>();
        for (Route route : routes) {
            if (route.method().equals("GET") && !route.pattern().matches(".*(csv|pdf|error).*")) {
                String path = path(route.pattern(), false);
                RawHttp.Answer page = visitor.get(path);
                if (page.status() == 200 && page.header("Content-Type").startsWith("text/html")) {
                    for (Element form : Jsoup.parse(page.body()).getElementsByTag("form")) {
                        PageForm read = form(form);
                        boolean leadsOut =
                                read.action().equals("/logout") || read.action().equals("/login");
                        if (!leadsOut && form.attr("method").equalsIgnoreCase("post")) {
                            forms.putIfAbsent(
                                    read.action()
                                            + read.fields().stream()
                                                    .map(f -> f[0])
                                                    .toList(),
                                    read);
                        }
                    }
                }
            }
        }
        return List.copyOf(forms.values());
    }

    private static PageForm form(Element form) {
        List<String[]> fields = new ArrayList<>();
        form.select("input[type=file]").forEach(f -> fields.add(new String[] {f.attr("name"), null}));
        form.select("input[type=file]").remove();
        ((FormElement) form).formData().forEach(f -> fields.add(new String[] {f.key(), f.value()}));
        form.select("input[type=checkbox], input[type=radio], button[name]")
                .forEach(f -> fields.add(new String[] {f.attr("name"), f.attr("value")}));
        String action = URI.create(form.attr("action")).getPath();
        return new PageForm(action, form.attr("enctype").startsWith("multipart"), fields);
    }

    private Shot ofForm(PageForm form) {
        List<Object[]> fields = new ArrayList<>();
        int spoilt = 1 + noise.below(2);
        for (String[] field : form.fields()) {
            boolean spoil = noise.below(Math.max(1, form.fields().size())) < spoilt;
            if (spoil && noise.oneIn(4)) {
                continue;
            }
            String name = spoil ? noise.name(field[0]) : field[0];
            Object value = field[1] == null
                    ? noise.bytes()
                    : spoil || field[1].isEmpty() && noise.oneIn(3) ? noise.value(String.class) : field[1];
            fields.add(new Object[] {name, value});
        }
        return new Shot("POST", form.action(), odd(), fields, form.multipart());
    }

    private Shot ofRoute(Route route) {
        List<Object[]> fields = new ArrayList<>();
        for (Route.Field field : route.fields()) {
            if (!noise.oneIn(4)) {
                boolean file = MultipartFile.class.isAssignableFrom(field.type());
                fields.add(new Object[] {
                    noise.name(field.name()), file && !noise.oneIn(5) ? noise.bytes() : noise.value(field.type())
                });
            }
        }
        String method = noise.oneIn(25)
                ? noise.any(List.of("GET", "POST", "HEAD", "PUT", "DELETE", "TRACE", "X"))
                : route.method();
        String query = method.equals("GET") || method.equals("HEAD") ? "?" + encoded(fields) : "";
        boolean multipart = route.takesFiles() || noise.oneIn(15);
        return new Shot(method, path(route.pattern(), true) + query, odd(), fields, multipart);
    }

    /** An address of the pattern that names what is there, as a rule. */
    private String path(String pattern, boolean spoilt) {
        Matcher variable = VARIABLE.matcher(pattern);
        StringBuilder path = new StringBuilder();
        while (variable.find()) {
            String usual = usual(pattern.substring(0, variable.start()));
            variable.appendReplacement(path, Matcher.quoteReplacement(spoilt ? noise.segment(usual) : usual));
        }
        return variable.appendTail(path).toString();
    }

    private String usual(String before) {
        String[] segments = before.split("/");
        return switch (segments[segments.length - 1]) {
            case "cars", "recall" -> ids.get("car").toString();
            case "customers" -> ids.get("customer").toString();
            case "checks" -> ids.get(noise.oneIn(3) ? "signed" : "check").toString();
            case "incidents" -> ids.get("incident").toString();
            case "jobs" -> ids.get("job").toString();
            case "parts" -> ids.get("part").toString();
            case "duties" -> noise.oneIn(2) ? "hill-day" : "drift";
            case "revisions" -> "2";
            default -> "1";
        };
    }

    /** Headers that are seldom as they should be. */
    private Map<String, String> odd() {
        if (!noise.oneIn(6)) {
            return Map.of();
        }
        return noise.any(List.of(
                Map.of("HX-Request", "true"),
                Map.of("X-Handover", "1"),
                Map.of("Accept", "application/json"),
                Map.of("Accept", "///;q=\"x"),
                Map.of("Accept-Language", "*;q=zz,\u00e4,de-\u0000"),
                Map.of("Accept-Language", "xx-XX-yyyyyyyyyyyyyyyyyyyyyyyyyyy"),
                Map.of("Cookie", "headertank=%%%; a=\"b"),
                Map.of("X-CSRF-TOKEN", "wrong"),
                Map.of("X-CSRF-TOKEN", ""),
                Map.of("Host", "evil.example"),
                Map.of("Host", "[::"),
                Map.of("X-Forwarded-Host", "evil.example, x"),
                Map.of("X-Forwarded-For", "\u0001"),
                Map.of("Origin", "null"),
                Map.of("Origin", "http://[", "X-CSRF-TOKEN", ""),
                Map.of("Sec-Fetch-Site", "same-origin", "X-CSRF-TOKEN", ""),
                Map.of("Range", "bytes=9-1,x"),
                Map.of("If-Modified-Since", "yesterday"),
                Map.of("If-None-Match", "\"\u00ff"),
                Map.of("Referer", "://\u0002"),
                Map.of("User-Agent", "a".repeat(9_000)),
                Map.of("Content-Type", "application/json"),
                Map.of("Content-Type", "text/plain; charset=nonsense"),
                Map.of("Content-Type", "multipart/form-data"),
                Map.of("Content-Type", "multipart/form-data; boundary="),
                Map.of("Content-Type", "multipart/form-data; boundary=" + "b".repeat(300)),
                Map.of("Content-Type", "///"),
                Map.of("Content-Encoding", "gzip")));
    }

    private static final String BOUNDARY = "----headertank";

    private Map<String, String> headers(Shot shot) {
        Map<String, String> headers = new LinkedHashMap<>();
        if (!shot.method().equals("GET") && !shot.method().equals("HEAD")) {
            headers.put(
                    "Content-Type",
                    shot.multipart()
                            ? "multipart/form-data; boundary=" + BOUNDARY
                            : "application/x-www-form-urlencoded");
        }
        headers.putAll(shot.headers());
        return headers;
    }

    private byte[] body(Shot shot) {
        if (shot.method().equals("GET") || shot.method().equals("HEAD")) {
            return null;
        }
        return shot.multipart() ? parts(shot) : encoded(shot.fields()).getBytes(StandardCharsets.ISO_8859_1);
    }

    private String encoded(List<Object[]> fields) {
        String body = fields.stream()
                .map(f -> Visitor.encoded(f[0].toString()) + "="
                        + Visitor.encoded(f[1] instanceof byte[] ? "file" : f[1].toString()))
                .collect(Collectors.joining("&"));
        return noise.oneIn(25)
                ? body + noise.any(List.of("&%zz=1", "&=", "&&&", "&x=%C3%28", "&a=%", "&" + "p=1&".repeat(12_000)))
                : body;
    }

    private byte[] parts(Shot shot) {
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        for (Object[] field : shot.fields()) {
            boolean file = field[1] instanceof byte[];
            body.writeBytes(("--" + BOUNDARY + "\r\nContent-Disposition: form-data; name=\"" + field[0] + "\""
                            + (file
                                    ? "; filename=\"" + noise.any(List.of("a.csv", "", "..\\x\0.jpg", "\u00e4\".png"))
                                            + "\""
                                    : "")
                            + (noise.oneIn(30) ? "\r\nX: " + "h".repeat(20_000) : "") + "\r\n\r\n")
                    .getBytes(StandardCharsets.UTF_8));
            body.writeBytes(file ? (byte[]) field[1] : field[1].toString().getBytes(StandardCharsets.UTF_8));
            body.writeBytes("\r\n".getBytes(StandardCharsets.UTF_8));
        }
        if (noise.oneIn(25)) {
            for (int i = 0; i < 400; i++) {
                body.writeBytes(
                        ("--" + BOUNDARY + "\r\nContent-Disposition: form-data; name=\"p" + i + "\"\r\n\r\n1\r\n")
                                .getBytes(StandardCharsets.UTF_8));
            }
        }
        body.writeBytes(("--" + BOUNDARY + "--\r\n").getBytes(StandardCharsets.UTF_8));
        byte[] whole = body.toByteArray();
        return noise.oneIn(8) ? java.util.Arrays.copyOf(whole, noise.below(whole.length + 1)) : whole;
    }
}
