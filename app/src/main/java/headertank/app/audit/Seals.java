package headertank.app.audit;

import headertank.app.shop.CurrentUser;
import headertank.app.stored.Sha256;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/**
 * Seals what is kept for ever, and tells whether anything behind the seals has been changed, taken away or slipped in since:
 * checks, signatures, sheets, photos, readings, decisions, deeds of jobs and the audit trail itself. Each seal holds the hash of the
 * one before. Whoever owns the database and knows this program can forge all seals anew; the hash of the last one, written
 * down elsewhere, tells that too.
 */
@Component
public class Seals {

    /** A row this old is there to stay: no transaction takes that long. Modelling choice. */
    static final Duration SETTLED = Duration.ofMinutes(10);

    /** One thing that is not as it was sealed. */
    public record Fault(What what, String kind, long id, Instant sealedAt) {

        public enum What {
            CHANGED,
            MISSING,
            SLIPPED_IN,
            SEAL_BROKEN
        }
    }

    /**
     * What verifying has come to.
     *
     * @param last hash of the newest seal, empty when there is none
     * @param open rows that no seal covers yet
     */
    public record Verified(int seals, int rows, int open, String last, Instant sealedAt, List<Fault> faults) {

        /** To be copied by hand. */
        public String lastInGroups() {
            return last.replaceAll("(.{8})(?=.)", "$1 ");
        }
    }

    private final SealStore store;
    private final CurrentUser user;

    Seals(SealStore store, CurrentUser user) {
        this.store = store;
        this.user = user;
    }

    /** All that have records here. */
    @Transactional(readOnly = true)
    public List<Long> shops() {
        return store.shops();
    }

    /** Seals what has settled; returns how many rows. */
    @Transactional
    public int seal(long shop, Duration settled) {
        store.oneAtATime(shop);
        int sealed = 0;
        String before = store.seals(shop).stream()
                .reduce((a, b) -> b)
                .map(SealStore.Seal::sha256)
                .orElse("");
        for (List<SealStore.KeptRow> rows = store.unsealed(shop, settled.toSeconds());
                !rows.isEmpty();
                rows = store.unsealed(shop, settled.toSeconds())) {
            before = hash(before, rows);
            store.add(shop, rows, before);
            sealed += rows.size();
        }
        return sealed;
    }

    private static String hash(String before, List<SealStore.KeptRow> rows) {
        StringBuilder text = new StringBuilder(before).append('\n');
        rows.forEach(r -> text.append(r.kind())
                .append(' ')
                .append(r.id())
                .append(' ')
                .append(r.sha256())
                .append('\n'));
        return Sha256.hex(text.toString());
    }

    /** The shop of whoever has signed in. */
    @Transactional(readOnly = true)
    public Verified verify() {
        return verify(user.shopId());
    }

    /** Works out all hashes of a shop anew. */
    @Transactional(readOnly = true)
    public Verified verify(long shop) {
        Map<String, String> now = new HashMap<>();
        Map<String, Long> highest = new HashMap<>();
        store.now(shop).forEach(r -> now.put(key(r), r.sha256()));
        List<Fault> faults = new ArrayList<>();
        Set<String> sealed = new HashSet<>();
        String before = "";
        Instant at = null;
        List<SealStore.Seal> seals = store.seals(shop);
        for (SealStore.Seal seal : seals) {
            if (!hash(before, seal.rows()).equals(seal.sha256())) {
                faults.add(new Fault(Fault.What.SEAL_BROKEN, "seal", seal.id(), seal.at()));
            }
            before = seal.sha256();
            at = seal.at();
            for (SealStore.KeptRow row : seal.rows()) {
                sealed.add(key(row));
                highest.merge(row.kind(), row.id(), Math::max);
                compare(row, Optional.ofNullable(now.get(key(row))), seal.at()).ifPresent(faults::add);
            }
        }
        int open = 0;
        for (SealStore.KeptRow row : store.now(shop)) {
            if (!sealed.contains(key(row))) {
                open++;
                if (row.id() < highest.getOrDefault(row.kind(), 0L)) {
                    faults.add(new Fault(Fault.What.SLIPPED_IN, row.kind(), row.id(), at));
                }
            }
        }
        return new Verified(seals.size(), sealed.size(), open, before, at, faults);
    }

    private static Optional<Fault> compare(SealStore.KeptRow sealed, Optional<String> now, Instant at) {
        if (now.isEmpty()) {
            return Optional.of(new Fault(Fault.What.MISSING, sealed.kind(), sealed.id(), at));
        }
        return now.get().equals(sealed.sha256())
                ? Optional.empty()
                : Optional.of(new Fault(Fault.What.CHANGED, sealed.kind(), sealed.id(), at));
    }

    private static String key(SealStore.KeptRow row) {
        return row.kind() + " " + row.id();
    }
}
