package headertank.app.part;

import headertank.app.audit.AuditTrail;
import headertank.app.form.FormKeys;
import headertank.app.problem.NotFoundException;
import headertank.app.shop.CurrentUser;
import java.util.UUID;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Who was reached when a part is called back; each tick and each one taken away leaves a row that stays. */
@Service
class Recalls {

    private final RecallStore rows;
    private final CarsWithPart cars;
    private final CurrentUser user;
    private final AuditTrail audit;
    private final FormKeys forms;

    Recalls(RecallStore rows, CarsWithPart cars, CurrentUser user, AuditTrail audit, FormKeys forms) {
        this.rows = rows;
        this.cars = cars;
        this.user = user;
        this.audit = audit;
        this.forms = forms;
    }

    /**
     * Notes that the owner of a car was reached, or that they are to be called again; what stands already is not written twice.
     *
     * @throws NotFoundException when no car of the shop has, or had, the part
     */
    @Transactional
    public void mark(long partId, long carId, boolean reached, UUID key) {
        String said = partId + " " + carId + " " + reached;
        forms.once(user.shopId(), key, "recall_contact", said, () -> {
            forms.oneAtATime("recall " + partId + " " + carId);
            CarsWithPart.Line car = cars.of(partId).stream()
                    .filter(c -> c.carId() == carId)
                    .findFirst()
                    .orElseThrow(() -> new NotFoundException("car with this part", carId));
            if (car.reached().isPresent() != reached) {
                rows.add(partId, carId, reached);
                audit.record(reached ? "part.recall-reached" : "part.recall-open", "part", partId, "car " + carId);
            }
            return carId;
        });
    }
}
