package headertank.app.form;

import headertank.app.problem.ConflictException;
import headertank.app.shop.CurrentUser;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Optional;
import java.util.UUID;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/**
 * Sees to it that a form that is sent twice - back and again, Enter twice, two tabs - makes one record. The page puts a key into
 * the form, the service that adds the record adds it through {@link #once}. A form that is sent again with other words is
 * another form. What would refuse the record, such as one like it, is looked at in there too, or the second sending of a form
 * would stumble over what the first has made.
 */
@Component("formKeys")
public class FormKeys {

    /** Within this time the same said again by the same person is one and the same, where what follows from it still stands. */
    public static final Duration JUST_NOW = Duration.ofMinutes(10);

    private final SentFormStore store;
    private final CurrentUser user;

    FormKeys(SentFormStore store, CurrentUser user) {
        this.store = store;
        this.user = user;
    }

    /** A key for a form that is about to be shown, of its own each time: for what may be said again as long as the record allows it. */
    public UUID next() {
        return UUID.randomUUID();
    }

    /**
     * A key for a form that adds something which nothing tells from another of its kind, such as two people of one name. Whoever
     * opens such a form in two tabs gets one key in both, so that the same words make one record; once they have made it, the form
     * has another key.
     *
     * @param adds what the form adds, and to what
     */
    @Transactional(readOnly = true)
    public UUID next(String adds) {
        String form = "headertank.form " + user.shopId() + " " + user.accountId() + " " + adds + " ";
        long free = 1;
        while (isUsed(form, free)) {
            free *= 2;
        }
        long used = free / 2;
        while (free - used > 1) {
            long between = (free + used) / 2;
            if (isUsed(form, between)) {
                used = between;
            } else {
                free = between;
            }
        }
        return key(form, free);
    }

    private boolean isUsed(String form, long number) {
        return store.isUsed(user.shopId(), key(form, number));
    }

    private static UUID key(String form, long number) {
        return UUID.nameUUIDFromBytes((form + number).getBytes(StandardCharsets.UTF_8));
    }

    /**
     * What came of a form.
     *
     * @param id of the record that the form made, now or before; none when something stood in its way
     * @param inTheWay why nothing was made
     */
    public record Sent<P>(Optional<Long> id, Optional<P> inTheWay) {}

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
        return once(shop, key, made, said, Optional::empty, make).id().orElseThrow();
    }

    /**
     * The same for a record that something may stand in the way of, such as one like it. What the form itself has made never
     * does: it is asked only while nobody else sends the same form, and not once the form has done its work.
     *
     * @param inTheWay looks; a form that is refused may be sent again
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public <P> Sent<P> once(
            long shop, UUID key, String made, Object said, Supplier<Optional<P>> inTheWay, LongSupplier make) {
        if (key != null) {
            store.oneAtATime(key.toString());
            Optional<SentFormStore.Sent> before = store.before(shop, key, said);
            if (before.isPresent()) {
                if (!before.get().made().equals(made)) {
                    throw new ConflictException("form.key-of-another");
                }
                return new Sent<>(Optional.of(before.get().id()), Optional.empty());
            }
        }
        Optional<P> hindered = inTheWay.get();
        if (hindered.isPresent()) {
            return new Sent<>(Optional.empty(), hindered);
        }
        long id = make.getAsLong();
        if (key != null) {
            store.add(shop, key, said, made, id);
        }
        return new Sent<>(Optional.of(id), Optional.empty());
    }

    /**
     * Makes everybody of the shop who says something of the same thing wait until this transaction has ended; to be called before
     * it is looked at what stands already.
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public void oneAtATime(String what) {
        store.oneAtATime(user.shopId() + " " + what);
    }

    /** Whether a form with this key and these words has done its work. */
    @Transactional(readOnly = true)
    public boolean isSent(long shop, UUID key, Object said) {
        return key != null && store.before(shop, key, said).isPresent();
    }
}
