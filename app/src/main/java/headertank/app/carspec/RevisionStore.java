package headertank.app.carspec;

import headertank.app.field.FieldFormat;
import headertank.app.part.PartKind;
import headertank.app.part.PartRef;
import headertank.app.problem.NotFoundException;
import headertank.app.stored.Sha256;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.time.OffsetDateTime;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Rows of revisions; they are only ever added. */
@Component
@Transactional(propagation = Propagation.MANDATORY)
class RevisionStore {

    private static final String SELECT = """
            select r.id, r.car_id, r.number, r.parent_number, r.spec_text, r.author_id, a.name as author, r.reason, r.saved_at,
                   (select string_agg(f.slot || '=' || f.part_id || ':' || encode(f.values_sha256, 'hex'), ',')
                    from fitted_part f where f.revision_id = r.id) as parts
            from revision r join account a on a.id = r.author_id
            where r.shop_id = :shop
            """;

    private final JdbcClient jdbc;
    private final SpecFormat format;

    RevisionStore(JdbcClient jdbc, SpecFormat format) {
        this.jdbc = jdbc;
        this.format = format;
    }

    Optional<Revision> latest(long shopId, long carId) {
        return jdbc.sql(SELECT + " and r.car_id = :car order by r.number desc limit 1")
                .param("shop", shopId)
                .param("car", carId)
                .query(this::revision)
                .optional();
    }

    Optional<Revision> of(long shopId, long carId, int number) {
        return jdbc.sql(SELECT + " and r.car_id = :car and r.number = :number")
                .param("shop", shopId)
                .param("car", carId)
                .param("number", number)
                .query(this::revision)
                .optional();
    }

    Optional<Revision> byId(long shopId, long revisionId) {
        return jdbc.sql(SELECT + " and r.id = :id")
                .param("shop", shopId)
                .param("id", revisionId)
                .query(this::revision)
                .optional();
    }

    /** Newest first. */
    List<Revision> all(long shopId, long carId) {
        return jdbc.sql(SELECT + " and r.car_id = :car order by r.number desc")
                .param("shop", shopId)
                .param("car", carId)
                .query(this::revision)
                .list();
    }

    /** A spec as it is stored. */
    String text(Spec spec) {
        return format.write(spec);
    }

    /**
     * Savers of one car queue for the moment of saving; nobody waits while somebody types.
     *
     * @throws NotFoundException when the shop has no such car
     */
    void oneAtATime(long shopId, long carId) {
        jdbc.sql("select id from car where id = :car and shop_id = :shop for no key update")
                .param("car", carId)
                .param("shop", shopId)
                .query(Long.class)
                .optional()
                .orElseThrow(() -> new NotFoundException("car", carId));
    }

    /** @return the new row's id */
    long add(long shopId, long authorId, long carId, int number, Integer parent, Spec spec, String reason) {
        String text = text(spec);
        return jdbc.sql("""
                        insert into revision (shop_id, car_id, number, parent_number, spec_format, spec_text, spec_sha256,
                                              author_id, reason)
                        values (:shop, :car, :number, :parent, :format, :text, :hash, :author, :reason)
                        returning id""")
                .param("shop", shopId)
                .param("car", carId)
                .param("number", number)
                .param("parent", parent, Types.INTEGER)
                .param("format", FieldFormat.FORMAT)
                .param("text", text)
                .param("hash", Sha256.of(text))
                .param("author", authorId)
                .param("reason", reason)
                .query(Long.class)
                .single();
    }

    private static Map<PartKind, PartRef> parts(String joined) {
        Map<PartKind, PartRef> parts = new EnumMap<>(PartKind.class);
        if (joined != null) {
            for (String slot : joined.split(",")) {
                int split = slot.indexOf('=');
                parts.put(
                        PartKind.valueOf(slot.substring(0, split)),
                        PartRef.of(slot.substring(split + 1)).orElseThrow());
            }
        }
        return parts;
    }

    private Revision revision(ResultSet row, int n) throws SQLException {
        String text = row.getString("spec_text");
        return new Revision(
                row.getLong("id"),
                row.getLong("car_id"),
                row.getInt("number"),
                row.getObject("parent_number", Integer.class),
                format.read(text).withParts(parts(row.getString("parts"))),
                text,
                row.getLong("author_id"),
                row.getString("author"),
                row.getString("reason"),
                row.getObject("saved_at", OffsetDateTime.class).toInstant());
    }
}
