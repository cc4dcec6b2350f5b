package headertank.app.account.guard;

import headertank.app.audit.AuditTrail;
import headertank.app.stored.Sha256;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.transaction.interceptor.TransactionAspectSupport;

/**
 * Slows down whoever guesses, and locks nobody out. A place that tries waits after twenty wrong tries, for one account after five,
 * each time twice as long. An account as a whole waits half a minute at most, and only for places and devices that it does not
 * know: a browser that has signed in before has a count of its own, so that nobody can shut a person out from elsewhere.
 *
 * <p>The figures are modelling choices; NIST SP 800-63B-4, 3.2.2, asks for at most 100 wrong tries in a row.
 */
@Component
public class SignInBrake {

    private static final int LONGEST_S = 900;

    /** Tries that are free, and the longest pause [s]. */
    private enum Count {
        PLACE(20, LONGEST_S),
        ACCOUNT_FROM_PLACE(5, LONGEST_S),
        ACCOUNT(50, 30),
        DEVICE(10, LONGEST_S);

        private final int free;
        private final int longestS;

        Count(int free, int longestS) {
            this.free = free;
            this.longestS = longestS;
        }
    }

    private record Bucket(Count count, String name) {}

    /**
     * A try.
     *
     * @param login as accounts are called
     * @param place address that it comes from
     * @param device token of the browser, empty when it has none
     */
    public record Try(String login, String place, String device) {}

    private final SignInStore store;
    private final AuditTrail audit;
    private final SecureRandom random = new SecureRandom();

    SignInBrake(SignInStore store, AuditTrail audit) {
        this.store = store;
        this.audit = audit;
    }

    /** Seconds to wait before this may be tried; 0 lets it through, counted as wrong until it turns out right. */
    @Transactional
    public int begin(Try one) {
        for (Bucket bucket : buckets(one)) {
            if (store.take(bucket.name(), bucket.count().free, bucket.count().longestS)
                    .isEmpty()) {
                int wait = Math.max(1, store.waitS(bucket.name()));
                TransactionAspectSupport.currentTransactionStatus().setRollbackOnly();
                return wait;
            }
        }
        return 0;
    }

    /** Notes a try that was wrong; the trail says which account, never what was typed. */
    @Transactional
    public void wrong(Try one, String why) {
        store.account(one.login())
                .ifPresentOrElse(
                        a -> audit.recordByProgram(a[0], "account.sign-in-refused", "account", a[1], why),
                        () -> store.onlyShop()
                                .ifPresent(s -> audit.recordByProgram(s, "account.sign-in-unknown", "shop", s, "")));
    }

    /** Takes back what was counted; returns the token that the browser is known by from now on. */
    @Transactional
    public String right(Try one, long shop, long account) {
        for (Bucket bucket : buckets(one)) {
            if (bucket.count() == Count.PLACE || bucket.count() == Count.ACCOUNT) {
                store.giveBack(bucket.name());
            } else {
                store.forget(bucket.name());
            }
        }
        audit.recordOf(shop, account, "account.signed-in", "account", account);
        String token = isKnown(one) ? one.device() : token();
        store.know(account, Sha256.of(token));
        store.sweep();
        return token;
    }

    private String token() {
        byte[] bytes = new byte[24];
        random.nextBytes(bytes);
        return HexFormat.of().formatHex(bytes);
    }

    private boolean isKnown(Try one) {
        return !one.device().isEmpty() && store.knows(one.login(), Sha256.of(one.device()));
    }

    private List<Bucket> buckets(Try one) {
        String login = hash(one.login());
        if (isKnown(one)) {
            return List.of(new Bucket(Count.DEVICE, "device " + login + " " + hash(one.device())));
        }
        return List.of(
                new Bucket(Count.PLACE, "place " + hash(one.place())),
                new Bucket(Count.ACCOUNT, "account " + login),
                new Bucket(Count.ACCOUNT_FROM_PLACE, "account " + login + " place " + hash(one.place())));
    }

    private static String hash(String text) {
        return HexFormat.of().formatHex(Sha256.of(text), 0, 16);
    }

    /** The network that an address belongs to: of an IPv6 address its first half, for whoever has one has all of that. */
    public static String place(String address) {
        String plain = Optional.ofNullable(address).orElse("");
        if (plain.indexOf(':') < 0) {
            return plain;
        }
        try {
            byte[] bytes = InetAddress.getByName(plain).getAddress();
            return HexFormat.of().formatHex(bytes, 0, Math.min(8, bytes.length));
        } catch (UnknownHostException e) {
            return plain;
        }
    }
}
