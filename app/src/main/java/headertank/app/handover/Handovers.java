package headertank.app.handover;

import headertank.app.audit.AuditTrail;
import headertank.app.car.CarSearch;
import headertank.app.carspec.Revisions;
import headertank.app.check.Checks;
import headertank.app.check.stored.DutyResult;
import headertank.app.check.stored.StoredCheck;
import headertank.app.form.FormKeys;
import headertank.app.gate.CarFault;
import headertank.app.gate.CarFault.Reading;
import headertank.app.gate.FaultStore;
import headertank.app.gate.Gate;
import headertank.app.gate.Step;
import headertank.app.handover.HandoverDecision.OpenItem;
import headertank.app.handover.asked.AskedItem;
import headertank.app.handover.asked.AskedItems;
import headertank.app.handover.item.CheckList;
import headertank.app.handover.item.ChecklistLine;
import headertank.app.handover.item.Expectations;
import headertank.app.handover.item.ExpectedReadings;
import headertank.app.handover.item.ItemOutcome;
import headertank.app.handover.item.Measurement;
import headertank.app.handover.item.ReadingComparison;
import headertank.app.handover.item.WorkshopDay;
import headertank.app.handover.photo.PhotoLine;
import headertank.app.handover.photo.PhotoStore;
import headertank.app.handover.photo.StoredPicture;
import headertank.app.problem.ConflictException;
import headertank.app.problem.NotFoundException;
import headertank.app.shop.CurrentUser;
import headertank.app.stored.Sha256;
import headertank.calc.Version;
import headertank.calc.result.IdleExpectation;
import headertank.calc.result.IdleExpectation.Band;
import headertank.calc.result.IdleExpectation.Figure;
import java.time.Instant;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.transaction.support.TransactionTemplate;

/** Keeps what is done, measured and photographed at handing a car over, and the last word. All rows are only ever added. */
@Service
@Transactional(readOnly = true)
public class Handovers {

    /** Id of an answer that is no entry. */
    private static final long NO_ROW = 0;

    private final Checks checks;
    private final Revisions revisions;
    private final ExpectedReadings expectedReadings;
    private final TransactionTemplate transactions;
    private final DayStore days;
    private final MeasurementStore measurements;
    private final PhotoStore photos;
    private final DecisionStore decisions;
    private final CarSearch cars;
    private final CurrentUser user;
    private final AuditTrail audit;
    private final ApplicationEventPublisher events;
    private final FormKeys forms;
    private final Gate gate;
    private final FaultStore faults;
    private final AskedItems asked;

    Handovers(
            Checks checks,
            Revisions revisions,
            ExpectedReadings expectedReadings,
            TransactionTemplate transactions,
            DayStore days,
            MeasurementStore measurements,
            PhotoStore photos,
            DecisionStore decisions,
            CarSearch cars,
            CurrentUser user,
            AuditTrail audit,
            ApplicationEventPublisher events,
            FormKeys forms,
            Gate gate,
            FaultStore faults,
            AskedItems asked) {
        this.checks = checks;
        this.revisions = revisions;
        this.expectedReadings = expectedReadings;
        this.transactions = transactions;
        this.days = days;
        this.measurements = measurements;
        this.photos = photos;
        this.decisions = decisions;
        this.cars = cars;
        this.user = user;
        this.audit = audit;
        this.events = events;
        this.forms = forms;
        this.gate = gate;
        this.faults = faults;
        this.asked = asked;
    }

    /** The list of a check of this shop. */
    public Handover of(long checkId) {
        StoredCheck check = checks.byId(checkId);
        long car = check.line().carId();
        long shop = user.shopId();
        Optional<WorkshopDay> day = days.newest(shop, checkId);
        Map<Figure, Band> expected = day.map(WorkshopDay::bands).orElse(Map.of());
        Map<String, Measurement> entered = measurements.newest(shop, checkId);
        Map<String, List<PhotoLine>> pictures = photos.lines(shop, checkId);
        List<CarFault> found = faults.ofCar(car);
        Map<String, AskedItem> leftOut = asked.leftOut(
                checkId, check.result().duties().stream().map(DutyResult::id).collect(Collectors.toSet()));
        List<ChecklistLine> lines = CheckList.of(checks.input(checkId), check.result()).stream()
                .map(item -> new ChecklistLine(
                        item,
                        Optional.ofNullable(entered.get(item.key()))
                                .or(() -> Optional.ofNullable(leftOut.get(item.key()))
                                        .map(Handovers::bySetting)),
                        !entered.containsKey(item.key()) && leftOut.containsKey(item.key()),
                        Expectations.of(item, expected),
                        pictures.getOrDefault(item.key(), List.of()),
                        found.stream()
                                .filter(f -> f.isOpen() && f.item().equals(item.key()))
                                .toList(),
                        day.isPresent()))
                .toList();
        return new Handover(
                check.line(), day, lines, decisions.ofCheck(shop, checkId), found, gate.ofCheck(car, checkId));
    }

    /** The owner's answer where the shop leaves an item out; nobody has entered it. */
    private static Measurement bySetting(AskedItem item) {
        return new Measurement(
                NO_ROW,
                item.item(),
                ItemOutcome.NOT_APPLICABLE,
                Optional.empty(),
                "",
                item.reason(),
                item.authorName(),
                item.setAt());
    }

    /** The list of a car that was worked on last, if there is one. */
    public Optional<Handover> newestOfCar(long carId) {
        cars.car(carId);
        return decisions.newestCheckOfCar(user.shopId(), carId).map(this::of);
    }

    /**
     * Says how warm the workshop is [K]; what is expected there is worked out, before the transaction begins, and kept, and readings that
     * were entered before are held against it.
     */
    @Transactional(propagation = Propagation.SUPPORTS)
    public void setDay(long checkId, double ambientK, UUID key) {
        IdleExpectation expected = expectedReadings.of(checkId, ambientK);
        transactions.executeWithoutResult(t -> forms.once(
                user.shopId(), key, "handover_day", checkId + " " + ambientK, () -> dayOf(checkId, expected)));
    }

    private long dayOf(long checkId, IdleExpectation expected) {
        Handover before = inWork(checkId);
        Optional<WorkshopDay> same =
                before.day().filter(d -> d.ambientK() == expected.ambientK() && isJustSaid(d.authorName(), d.setAt()));
        if (same.isPresent()) {
            return same.get().id();
        }
        long id = days.insert(user.shopId(), checkId, user.accountId(), expected, Version.CALC_CORE);
        audit.record("handover.day-set", "handover_day", id, "check " + checkId);
        of(checkId).lines().forEach(line -> line.newest()
                .flatMap(m -> outside(line, m))
                .ifPresent(reading -> faults.outside(
                        before.check().carId(),
                        checkId,
                        line.item().key(),
                        line.newest().get().id(),
                        line.newest().get().note(),
                        reading)));
        return id;
    }

    /** Whether whoever asks has said something a moment ago. */
    private boolean isJustSaid(String author, Instant at) {
        return author.equals(user.require().displayName())
                && at.isAfter(Instant.now().minus(FormKeys.JUST_NOW));
    }

    /** A reading that lies outside what is expected of its item. */
    private static Optional<Reading> outside(ChecklistLine line, Measurement entered) {
        return line.expected()
                .filter(b -> entered.valueSi()
                        .filter(v -> ReadingComparison.of(v, b).isOff())
                        .isPresent())
                .map(b -> new Reading(entered.valueSi().get(), b.expected(), b.low(), b.high()));
    }

    /** Whether this form has done its work. */
    public boolean isSent(UUID key, Object said) {
        return forms.isSent(user.shopId(), key, said);
    }

    /**
     * Keeps what was entered for an item, and what follows from it: something wrong or a reading outside what is expected is an
     * open fault of the car; a reading within clears what is open at the item; so does a word on how it was put right. The same
     * form a second time changes nothing, nor does the same again from the same person while what followed from it still stands.
     *
     * @throws ConflictException when the check does not count or the customer has the car
     */
    @Transactional
    public void enter(long checkId, EntryForm form, Optional<Double> valueSi, String typed) {
        forms.once(user.shopId(), form.key(), "measurement", checkId + " " + form, () -> {
            Handover list = inWork(checkId);
            ChecklistLine line = list.line(form.item()).orElseThrow(() -> new NotFoundException("item", form.item()));
            EntryRules.fault(line, form).ifPresent(why -> {
                throw new ConflictException(why);
            });
            Optional<Measurement> same = line.newest()
                    .filter(m ->
                            isJustSaid(m.authorName(), m.storedAt()) && EntryRules.isSameAgain(line, m, form, valueSi));
            if (same.isPresent()) {
                return same.get().id();
            }
            long id = measurements.insert(
                    user.shopId(), checkId, user.accountId(), form.item(), form.outcome(), valueSi, typed, form.note());
            audit.record(entered(form.outcome()), "measurement", id, form.item());
            follow(list.check().carId(), checkId, line, form, id);
            return id;
        });
    }

    private static String entered(ItemOutcome outcome) {
        return outcome == ItemOutcome.NOT_APPLICABLE ? "handover.left-out" : "handover.entered";
    }

    private void follow(long car, long checkId, ChecklistLine before, EntryForm form, long measurement) {
        switch (form.outcome()) {
            case FAULT -> faults.found(car, checkId, form.item(), measurement, form.note());
            case DONE -> before.open().forEach(f -> faults.clearByReason(f.id(), form.note()));
            case MEASURED -> {
                ChecklistLine now = of(checkId).line(form.item()).orElseThrow();
                Optional<Reading> outside = outside(now, now.newest().orElseThrow());
                if (outside.isPresent()) {
                    faults.outside(car, checkId, form.item(), measurement, form.note(), outside.get());
                } else if (now.expected().isPresent()) {
                    before.open().forEach(f -> faults.clearByReading(f.id(), measurement));
                }
            }
            case NOT_APPLICABLE -> {
                // left out; nothing follows
            }
        }
    }

    /**
     * Clears an open fault of a car.
     *
     * @throws ConflictException when it is cleared already, or no newer revision is there to put it right
     */
    @Transactional
    public void clear(long checkId, long faultId, ClearingForm form) {
        forms.once(user.shopId(), form.key(), "fault_clearing", faultId + " " + form, () -> {
            long car = checks.byId(checkId).line().carId();
            gate.hold(car);
            CarFault fault = faults.open(car).stream()
                    .filter(f -> f.id() == faultId)
                    .findFirst()
                    .orElseThrow(() -> new ConflictException("gate.no-fault"));
            boolean byRevision = form.how() == CarFault.How.REVISION;
            Gate.require(byRevision ? Step.CLEAR_BY_REVISION : Step.CLEAR_BY_REASON, gate.ofCar(car));
            if (byRevision && !fault.older()) {
                throw new ConflictException("gate.no-newer-revision");
            }
            if (byRevision) {
                faults.clearByRevision(
                        faultId, revisions.latest(car).orElseThrow().id());
            } else {
                faults.clearByReason(faultId, form.reason());
            }
            return faultId;
        });
    }

    /** A key for the forms that add a picture to a check's list. */
    public UUID photoKey(long checkId) {
        return forms.next("photo " + checkId);
    }

    /** Keeps a picture, whenever it comes. The same form a second time changes nothing. */
    @Transactional
    public void addPhoto(long checkId, String item, String caption, StoredPicture picture, UUID key) {
        String said =
                checkId + " " + item + " " + caption + " " + HexFormat.of().formatHex(Sha256.of(picture.jpeg()));
        forms.once(user.shopId(), key, "handover_photo", said, () -> {
            of(checkId).line(item).orElseThrow(() -> new NotFoundException("item", item));
            long id = photos.insert(user.shopId(), checkId, user.accountId(), item, caption, picture);
            audit.record("handover.photo-added", "handover_photo", id, item);
            return id;
        });
    }

    /** The bytes of a picture of this shop. */
    public byte[] photo(long id, boolean small) {
        return photos.jpeg(user.shopId(), id, small).orElseThrow(() -> new NotFoundException("photo", id));
    }

    /**
     * Keeps the last word. Missing items that were given a reason are entered as left out.
     *
     * @throws ConflictException when the rules do not allow it
     */
    @Transactional
    public void decide(long checkId, DecisionForm form) {
        forms.once(user.shopId(), form.key(), "handover_decision", checkId + " " + form, () -> {
            gate.hold(checks.byId(checkId).line().carId());
            Handover list = of(checkId);
            DecisionRules.faults(list, form).stream().findFirst().ifPresent(why -> {
                throw new ConflictException(why.key());
            });
            return form.outcome() == HandoverOutcome.DELIVER ? leaves(list, form) : goesBack(list, form);
        });
    }

    private long leaves(Handover list, DecisionForm form) {
        long checkId = list.check().id();
        List<OpenItem> leftOut = list.missing().stream()
                .map(l -> l.item().key())
                .map(k -> new OpenItem(k, form.why(k)))
                .toList();
        leftOut.forEach(o -> audit.record(
                entered(ItemOutcome.NOT_APPLICABLE),
                "measurement",
                measurements.insert(
                        user.shopId(),
                        checkId,
                        user.accountId(),
                        o.item(),
                        ItemOutcome.NOT_APPLICABLE,
                        Optional.empty(),
                        "",
                        o.reason()),
                o.item()));
        List<OpenItem> spared = list.lines().stream()
                .filter(ChecklistLine::spared)
                .map(l -> new OpenItem(l.item().key(), l.newest().orElseThrow().note()))
                .toList();
        long id = decided(
                list, form, Stream.concat(leftOut.stream(), spared.stream()).toList());
        events.publishEvent(new Delivered(list.check().carId(), checkId));
        return id;
    }

    private long goesBack(Handover list, DecisionForm form) {
        List<OpenItem> open =
                list.open().stream().map(l -> new OpenItem(l.item().key(), "")).toList();
        long id = decided(list, form, open);
        faults.sentBack(list.check().carId(), list.check().id(), form.reason());
        events.publishEvent(new SentBack(list.check().carId(), list.check().id(), form.reason()));
        return id;
    }

    private long decided(Handover list, DecisionForm form, List<OpenItem> open) {
        List<String> items = list.lines().stream()
                .filter(l -> !l.spared())
                .map(l -> l.item().key())
                .toList();
        long id = decisions.insert(user.shopId(), list.check().id(), user.accountId(), form, items, open);
        audit.record("handover.decided", "handover_decision", id, form.outcome().name());
        return id;
    }

    /** The list, with its car held for the rest of this transaction. */
    private Handover inWork(long checkId) {
        gate.hold(checks.byId(checkId).line().carId());
        Handover list = of(checkId);
        Gate.require(Step.ANSWER_ALL, list.standing());
        return list;
    }
}
