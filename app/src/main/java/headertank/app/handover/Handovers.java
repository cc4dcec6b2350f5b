package headertank.app.handover;

import headertank.app.audit.AuditTrail;
import headertank.app.car.CarSearch;
import headertank.app.carspec.Revisions;
import headertank.app.check.Checks;
import headertank.app.check.stored.CheckInput;
import headertank.app.check.stored.StoredCheck;
import headertank.app.handover.HandoverDecision.OpenItem;
import headertank.app.handover.item.CheckList;
import headertank.app.handover.item.ChecklistLine;
import headertank.app.handover.item.Expectations;
import headertank.app.handover.item.Measurement;
import headertank.app.handover.item.WorkshopDay;
import headertank.app.handover.photo.PhotoLine;
import headertank.app.handover.photo.PhotoStore;
import headertank.app.handover.photo.StoredPicture;
import headertank.app.problem.ConflictException;
import headertank.app.problem.NotFoundException;
import headertank.app.shop.CurrentUser;
import headertank.calc.Rater;
import headertank.calc.Version;
import headertank.calc.result.IdleExpectation.Band;
import headertank.calc.result.IdleExpectation.Figure;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Keeps what is done, measured and photographed at handing a car over, and the last word. All rows are only ever added. */
@Service
@Transactional(readOnly = true)
public class Handovers {

    private final Checks checks;
    private final Revisions revisions;
    private final Supplier<Rater> rater;
    private final DayStore days;
    private final MeasurementStore measurements;
    private final PhotoStore photos;
    private final DecisionStore decisions;
    private final CarSearch cars;
    private final CurrentUser user;
    private final AuditTrail audit;
    private final ApplicationEventPublisher events;

    Handovers(
            Checks checks,
            Revisions revisions,
            Supplier<Rater> rater,
            DayStore days,
            MeasurementStore measurements,
            PhotoStore photos,
            DecisionStore decisions,
            CarSearch cars,
            CurrentUser user,
            AuditTrail audit,
            ApplicationEventPublisher events) {
        this.checks = checks;
        this.revisions = revisions;
        this.rater = rater;
        this.days = days;
        this.measurements = measurements;
        this.photos = photos;
        this.decisions = decisions;
        this.cars = cars;
        this.user = user;
        this.audit = audit;
        this.events = events;
    }

    /** The list of a check of this shop. */
    public Handover of(long checkId) {
        StoredCheck check = checks.byId(checkId);
        long shop = user.shopId();
        Optional<WorkshopDay> day = days.newest(shop, checkId);
        Map<Figure, Band> expected = day.map(WorkshopDay::bands).orElse(Map.of());
        Map<String, Measurement> entered = measurements.newest(shop, checkId);
        Map<String, List<PhotoLine>> pictures = photos.lines(shop, checkId);
        List<ChecklistLine> lines = CheckList.of(checks.input(checkId), check.result()).stream()
                .map(item -> new ChecklistLine(
                        item,
                        Optional.ofNullable(entered.get(item.key())),
                        Expectations.of(item, expected),
                        pictures.getOrDefault(item.key(), List.of())))
                .toList();
        return new Handover(check.line(), day, lines, decisions.ofCheck(shop, checkId));
    }

    /** The list of a car that was worked on last, if there is one. */
    public Optional<Handover> newestOfCar(long carId) {
        cars.car(carId);
        return decisions.newestCheckOfCar(user.shopId(), carId).map(this::of);
    }

    /** Says how warm the workshop is [K]; what is expected there is worked out and kept. */
    @Transactional
    public void setDay(long checkId, double ambientK, UUID key) {
        checks.byId(checkId);
        CheckInput input = checks.input(checkId);
        var build = revisions.byId(input.revisionId()).spec().build();
        var expected = rater.get().idleInWorkshop(build, ambientK);
        days.insert(user.shopId(), checkId, user.accountId(), expected, Version.CALC_CORE, key)
                .ifPresent(id -> audit.record("handover.day-set", "handover_day", id, "check " + checkId));
    }

    /** Whether this entry is stored already. */
    public boolean isStored(EntryForm form) {
        return measurements.has(user.shopId(), form.key());
    }

    /**
     * Keeps what was entered for an item. The same key a second time changes nothing.
     *
     * @throws ConflictException when the car has left
     */
    @Transactional
    public void enter(long checkId, EntryForm form, Optional<Double> valueSi, String typed) {
        if (isStored(form)) {
            return;
        }
        requireOpen(checkId, form.item());
        measurements
                .insert(user.shopId(), checkId, user.accountId(), form, valueSi, typed)
                .ifPresent(id -> audit.record("handover.entered", "measurement", id, form.item()));
    }

    /** Keeps a picture. The same key a second time changes nothing. */
    @Transactional
    public void addPhoto(long checkId, String item, String caption, StoredPicture picture, UUID key) {
        if (photos.has(user.shopId(), key)) {
            return;
        }
        requireOpen(checkId, item);
        photos.insert(user.shopId(), checkId, user.accountId(), item, caption, picture, key)
                .ifPresent(id -> audit.record("handover.photo-added", "handover_photo", id, item));
    }

    /** The bytes of a picture of this shop. */
    public byte[] photo(long id, boolean small) {
        return photos.jpeg(user.shopId(), id, small).orElseThrow(() -> new NotFoundException("photo", id));
    }

    public boolean isDecided(DecisionForm form) {
        return decisions.has(user.shopId(), form.key());
    }

    /**
     * Keeps the last word.
     *
     * @throws ConflictException when the rules do not allow it
     */
    @Transactional
    public void decide(long checkId, DecisionForm form) {
        Handover handover = of(checkId);
        if (isDecided(form)) {
            return;
        }
        if (!DecisionRules.faults(handover, form).isEmpty()) {
            throw new ConflictException("handover.decide.not-allowed");
        }
        boolean leaves = form.outcome() == HandoverOutcome.DELIVER;
        List<OpenItem> open = handover.open().stream()
                .map(l -> l.item().key())
                .map(k -> new OpenItem(k, leaves ? form.why(k) : ""))
                .toList();
        decisions.insert(user.shopId(), checkId, user.accountId(), form, open).ifPresent(id -> {
            audit.record(
                    "handover.decided", "handover_decision", id, form.outcome().name());
            long car = handover.check().carId();
            events.publishEvent(leaves ? new Delivered(car, checkId) : new SentBack(car, checkId, form.reason()));
        });
    }

    private void requireOpen(long checkId, String item) {
        Handover handover = of(checkId);
        if (handover.line(item).isEmpty()) {
            throw new NotFoundException("item", item);
        }
        if (handover.isDelivered()) {
            throw new ConflictException("handover.delivered");
        }
    }
}
