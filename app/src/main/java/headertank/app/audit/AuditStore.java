package headertank.app.audit;

import java.sql.Types;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Rows of the audit trail; they are only ever added. */
@Component
@Transactional(propagation = Propagation.MANDATORY)
class AuditStore {

    private final JdbcClient jdbc;

    AuditStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** @param account who did it; null for the program itself */
    void add(long shop, Long account, String action, String subjectType, Long subjectId, String detail) {
        jdbc.sql("""
                        insert into audit_entry (shop_id, account_id, action, subject_type, subject_id, detail)
                        values (:shop, :account, :action, :subjectType, :subjectId, :detail)""")
                .param("shop", shop)
                .param("account", account, Types.BIGINT)
                .param("action", action)
                .param("subjectType", subjectType)
                .param("subjectId", subjectId, Types.BIGINT)
                .param("detail", detail)
                .update();
    }
}
