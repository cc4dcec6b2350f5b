package headertank.app.audit;

import headertank.app.shop.CurrentUser;
import headertank.app.shop.Member;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/**
 * Writes the audit trail, in the transaction of the deed itself: no deed without its entry, no entry without its deed. Details
 * carry ids and field names, never names, numbers or addresses of people.
 */
@Component
public class AuditTrail {

    private final AuditStore store;
    private final CurrentUser user;

    AuditTrail(AuditStore store, CurrentUser user) {
        this.store = store;
        this.user = user;
    }

    /**
     * Notes what the current user does.
     *
     * @param action what was done, {@code car.changed}
     * @param subjectType kind of record, {@code car}
     * @param detail further words, may be empty
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public void record(String action, String subjectType, Long subjectId, String detail) {
        Member member = user.require();
        store.add(member.shopId(), member.accountId(), action, subjectType, subjectId, detail);
    }

    /** Notes what the program does by itself, or what is done before anybody can sign in. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void recordByProgram(long shopId, String action, String subjectType, Long subjectId, String detail) {
        store.add(shopId, null, action, subjectType, subjectId, detail);
    }

    /** Notes what somebody has done who has not been signed in while it was done, such as signing in. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void recordOf(long shopId, long accountId, String action, String subjectType, Long subjectId) {
        store.add(shopId, accountId, action, subjectType, subjectId, "");
    }
}
