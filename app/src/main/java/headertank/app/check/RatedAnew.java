package headertank.app.check;

import headertank.app.backup.Proof;
import headertank.app.check.stored.CheckLine;
import headertank.app.shop.Member;
import headertank.app.shop.Role;
import java.util.List;
import java.util.Set;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.core.context.SecurityContextImpl;
import org.springframework.stereotype.Component;

/** Computes stored checks anew: the same digits come out where records, physics and machine are what they were. */
@Component
class RatedAnew implements Proof {

    private static final Logger LOG = LoggerFactory.getLogger("headertank");

    /** Checks of each shop. */
    private static final int SOME = 50;

    private final Checks checks;

    RatedAnew(Checks checks) {
        this.checks = checks;
    }

    /** The program itself, while it reads a shop's records. */
    private record Program(long shopId) implements Member {
        @Override
        public long accountId() {
            return 0;
        }

        @Override
        public String displayName() {
            return "";
        }

        @Override
        public Set<Role> roles() {
            return Set.of();
        }
    }

    @Override
    public List<String> faults(long shop) {
        SecurityContext before = SecurityContextHolder.getContext();
        SecurityContextHolder.setContext(new SecurityContextImpl(
                UsernamePasswordAuthenticationToken.authenticated(new Program(shop), null, List.of())));
        try {
            List<CheckLine> some = checks.ofNow(SOME);
            List<String> faults = some.stream()
                    .filter(c -> !checks.repeats(c))
                    .map(c -> "check " + c.id() + " comes out otherwise")
                    .toList();
            LOG.warn(
                    "Shop {}: {} of {} checks computed anew give the same digits.",
                    shop,
                    some.size() - faults.size(),
                    some.size());
            return faults;
        } finally {
            SecurityContextHolder.setContext(before);
        }
    }
}
