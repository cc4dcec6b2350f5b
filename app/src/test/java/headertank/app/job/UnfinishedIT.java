package headertank.app.job;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.app.account.People;
import headertank.app.check.Checks;
import headertank.app.check.Specs;
import headertank.app.check.stored.Decision;
import headertank.app.database.DatabaseTest;
import headertank.app.given.Given;
import headertank.app.shop.Role;
import headertank.calc.carspec.BuildField;
import headertank.calc.quantity.Stated;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** What the owner is told of: nobody signed, or changed and not rated again. */
@DatabaseTest
class UnfinishedIT {

    private static final int DEFAULT_DAYS = 30;

    @Autowired
    Given given;

    @Autowired
    Unfinished unfinished;

    @Autowired
    Specs specs;

    @Autowired
    Checks checks;

    @Autowired
    People people;

    Given.Workshop workshop;
    long car;

    @BeforeEach
    void aRatedCar() {
        workshop = given.aWorkshop(Role.TECHNICIAN);
        car = workshop.aCar(Specs.easy(), "street");
    }

    @Test
    void onlyTheNewestCheckOfACarIsListedAndOnlyWhileNobodySigned() {
        checks.run(car, 1);
        long newest = checks.run(car, 1);
        assertThat(unfinished.unsigned(Long.MAX_VALUE, 9))
                .extracting(Unfinished.Unsigned::checkId)
                .containsExactly(newest);
        assertThat(unfinished.unsigned(newest, 9)).isEmpty();
        workshop.sign(newest, Decision.HOLD_BACK);
        assertThat(unfinished.unsigned(Long.MAX_VALUE, 9)).isEmpty();
    }

    @Test
    void aSignedCarThatWasChangedIsOverdueAfterItsDaysUntilItIsSignedAgain() {
        Instant soon = Instant.now().plus(Duration.ofDays(DEFAULT_DAYS - 1));
        Instant later = Instant.now().plus(Duration.ofDays(DEFAULT_DAYS + 1));
        assertThat(overdue(later)).isEmpty();
        workshop.sign(checks.run(car, 1), Decision.DELIVER);
        assertThat(overdue(later)).isEmpty();
        specs.save(
                car,
                Specs.easy().set(BuildField.FAN_CURRENT, Stated.measured(11)).build(),
                "street");
        assertThat(overdue(soon)).isEmpty();
        assertThat(overdue(later)).singleElement().satisfies(o -> {
            assertThat(o.carId()).isEqualTo(car);
            assertThat(o.signedNumber()).isEqualTo(1);
            assertThat(o.newestNumber()).isEqualTo(2);
            assertThat(unfinished.overdue(later, o.changedAt(), car, 9)).isEmpty();
        });
        workshop.sign(checks.run(car, 2), Decision.DELIVER);
        assertThat(overdue(later)).isEmpty();
    }

    @Test
    void anotherShopSeesNothingOfIt() {
        checks.run(car, 1);
        people.actAs(people.aShop(), Role.OWNER);
        assertThat(unfinished.unsigned(Long.MAX_VALUE, 9)).isEmpty();
    }

    private List<Unfinished.Overdue> overdue(Instant now) {
        return unfinished.overdue(now, Instant.EPOCH, 0, 9);
    }
}
