package headertank.app.demo;

import java.util.List;
import java.util.Optional;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** What of the invented shop is there already. */
@Component
@ConditionalOnProperty("headertank.demo")
@Transactional(readOnly = true)
class DemoSight {

    /** A car of the shop, and the person at its front desk. */
    record SeenCar(long shop, long desk, long car) {}

    private final JdbcClient jdbc;

    DemoSight(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Invented shops whose catalogue is empty. */
    List<Long> shopsWithoutParts() {
        return jdbc.sql("select id from shop s where invented and not exists "
                        + "(select 1 from part p where p.shop_id = s.id)")
                .query(Long.class)
                .list();
    }

    /** The invented car with this plate. */
    Optional<SeenCar> car(String plate) {
        return jdbc.sql("""
                        select c.shop_id, a.id as desk, c.id as car
                        from car c join shop s on s.id = c.shop_id and s.invented
                             join account a on a.shop_id = s.id and a.login = :desk
                        where c.plate = :plate order by c.id limit 1""")
                .param("desk", DemoShop.LOGINS.get(0).login())
                .param("plate", plate)
                .query((row, n) -> new SeenCar(row.getLong("shop_id"), row.getLong("desk"), row.getLong("car")))
                .optional();
    }

    boolean hasSpec(long car) {
        return is("select exists (select 1 from revision where car_id = :car)", car);
    }

    boolean isRated(long car) {
        return is(
                "select exists (select 1 from check_run k join revision r on r.id = k.revision_id where r.car_id = :car)",
                car);
    }

    boolean anyJob() {
        return jdbc.sql("select exists (select 1 from job)")
                .query(Boolean.class)
                .single();
    }

    private boolean is(String question, long car) {
        return jdbc.sql(question).param("car", car).query(Boolean.class).single();
    }
}
