package headertank.app.job;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** What happened to each job; rows stay. */
@Component
class JobEventStore {

    private final JdbcClient jdbc;

    JobEventStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Keeps a deed with the job as it stands afterwards. */
    void add(long shop, long account, JobRow job, Job.Kind kind, String reason) {
        jdbc.sql("""
                        insert into job_event (shop_id, job_id, kind, asked, promised_on, reason, account_id)
                        values (:shop, :job, :kind, :asked, :promised, :reason, :who)""")
                .param("shop", shop)
                .param("job", job.id())
                .param("kind", kind.name())
                .param("asked", job.asked())
                .param("promised", job.promisedOn())
                .param("reason", reason)
                .param("who", account)
                .update();
    }

    /** The oldest first. */
    List<Job.Event> of(long shop, long job) {
        return jdbc.sql("""
                        select e.kind, e.asked, e.promised_on, e.reason, a.name, e.at
                        from job_event e join account a on a.id = e.account_id
                        where e.job_id = :job and e.shop_id = :shop order by e.id""")
                .param("job", job)
                .param("shop", shop)
                .query(JobEventStore::event)
                .list();
    }

    private static Job.Event event(ResultSet row, int n) throws SQLException {
        return new Job.Event(
                Job.Kind.valueOf(row.getString("kind")),
                row.getString("asked"),
                row.getObject("promised_on", LocalDate.class),
                row.getString("reason"),
                row.getString("name"),
                row.getTimestamp("at").toInstant());
    }
}
