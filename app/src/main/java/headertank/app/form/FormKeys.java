package headertank.app.form;

import headertank.app.problem.ConflictException;
import java.util.Optional;
import java.util.UUID;
import java.util.function.LongSupplier;
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

    private final SentFormStore store;

    FormKeys(SentFormStore store) {
        this.store = store;
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
        store.oneAtATime(key);
        Optional<SentFormStore.Sent> before = store.before(shop, key, said);
        if (before.isPresent()) {
            if (!before.get().made().equals(made)) {
                throw new ConflictException("form.key-of-another");
            }
            return before.get().id();
        }
        long id = make.getAsLong();
        store.add(shop, key, said, made, id);
        return id;
    }

    /** Whether a form with this key and these words has done its work. */
    @Transactional(readOnly = true)
    public boolean isSent(long shop, UUID key, Object said) {
        return key != null && store.before(shop, key, said).isPresent();
    }
}
