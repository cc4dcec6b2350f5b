package headertank.app.carlog;

import headertank.app.audit.AuditTrail;
import headertank.app.car.CarSearch;
import headertank.app.form.FormKeys;
import headertank.app.log.file.LogLimits;
import headertank.app.log.file.LogSource;
import headertank.app.log.read.LogMapping;
import headertank.app.log.read.LogReader;
import headertank.app.log.read.LogSummary;
import headertank.app.problem.NotFoundException;
import headertank.app.shop.CurrentUser;
import headertank.app.stored.Sha256;
import java.io.IOException;
import java.util.List;
import java.util.OptionalDouble;
import java.util.UUID;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The logs of the current shop's cars. A kept one never changes. */
@Service("carLogs")
@Transactional
public class CarLogs {

    private final CarLogStore store;
    private final CarSearch cars;
    private final CurrentUser user;
    private final AuditTrail audit;
    private final FormKeys forms;

    CarLogs(CarLogStore store, CarSearch cars, CurrentUser user, AuditTrail audit, FormKeys forms) {
        this.store = store;
        this.cars = cars;
        this.user = user;
        this.audit = audit;
        this.forms = forms;
    }

    /**
     * Keeps a log. The same text of the same car, read the same way, is kept once, whatever its name.
     *
     * @param key of the form that is sent
     * @return id of the log, now or before
     * @throws NotFoundException when the shop has no such car
     */
    public long keep(long carId, LogToKeep log, UUID key) {
        cars.car(carId);
        String said = carId + " " + Sha256.hex(log.text()) + " " + log.reading().text();
        return forms.once(user.shopId(), key, "car_log", said, () -> {
            CarLogStore.Added added = store.add(user.shopId(), user.accountId(), carId, log);
            if (added.isNew()) {
                audit.record("log.kept", "car", carId, "log " + added.id());
            }
            return added.id();
        });
    }

    /**
     * Keeps a log whose columns are what they seem to be, in the name of an account that has not signed in: for data that the program
     * brings along.
     *
     * @param ambientK air around the car [K]
     * @param drove id of the duty that was driven
     */
    public long keepFor(long shopId, long authorId, long carId, String name, String text, double ambientK, String drove)
            throws IOException {
        LogSource source = LogSource.of(text);
        LogSummary summary = LogReader.survey(source, LogLimits.USUAL);
        KeptText kept = KeptText.of(source, summary, false);
        LogMapping mapping = summary.guessed().flatMap(kept::mapping).orElseThrow();
        LogToKeep log = LogToKeep.of(name, kept, mapping, OptionalDouble.of(ambientK), drove);
        CarLogStore.Added added = store.add(shopId, authorId, carId, log);
        if (added.isNew()) {
            audit.recordByProgram(shopId, "log.kept", "car", carId, "log " + added.id());
        }
        return added.id();
    }

    /** Logs of a car, newest first; none of a car of another shop. */
    @Transactional(readOnly = true)
    public List<KeptLog> ofCar(long carId) {
        return store.ofCar(user.shopId(), carId);
    }

    /** @throws NotFoundException when the car has no such log */
    @Transactional(readOnly = true)
    public KeptLog byId(long carId, long id) {
        return store.byId(user.shopId(), carId, id).orElseThrow(() -> new NotFoundException("log of car " + carId, id));
    }

    @Transactional(readOnly = true)
    public LogSource text(KeptLog log) {
        return store.text(user.shopId(), log.id());
    }
}
