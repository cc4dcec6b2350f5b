package headertank.app.part;

import headertank.app.audit.AuditTrail;
import headertank.app.problem.NotFoundException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Who was reached when a part is called back; each tick and each one taken away leaves a row that stays. */
@Service
class Recalls {

    private final RecallStore rows;
    private final CarsWithPart cars;
    private final AuditTrail audit;

    Recalls(RecallStore rows, CarsWithPart cars, AuditTrail audit) {
        this.rows = rows;
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
        rows.add(partId, carId, reached);
        audit.record(reached ? "part.recall-reached" : "part.recall-open", "part", partId, "car " + carId);
    }
}
