package headertank.app.evidence;

import headertank.app.audit.AuditTrail;
import headertank.app.car.CarSearch;
import headertank.app.form.FormKeys;
import headertank.app.problem.ConflictException;
import headertank.app.problem.NotFoundException;
import headertank.app.shop.CurrentUser;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Evidence of the current shop's cars. A piece never changes; whether it is used is said by further rows. */
@Service
@Transactional
public class CarEvidence {

    private final EvidenceStore store;
    private final CarSearch cars;
    private final CurrentUser user;
    private final AuditTrail audit;
    private final FormKeys forms;

    CarEvidence(EvidenceStore store, CarSearch cars, CurrentUser user, AuditTrail audit, FormKeys forms) {
        this.store = store;
        this.cars = cars;
        this.user = user;
        this.audit = audit;
        this.forms = forms;
    }

    /**
     * Keeps a piece, used from now on. A log is one piece, however often it is added.
     *
     * @param key of the form that is sent
     * @return id of the piece, now or before
     * @throws NotFoundException when the shop has no such car
     */
    public long add(long carId, NewPiece piece, UUID key) {
        cars.car(carId);
        return forms.once(user.shopId(), key, "car_evidence", carId + " " + piece, () -> store.add(
                        user.shopId(), user.accountId(), carId, piece)
                .map(id -> {
                    audit.record("evidence.added", "car", carId, piece.kind() + " " + id);
                    return id;
                })
                .orElseGet(() -> ofLog(carId, piece.logId().orElseThrow())));
    }

    private long ofLog(long carId, long logId) {
        return ofCar(carId).stream()
                .filter(p -> p.logId().filter(l -> l == logId).isPresent())
                .findFirst()
                .orElseThrow(() -> new NotFoundException("evidence of log", logId))
                .id();
    }

    /**
     * Says whether a piece is used, and which revision describes the car as it was then.
     *
     * @throws ConflictException when that is how it stands already
     */
    public void switchTo(long carId, long pieceId, boolean used, long revisionId, String reason, UUID key) {
        String said = carId + " " + pieceId + " " + used + " " + revisionId + " " + reason;
        forms.once(user.shopId(), key, "evidence_switch", said, () -> {
            forms.oneAtATime("evidence " + pieceId);
            Piece now = byId(carId, pieceId);
            if (now.used() == used && now.revisionId() == revisionId) {
                throw new ConflictException("evidence.stands-so");
            }
            long id = store.switchTo(user.shopId(), user.accountId(), pieceId, used, revisionId, reason);
            audit.record(used ? "evidence.used" : "evidence.left-out", "car", carId, "piece " + pieceId);
            return id;
        });
    }

    /** In the order in which they came; none of a car of another shop. */
    @Transactional(readOnly = true)
    public List<Piece> ofCar(long carId) {
        return store.ofCar(user.shopId(), carId);
    }

    /** Which of some cars have evidence that is used. */
    @Transactional(readOnly = true)
    public Set<Long> seenOf(Collection<Long> cars) {
        return cars.isEmpty() ? Set.of() : store.seenOf(user.shopId(), cars);
    }

    /** @throws NotFoundException when the car has no such piece */
    @Transactional(readOnly = true)
    public Piece byId(long carId, long id) {
        return ofCar(carId).stream()
                .filter(p -> p.id() == id)
                .findFirst()
                .orElseThrow(() -> new NotFoundException("evidence of car " + carId, id));
    }
}
