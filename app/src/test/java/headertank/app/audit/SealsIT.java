package headertank.app.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;

import headertank.app.audit.Seals.Fault;
import headertank.app.check.Specs;
import headertank.app.check.stored.Decision;
import headertank.app.database.DatabaseTest;
import headertank.app.database.OwnersHand;
import headertank.app.given.Given;
import headertank.app.shop.Role;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;

/** Somebody changes the database past the program, as its owner who switches the triggers off: it shows, in words. */
@DatabaseTest
class SealsIT {

    @Autowired
    Given given;

    @Autowired
    Seals seals;

    @Autowired
    OwnersHand owner;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    MockMvc mvc;

    @Test
    void whatIsChangedTakenAwayOrSlippedInBehindASealIsNamed() throws Exception {
        var workshop = given.aWorkshop(Role.values());
        long car = workshop.aCar(Specs.easy(), "street");
        long check = workshop.aCheck(car);
        workshop.sign(check, Decision.DELIVER, "good");
        long shop = workshop.shop();
        assertThat(seals.seal(shop, Duration.ofDays(1)))
                .as("nothing has settled")
                .isZero();
        assertThat(seals.seal(shop, Duration.ZERO)).isGreaterThan(5);
        workshop.aCar();
        assertThat(seals.seal(shop, Duration.ZERO)).isPositive();
        Seals.Verified whole = seals.verify(shop);
        assertThat(whole.faults()).isEmpty();
        assertThat(whole.seals()).isEqualTo(2);
        assertThat(whole.open()).isZero();
        String page = mvc.perform(get("/audit/seals").with(workshop.with(Role.OWNER)))
                .andReturn()
                .getResponse()
                .getContentAsString();
        assertThat(page).contains("as they were sealed", whole.lastInGroups());

        long first = id("select min(id) from audit_entry where shop_id = " + shop);
        long second = id("select min(id) from audit_entry where shop_id = " + shop + " and id > " + first);
        owner.past(
                "update headertank.sign_off set remark = 'bad' where check_run_id = " + check,
                "update headertank.check_run set result_text = ' ' || result_text, result_sha256 = "
                        + "sha256(convert_to(' ' || result_text, 'UTF8')) where id = " + check,
                "delete from headertank.audit_entry where id = " + first,
                "update headertank.audit_entry set account_id = null where id = " + second);
        assertThat(seals.verify(shop).faults())
                .extracting(Fault::what, Fault::kind, Fault::id)
                .contains(
                        tuple(Fault.What.CHANGED, "check_run", check), tuple(Fault.What.MISSING, "audit_entry", first))
                .hasSize(4);
        mvc.perform(get("/audit/seals").with(workshop.with(Role.OWNER)))
                .andExpect(content().string(containsString("Rating " + check + " has been changed")))
                .andExpect(content().string(containsString("Line of the audit trail " + first + " is missing")));

        long seal = id("select min(id) from seal where shop_id = " + shop);
        owner.past("delete from headertank.seal where id = " + seal);
        assertThat(seals.verify(shop).faults())
                .extracting(Fault::what)
                .contains(Fault.What.SEAL_BROKEN, Fault.What.SLIPPED_IN);
    }

    private long id(String query) {
        return jdbc.sql(query).query(Long.class).single();
    }
}
