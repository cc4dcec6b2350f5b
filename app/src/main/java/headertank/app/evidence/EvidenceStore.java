package headertank.app.evidence;

import headertank.app.stored.Sha256;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Rows of evidence and of whether it is used. Every question names the shop. */
@Component
@Transactional(propagation = Propagation.MANDATORY)
class EvidenceStore {

    private static final String SELECT = """
            select e.id, e.car_id, e.kind, e.log_id, e.said_text, encode(e.said_sha256, 'hex') as sha256, e.used, e.revision_id,
                   r.number as revision_number, a.name as author, e.added_at, e.reason, b.name as switcher, e.switched_at
            from evidence_now e
            join revision r on r.id = e.revision_id
            join account a on a.id = e.author_id
            left join account b on b.id = e.switched_by
            where e.shop_id = :shop and e.car_id = :car
            """;

    private final JdbcClient jdbc;

    EvidenceStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** A new row; empty where the log is a piece already. */
    Optional<Long> add(long shop, long author, long car, NewPiece piece) {
        return jdbc.sql("""
                        insert into car_evidence (shop_id, car_id, revision_id, kind, log_id, said_text, said_sha256, author_id)
                        values (:shop, :car, :revision, :kind, :log, :said, :sha256, :author)
                        on conflict (shop_id, log_id) where log_id is not null do nothing returning id""")
                .param("shop", shop)
                .param("car", car)
                .param("revision", piece.revisionId())
                .param("kind", piece.kind().name())
                .param("log", piece.logId().orElse(null), java.sql.Types.BIGINT)
                .param("said", piece.said())
                .param("sha256", Sha256.of(piece.said()))
                .param("author", author)
                .query(Long.class)
                .optional();
    }

    long switchTo(long shop, long author, long piece, boolean used, long revision, String reason) {
        return jdbc.sql("""
                        insert into evidence_switch (shop_id, evidence_id, used, revision_id, reason, author_id)
                        values (:shop, :piece, :used, :revision, :reason, :author) returning id""")
                .param("shop", shop)
                .param("piece", piece)
                .param("used", used)
                .param("revision", revision)
                .param("reason", reason)
                .param("author", author)
                .query(Long.class)
                .single();
    }

    /** In the order in which they came. */
    List<Piece> ofCar(long shop, long car) {
        return jdbc.sql(SELECT + " order by e.id")
                .param("shop", shop)
                .param("car", car)
                .query((row, n) -> piece(row))
                .list();
    }

    Set<Long> seenOf(long shop, Collection<Long> cars) {
        return jdbc.sql("select distinct car_id from evidence_now where shop_id = :shop and car_id in (:cars) and used")
                .param("shop", shop)
                .param("cars", cars)
                .query(Long.class)
                .set();
    }

    private static Piece piece(ResultSet row) throws SQLException {
        long log = row.getLong("log_id");
        Optional<Long> logId = row.wasNull() ? Optional.empty() : Optional.of(log);
        Timestamp at = row.getTimestamp("switched_at");
        return new Piece(
                row.getLong("id"),
                row.getLong("car_id"),
                PieceKind.valueOf(row.getString("kind")),
                logId,
                row.getString("said_text"),
                row.getString("sha256"),
                row.getBoolean("used"),
                row.getLong("revision_id"),
                row.getInt("revision_number"),
                row.getString("author"),
                row.getTimestamp("added_at").toInstant(),
                at == null
                        ? Optional.empty()
                        : Optional.of(new Piece.Switched(
                                row.getString("reason"), row.getString("switcher"), at.toInstant())));
    }
}
