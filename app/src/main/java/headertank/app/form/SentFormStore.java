package headertank.app.form;

import headertank.app.stored.Sha256;
import java.util.Optional;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Rows of forms that have done their work; they are only ever added. */
@Component
@Transactional(propagation = Propagation.MANDATORY)
class SentFormStore {

    private static final String BEFORE = """
            select made, made_id from sent_form
            where shop_id = :shop and form_key = :key and (said_sha256 = :said or said_sha256 = ''::bytea)
            """;

    private final JdbcClient jdbc;

    SentFormStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** What a form made. */
    record Sent(String made, long id) {}

    /** Whoever sends the same form, or says something of the same, waits here until the first sending is stored. */
    void oneAtATime(String what) {
        jdbc.sql("select pg_advisory_xact_lock(hashtextextended(:key, 0))")
                .param("key", "headertank.form." + what)
                .query()
                .listOfRows();
    }

    Optional<Sent> before(long shop, UUID key, Object said) {
        return jdbc.sql(BEFORE)
                .param("shop", shop)
                .param("key", key)
                .param("said", Sha256.of(said.toString()))
                .query((row, n) -> new Sent(row.getString("made"), row.getLong("made_id")))
                .optional();
    }

    /** Whether a form with this key has done its work, whatever it said. */
    boolean isUsed(long shop, UUID key) {
        return jdbc.sql("select exists (select 1 from sent_form where shop_id = :shop and form_key = :key)")
                .param("shop", shop)
                .param("key", key)
                .query(Boolean.class)
                .single();
    }

    void add(long shop, UUID key, Object said, String made, long id) {
        jdbc.sql("insert into sent_form (shop_id, form_key, said_sha256, made, made_id) "
                        + "values (:shop, :key, :said, :made, :id)")
                .param("shop", shop)
                .param("key", key)
                .param("said", Sha256.of(said.toString()))
                .param("made", made)
                .param("id", id)
                .update();
    }
}
