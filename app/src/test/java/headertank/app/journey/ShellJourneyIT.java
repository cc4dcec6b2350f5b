package headertank.app.journey;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.app.account.People;
import headertank.app.database.DatabaseTest;
import headertank.app.shop.Role;
import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** The frame around all pages, in a real browser: sign in, log a car, find it, on wide and narrow windows. */
@DatabaseTest
class ShellJourneyIT {

    @LocalServerPort
    int port;

    @Autowired
    People people;

    @Test
    void theFrontDeskLogsACarAndFindsIt() throws IOException {
        String login = people.anAccount(people.aShop(), Role.FRONT_DESK);
        try (Browser browser = Browser.at(port)) {
            browser.signIn(login, People.PASSWORD);
            for (String plate : new String[] {"RED 1", "BLUE 2"}) {
                browser.open("/cars/new").type("plate", plate).type("newCustomerName", "Owner of " + plate);
                browser.find("main form button[type=submit]").click();
                browser.waitFor(".notice.done");
            }
            assertThat(browser.text()).contains("BLUE 2", "Owner of BLUE 2");

            browser.open("/cars").type("q", "red1");
            browser.waitUntil(() -> browser.all("#found tbody tr").size() == 1);
            assertThat(browser.find("#found tbody").getText()).contains("RED 1");

            browser.open("/cars/new").type("customer", "blue");
            browser.waitUntil(() -> browser.all("#choices label").size() == 1);

            for (int width : new int[] {390, 820, 1440}) {
                browser.width(width).open("/cars");
                browser.screenshot("cars-" + width);
                assertThat(browser.scrollsSideways()).as("width %d", width).isFalse();
            }
            assertThat(browser.find("nav").findElements(By.tagName("a")))
                    .extracting(a -> a.getText())
                    .containsExactly("Jobs", "Car comes in", "Cars", "Customers", "Hot reports", "Parts", "Duties");
            assertThat(browser.complaints()).isEmpty();
        }
    }
}
