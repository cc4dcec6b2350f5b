package headertank.app.evidence;

import headertank.app.stored.Sha256;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Rows of what was worked out, and of what is being worked out just now. Every question names the shop. */
@Component
@Transactional
class AnswerStore {

    /** Who began longer ago than this has given up: its program was stopped. */
    static final Duration PATIENCE = Duration.ofMinutes(2);

    private static final String WHICH =
            " where shop_id = :shop and car_id = :car and question = :question and key_sha256 = :key";

    private final JdbcClient jdbc;

    AnswerStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    private JdbcClient.StatementSpec ask(String sql, Question q) {
        return jdbc.sql(sql)
                .param("shop", q.shop())
                .param("car", q.car())
                .param("question", q.kind().name())
                .param("key", Sha256.of(q.key()));
    }

    @Transactional(readOnly = true)
    public Optional<Answer> kept(Question question) {
        return ask(
                        "select id, answer_text, encode(answer_sha256, 'hex') as sha256, answered_at from car_answer"
                                + WHICH,
                        question)
                .query(AnswerStore::answer)
                .optional();
    }

    @Transactional(readOnly = true)
    public Optional<Answer> byId(long shop, long car, long id) {
        return jdbc.sql("select id, answer_text, encode(answer_sha256, 'hex') as sha256, answered_at from car_answer "
                        + "where shop_id = :shop and car_id = :car and id = :id")
                .param("shop", shop)
                .param("car", car)
                .param("id", id)
                .query(AnswerStore::answer)
                .optional();
    }

    private static Answer answer(ResultSet row, int n) throws SQLException {
        return new Answer(
                row.getLong("id"),
                row.getString("answer_text"),
                row.getString("sha256"),
                row.getTimestamp("answered_at").toInstant());
    }

    /** Since when somebody works it out; empty when nobody does. */
    @Transactional(readOnly = true)
    public Optional<Instant> begun(Question question) {
        return ask(
                        "select max(begun_at) as at from car_question" + WHICH
                                + " and begun_at > clock_timestamp() - make_interval(secs => :patience)",
                        question)
                .param("patience", PATIENCE.toSeconds())
                .query((row, n) -> Optional.ofNullable(row.getTimestamp("at")).map(Timestamp::toInstant))
                .single();
    }

    /** Says that it is being worked out; false when somebody else does already. */
    public boolean begin(Question question) {
        jdbc.sql("select pg_advisory_xact_lock(hashtextextended(:what, 0))")
                .param("what", "headertank.question " + question)
                .query()
                .listOfRows();
        if (begun(question).isPresent() || kept(question).isPresent()) {
            return false;
        }
        ask(
                        "insert into car_question (shop_id, car_id, question, key_sha256) values (:shop, :car, :question, :key)",
                        question)
                .update();
        return true;
    }

    /** Keeps an answer; one that is there already stays, and it is the same. */
    public void keep(Question question, String text) {
        ask("""
                        insert into car_answer (shop_id, car_id, question, key_text, key_sha256, answer_text, answer_sha256)
                        values (:shop, :car, :question, :keyText, :key, :text, :sha256)
                        on conflict (shop_id, car_id, question, key_sha256) do nothing""", question)
                .param("keyText", question.key())
                .param("text", text)
                .param("sha256", Sha256.of(text))
                .update();
        ask("delete from car_question" + WHICH, question).update();
    }

    /** Whether a log came out as a lesson says. */
    @Transactional(readOnly = true)
    public boolean isConfirmed(long shop, long car, String lessonSha256) {
        return jdbc.sql("""
                        select exists (select from car_answer where shop_id = :shop and car_id = :car and question = 'CONFIRMS'
                          and key_text::jsonb ->> 'lesson' = :lesson and (answer_text::jsonb ->> 'confirms')::boolean)""")
                .param("shop", shop)
                .param("car", car)
                .param("lesson", lessonSha256)
                .query(Boolean.class)
                .single();
    }
}
