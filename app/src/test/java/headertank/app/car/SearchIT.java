package headertank.app.car;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import headertank.app.account.People;
import headertank.app.database.DatabaseTest;
import headertank.app.field.FieldValues;
import headertank.app.given.Given;
import headertank.app.job.Jobs;
import headertank.app.part.PartContent;
import headertank.app.part.PartKind;
import headertank.app.part.Parts;
import headertank.app.shop.Role;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

/** What is looked for on the pages of customers, cars, jobs and parts: a letter is forgiven, words come in any order. */
@DatabaseTest
class SearchIT {

    @Autowired
    MockMvc mvc;

    @Autowired
    Given given;

    @Autowired
    Cars cars;

    @Autowired
    Jobs jobs;

    @Autowired
    Parts parts;

    @Autowired
    JdbcClient jdbc;

    private Given.Workshop workshop;
    private RequestPostProcessor desk;

    @BeforeEach
    void twoOfEverything() {
        workshop = given.aWorkshop(Role.values());
        desk = workshop.with(Role.FRONT_DESK, Role.OWNER);
        add("Robin Example", "QX-71 AB", "Oskelle", "Estate", "boils uphill", "Slim fan twelve");
        add("Toni Sample", "ZZ 1234", "Nimbrax", "Coupe", "fan never stops", "Tall cap");
    }

    @AfterEach
    void nobody() {
        People.nobody();
    }

    private void add(String name, String plate, String make, String model, String asked, String part) {
        long car = cars.addCar(new CarForm(null, name, "000 555 01", plate, make, model, "1999", "", null), null);
        jobs.open(car, asked, LocalDate.now(ZoneId.systemDefault()).plusDays(1));
        parts.add(new PartContent(PartKind.FAN, part, "", FieldValues.none(), Optional.empty(), "second shelf"));
    }

    private String found(String list, String words) throws Exception {
        String page = mvc.perform(get(list).param("q", words).with(desk))
                .andReturn()
                .getResponse()
                .getContentAsString();
        return Jsoup.parse(page).select("main").text();
    }

    @ParameterizedTest
    @CsvSource({
        "/customers, Robin, robin example, example robin, rohin, exanple robin, Toni",
        "/cars, QX-71 AB, oskelle estate, estate oskelle, oskele, robim estate, ZZ 1234",
        "/jobs, QX-71 AB, boils uphill, uphill boils, uphil, oskelle boilz, ZZ 1234",
        "/parts, Slim fan twelve, slim twelve, twelve slim, twelfe, shelf slimm, Tall cap"
    })
    void wordsComeInAnyOrderAndALetterIsForgiven(
            String list, String wanted, String inOrder, String turned, String misspelt, String both, String other)
            throws Exception {
        for (String words : List.of(inOrder, turned, misspelt, both)) {
            assertThat(found(list, words)).as(words).contains(wanted).doesNotContain(other);
        }
    }

    @ParameterizedTest
    @CsvSource({"/customers, Robin", "/cars, QX-71", "/jobs, QX-71", "/parts, Slim"})
    void twoLettersOneWordTooManyOrASignAreNotForgiven(String list, String wanted) throws Exception {
        for (String words :
                List.of("roxxn", "oskxxle", "twexxe", "uphxxl", "robin nimbrax", "slim uphill nobody", "%", "_", "'")) {
            assertThat(found(list, words)).as(words).doesNotContain(wanted);
        }
    }

    @Test
    void numbersAreTakenAtTheirWordAndAPartOfAPlateIsEnough() throws Exception {
        assertThat(found("/cars", "1235")).doesNotContain("ZZ 1234");
        assertThat(found("/cars", "zz123")).contains("ZZ 1234");
        assertThat(found("/cars", "qx 71a")).contains("QX-71 AB");
        assertThat(found("/cars", "x71")).contains("QX-71 AB").doesNotContain("ZZ 1234");
    }

    @Test
    void aWordThatStandsSomewhereIsTakenAtItsWord() throws Exception {
        workshop.actAs(Role.values());
        add("Ronin Example", "RR 5", "Oskelle", "Saloon", "drips", "Wide fan");
        assertThat(found("/customers", "robin")).contains("Robin").doesNotContain("Ronin");
        assertThat(found("/customers", "rolin")).contains("Robin", "Ronin");
    }

    @Test
    void nothingOfAnotherShopIsFound() throws Exception {
        desk = given.aWorkshop(Role.OWNER).with(Role.OWNER);
        assertThat(found("/cars", "oskelle")).doesNotContain("QX-71");
        assertThat(found("/cars", "oskele")).doesNotContain("QX-71");
        assertThat(found("/customers", "rohin")).doesNotContain("Robin");
        for (String list : List.of("/jobs", "/jobs?show=closed", "/parts", "/incidents")) {
            assertThat(found(list, "oskelle")).doesNotContain("QX-71");
            assertThat(found(list, "slim")).doesNotContain("Slim fan");
        }
    }

    @Test
    void muchIsSearchedByAnIndexOfTrigrams() {
        assertThat(jdbc.sql("select indexname from pg_indexes where indexdef like '%gin_trgm_ops%'")
                        .query(String.class)
                        .list())
                .contains("car_by_words", "customer_by_words", "job_by_words", "part_by_words", "incident_by_words");
    }
}
