package headertank.app.demo;

import headertank.app.account.Accounts;
import headertank.app.check.Checks;
import headertank.app.check.SignOffForm;
import headertank.app.check.stored.CheckResult;
import headertank.app.check.stored.Decision;
import headertank.app.handover.EntryForm;
import headertank.app.handover.Handovers;
import headertank.app.handover.item.ItemOutcome;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.core.context.SecurityContextImpl;
import org.springframework.security.core.userdetails.UserDetails;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** What the invented technician has done before anybody looks: a signature, and a check list that is begun. */
@Component
@ConditionalOnProperty("headertank.demo")
class DemoWork {

    private static final String HANDED_OVER = "DEMO 01";
    private static final double WORKSHOP_K = 294.15;
    private static final String REMARK = "Street, track, drift: talked through with the owner of the car (invented).";

    private final Accounts accounts;
    private final Checks checks;
    private final Handovers handovers;
    private final DemoSight there;

    DemoWork(Accounts accounts, Checks checks, Handovers handovers, DemoSight there) {
        this.accounts = accounts;
        this.checks = checks;
        this.handovers = handovers;
        this.there = there;
    }

    /** Begins the check list of a car that nobody has rated yet. */
    @Transactional
    public void ensure() {
        there.car(HANDED_OVER)
                .map(DemoSight.SeenCar::car)
                .filter(c -> there.hasSpec(c) && !there.isRated(c))
                .ifPresent(this::begin);
    }

    private void begin(long car) {
        long check = letLeave(car, 1);
        asTechnician(() -> {
            handovers.setDay(check, WORKSHOP_K, UUID.randomUUID());
            handovers.enter(check, done("hoses"), Optional.empty(), "");
            handovers.enter(check, done("belt-run"), Optional.empty(), "");
            return check;
        });
    }

    private static EntryForm done(String item) {
        return new EntryForm(UUID.randomUUID(), item, ItemOutcome.DONE, "", "");
    }

    /** Rates a revision and signs that the car may leave; returns the check's id. */
    @Transactional(propagation = Propagation.MANDATORY)
    public long letLeave(long car, int revision) {
        return asTechnician(() -> {
            long check = checks.run(car, revision);
            CheckResult result = checks.byId(check).result();
            List<String> conditions =
                    result.conditions().stream().map(CheckResult.Condition::key).toList();
            boolean plain = conditions.isEmpty() && result.refused().isEmpty();
            Decision decision = plain ? Decision.DELIVER : Decision.DELIVER_WITH_CONDITIONS;
            checks.sign(check, new SignOffForm(decision, REMARK, conditions));
            return check;
        });
    }

    private long asTechnician(Supplier<Long> deed) {
        SecurityContext before = SecurityContextHolder.getContext();
        UserDetails user = accounts.loadUserByUsername(DemoShop.LOGINS.get(1).login());
        SecurityContextHolder.setContext(new SecurityContextImpl(
                UsernamePasswordAuthenticationToken.authenticated(user, null, user.getAuthorities())));
        try {
            return deed.get();
        } finally {
            SecurityContextHolder.setContext(before);
        }
    }
}
