package headertank.app.car;

import headertank.app.problem.NotFoundException;
import headertank.app.shop.CurrentUser;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Locale;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Finds cars and customers of the current shop by plate, name or phone. */
@Component
@Transactional(readOnly = true)
public class CarSearch {

    /** Rows of one page of a list. */
    static final int PAGE = 50;

    private static final String CAR = """
            select c.id, c.plate, c.make, c.model, c.model_year, c.note, u.id as customer_id, u.name, u.phone
            from car c join customer u on u.id = c.customer_id
            where c.shop_id = :shop
            """;
    private static final String CUSTOMER = """
            select u.id, u.name, u.phone, u.email, u.note,
                   (select count(*) from car c where c.customer_id = u.id) as cars
            from customer u where u.shop_id = :shop
            """;

    private final JdbcClient jdbc;
    private final CurrentUser user;

    CarSearch(JdbcClient jdbc, CurrentUser user) {
        this.jdbc = jdbc;
        this.user = user;
    }

    /** The car; "not found" for a car of another shop too. */
    public CarLine car(long id) {
        return jdbc.sql(CAR + " and c.id = :id")
                .param("shop", user.shopId())
                .param("id", id)
                .query(CarSearch::carLine)
                .optional()
                .orElseThrow(() -> new NotFoundException("car", id));
    }

    /**
     * Cars whose plate or phone contains the text, or whose plate, make, model and owner hold all its words in any order, by plate;
     * at most {@link #PAGE} + 1. A word that stands nowhere may have one letter wrong; see the function {@code cars_with}.
     */
    public List<CarLine> cars(String text, String afterPlate, long afterId) {
        Terms terms = Terms.of(text);
        return jdbc.sql(CAR + """
                         and (:text = '' or c.plate_key like :plate
                              or c.id in (select all_words('cars_with', :shop, :text))
                              or (:digits <> '' and u.phone_digits like '%' || :digits || '%'))
                         and (c.plate, c.id) > (:afterPlate, :afterId)
                        order by c.plate, c.id limit :limit""")
                .param("shop", user.shopId())
                .param("text", terms.text())
                .param("plate", terms.plateLike())
                .param("digits", terms.digits())
                .param("afterPlate", afterPlate)
                .param("afterId", afterId)
                .param("limit", PAGE + 1)
                .query(CarSearch::carLine)
                .list();
    }

    public List<CarLine> carsOf(long customerId) {
        return jdbc.sql(CAR + " and u.id = :customer order by c.plate, c.id")
                .param("shop", user.shopId())
                .param("customer", customerId)
                .query(CarSearch::carLine)
                .list();
    }

    public CustomerLine customer(long id) {
        return jdbc.sql(CUSTOMER + " and u.id = :id")
                .param("shop", user.shopId())
                .param("id", id)
                .query(CarSearch::customerLine)
                .optional()
                .orElseThrow(() -> new NotFoundException("customer", id));
    }

    /**
     * Customers whose phone contains the text, or whose name and mail address hold all its words in any order, by name; at most
     * {@link #PAGE} + 1. A word that stands nowhere may have one letter wrong.
     */
    public List<CustomerLine> customers(String text, String afterName, long afterId) {
        Terms terms = Terms.of(text);
        return jdbc.sql(CUSTOMER + """
                         and (:text = '' or u.id in (select all_words('customers_with', :shop, :text))
                              or (:digits <> '' and u.phone_digits like '%' || :digits || '%'))
                         and (u.name, u.id) > (:afterName, :afterId)
                        order by u.name, u.id limit :limit""")
                .param("shop", user.shopId())
                .param("text", terms.text())
                .param("digits", terms.digits())
                .param("afterName", afterName)
                .param("afterId", afterId)
                .param("limit", PAGE + 1)
                .query(CarSearch::customerLine)
                .list();
    }

    /** A few customers to choose from. */
    public List<CustomerLine> choices(String text) {
        return customers(text, "", 0).stream().limit(8).toList();
    }

    /** Cars with this plate, however it is spaced and hyphenated. */
    public List<CarLine> withPlate(String plate) {
        return jdbc.sql(CAR + " and :plate <> '' and c.plate_key = :plate order by c.id limit 5")
                .param("shop", user.shopId())
                .param("plate", Terms.plateKey(plate))
                .query(CarSearch::carLine)
                .list();
    }

    /** Customers with this phone number, however it is written; a few digits are no number. */
    public List<CustomerLine> withPhone(String phone) {
        String digits = phone.replaceAll("[^0-9]", "");
        return jdbc.sql(CUSTOMER + " and length(:digits) > 4 and u.phone_digits = :digits order by u.id limit 5")
                .param("shop", user.shopId())
                .param("digits", digits)
                .query(CarSearch::customerLine)
                .list();
    }

    private static CarLine carLine(ResultSet row, int n) throws SQLException {
        return new CarLine(
                row.getLong("id"),
                row.getString("plate"),
                row.getString("make"),
                row.getString("model"),
                row.getObject("model_year", Integer.class),
                row.getString("note"),
                row.getLong("customer_id"),
                row.getString("name"),
                row.getString("phone"));
    }

    private static CustomerLine customerLine(ResultSet row, int n) throws SQLException {
        return new CustomerLine(
                row.getLong("id"),
                row.getString("name"),
                row.getString("phone"),
                row.getString("email"),
                row.getString("note"),
                row.getInt("cars"));
    }

    /** The search text in the shapes that the columns are kept in. */
    private record Terms(String text, String plateLike, String digits) {
        static Terms of(String typed) {
            String text = typed == null ? "" : typed.strip();
            String digits = text.matches("[0-9+()/ .-]+") ? text.replaceAll("[^0-9]", "") : "";
            String plate = plateKey(text);
            return new Terms(text, plate.isEmpty() ? "" : "%" + escaped(plate) + "%", digits);
        }

        /** As the column {@code plate_key} keeps it. */
        static String plateKey(String plate) {
            return plate.replaceAll("[\\s.·-]", "").toUpperCase(Locale.ROOT);
        }

        private static String escaped(String text) {
            return text.replace("\\", "\\\\").replace("%", "\\%").replace("_", "\\_");
        }
    }
}
