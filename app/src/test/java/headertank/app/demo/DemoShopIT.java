package headertank.app.demo;

import static org.assertj.core.api.Assertions.assertThat;

import headertank.app.account.People;
import headertank.app.database.DatabaseTest;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.context.TestPropertySource;
import org.springframework.transaction.annotation.Transactional;

/** The invented shop: once, and never among real records. */
@DatabaseTest
@TestPropertySource(properties = "headertank.demo=true")
@Transactional
class DemoShopIT {

    @Autowired
    DemoShop demo;

    @Autowired
    DemoRevisions revisions;

    @Autowired
    DemoJobs jobs;

    @Autowired
    DemoWork work;

    @Autowired
    People people;

    @Autowired
    JdbcClient jdbc;

    @BeforeEach
    void startsEmpty() {
        assertThat(count("account")).isZero();
    }

    @Test
    void theSecondStartAddsNothing() {
        assertThat(demo.ensure()).isTrue();
        long cars = count("car");
        assertThat(cars).isPositive();
        assertThat(demo.ensure()).isTrue();
        assertThat(count("car")).isEqualTo(cars);
        assertThat(count("account")).isEqualTo(DemoShop.LOGINS.size());
    }

    @Test
    void theInventedCarsHaveTheirSpecsOnce() {
        demo.ensure();
        revisions.ensure();
        long specs = count("revision");
        assertThat(specs).isGreaterThan(DemoSpecs.ALL.size());
        revisions.ensure();
        assertThat(count("revision")).isEqualTo(specs);
    }

    @Test
    void theInventedShopHasItsJobsOnce() {
        demo.ensure();
        jobs.ensure();
        long opened = count("job");
        assertThat(opened).isGreaterThanOrEqualTo(5);
        jobs.ensure();
        assertThat(count("job")).isEqualTo(opened);
    }

    @Test
    void theInventedShopHasAnOverdueCarAndACheckListThatIsBegun() {
        demo.ensure();
        revisions.ensure();
        jobs.ensure();
        work.ensure();
        assertThat(jdbc.sql("""
            select c.plate from revision r join car c on c.id = r.car_id
            where r.number = 2 and r.saved_at < now() - interval '30 days'
              and exists (select 1 from revision q join check_run k on k.revision_id = q.id
                            join sign_off s on s.check_run_id = k.id
                          where q.car_id = c.id and q.number = 1 and q.saved_at < k.created_at
                            and s.signed_at < r.saved_at)\
            """).query(String.class).list()).containsExactly("DEMO 02");
        assertThat(jdbc.sql("select stage from job_stage j join car c on c.id = j.car_id where c.plate = 'DEMO 01'")
                        .query(String.class)
                        .single())
                .isEqualTo("TO_GO_THROUGH");
        assertThat(count("measurement")).isEqualTo(2);
        assertThat(count("handover_day")).isEqualTo(1);
        work.ensure();
        assertThat(count("check_run")).isEqualTo(2);
        assertThat(count("handover_day")).isEqualTo(1);
    }

    @Test
    void aRealShopIsLeftAlone() {
        people.anAccount(people.aShop());
        assertThat(demo.ensure()).isFalse();
        assertThat(count("car")).isZero();
    }

    private long count(String table) {
        return jdbc.sql("select count(*) from " + table).query(Long.class).single();
    }

    @Test
    void afterThePastTheClockTellsAgainWhenARowWasWritten() {
        demo.ensure();
        revisions.ensure();
        assertThat(jdbc.sql("""
            select column_default from information_schema.columns
            where table_schema = current_schema
              and (table_name, column_name) in
                  (('revision', 'saved_at'), ('check_run', 'created_at'), ('sign_off', 'signed_at'))\
            """).query(String.class).list()).hasSize(3).containsOnly("now()");
        assertThat(jdbc.sql("select count(*) from revision where saved_at < now() - interval '30 days'")
                        .query(Long.class)
                        .single())
                .isPositive();
    }
}
