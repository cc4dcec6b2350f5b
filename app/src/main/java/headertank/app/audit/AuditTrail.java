package headertank.app.audit;

import headertank.app.shop.CurrentUser;
import headertank.app.shop.Member;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/**
 * Writes the audit trail, in the transaction of the deed itself: no deed without its entry, no entry without its deed. Details
 * carry ids and field names, never names, numbers or addresses of people.
 */
@Component
public class AuditTrail {

    private final JdbcClient jdbc;
    private final CurrentUser user;

    AuditTrail(JdbcClient jdbc, CurrentUser user) {
        this.jdbc = jdbc;
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
        insert(member.shopId(), member.accountId(), action, subjectType, subjectId, detail);
    }

    /** Notes what the program does by itself, or what is done before anybody can sign in. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void recordByProgram(long shopId, String action, String subjectType, Long subjectId, String detail) {
        insert(shopId, null, action, subjectType, subjectId, detail);
    }

    private void insert(long shop, Long account, String action, String subjectType, Long subjectId, String detail) {
        jdbc.sql("""
                        insert into audit_entry (shop_id, account_id, action, subject_type, subject_id, detail)
                        values (:shop, :account, :action, :subjectType, :subjectId, :detail)""")
                .param("shop", shop)
                .param("account", account, java.sql.Types.BIGINT)
                .param("action", action)
                .param("subjectType", subjectType)
                .param("subjectId", subjectId, java.sql.Types.BIGINT)
                .param("detail", detail)
                .update();
    }
}
