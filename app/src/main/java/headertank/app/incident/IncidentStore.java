package headertank.app.incident;

import headertank.app.carspec.Revision;
import headertank.calc.choice.SensorPlacement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Rows of reports that a car ran hot; they are only ever added. */
@Component
@Transactional(propagation = Propagation.MANDATORY)
class IncidentStore {

    private static final String SELECT = """
            select i.id, i.car_id, i.revision_id, r.number, i.compared_check_run_id, i.occurred_at, i.duty, i.doing,
                   i.ambient_k, i.reading_k, i.reading_place, i.note, a.name as reporter, i.reported_at
            from incident i join revision r on r.id = i.revision_id join account a on a.id = i.reporter_id
            where i.shop_id = :shop
            """;

    private final JdbcClient jdbc;

    IncidentStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * @param compared check that the report is held against; null for none
     * @return the new row's id
     */
    long add(long shopId, long reporterId, Revision revision, Long compared, IncidentForm form, IncidentEntry entry) {
        return jdbc.sql("""
                        insert into incident (shop_id, car_id, revision_id, compared_check_run_id, occurred_at, duty, doing,
                                              ambient_k, reading_k, reading_place, note, reporter_id)
                        values (:shop, :car, :revision, :check, :at, :duty, :doing, :ambient, :reading, :place, :note, :who)
                        returning id""")
                .param("shop", shopId)
                .param("car", revision.carId())
                .param("revision", revision.id())
                .param("check", compared, Types.BIGINT)
                .param("at", OffsetDateTime.ofInstant(entry.occurredAt(), ZoneOffset.UTC))
                .param("duty", form.duty())
                .param("doing", form.doing())
                .param("ambient", entry.ambientK().orElse(null), Types.DOUBLE)
                .param("reading", entry.readingK())
                .param("place", form.place().name())
                .param("note", form.note())
                .param("who", reporterId)
                .query(Long.class)
                .single();
    }

    Optional<Incident> byId(long shopId, long id) {
        return jdbc.sql(SELECT + " and i.id = :id")
                .param("shop", shopId)
                .param("id", id)
                .query(IncidentStore::incident)
                .optional();
    }

    /** Newest first. */
    List<Incident> ofCar(long shopId, long carId, int limit) {
        return jdbc.sql(SELECT + " and i.car_id = :car order by i.occurred_at desc, i.id desc limit :limit")
                .param("shop", shopId)
                .param("car", carId)
                .param("limit", limit)
                .query(IncidentStore::incident)
                .list();
    }

    private static Incident incident(ResultSet row, int n) throws SQLException {
        return new Incident(
                row.getLong("id"),
                row.getLong("car_id"),
                row.getLong("revision_id"),
                row.getInt("number"),
                Optional.ofNullable(row.getObject("compared_check_run_id", Long.class)),
                row.getTimestamp("occurred_at").toInstant(),
                row.getString("duty"),
                row.getString("doing"),
                Optional.ofNullable(row.getObject("ambient_k", Double.class)),
                row.getDouble("reading_k"),
                SensorPlacement.valueOf(row.getString("reading_place")),
                row.getString("note"),
                row.getString("reporter"),
                row.getTimestamp("reported_at").toInstant());
    }
}
