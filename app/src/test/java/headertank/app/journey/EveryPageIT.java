package headertank.app.journey;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.app.database.DatabaseTest;
import headertank.app.demo.DemoData;
import headertank.app.shop.Role;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.Callable;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.TestPropertySource;

/**
 * Looks at every page of the demo shop at three widths: accessible, no wider than the window, still for those who ask for it,
 * the focus visible. With {@code headertank.pictures=true} pictures land in {@code target/screenshots}. The times that it prints are a report, no test.
 */
@DatabaseTest
@TestPropertySource(properties = "headertank.demo=true")
class EveryPageIT {

    /** That look at once: one for each core of the machine that the build is meant for. */
    private static final int BROWSERS = 2;

    private static final int[] WIDTHS = {390, 820, 1440};

    private static final String IS_QUIET =
            "return document.readyState === 'complete' && !document.querySelector('.htmx-request, .htmx-settling,"
                    + " [hx-trigger=load]')";
    private static final String SERVER_TIME =
            "const n = performance.getEntriesByType('navigation')[0]; return n.responseStart - n.requestStart";
    private static final String STATUS = "return performance.getEntriesByType('navigation')[0].responseStatus";
    private static final String MOVES = """
        const longer = list => list.split(',').some(t => parseFloat(t) > 0);
        return [...document.querySelectorAll('*')].flatMap(e => ['', '::before', '::after'].map(p => [e, getComputedStyle(e, p || null)]))
          .filter(([e, s]) => longer(s.transitionDuration) || (s.animationName !== 'none' && longer(s.animationDuration)))
          .slice(0, 5).map(([e]) => e.outerHTML.slice(0, 120))\
        """;
    /** So that the stroke that follows stays on the page. */
    private static final String FROM_THE_TOP = "document.querySelector('a[href], button').focus()";

    private static final String FOCUS_IS_HIDDEN = """
        const hidden = [];
        for (const e of document.querySelectorAll('a[href], button, input, select, textarea, summary, [tabindex="0"]')) {
          if (e.disabled || e.type === 'hidden' || !e.checkVisibility()) continue;
          e.focus();
          const s = getComputedStyle(e);
          const seen = (s.outlineStyle !== 'none' && parseFloat(s.outlineWidth) >= 2) || s.boxShadow !== 'none';
          if (document.activeElement === e && !seen) hidden.push(e.outerHTML.slice(0, 120));
        }
        return hidden.slice(0, 5)\
        """;

    private static final String IS_WORKSHOP = "return document.documentElement.classList.contains('big-targets')";
    private static final String STAYS_LIGHT =
            "return document.documentElement.dataset.scheme === 'light' || document.querySelector('.handover') !=="
                    + " null";
    private static final String IS_DARK = """
        const c = getComputedStyle(document.body).backgroundColor.match(/[0-9.]+/g).map(Number);
        return c[0] + c[1] + c[2] < 200\
        """;

    @LocalServerPort
    int port;

    @Autowired
    DemoData demo;

    private final Queue<String> faults = new ConcurrentLinkedQueue<>();
    private final Queue<String> times = new ConcurrentLinkedQueue<>();

    @Test
    void everyPageIsAccessibleAndFitsEachWidth() throws Exception {
        try (Browser browser = Browser.at(port)) {
            browser.still("light");
            lookAt(browser, "first-owner", "/first-owner");
        }
        Map<String, Long> ids = demo.ensure();
        var eyes = Executors.newFixedThreadPool(BROWSERS);
        try {
            List<Callable<Void>> shares = IntStream.range(0, BROWSERS)
                    .<Callable<Void>>mapToObj(share -> () -> lookAtShare(share, ids))
                    .toList();
            for (Future<Void> looked : eyes.invokeAll(shares)) {
                looked.get();
            }
        } finally {
            eyes.shutdownNow();
        }
        report();
        assertThat(faults).as(String.join("\n", faults)).isEmpty();
    }

    /** Every so many of each person's pages, so that two browsers share the work and not a sign-in. */
    private Void lookAtShare(int share, Map<String, Long> ids) throws IOException {
        try (Browser browser = Browser.at(port)) {
            browser.still("light");
            for (var person : PageExamples.byPerson().entrySet()) {
                signIn(browser, person.getKey());
                for (int i = share; i < person.getValue().size(); i += BROWSERS) {
                    PageExamples.Example page = person.getValue().get(i);
                    lookAt(browser, page.name(), page.path(ids));
                }
            }
            if (share == 0) {
                signIn(browser, Optional.of(Role.TECHNICIAN));
                browser.width(1100).open("/checks/" + ids.get("check"));
                browser.picture("check-first-screen", false);
            }
        }
        return null;
    }

    private static void signIn(Browser browser, Optional<Role> role) {
        browser.width(1440).signOut();
        role.map(r -> DemoData.login(r.name())).ifPresent(login -> browser.signIn(login.getKey(), login.getValue()));
    }

    private void lookAt(Browser browser, String name, String path) throws IOException {
        browser.width(WIDTHS[0]).open(path);
        browser.waitUntil(() -> Boolean.TRUE.equals(browser.script(IS_QUIET)));
        long status = ((Number) browser.script(STATUS)).longValue();
        if (status != (name.equals(PageExamples.NOT_FOUND) ? 404 : 200)) {
            faults.add(name + ": answered " + status);
        }
        AtTheKeyboard.faults(browser, path).forEach(e -> faults.add(name + ": " + e));
        Number time = (Number) browser.script(SERVER_TIME);
        times.add(String.format(Locale.ROOT, "%6.0f ms  %-32s %s", time.doubleValue(), name, path));
        for (int width : WIDTHS) {
            String place = name + " at " + width + ": ";
            browser.width(width);
            browser.picture(name + "-" + width, true);
            if (width < 1000 && Boolean.TRUE.equals(browser.script(IS_WORKSHOP))) {
                Touch.smallTargets(browser).forEach(e -> faults.add(place + e));
            }
            Touch.misfits(browser, width).forEach(e -> faults.add(place + e));
        }
        said(browser, MOVES).forEach(e -> faults.add(name + ": moves: " + e));
        browser.script(FROM_THE_TOP);
        browser.stroke(Keys.TAB);
        said(browser, FOCUS_IS_HIDDEN).forEach(e -> faults.add(name + ": focus not visible: " + e));
        inTheDark(browser, name + ": ");
        browser.width(WIDTHS[0]).still("light");
        Axe.violations(browser).forEach(v -> faults.add(name + " on a phone: " + v));
    }

    /** The desk and the owner get a dark page, the workshop and whoever has the check list a light one; each is readable on a screen. */
    private void inTheDark(Browser browser, String place) {
        browser.still("dark");
        boolean dark = Boolean.TRUE.equals(browser.script(IS_DARK));
        boolean staysLight = Boolean.TRUE.equals(browser.script(STAYS_LIGHT));
        if (dark == staysLight) {
            faults.add(place + "in a dark room the page is " + (dark ? "dark" : "light"));
        }
        Axe.violationsOfColours(browser).forEach(v -> faults.add(place + "in a dark room: " + v));
    }

    @SuppressWarnings("unchecked")
    private static List<String> said(Browser browser, String script) {
        return (List<String>) browser.script(script);
    }

    private void report() throws IOException {
        String text = "Time until the server's first byte, first visit, demo shop:\n" + String.join("\n", times) + "\n";
        System.out.print(text);
        Files.writeString(Path.of("target", "page-times.txt"), text);
    }
}
