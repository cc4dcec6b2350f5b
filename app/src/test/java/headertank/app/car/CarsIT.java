package headertank.app.car;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import headertank.app.account.People;
import headertank.app.database.DatabaseTest;
import headertank.app.shop.Role;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;

/** The front desk's work with cars and customers. */
@DatabaseTest
class CarsIT {

    @Autowired
    MockMvc mvc;

    @Autowired
    People people;

    @Autowired
    Cars cars;

    @Autowired
    CarSearch search;

    @Autowired
    JdbcClient jdbc;

    long shop;
    long car;

    @BeforeEach
    void aCarOfANewCustomer() {
        shop = people.aShop();
        people.actAs(shop, Role.FRONT_DESK);
        car = cars.addCar(aCar("AB-12 CD"), null);
    }

    @ParameterizedTest
    @ValueSource(strings = {"ab12", "AB-12", "ab 12 cd", "jo", "JO EXAMPLE", "555 01", "(000) 555", "nimb"})
    void aCarIsFoundByPlateNameOrPhone(String text) {
        assertThat(search.cars(text, "", 0)).extracting(CarLine::id).containsExactly(car);
    }

    @ParameterizedTest
    @ValueSource(strings = {"zz", "%", "_", "999 999"})
    void whatFitsNothingFindsNothing(String text) {
        assertThat(search.cars(text, "", 0)).isEmpty();
    }

    @Test
    void aLongListGoesOnWhereThePageEnded() {
        for (int i = 100; i < 160; i++) {
            cars.addCar(aCar("P" + i), null);
        }
        var first = search.cars("", "", 0).subList(0, CarSearch.PAGE);
        var last = first.get(CarSearch.PAGE - 1);
        var second = search.cars("", last.plate(), last.id());
        assertThat(first.size() + second.size()).isEqualTo(61);
        assertThat(second).doesNotContainAnyElementsOf(first);
    }

    @Test
    void aCarOfAnotherShopIsNotThere() throws Exception {
        var stranger = people.in(people.aShop(), Role.FRONT_DESK);
        mvc.perform(get("/cars/" + car).with(stranger)).andExpect(status().isNotFound());
        mvc.perform(post("/cars/" + car)
                        .with(csrf())
                        .with(stranger)
                        .param("plate", "X")
                        .param("newCustomerName", "Y")
                        .param("version", "0"))
                .andExpect(status().isNotFound());
        people.actAs(shop, Role.FRONT_DESK);
        assertThat(search.car(car).plate()).isEqualTo("AB-12 CD");
    }

    /** Who works on a car needs no number of its owner; who calls them does. */
    @Test
    void theWorkshopSeesNoNumbersOfCustomers() throws Exception {
        long customer = cars.carForm(car).customerId();
        for (String page : List.of("/cars", "/cars/" + car, "/customers", "/customers/" + customer)) {
            mvc.perform(get(page).with(people.in(shop, Role.TECHNICIAN)))
                    .andExpect(status().isOk())
                    .andExpect(content().string(containsString("Jo Example")))
                    .andExpect(content().string(not(containsString("000 555 0199"))));
            mvc.perform(get(page).with(people.in(shop, Role.FRONT_DESK)))
                    .andExpect(content().string(containsString("000 555 0199")));
        }
    }

    @Test
    void whoSavesSecondIsToldAndKeepsWhatWasTyped() throws Exception {
        var desk = people.in(shop, Role.FRONT_DESK);
        CarForm seen = cars.carForm(car);
        jdbc.sql("update car set plate = 'THEIRS', version = version + 1 where id = :id")
                .param("id", car)
                .update();
        mvc.perform(post("/cars/" + car)
                        .with(csrf())
                        .with(desk)
                        .param("plate", "MINE")
                        .param("customerId", seen.customerId().toString())
                        .param("version", String.valueOf(seen.version())))
                .andExpect(status().isConflict())
                .andExpect(content().string(containsString("value=\"MINE\"")))
                .andExpect(content().string(containsString("now saved: THEIRS")));
        people.actAs(shop, Role.FRONT_DESK);
        assertThat(search.car(car).plate()).isEqualTo("THEIRS");
    }

    @Test
    void aFormWithFaultsComesBackWithASentenceAtEachField() throws Exception {
        mvc.perform(post("/cars")
                        .with(csrf())
                        .with(people.in(shop, Role.FRONT_DESK))
                        .param("modelYear", "abc"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("Please fill in the plate")))
                .andExpect(content().string(containsString("Choose a customer")))
                .andExpect(content().string(containsString("value=\"abc\"")));
    }

    @Test
    void whatPeopleTypeIsShownAsTextNotAsMarkup() throws Exception {
        long odd = cars.addCar(aCar("<b>x</b>"), null);
        mvc.perform(get("/cars/" + odd).with(people.in(shop, Role.TECHNICIAN)))
                .andExpect(content().string(containsString("&lt;b&gt;x&lt;/b&gt;")));
    }

    @Test
    void eachDeedLeavesAnAuditEntryWithoutNames() {
        var entries = jdbc.sql("select action || ' ' || subject_id || detail from audit_entry "
                        + "where shop_id = :shop and subject_type = 'car'")
                .param("shop", shop)
                .query(String.class)
                .list();
        assertThat(entries).containsExactly("car.added " + car);
    }

    private static CarForm aCar(String plate) {
        return new CarForm(null, "Jo Example", "000 555 0199", plate, "Nimbrax", "Coupe", "1999", "", null);
    }
}
