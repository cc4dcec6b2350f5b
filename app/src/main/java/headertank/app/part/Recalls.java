package headertank.app.part;

import headertank.app.audit.AuditTrail;
import headertank.app.problem.NotFoundException;
import headertank.app.shop.CurrentUser;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Who was reached when a part is called back; each tick and each one taken away leaves a row that stays. */
@Service
class Recalls {

    private final JdbcClient jdbc;
    private final CurrentUser user;
    private final CarsWithPart cars;
    private final AuditTrail audit;

    Recalls(JdbcClient jdbc, CurrentUser user, CarsWithPart cars, AuditTrail audit) {
        this.jdbc = jdbc;
        this.user = user;
        this.cars = cars;
        this.audit = audit;
    }

    /**
     * Notes that the owner of a car was reached, or that they are to be called again; what stands already is not written twice.
     *
     * @throws NotFoundException when no car of the shop has, or had, the part
     */
    @Transactional
    public void mark(long partId, long carId, boolean reached) {
        CarsWithPart.Line car = cars.of(partId).stream()
                .filter(c -> c.carId() == carId)
                .findFirst()
                .orElseThrow(() -> new NotFoundException("car with this part", carId));
        if (car.reached().isPresent() == reached) {
            return;
        }
        jdbc.sql("insert into recall_contact (shop_id, part_id, car_id, reached, account_id) "
                        + "values (:shop, :part, :car, :reached, :who)")
                .param("shop", user.shopId())
                .param("part", partId)
                .param("car", carId)
                .param("reached", reached)
                .param("who", user.accountId())
                .update();
        audit.record(reached ? "part.recall-reached" : "part.recall-open", "part", partId, "car " + carId);
    }
}
