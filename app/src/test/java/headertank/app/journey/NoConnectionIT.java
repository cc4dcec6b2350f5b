package headertank.app.journey;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.app.account.People;
import headertank.app.check.Checks;
import headertank.app.check.Specs;
import headertank.app.database.DatabaseTest;
import headertank.app.shop.Role;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** The workshop behind a thick wall: pages that were opened open again, and nothing of them stays after signing out. */
@DatabaseTest
class NoConnectionIT {

    private static final String KEPT = """
        const done = arguments[arguments.length - 1];
        caches.keys().then(async names => {
          const all = [];
          for (const name of names.filter(n => n.startsWith('headertank.pages.'))) {
            for (const request of await (await caches.open(name)).keys()) all.push(new URL(request.url).pathname);
          }
          done(all);
        });\
        """;
    private static final String READY =
            "return navigator.serviceWorker !== undefined && navigator.serviceWorker.controller !== null";

    @LocalServerPort
    int port;

    @Autowired
    People people;

    @Autowired
    Specs specs;

    @Autowired
    Checks checks;

    String technician;
    String colleague;
    String desk;
    long car;
    long check;

    @BeforeEach
    void aRatedCar() {
        long shop = people.aShop();
        technician = people.anAccount(shop, Role.TECHNICIAN);
        colleague = people.anAccount(shop, Role.TECHNICIAN);
        desk = people.anAccount(shop, Role.FRONT_DESK);
        people.actAs(technician);
        car = specs.aCar();
        specs.save(car, Specs.easy().build(), "street");
        check = checks.run(car, 1);
        People.nobody();
    }

    @SuppressWarnings("unchecked")
    private static List<String> kept(Browser browser) {
        return (List<String>) browser.awaited(KEPT);
    }

    private void openAll(Browser browser) {
        browser.open("/").waitUntil(() -> Boolean.TRUE.equals(browser.open("/").script(READY)));
        for (String path : List.of("/cars/" + car, "/checks/" + check, "/checks/" + check + "/handover")) {
            browser.open(path).waitUntil(() -> kept(browser).contains(path));
        }
    }

    @Test
    void openedPagesOpenAgainWithoutAConnectionAndAfterAReload() throws IOException {
        try (Wire wire = Wire.to(port);
                Browser browser = Browser.at(wire.port())) {
            browser.signIn(technician, People.PASSWORD);
            openAll(browser);
            wire.cut();
            String list = "/checks/" + check + "/handover";
            for (int twice = 0; twice < 2; twice++) {
                browser.open(list).waitFor("#kept:not([hidden])");
                assertThat(browser.find("#kept").getText()).contains("No connection");
                assertThat(browser.all(".ho-item")).hasSizeGreaterThan(5);
                assertThat((String)
                                browser.script("return getComputedStyle(document.querySelector('.ho-bar')).position"))
                        .as("its style is there too")
                        .isEqualTo("sticky");
            }
            browser.open("/checks/" + check).waitFor("#kept:not([hidden])");
            browser.open("/customers").waitFor("#kept-pages a");
            assertThat(browser.text()).contains("has not been opened on this device");

            wire.mend();
            browser.open(list);
            assertThat(browser.find("#kept").isDisplayed()).isFalse();
        }
    }

    @Test
    void nothingOfACustomerStaysAfterSigningOut() throws IOException {
        try (Wire wire = Wire.to(port);
                Browser browser = Browser.at(wire.port())) {
            browser.signIn(technician, People.PASSWORD);
            openAll(browser);
            browser.open("/checks/" + check).press("form.out button");
            browser.waitFor("#username");
            assertThat(kept(browser)).isEmpty();
            assertThat(browser.stored()).isEmpty();
            wire.cut();
            browser.open("/cars/" + car);
            assertThat(browser.text())
                    .contains("has not been opened on this device")
                    .doesNotContain("Jo Example");
        }
    }

    @Test
    void theNextAccountFindsNothingOfTheOneBefore() throws IOException {
        try (Wire wire = Wire.to(port);
                Browser browser = Browser.at(wire.port())) {
            browser.signIn(technician, People.PASSWORD);
            openAll(browser);
            browser.signOut();
            browser.signIn(colleague, People.PASSWORD);
            browser.open("/jobs").waitUntil(() -> kept(browser).contains("/jobs"));
            assertThat(kept(browser)).doesNotContain("/cars/" + car);
        }
    }

    @Test
    void theDeskKeepsNoPages() {
        try (Browser browser = Browser.at(port)) {
            browser.signIn(desk, People.PASSWORD);
            browser.open("/cars/" + car).open("/customers");
            assertThat(kept(browser)).isEmpty();
            assertThat(browser.script(READY)).isEqualTo(false);
        }
    }
}
