package headertank.app.incident.cause;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Rows of answers; they are only ever added. */
@Component
@Transactional(propagation = Propagation.MANDATORY)
class IncidentAnswerStore {

    private final JdbcClient jdbc;

    IncidentAnswerStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Returns the row's id. */
    long insert(long shop, long author, long incident, IncidentAnswerForm form) {
        return jdbc.sql("""
                        insert into incident_answer (shop_id, incident_id, question, answer, author_id)
                        values (:shop, :incident, :question, :answer, :author) returning id""")
                .param("shop", shop)
                .param("incident", incident)
                .param("question", form.question())
                .param("answer", form.answer())
                .param("author", author)
                .query(Long.class)
                .single();
    }

    /** All that were given, newest first. */
    List<IncidentAnswer> all(long shop, long incident) {
        return jdbc.sql("""
                        select i.question, i.answer, a.name, i.answered_at
                        from incident_answer i join account a on a.id = i.author_id
                        where i.shop_id = :shop and i.incident_id = :incident order by i.id desc""")
                .param("shop", shop)
                .param("incident", incident)
                .query(IncidentAnswerStore::row)
                .list();
    }

    private static IncidentAnswer row(ResultSet row, int n) throws SQLException {
        return new IncidentAnswer(
                row.getString("question"),
                row.getString("answer"),
                row.getString("name"),
                row.getTimestamp("answered_at").toInstant());
    }
}
