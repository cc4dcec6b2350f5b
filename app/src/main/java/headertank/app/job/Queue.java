package headertank.app.job;

import headertank.app.car.CarLine;
import headertank.app.gate.Stage;
import headertank.app.shop.CurrentUser;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Jobs of the current shop as lists: one query each, a page at a time, the earliest promise first. */
@Component
@Transactional(readOnly = true)
class Queue {

    /** Rows of one page of a list. */
    static final int PAGE = 50;

    static final String JOB = """
            select j.id, j.car_id, c.plate, c.make, c.model, c.model_year, u.name as customer, j.asked, j.promised_on,
                   j.stage, j.revision_number, j.check_run_id
            from job_stage j
            join car c on c.id = j.car_id
            join customer u on u.id = c.customer_id
            where j.shop_id = :shop
            """;
    private static final LocalDate BEFORE_ALL = LocalDate.of(1, 1, 1);

    private final JdbcClient jdbc;
    private final CurrentUser user;

    Queue(JdbcClient jdbc, CurrentUser user) {
        this.jdbc = jdbc;
        this.user = user;
    }

    /**
     * What a list of open jobs holds.
     *
     * @param stages only these; empty for all
     * @param until promised for this day or before; null for all
     */
    record Choice(Collection<Stage> stages, LocalDate until) {
        static final Choice ALL = new Choice(List.of(), null);
    }

    /** Open jobs, the earliest promise first, from behind {@code after}; at most {@code limit}. */
    List<JobLine> open(Choice choice, Position after, int limit) {
        Collection<Stage> stages = choice.stages().isEmpty() ? Arrays.asList(Stage.values()) : choice.stages();
        return jdbc.sql(JOB + """
                         and j.closed_as is null and j.stage in (:stages)
                         and j.promised_on <= :until and (j.promised_on, j.id) > (:afterDay, :afterId)
                        order by j.promised_on, j.id limit :limit""")
                .param("shop", user.shopId())
                .param("stages", stages.stream().map(Stage::name).toList())
                .param("until", choice.until() == null ? LocalDate.of(9999, 12, 31) : choice.until())
                .param("afterDay", after.day())
                .param("afterId", after.id())
                .param("limit", limit)
                .query(Queue::line)
                .list();
    }

    /** Where a page of a list ends. */
    record Position(LocalDate day, long id) {
        static final Position START = new Position(BEFORE_ALL, 0);

        static Position of(JobLine last) {
            return new Position(last.promisedOn(), last.id());
        }
    }

    Optional<JobLine> line(long id) {
        return jdbc.sql(JOB + " and j.id = :id")
                .param("shop", user.shopId())
                .param("id", id)
                .query(Queue::line)
                .optional();
    }

    /** The newest jobs of a car, open ones first. */
    List<JobLine> ofCar(long carId, int limit) {
        return jdbc.sql(JOB + " and j.car_id = :car order by j.closed_as is not null, j.id desc limit :limit")
                .param("shop", user.shopId())
                .param("car", carId)
                .param("limit", limit)
                .query(Queue::line)
                .list();
    }

    static JobLine line(ResultSet row, int n) throws SQLException {
        return new JobLine(
                row.getLong("id"),
                row.getLong("car_id"),
                row.getString("plate"),
                carTitle(row),
                row.getString("customer"),
                row.getString("asked"),
                row.getObject("promised_on", LocalDate.class),
                Stage.valueOf(row.getString("stage")),
                Optional.ofNullable(row.getObject("revision_number", Integer.class)),
                Optional.ofNullable(row.getObject("check_run_id", Long.class)));
    }

    static String carTitle(ResultSet row) throws SQLException {
        return CarLine.title(row.getString("make"), row.getString("model"), row.getObject("model_year", Integer.class));
    }
}
