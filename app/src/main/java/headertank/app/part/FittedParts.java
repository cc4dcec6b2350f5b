package headertank.app.part;

import headertank.app.field.FieldFormat;
import headertank.app.field.FieldValues;
import headertank.app.problem.NotFoundException;
import headertank.app.shop.CurrentUser;
import headertank.app.stored.Sha256;
import headertank.calc.carspec.BuildField;
import headertank.calc.quantity.Chosen;
import headertank.calc.quantity.Entry;
import headertank.calc.quantity.Provenance;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Which parts revisions name, with what the catalogue said of them at the time. Rows are only ever added. */
@Component("fittedParts")
@Transactional(readOnly = true)
public class FittedParts {

    /**
     * A part that a revision names.
     *
     * @param name at the time
     * @param values the catalogue's, at the time
     * @param changed fields in which the revision differs from them
     */
    public record Fitted(PartKind slot, PartRef ref, String name, FieldValues values, List<BuildField> changed) {}

    /**
     * One slot in which two revisions differ.
     *
     * @param before name of the part, empty when there was none
     */
    public record SlotChange(PartKind slot, String before, String after) {}

    /** What the catalogue said. */
    private record Frozen(String name, String valuesText) {}

    private final JdbcClient jdbc;
    private final CurrentUser user;

    FittedParts(JdbcClient jdbc, CurrentUser user) {
        this.jdbc = jdbc;
        this.user = user;
    }

    /** Parts of a revision of the current shop, in the order of their kinds. */
    public List<Fitted> of(long revisionId) {
        return jdbc
                .sql("select * from fitted_part where shop_id = :shop and revision_id = :revision")
                .param("shop", user.shopId())
                .param("revision", revisionId)
                .query(this::fitted)
                .list()
                .stream()
                .sorted(Comparator.comparing(Fitted::slot))
                .toList();
    }

    /** Slots whose part is another one in the later revision. */
    public List<SlotChange> changes(long beforeId, long afterId) {
        Map<PartKind, Fitted> before = bySlot(beforeId);
        Map<PartKind, Fitted> after = bySlot(afterId);
        return Arrays.stream(PartKind.values())
                .filter(k -> id(before.get(k)) != id(after.get(k)))
                .map(k -> new SlotChange(k, name(before.get(k)), name(after.get(k))))
                .toList();
    }

    private Map<PartKind, Fitted> bySlot(long revisionId) {
        return of(revisionId).stream().collect(Collectors.toMap(Fitted::slot, f -> f));
    }

    private static long id(Fitted fitted) {
        return fitted == null ? 0 : fitted.ref().partId();
    }

    private static String name(Fitted fitted) {
        return fitted == null ? "" : fitted.name();
    }

    /** What the catalogue said of a part when it was chosen: kept from a revision, or still in the catalogue; empty when neither. */
    public Optional<FieldValues> valuesOf(PartRef ref) {
        return frozen(user.shopId(), ref).map(f -> FieldFormat.read(f.valuesText()));
    }

    /** The part of this kind and name, as a new spec names it. */
    public Optional<PartRef> named(long shopId, PartKind kind, String name) {
        return jdbc.sql("select id, values_text from part where shop_id = :shop and kind = :kind and name = :name")
                .param("shop", shopId)
                .param("kind", kind.name())
                .param("name", name)
                .query((row, n) -> new PartRef(row.getLong("id"), Sha256.hex(row.getString("values_text"))))
                .optional();
    }

    /**
     * Writes down the parts of a new revision.
     *
     * @param stated what the revision says of the car
     * @throws NotFoundException when the shop has no such part
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public void store(long shopId, long revisionId, Map<PartKind, PartRef> parts, Map<BuildField, Entry> stated) {
        parts.forEach((slot, ref) -> {
            Frozen said = frozen(shopId, ref)
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
                    .param("changed", keys(changed(slot, FieldFormat.read(said.valuesText()), stated)))
                    .update();
            if (written == 0) {
                throw new NotFoundException("part", ref.partId());
            }
        });
    }

    /** Fields in which a car differs from what this part brings along. */
    public static List<BuildField> changed(PartKind kind, FieldValues said, Map<BuildField, Entry> stated) {
        return withImplied(kind, said).differing(stated);
    }

    /** What fitting the part states of a car: its values, and what follows from there being such a part. */
    public static FieldValues withImplied(PartKind kind, FieldValues said) {
        Map<BuildField, Entry> entries = new EnumMap<>(BuildField.class);
        entries.putAll(said.entries());
        kind.implied().forEach((field, token) -> entries.put(field, new Chosen(token, Provenance.MEASURED)));
        return new FieldValues(entries, said.typed());
    }

    private Optional<Frozen> frozen(long shopId, PartRef ref) {
        Optional<Frozen> now = jdbc.sql("select name, values_text from part where shop_id = :shop and id = :part")
                .param("shop", shopId)
                .param("part", ref.partId())
                .query((row, n) -> new Frozen(row.getString("name"), row.getString("values_text")))
                .optional()
                .filter(f -> Sha256.hex(f.valuesText()).equals(ref.valuesHash()));
        return now.or(() -> jdbc.sql("""
                        select part_name, values_text from fitted_part
                        where shop_id = :shop and part_id = :part and values_sha256 = :hash order by revision_id desc limit 1""")
                .param("shop", shopId)
                .param("part", ref.partId())
                .param("hash", HexFormat.of().parseHex(ref.valuesHash()))
                .query((row, n) -> new Frozen(row.getString("part_name"), row.getString("values_text")))
                .optional());
    }

    /** The catalogue changed between choosing and saving. */
    private Optional<Frozen> now(long shopId, PartKind kind, long partId) {
        return jdbc.sql("select name, values_text from part where shop_id = :shop and id = :part and kind = :kind")
                .param("shop", shopId)
                .param("part", partId)
                .param("kind", kind.name())
                .query((row, n) -> new Frozen(row.getString("name"), row.getString("values_text")))
                .optional();
    }

    private static String keys(List<BuildField> fields) {
        return String.join(",", fields.stream().map(BuildField::key).toList());
    }

    private Fitted fitted(ResultSet row, int n) throws SQLException {
        List<BuildField> changed = Arrays.stream(row.getString("changed_fields").split(","))
                .flatMap(key -> BuildField.ofKey(key).stream())
                .toList();
        String hash = HexFormat.of().formatHex(row.getBytes("values_sha256"));
        return new Fitted(
                PartKind.valueOf(row.getString("slot")),
                new PartRef(row.getLong("part_id"), hash),
                row.getString("part_name"),
                FieldFormat.read(row.getString("values_text")),
                changed);
    }
}
