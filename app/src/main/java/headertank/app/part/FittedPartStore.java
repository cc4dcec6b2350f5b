package headertank.app.part;

import headertank.app.field.FieldFormat;
import headertank.app.problem.NotFoundException;
import headertank.app.stored.Sha256;
import headertank.calc.carspec.BuildField;
import headertank.calc.quantity.Entry;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Rows of parts that revisions name; they are only ever added. */
@Component
@Transactional(propagation = Propagation.MANDATORY)
class FittedPartStore {

    /** What the catalogue said of a part. */
    record NamedValues(String name, String valuesText) {}

    private final JdbcClient jdbc;

    FittedPartStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    List<FittedParts.Fitted> of(long shopId, long revisionId) {
        return jdbc.sql("select * from fitted_part where shop_id = :shop and revision_id = :revision")
                .param("shop", shopId)
                .param("revision", revisionId)
                .query(FittedPartStore::fitted)
                .list();
    }

    /** The part of this kind and name, as a new spec names it. */
    Optional<PartRef> named(long shopId, PartKind kind, String name) {
        return jdbc.sql("select id, values_text from part where shop_id = :shop and kind = :kind and name = :name")
                .param("shop", shopId)
                .param("kind", kind.name())
                .param("name", name)
                .query((row, n) -> new PartRef(row.getLong("id"), Sha256.hex(row.getString("values_text"))))
                .optional();
    }

    /**
     * Writes down that a new revision names a part.
     *
     * @param stated what the revision says of the car
     * @throws NotFoundException when the shop has no such part
     */
    void add(long shopId, long revisionId, PartKind slot, PartRef ref, Map<BuildField, Entry> stated) {
        NamedValues said = said(shopId, ref)
                .or(() -> now(shopId, slot, ref.partId()))
                .orElseThrow(() -> new NotFoundException("part", ref.partId()));
        int written = jdbc.sql("""
                        insert into fitted_part (revision_id, slot, shop_id, part_id, part_name, values_text, values_sha256,
                                                 changed_fields)
                        select :revision, :slot, p.shop_id, p.id, :name, :text, :hash, :changed
                        from part p where p.shop_id = :shop and p.id = :part and p.kind = :slot""")
                .param("revision", revisionId)
                .param("slot", slot.name())
                .param("shop", shopId)
                .param("part", ref.partId())
                .param("name", said.name())
                .param("text", said.valuesText())
                .param("hash", Sha256.of(said.valuesText()))
                .param("changed", keys(FittedParts.changed(slot, FieldFormat.read(said.valuesText()), stated)))
                .update();
        if (written == 0) {
            throw new NotFoundException("part", ref.partId());
        }
    }

    /** What the catalogue said of a part when it was chosen: still in the catalogue, or kept from a revision. */
    Optional<NamedValues> said(long shopId, PartRef ref) {
        Optional<NamedValues> now = jdbc.sql("select name, values_text from part where shop_id = :shop and id = :part")
                .param("shop", shopId)
                .param("part", ref.partId())
                .query((row, n) -> new NamedValues(row.getString("name"), row.getString("values_text")))
                .optional()
                .filter(f -> Sha256.hex(f.valuesText()).equals(ref.valuesHash()));
        return now.or(() -> jdbc.sql("""
                        select part_name, values_text from fitted_part
                        where shop_id = :shop and part_id = :part and values_sha256 = :hash order by revision_id desc limit 1""")
                .param("shop", shopId)
                .param("part", ref.partId())
                .param("hash", HexFormat.of().parseHex(ref.valuesHash()))
                .query((row, n) -> new NamedValues(row.getString("part_name"), row.getString("values_text")))
                .optional());
    }

    /** The catalogue changed between choosing and saving. */
    private Optional<NamedValues> now(long shopId, PartKind kind, long partId) {
        return jdbc.sql("select name, values_text from part where shop_id = :shop and id = :part and kind = :kind")
                .param("shop", shopId)
                .param("part", partId)
                .param("kind", kind.name())
                .query((row, n) -> new NamedValues(row.getString("name"), row.getString("values_text")))
                .optional();
    }

    private static String keys(List<BuildField> fields) {
        return String.join(",", fields.stream().map(BuildField::key).toList());
    }

    private static FittedParts.Fitted fitted(ResultSet row, int n) throws SQLException {
        List<BuildField> changed = Arrays.stream(row.getString("changed_fields").split(","))
                .flatMap(key -> BuildField.ofKey(key).stream())
                .toList();
        String hash = HexFormat.of().formatHex(row.getBytes("values_sha256"));
        return new FittedParts.Fitted(
                PartKind.valueOf(row.getString("slot")),
                new PartRef(row.getLong("part_id"), hash),
                row.getString("part_name"),
                FieldFormat.read(row.getString("values_text")),
                changed);
    }
}
