package headertank.app.account.password;

import java.util.Map;
import java.util.concurrent.Semaphore;
import java.util.function.Supplier;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.security.crypto.argon2.Argon2PasswordEncoder;
import org.springframework.security.crypto.bcrypt.BCryptPasswordEncoder;
import org.springframework.security.crypto.password.DelegatingPasswordEncoder;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Component;

/**
 * Hashes passwords with Argon2id (RFC 9106), 19 MiB, two passes, one lane: the least that the OWASP Password Storage Cheat Sheet
 * asks for, from memory. Hashes of before, bcrypt's, still open and are renewed when their owner signs in. Few are made at the same time, for each takes
 * its memory.
 */
@Component
class PasswordHashes implements PasswordEncoder {

    private static final int SALT_BYTES = 16;
    private static final int HASH_BYTES = 32;
    private static final int LANES = 1;
    private static final int MEMORY_KIB = 19 * 1024;
    private static final int PASSES = 2;
    private static final String CURRENT = "argon2id";

    private final PasswordEncoder hashes = new DelegatingPasswordEncoder(
            CURRENT,
            Map.of(
                    CURRENT,
                    new Argon2PasswordEncoder(SALT_BYTES, HASH_BYTES, LANES, MEMORY_KIB, PASSES),
                    "bcrypt",
                    new BCryptPasswordEncoder()));
    private final Semaphore atOnce = new Semaphore(4);
    private final ObjectProvider<RefusedPasswords> refused;

    PasswordHashes(ObjectProvider<RefusedPasswords> refused) {
        this.refused = refused;
    }

    @Override
    public String encode(CharSequence typed) {
        return oneOfFew(() -> hashes.encode(PasswordRules.plain(typed)));
    }

    @Override
    public boolean matches(CharSequence typed, String hash) {
        String plain = PasswordRules.plain(typed);
        if (plain.length() > 2 * PasswordRules.LONGEST || refused.stream().anyMatch(r -> r.refuses(plain))) {
            return false;
        }
        return oneOfFew(() -> hashes.matches(plain, hash));
    }

    @Override
    public boolean upgradeEncoding(String hash) {
        return hashes.upgradeEncoding(hash);
    }

    private <T> T oneOfFew(Supplier<T> work) {
        atOnce.acquireUninterruptibly();
        try {
            return work.get();
        } finally {
            atOnce.release();
        }
    }
}
