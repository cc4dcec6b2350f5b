package headertank.app.form;

import headertank.app.problem.ConflictException;
import headertank.app.stored.Sha256;
import java.util.Optional;
import java.util.UUID;
import java.util.function.LongSupplier;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/**
 * Sees to it that a form that is sent twice - back and again, Enter twice, two tabs - makes one record. The page puts a key into
 * the form, the service that adds the record adds it through {@link #once}. A form that is sent again with other words is
 * another form.
 */
@Component("formKeys")
public class FormKeys {

    private static final String BEFORE = """
            select made, made_id from sent_form
            where shop_id = :shop and form_key = :key and (said_sha256 = :said or said_sha256 = ''::bytea)
            """;

    private final JdbcClient jdbc;

    FormKeys(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** A key for a form that is about to be shown. */
    public UUID next() {
        return UUID.randomUUID();
    }

    /**
     * Makes a record, once for each key; whoever sends the same form at the same time waits for the first.
     *
     * @param key of the form; null, from a program or a page that has none, makes a record each time
     * @param made kind of record
     * @param said what was filled in; its text tells forms apart
     * @param make makes the record and returns its id
     * @return id of the record that the form made, now or before
     * @throws ConflictException when the key belongs to a form of another kind
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public long once(long shop, UUID key, String made, Object said, LongSupplier make) {
        if (key == null) {
            return make.getAsLong();
        }
        jdbc.sql("select pg_advisory_xact_lock(hashtextextended(:key, 0))")
                .param("key", "headertank.form." + key)
                .query()
                .listOfRows();
        Optional<Sent> before = before(shop, key, said);
        if (before.isPresent()) {
            if (!before.get().made().equals(made)) {
                throw new ConflictException("form.key-of-another");
            }
            return before.get().id();
        }
        long id = make.getAsLong();
        jdbc.sql("insert into sent_form (shop_id, form_key, said_sha256, made, made_id) "
                        + "values (:shop, :key, :said, :made, :id)")
                .param("shop", shop)
                .param("key", key)
                .param("said", Sha256.of(said.toString()))
                .param("made", made)
                .param("id", id)
                .update();
        return id;
    }

    /** Whether a form with this key and these words has done its work. */
    @Transactional(readOnly = true)
    public boolean isSent(long shop, UUID key, Object said) {
        return key != null && before(shop, key, said).isPresent();
    }

    private Optional<Sent> before(long shop, UUID key, Object said) {
        return jdbc.sql(BEFORE)
                .param("shop", shop)
                .param("key", key)
                .param("said", Sha256.of(said.toString()))
                .query((row, n) -> new Sent(row.getString("made"), row.getLong("made_id")))
                .optional();
    }

    private record Sent(String made, long id) {}
}
