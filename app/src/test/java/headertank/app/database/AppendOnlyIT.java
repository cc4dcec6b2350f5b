package headertank.app.database;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.core.env.Environment;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.simple.JdbcClient;

/** What the database itself refuses, whoever asks, and what its view says. */
@DatabaseTest
class AppendOnlyIT {

    @Autowired
    JdbcClient jdbc;

    @Autowired
    Environment environment;

    long shop;
    long person;
    long car;

    @BeforeEach
    void aCar() {
        shop = insert("insert into shop (name) values ('S') returning id");
        person = insert("insert into account (shop_id, login, name, password_hash) values (" + shop + ", 'p" + shop
                + "', 'P', 'x') returning id");
        long customer = insert("insert into customer (shop_id, name) values (" + shop + ", 'C') returning id");
        car = insert("insert into car (shop_id, customer_id, plate) values (" + shop + ", " + customer
                + ", 'A 1') returning id");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "revision",
                "check_run",
                "sign_off",
                "incident",
                "incident_answer",
                "printed_sheet",
                "audit_entry",
                "job_event",
                "car_log",
                "car_evidence",
                "evidence_switch",
                "car_answer"
            })
    void recordsAreNeverChangedOrRemoved(String table) {
        oneRowInEach();
        refused("update " + table + " set shop_id = shop_id");
        refused("delete from " + table);
        refused("truncate " + table + " cascade");
        assertThat(insert("select count(*) from " + table)).isPositive();
    }

    /** Whoever owns the tables, or has become their owner, still meets the triggers. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "revision",
                "check_run",
                "sign_off",
                "incident",
                "incident_answer",
                "printed_sheet",
                "audit_entry",
                "job_event",
                "car_log",
                "car_evidence",
                "evidence_switch",
                "car_answer"
            })
    void theOwnerOfTheTablesIsStoppedByTriggers(String table) throws SQLException {
        oneRowInEach();
        try (Connection owner = TestServer.ownerOf(environment.getRequiredProperty(FreshDatabase.NAME));
                Statement statement = owner.createStatement()) {
            for (String deed : List.of("update headertank.%s set shop_id = shop_id", "delete from headertank.%s")) {
                assertThatThrownBy(() -> statement.execute(deed.formatted(table)))
                        .hasMessageContaining("never changed or removed");
            }
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "alter table audit_entry disable trigger all",
                "drop trigger no_change on audit_entry",
                "alter table audit_entry add column x int",
                "drop table audit_entry cascade",
                "truncate shop cascade",
                "set session_replication_role = replica",
                "create table headertank.mine (x int)",
                "create or replace function headertank.refuse_change() returns trigger language plpgsql as 'begin return new; end'",
                "update flyway_schema_history set checksum = 0",
                "copy audit_entry to program 'cat'",
                "select pg_read_file('postgresql.conf')",
                "create role another superuser",
                "set role postgres"
            })
    void theUserThatServesThePagesCannotGetRoundIt(String deed) {
        assertThatThrownBy(() -> jdbc.sql(deed).update())
                .isInstanceOf(DataAccessException.class)
                .hasStackTraceContaining("ERROR: ")
                .satisfies(e -> assertThat(e.getMessage() + e.getCause().getMessage())
                        .containsAnyOf(
                                "permission denied", "must be owner", "no privileges", "must be superuser", "has no"));
    }

    @Test
    void itMayChangeWhatIsNotKeptForEver() {
        assertThat(jdbc.sql("update car set note = 'x' where id = " + car).update())
                .isOne();
        assertThat(jdbc.sql("select rolsuper from pg_roles where rolname = current_user")
                        .query(Boolean.class)
                        .single())
                .isFalse();
    }

    @Test
    void theSecondToSaveFromTheSameRevisionIsRefused() {
        revision(1, null);
        revision(2, 1);
        assertThatThrownBy(() -> revision(2, 1)).hasMessageContaining("revision_number_taken");
    }

    @Test
    void aRevisionFollowsItsParentWithoutAGap() {
        revision(1, null);
        assertThatThrownBy(() -> revision(3, 1)).hasMessageContaining("revision_follows_parent");
    }

    @Test
    void aHashThatDoesNotFitTheTextIsRefused() {
        assertThatThrownBy(() -> insert("insert into revision (shop_id, car_id, number, spec_format, spec_text, "
                        + "spec_sha256, author_id, reason) values (" + shop + ", " + car + ", 1, 1, '{}', "
                        + "sha256('[]'), " + person + ", 'r') returning id"))
                .hasMessageContaining("revision_hash_fits");
    }

    @Test
    void aCarOfAnotherShopIsRefused() {
        long otherShop = insert("insert into shop (name) values ('T') returning id");
        shop = otherShop;
        assertThatThrownBy(() -> revision(1, null)).hasMessageContaining("foreign key");
    }

    @Test
    void aNewerRevisionMakesACheckOutOfDate() {
        long check = check(revision(1, null), "0.1.3");
        assertThat(currency(check)).containsEntry("out_of_date", false).containsEntry("why", "");
        revision(2, 1);
        assertThat(currency(check)).containsEntry("out_of_date", true).containsEntry("why", "NEWER_REVISION");
    }

    @Test
    void aNewerMinorVersionOfThePhysicsMakesACheckOutOfDateAndAPatchDoesNot() {
        long check = check(revision(1, null), "0.9.3");
        release("0.9.7");
        assertThat(currency(check)).containsEntry("out_of_date", false);
        release("0.10.0");
        assertThat(currency(check)).containsEntry("out_of_date", true).containsEntry("why", "NEWER_CALC_CORE");
        release("0.8.0");
        assertThat(currency(check)).containsEntry("out_of_date", false);
    }

    private void release(String version) {
        jdbc.sql(
                        "insert into calc_core_release (version) values (:v) on conflict (only_row) do update set version = :v")
                .param("v", version)
                .update();
    }

    private Map<String, Object> currency(long check) {
        return jdbc.sql("select out_of_date, why from check_currency where check_run_id = :id")
                .param("id", check)
                .query()
                .singleRow();
    }

    private void oneRowInEach() {
        long revision = revision(1, null);
        long check = check(revision, "0.1.0");
        String owner = shop + ", " + check + ", " + person;
        long job = insert("insert into job (shop_id, car_id, asked, promised_on, opened_by) values (" + shop + ", "
                + car + ", 'look', current_date, " + person + ") returning id");
        List.of(
                        "insert into job_event (shop_id, job_id, kind, asked, promised_on, account_id) values (" + shop
                                + ", " + job + ", 'OPENED', 'look', current_date, " + person + ") returning id",
                        "insert into sign_off (shop_id, check_run_id, signer_id, decision, signed_sha256) values ("
                                + owner + ", 'GO', sha256('x')) returning id",
                        "insert into printed_sheet (shop_id, check_run_id, printed_by_id, sheet_sha256) values ("
                                + owner + ", sha256('x')) returning id",
                        "insert into incident (shop_id, car_id, revision_id, occurred_at, doing, reading_k, "
                                + "reading_place, reporter_id) values (" + shop + ", " + car + ", " + revision
                                + ", now(), 'queue', 390, 'head', " + person + ") returning id",
                        "insert into incident_answer (shop_id, incident_id, question, answer, author_id) select shop_id, id, "
                                + "'STEAM', 'STEAM_SEEN', reporter_id from incident where shop_id = " + shop
                                + " returning id",
                        "insert into car_log (shop_id, car_id, name, gzip, text_bytes, text_sha256, "
                                + "reading_text, row_count, bad_rows, length_s, left_out, author_id) values ("
                                + shop + ", " + car + ", 'l', 'x', 1, sha256('x'), '{}', 1, 0, 1, 0, " + person
                                + ") returning id",
                        "insert into car_evidence (shop_id, car_id, revision_id, kind, said_text, said_sha256, author_id) values ("
                                + shop + ", " + car + ", " + revision + ", 'SETTLED', '{}', sha256('{}'), " + person
                                + ") returning id",
                        "insert into evidence_switch (shop_id, evidence_id, used, revision_id, reason, author_id) select "
                                + "shop_id, id, false, revision_id, 'r', author_id from car_evidence where shop_id = "
                                + shop
                                + " returning id",
                        "insert into car_answer (shop_id, car_id, question, key_text, key_sha256, answer_text, answer_sha256) "
                                + "values (" + shop + ", " + car
                                + ", 'LEARNED', '{}', sha256('{}'), '{}', sha256('{}')) returning id",
                        "insert into audit_entry (shop_id, action, subject_type) values (" + shop
                                + ", 'a', 'b') returning id")
                .forEach(this::insert);
    }

    private long revision(int number, Integer parent) {
        return insert(
                "insert into revision (shop_id, car_id, number, parent_number, spec_format, spec_text, spec_sha256, "
                        + "author_id, reason) values (" + shop + ", " + car + ", " + number + ", " + parent
                        + ", 1, '{\"a\":0.6500}', sha256('{\"a\":0.6500}'), " + person + ", 'r') returning id");
    }

    private long check(long revision, String version) {
        return insert(
                "insert into check_run (shop_id, revision_id, author_id, duties, calc_core_version, rule_versions, "
                        + "seed, input_format, input_text, input_sha256, result_format, result_text, result_sha256) values ("
                        + shop + ", " + revision + ", " + person + ", 'TRACK', '" + version
                        + "', '', 1, 1, 'i', sha256('i'), "
                        + "1, 'r', sha256('r')) returning id");
    }

    private void refused(String sql) {
        assertThatThrownBy(() -> jdbc.sql(sql).update())
                .isInstanceOf(DataAccessException.class)
                .hasStackTraceContaining("permission denied");
    }

    private long insert(String sql) {
        return jdbc.sql(sql).query(Long.class).single();
    }
}
