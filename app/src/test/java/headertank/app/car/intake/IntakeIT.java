package headertank.app.car.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrlPattern;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import headertank.app.account.People;
import headertank.app.car.CarForm;
import headertank.app.car.CarSearch;
import headertank.app.car.Cars;
import headertank.app.database.DatabaseTest;
import headertank.app.shop.Role;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

/** A car comes in: found, or added with its owner in one go. */
@DatabaseTest
class IntakeIT {

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
    long owner;
    RequestPostProcessor desk;

    @BeforeEach
    void aCarOfACustomer() {
        shop = people.aShop();
        desk = people.in(shop, Role.FRONT_DESK);
        people.actAs(shop, Role.FRONT_DESK);
        car = cars.addCar(
                new CarForm(null, "Jo Example", "000 555 01", "AB-12 CD", "Nimbrax", "R", "", "", null), null);
        owner = search.car(car).customerId();
    }

    private MockHttpServletRequestBuilder add(String plate, String name, String phone) {
        return post("/intake")
                .with(csrf())
                .with(desk)
                .param("plate", plate)
                .param("newCustomerName", name)
                .param("newCustomerPhone", phone);
    }

    private long count(String table) {
        return jdbc.sql("select count(*) from " + table + " where shop_id = :shop")
                .param("shop", shop)
                .query(Long.class)
                .single();
    }

    @Test
    void aCarIsFoundByPlateNameOrPhoneAndLeadsToItsSpec() throws Exception {
        for (String text : new String[] {"ab12", "jo ex", "555 01"}) {
            mvc.perform(get("/intake").param("q", text).with(desk))
                    .andExpect(status().isOk())
                    .andExpect(content()
                            .string(allOf(containsString("/cars/" + car + "/spec"), containsString("Jo Example"))));
        }
    }

    @Test
    void whatWasSearchedInVainStandsInTheFormWhereItBelongs() throws Exception {
        mvc.perform(get("/intake").param("q", "ZZ 99").with(desk))
                .andExpect(content()
                        .string(allOf(
                                containsString("Nothing found for “ZZ 99”"),
                                containsString("name=\"plate\" value=\"ZZ 99\""))));
        assertThat(IntakeGuess.form("000 555-77").newCustomerPhone()).isEqualTo("000 555-77");
        assertThat(IntakeGuess.form("Pia Pretend").newCustomerName()).isEqualTo("Pia Pretend");
        assertThat(IntakeGuess.form("").namesACustomer()).isFalse();
    }

    @Test
    void carAndCustomerAreAddedTogetherAndTheSpecFollows() throws Exception {
        mvc.perform(add("NEW 1", "Pia Pretend", "000 555 0777")).andExpect(redirectedUrlPattern("/cars/*/spec"));
        assertThat(count("car")).isEqualTo(2);
        assertThat(count("customer")).isEqualTo(2);
    }

    @Test
    void aFaultStandsAtItsFieldAndNothingIsAddedOrLost() throws Exception {
        mvc.perform(add("", "", "000 555 0777").param("modelYear", "soon"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content()
                        .string(allOf(
                                containsString("Please fill in the plate"),
                                containsString("Please fill in the name"),
                                containsString("between 1900 and 2100"),
                                containsString("value=\"soon\""),
                                containsString("value=\"000 555 0777\""))));
        assertThat(count("car")).isEqualTo(1);
        assertThat(count("customer")).isEqualTo(1);
    }

    @Test
    void aPlateOrPhoneThatIsHereIsAskedAboutOnce() throws Exception {
        mvc.perform(add("ab12cd", "Jo E.", "(000) 555-01"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content()
                        .string(allOf(
                                containsString("Is it this one?"),
                                containsString("it is Jo Example"),
                                containsString("name=\"warned\" value=\"c" + car + "-p" + owner + "\""))));
        mvc.perform(add("other", "Jo E.", "(000) 555-01").param("warned", "c" + car))
                .andExpect(status().isUnprocessableContent());
        assertThat(count("car")).isEqualTo(1);
        mvc.perform(add("ab12cd", "Jo E.", "(000) 555-01").param("warned", "c" + car + "-p" + owner))
                .andExpect(redirectedUrlPattern("/cars/*/spec"));
        assertThat(count("customer")).isEqualTo(2);
    }

    @Test
    void theCustomerWhoIsHereCanBeChosenInstead() throws Exception {
        mvc.perform(get("/intake").param("customer", Long.toString(owner)).with(desk))
                .andExpect(content()
                        .string(allOf(
                                containsString("belongs to Jo Example"), not(containsString("newCustomerName")))));
        mvc.perform(add("NEW 2", "Jo E.", "000 555 01").param("customerId", Long.toString(owner)))
                .andExpect(redirectedUrlPattern("/cars/*/spec"));
        mvc.perform(add("ab12cd", "Jo E.", "000 555 01")
                        .param("customerId", Long.toString(owner))
                        .param("warned", "c" + car + "-p" + owner))
                .andExpect(redirectedUrlPattern("/cars/*/spec"));
        assertThat(count("customer")).isEqualTo(1);
        assertThat(count("car")).isEqualTo(3);
    }

    @Test
    void anotherShopIsNeitherFoundNorWarnedOf() throws Exception {
        RequestPostProcessor stranger = people.in(people.aShop(), Role.FRONT_DESK);
        mvc.perform(get("/intake").param("q", "AB12").with(stranger))
                .andExpect(content().string(not(containsString("Jo Example"))));
        mvc.perform(add("AB 12 CD", "Jo E.", "000 555 01").with(stranger))
                .andExpect(redirectedUrlPattern("/cars/*/spec"));
    }
}
