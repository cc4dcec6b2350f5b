package headertank.app.part;

import headertank.app.field.FieldFormat;
import headertank.app.problem.NotFoundException;
import headertank.app.shop.CurrentUser;
import headertank.app.stored.Sha256;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Finds parts of the current shop. */
@Component("catalogue")
@Transactional(readOnly = true)
public class Catalogue {

    /** Most parts on one page of the list. */
    static final int MOST = 300;

    private static final String SELECT = """
            select p.id, p.kind, p.name, p.reference, p.values_text, p.price_minor, p.currency, p.stock_note, p.retired,
                   p.changed_at, p.version,
                   (select count(*) from fitted_part f join revision r on r.id = f.revision_id
                    where f.part_id = p.id
                      and not exists (select 1 from revision n where n.car_id = r.car_id and n.number > r.number)) as cars
            from part p where p.shop_id = :shop
            """;

    /** The order of the list. */
    enum Sort {
        NAME("lower(p.name), p.id"),
        PRICE("p.price_minor nulls last, lower(p.name), p.id"),
        CHANGED("p.changed_at desc, p.id desc");

        private final String sql;

        Sort(String sql) {
            this.sql = sql;
        }

        static Sort of(String token) {
            return Arrays.stream(values())
                    .filter(s -> s.name().equalsIgnoreCase(token))
                    .findFirst()
                    .orElse(NAME);
        }
    }

    private final JdbcClient jdbc;
    private final CurrentUser user;

    Catalogue(JdbcClient jdbc, CurrentUser user) {
        this.jdbc = jdbc;
        this.user = user;
    }

    /** The part; "not found" for a part of another shop too. */
    public PartLine part(long id) {
        return jdbc.sql(SELECT + " and p.id = :id")
                .param("shop", user.shopId())
                .param("id", id)
                .query(this::line)
                .optional()
                .orElseThrow(() -> new NotFoundException("part", id));
    }

    /**
     * Parts whose name, reference and stock note hold all words of the text; at most {@link #MOST} + 1.
     *
     * @param kind empty for every kind
     */
    List<PartLine> parts(String text, Optional<PartKind> kind, Sort sort, boolean retired) {
        return jdbc.sql(SELECT + """
                         and (:kind = '' or p.kind = :kind) and (:retired or not p.retired)
                         and (btrim(:text) = '' or p.id in (select all_words('parts_with', :shop, :text)))
                        order by\s""" + sort.sql + " limit :limit")
                .param("shop", user.shopId())
                .param("kind", kind.map(Enum::name).orElse(""))
                .param("retired", retired)
                .param("text", text)
                .param("limit", MOST + 1)
                .query(this::line)
                .list();
    }

    /** Every part, retired ones too, by kind and name. */
    public List<PartLine> all() {
        return jdbc.sql(SELECT + " order by p.kind, lower(p.name), p.id")
                .param("shop", user.shopId())
                .query(this::line)
                .list();
    }

    /** Parts to choose from for a car, by kind and name: what is not retired. */
    public List<PartLine> choices() {
        return all().stream().filter(p -> !p.retired()).toList();
    }

    /** Parts of one kind, retired ones too, by name. */
    List<PartLine> ofKind(PartKind kind) {
        return jdbc.sql(SELECT + " and p.kind = :kind order by lower(p.name), p.id")
                .param("shop", user.shopId())
                .param("kind", kind.name())
                .query(this::line)
                .list();
    }

    /** The part of this kind and name, in capitals or not. */
    public Optional<PartLine> named(PartKind kind, String name) {
        return jdbc.sql(SELECT + " and p.kind = :kind and lower(p.name) = lower(:name)")
                .param("shop", user.shopId())
                .param("kind", kind.name())
                .param("name", name)
                .query(this::line)
                .optional();
    }

    /** The currency that was written last, for the next part. */
    public String usualCurrency() {
        return jdbc.sql("select currency from part where shop_id = :shop and currency <> '' "
                        + "order by changed_at desc, id desc limit 1")
                .param("shop", user.shopId())
                .query(String.class)
                .optional()
                .orElse("EUR");
    }

    private PartLine line(ResultSet row, int n) throws SQLException {
        String text = row.getString("values_text");
        Long minor = row.getObject("price_minor", Long.class);
        String currency = row.getString("currency");
        return new PartLine(
                row.getLong("id"),
                new PartContent(
                        PartKind.valueOf(row.getString("kind")),
                        row.getString("name"),
                        row.getString("reference"),
                        FieldFormat.read(text),
                        Optional.ofNullable(minor).map(m -> new Price(m, currency)),
                        row.getString("stock_note")),
                Sha256.hex(text),
                row.getBoolean("retired"),
                row.getObject("changed_at", OffsetDateTime.class).toInstant(),
                row.getInt("version"),
                row.getInt("cars"));
    }
}
