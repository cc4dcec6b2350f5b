package headertank.app.job;

import headertank.app.audit.AuditTrail;
import headertank.app.form.FormKeys;
import headertank.app.gate.Gate;
import headertank.app.gate.Step;
import headertank.app.problem.ConflictException;
import headertank.app.problem.NotFoundException;
import headertank.app.shop.CurrentUser;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Opens jobs, changes them and closes them; each deed leaves a row that stays. */
@Service
public class Jobs {

    private final JobRepository jobs;
    private final JobEventStore history;
    private final Queue queue;
    private final CurrentUser user;
    private final AuditTrail audit;
    private final FormKeys forms;
    private final Gate gate;

    Jobs(
            JobRepository jobs,
            JobEventStore history,
            Queue queue,
            CurrentUser user,
            AuditTrail audit,
            FormKeys forms,
            Gate gate) {
        this.jobs = jobs;
        this.history = history;
        this.queue = queue;
        this.user = user;
        this.audit = audit;
        this.forms = forms;
        this.gate = gate;
    }

    /**
     * Opens a job for a car; returns its id.
     *
     * @throws ConflictException when the car has an open job
     */
    @Transactional
    public long open(long carId, String asked, LocalDate promisedOn) {
        return open(carId, asked, promisedOn, UUID.randomUUID());
    }

    /** The same from a form. */
    @Transactional
    public long open(long carId, String asked, LocalDate promisedOn, UUID formKey) {
        return forms.once(user.shopId(), formKey, "job", carId + " " + asked + " " + promisedOn, () -> {
            gate.hold(carId);
            Gate.require(Step.OPEN_JOB, gate.ofCar(carId));
            long id = insert(user.shopId(), user.accountId(), carId, asked, promisedOn);
            audit.record("job.opened", "job", id, "car " + carId);
            return id;
        });
    }

    /** For the demo shop. */
    @Transactional
    public long openFor(long shop, long account, long carId, String asked, LocalDate promisedOn) {
        long id = insert(shop, account, carId, asked, promisedOn);
        audit.recordByProgram(shop, "job.opened", "job", id, "car " + carId);
        return id;
    }

    private long insert(long shop, long account, long carId, String asked, LocalDate promisedOn) {
        JobRow job = jobs.saveAndFlush(new JobRow(shop, carId, account, asked, promisedOn));
        history.add(shop, account, job, Job.Kind.OPENED, "");
        return job.id();
    }

    /** A job of this shop with its history. */
    @Transactional(readOnly = true)
    Job byId(long id) {
        JobLine line = queue.line(id).orElseThrow(() -> new NotFoundException("job", id));
        return new Job(line, find(id).version(), history.of(user.shopId(), id));
    }

    private JobRow find(long id) {
        return jobs.findByIdAndShopId(id, user.shopId()).orElseThrow(() -> new NotFoundException("job", id));
    }

    /** @throws ConflictException when somebody else has changed the job since the form was filled, or closed it */
    @Transactional
    void change(long id, String asked, LocalDate promisedOn, int version, UUID key) {
        deed(id, key, version, Job.Kind.CHANGED, "", asked + " " + promisedOn, job -> job.change(asked, promisedOn));
    }

    /** Something has to be waited for. */
    @Transactional
    void pause(long id, String reason, int version, UUID key) {
        deed(id, key, version, Job.Kind.PAUSED, reason, "", job -> job.pause(true));
    }

    @Transactional
    void resume(long id, int version, UUID key) {
        deed(id, key, version, Job.Kind.RESUMED, "", "", job -> job.pause(false));
    }

    /** Nothing more is done. */
    @Transactional
    void callOff(long id, String reason, int version, UUID key) {
        deed(id, key, version, Job.Kind.CALLED_OFF, reason, "", job -> job.close(Job.Kind.CALLED_OFF, jobs.now(id)));
    }

    /** The customer has the car: the last click. */
    @Transactional
    void handOver(long id, int version, UUID key) {
        deed(id, key, version, Job.Kind.HANDED_OVER, "", "", job -> job.close(Job.Kind.HANDED_OVER, jobs.now(id)));
    }

    /** The last click was none: the job is open again, as if the car had never left. */
    @Transactional
    void takeBack(long id, String reason, int version, UUID key) {
        deed(id, key, version, Job.Kind.TAKEN_BACK, reason, "", JobRow::open);
    }

    /** What the state machine calls a deed; a change of words is none of its business. */
    private static Optional<Step> step(Job.Kind kind) {
        return switch (kind) {
            case OPENED -> Optional.of(Step.OPEN_JOB);
            case CHANGED -> Optional.empty();
            case PAUSED -> Optional.of(Step.PAUSE);
            case RESUMED -> Optional.of(Step.RESUME);
            case HANDED_OVER -> Optional.of(Step.HAND_OVER);
            case TAKEN_BACK -> Optional.of(Step.TAKE_BACK);
            case CALLED_OFF -> Optional.of(Step.CALL_OFF);
        };
    }

    /** @param words what a form says beside the reason */
    private void deed(
            long id, UUID key, int version, Job.Kind kind, String reason, String words, Consumer<JobRow> change) {
        String said = id + " " + kind + " " + version + " " + reason + " " + words;
        forms.once(user.shopId(), key, "job_event", said, () -> deed(id, version, kind, reason, change));
    }

    private long deed(long id, int version, Job.Kind kind, String reason, Consumer<JobRow> change) {
        long car = queue.line(id)
                .orElseThrow(() -> new NotFoundException("job", id))
                .carId();
        gate.hold(car);
        step(kind).ifPresent(step -> Gate.require(step, gate.ofJob(id)));
        if (kind == Job.Kind.TAKEN_BACK) {
            Gate.require(Step.OPEN_JOB, gate.ofCar(car));
        }
        JobRow job = find(id);
        if (job.version() != version || job.isClosed() != (kind == Job.Kind.TAKEN_BACK)) {
            throw new ConflictException("job.changed-meanwhile");
        }
        change.accept(job);
        jobs.saveAndFlush(job);
        history.add(user.shopId(), user.accountId(), job, kind, reason);
        audit.record("job." + kind.name().toLowerCase(Locale.ROOT).replace('_', '-'), "job", id, "");
        return id;
    }
}
