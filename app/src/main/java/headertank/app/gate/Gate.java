package headertank.app.gate;

import headertank.app.gate.Standing.Check;
import headertank.app.gate.Standing.Job;
import headertank.app.gate.Standing.Open;
import headertank.app.problem.ConflictException;
import headertank.app.problem.NotFoundException;
import headertank.app.shop.CurrentUser;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Map;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Reads where a car of the current shop stands, and lets a step through or not. */
@Component("gate")
@Transactional(readOnly = true)
public class Gate {

    private static final String STANDING = """
            select s.revision_id, s.check_run_id, s.rated_at, s.signed_at, s.out_of_date, s.decision, s.decided,
                   s.found_new > 0 as found_new, s.found_old > 0 as found_old, s.reading_new > 0 as reading_new,
                   s.reading_old > 0 as reading_old, s.back_new > 0 as back_new, s.back_old > 0 as back_old,
                   j.paused, j.closed_as,
                   not s.out_of_date and answers(s.car_id, s.rated_at, s.signed_at,
                     case when j.closed_as is null then j.opened_at end) as rated
            from car_standing s
            """;

    private final JdbcClient jdbc;
    private final CurrentUser user;

    Gate(JdbcClient jdbc, CurrentUser user) {
        this.jdbc = jdbc;
        this.user = user;
    }

    /**
     * Makes everybody else who moves this car wait until this transaction has ended; to be called before its standing is read.
     *
     * @throws NotFoundException when the shop has no such car
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public void hold(long carId) {
        jdbc.sql("select id from car where id = :car and shop_id = :shop for no key update")
                .param("car", carId)
                .param("shop", user.shopId())
                .query(Long.class)
                .optional()
                .orElseThrow(() -> new NotFoundException("car", carId));
    }

    /** Where a car stands for the job that was opened last, open ones first. */
    public Standing ofCar(long carId) {
        return jdbc.sql(STANDING + """
                        left join lateral (select * from job where car_id = s.car_id
                                           order by closed_as is not null, opened_at desc, id desc limit 1) j on true
                        where s.shop_id = :shop and s.car_id = :id""")
                .param("shop", user.shopId())
                .param("id", carId)
                .query(Gate::standing)
                .optional()
                .orElseThrow(() -> new NotFoundException("car", carId));
    }

    /** Where a car stands, seen from one of its checks: a check that is not the newest of the newest revision does not count. */
    public Standing ofCheck(long carId, long checkId) {
        Standing now = ofCar(carId);
        boolean newest = jdbc.sql(
                        "select exists (select 1 from car_standing where car_id = :car and check_run_id = :check)")
                .param("car", carId)
                .param("check", checkId)
                .query(Boolean.class)
                .single();
        return newest ? now : now.uncounted();
    }

    /** Where a job's car stands for that job. */
    public Standing ofJob(long jobId) {
        return jdbc.sql(STANDING + " join job j on j.car_id = s.car_id where s.shop_id = :shop and j.id = :id")
                .param("shop", user.shopId())
                .param("id", jobId)
                .query(Gate::standing)
                .optional()
                .orElseThrow(() -> new NotFoundException("job", jobId));
    }

    /** @throws ConflictException when the step cannot be taken from there */
    public static void require(Step step, Standing from) {
        step.refusal(from).ifPresent(why -> {
            throw new ConflictException(why);
        });
    }

    private static Standing standing(ResultSet row, int n) throws SQLException {
        boolean described = row.getObject("revision_id") != null;
        boolean rated = row.getBoolean("rated");
        String decision = row.getString("decision");
        boolean decided = rated && row.getBoolean("decided");
        Job job = job(row.getString("closed_as"), row.getObject("paused", Boolean.class));
        boolean closed = job == Job.HANDED_OVER || job == Job.CALLED_OFF;
        return new Standing(
                job,
                described,
                rated ? check(decision) : Check.NONE,
                decided,
                decided,
                Map.of(
                        FaultKind.FOUND,
                        Open.of(row.getBoolean("found_new"), row.getBoolean("found_old")),
                        FaultKind.READING,
                        Open.of(row.getBoolean("reading_new"), row.getBoolean("reading_old")),
                        FaultKind.SENT_BACK,
                        Open.of(row.getBoolean("back_new"), row.getBoolean("back_old"))),
                closed && !rated);
    }

    private static Check check(String decision) {
        return decision == null ? Check.UNSIGNED : decision.equals("HOLD_BACK") ? Check.STAYS : Check.LEAVES;
    }

    private static Job job(String closedAs, Boolean paused) {
        if (closedAs != null) {
            return Job.valueOf(closedAs);
        }
        return paused == null ? Job.NONE : paused ? Job.PAUSED : Job.OPEN;
    }
}
