package headertank.app.carspec.form;

import static headertank.calc.quantity.Provenance.DATASHEET;
import static headertank.calc.quantity.Provenance.GUESSED;
import static headertank.calc.quantity.Provenance.MEASURED;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import headertank.app.account.People;
import headertank.app.car.CarForm;
import headertank.app.car.Cars;
import headertank.app.carspec.Revisions;
import headertank.app.carspec.SpecBuilder;
import headertank.app.database.DatabaseTest;
import headertank.app.field.TypedField;
import headertank.app.problem.NotFoundException;
import headertank.app.shop.Role;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

/** A form that starts from another car. */
@DatabaseTest
class StartIT {

    @Autowired
    MockMvc mvc;

    @Autowired
    People people;

    @Autowired
    Cars cars;

    @Autowired
    Revisions revisions;

    @Autowired
    StartFrom starts;

    long shop;
    long twin;
    long cousin;
    long car;
    RequestPostProcessor desk;

    @BeforeEach
    void threeCars() {
        shop = people.aShop();
        desk = people.in(shop, Role.FRONT_DESK);
        people.actAs(shop, Role.FRONT_DESK);
        cousin = car("COUSIN 1", "Tavrek", "Van");
        twin = car("TWIN 1", "Oskelle", "K6");
        car = car("ME 1", "Oskelle", "K6");
        for (long other : new long[] {twin, cousin}) {
            revisions.save(
                    other,
                    null,
                    SpecBuilder.of(CarClass.DRIFT, "drift")
                            .set(BuildField.ENGINE_POWER, "350 hp", DATASHEET)
                            .set(BuildField.CORE_WIDTH, "25 in", MEASURED)
                            .seen(BuildField.THERMOSTAT, "FITTED")
                            .spec(),
                    "Belongs to a secret person",
                    UUID.randomUUID());
        }
    }

    private long car(String plate, String make, String model) {
        return cars.addCar(
                new CarForm(null, "Owner of " + plate, "", plate, make, model, "2003", "a note", null), null);
    }

    @Test
    void theMostAlikeComesFirstAndACarWithoutASpecNever() {
        assertThat(starts.alike(car, "", 9)).extracting(StartFrom.Line::carId).containsExactly(twin, cousin);
        assertThat(starts.alike(twin, "", 9)).extracting(StartFrom.Line::carId).containsExactly(cousin);
        assertThat(starts.alike(car, "tavr", 9))
                .extracting(StartFrom.Line::carId)
                .containsExactly(cousin);
        assertThat(starts.alike(car, "%", 9)).isEmpty();
        assertThat(starts.alike(car, "", 1)).hasSize(1);
    }

    @Test
    void itsValuesComeAlongAsGuessesAndNothingOfItsOwner() throws Exception {
        StartFrom.Start start = starts.from(twin, Optional.empty());
        assertThat(start.form().field(BuildField.CORE_WIDTH)).isEqualTo(new TypedField("25 in", GUESSED));
        assertThat(start.form().field(BuildField.THERMOSTAT)).isEqualTo(new TypedField("FITTED", GUESSED));
        assertThat(start.form().parent()).isNull();
        assertThat(start.form().reason())
                .contains("Oskelle K6 2003", "car " + twin)
                .doesNotContain("TWIN");
        mvc.perform(get("/cars/" + car + "/spec")
                        .param("from", Long.toString(twin))
                        .with(desk))
                .andExpect(status().isOk())
                .andExpect(content()
                        .string(allOf(
                                containsString("3 values are taken over from Oskelle K6 2003"),
                                containsString("value=\"25 in\""),
                                containsString("= 635"),
                                containsString("Measure next"),
                                not(containsString("secret person")),
                                not(containsString("Owner of TWIN")))));
    }

    @Test
    void aCarWithASpecKeepsItsOwnAsWhatIsChanged() {
        assertThat(starts.from(cousin, Optional.of(4)).form().parent()).isEqualTo(4);
        assertThatThrownBy(() -> starts.from(car, Optional.empty())).isInstanceOf(NotFoundException.class);
    }

    @Test
    void theListIsSearchedAndClosedToOtherShops() throws Exception {
        mvc.perform(get("/cars/" + car + "/spec/similar").param("q", "TWIN").with(desk))
                .andExpect(content().string(allOf(containsString("TWIN 1"), not(containsString("COUSIN 1")))));
        long elsewhere = people.aShop();
        RequestPostProcessor stranger = people.in(elsewhere, Role.FRONT_DESK);
        mvc.perform(get("/cars/" + car + "/spec/similar").with(stranger)).andExpect(status().isNotFound());
        people.actAs(elsewhere, Role.FRONT_DESK);
        long theirs = car("THEIRS", "Oskelle", "K6");
        assertThat(starts.alike(theirs, "", 9)).isEmpty();
        mvc.perform(get("/cars/" + theirs + "/spec").with(stranger)).andExpect(status().isOk());
        mvc.perform(get("/cars/" + theirs + "/spec")
                        .param("from", Long.toString(twin))
                        .with(stranger))
                .andExpect(status().isNotFound());
    }
}
