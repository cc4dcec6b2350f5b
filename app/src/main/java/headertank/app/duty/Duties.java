package headertank.app.duty;

import headertank.app.audit.AuditTrail;
import headertank.app.form.FormKeys;
import headertank.app.problem.ConflictException;
import headertank.app.problem.NotFoundException;
import headertank.app.shop.CurrentUser;
import headertank.calc.Rater;
import headertank.calc.duty.Duty;
import headertank.calc.duty.ScheduleCsv;
import headertank.calc.quantity.InputException;
import headertank.calc.quantity.InputProblem;
import headertank.calc.quantity.MessageArgument;
import headertank.calc.quantity.MessageCode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The duties of the shop: those that are installed, and its own as text files. */
@Service
public class Duties {

    /** Longest text of a duty. */
    static final int LONGEST = 1_000_000;

    private final Rater installed;
    private final ShopRater rater;
    private final DutyStore store;
    private final CurrentUser user;
    private final AuditTrail audit;
    private final FormKeys forms;

    Duties(Rater installed, ShopRater rater, DutyStore store, CurrentUser user, AuditTrail audit, FormKeys forms) {
        this.installed = installed;
        this.rater = rater;
        this.store = store;
        this.user = user;
        this.audit = audit;
        this.forms = forms;
    }

    /** Which ids a duty of the shop may have. */
    enum FreeId implements MessageCode {
        OF_NO_INSTALLED_DUTY,
        OF_NO_OTHER_DUTY;

        @Override
        public String code() {
            return MessageCode.of("duty-id", this);
        }

        @Override
        public int arguments() {
            return 0;
        }
    }

    /**
     * A duty on the list.
     *
     * @param duty empty when its text is not read any more
     * @param own its version when it is the shop's own
     * @param covered whether an installed duty of the same name stands in its way
     */
    record Listed(String id, Optional<Duty> duty, Optional<DutyVersion> own, boolean covered) {

        boolean active() {
            return own.map(DutyVersion::active).orElse(true);
        }
    }

    /** The shop's own first, then what is installed. */
    @Transactional(readOnly = true)
    List<Listed> list() {
        List<Listed> all = new ArrayList<>();
        for (DutyVersion v : store.newest(user.shopId())) {
            all.add(new Listed(
                    v.dutyId(), v.duty(), Optional.of(v), installed.duties().containsKey(v.dutyId())));
        }
        installed.duties().forEach((id, duty) -> all.add(new Listed(id, Optional.of(duty), Optional.empty(), false)));
        return all;
    }

    /** Whether the shop has the duty but does not offer it now. */
    @Transactional(readOnly = true)
    public boolean isSwitchedOff(String dutyId) {
        return store.newest(user.shopId(), dutyId).map(v -> !v.active()).orElse(false);
    }

    /** The newest version of the shop's own duty. */
    @Transactional(readOnly = true)
    DutyVersion own(String dutyId) {
        return store.newest(user.shopId(), dutyId).orElseThrow(() -> new NotFoundException("duty", dutyId));
    }

    /** A duty as text: the shop's own as it was written, an installed one in the same form. */
    @Transactional(readOnly = true)
    String csv(String dutyId) {
        return store.newest(user.shopId(), dutyId)
                .map(DutyVersion::csv)
                .or(() -> Optional.ofNullable(installed.duties().get(dutyId)).map(ScheduleCsv::write))
                .orElseThrow(() -> new NotFoundException("duty", dutyId));
    }

    /**
     * Keeps a duty.
     *
     * @param text the duty as comma-separated text
     * @param editedId the duty that was opened for a change, empty for a new one
     * @param editedNumber its version that was opened
     * @return its id
     * @throws InputException with every fault of the text
     * @throws ConflictException when somebody else has changed it meanwhile
     */
    @Transactional
    String save(String text, String editedId, int editedNumber, UUID key) {
        Duty duty = ScheduleCsv.parse(text);
        String said = editedId + " " + editedNumber + " " + text;
        forms.once(user.shopId(), key, "duty_version", said, () -> save(duty, text, editedId, editedNumber));
        return duty.id();
    }

    private int save(Duty duty, String text, String editedId, int editedNumber) {
        if (installed.duties().containsKey(duty.id())) {
            throw taken(duty.id(), FreeId.OF_NO_INSTALLED_DUTY);
        }
        Optional<DutyVersion> newest = store.newest(user.shopId(), duty.id());
        boolean edited = duty.id().equals(editedId);
        if (newest.isPresent() && !edited) {
            throw taken(duty.id(), FreeId.OF_NO_OTHER_DUTY);
        }
        if (newest.isPresent() && newest.get().number() != editedNumber) {
            throw new ConflictException("duties.overtaken", duty.id());
        }
        if (newest.isPresent()
                && newest.get().csv().equals(text)
                && newest.get().active()) {
            return newest.get().number();
        }
        int number = newest.map(DutyVersion::number).orElse(0) + 1;
        insert(duty.id(), number, text, true, "duty.saved");
        return number;
    }

    /** Offers a duty, or offers it no longer; what was rated for it stays. */
    @Transactional
    void switchTo(String dutyId, boolean on, UUID key) {
        forms.once(user.shopId(), key, "duty_version", dutyId + " " + on, () -> {
            DutyVersion now = own(dutyId);
            if (now.active() != on) {
                insert(dutyId, now.number() + 1, now.csv(), on, on ? "duty.switched-on" : "duty.switched-off");
            }
            return now.number();
        });
    }

    private void insert(String dutyId, int number, String csv, boolean active, String action) {
        try {
            long id = store.insert(user.shopId(), user.accountId(), dutyId, number, csv, active);
            audit.record(action, "duty_version", id, dutyId + ", version " + number);
        } catch (DuplicateKeyException e) {
            throw new ConflictException("duties.overtaken", dutyId);
        }
        rater.forget();
    }

    private static InputException taken(String id, FreeId allowed) {
        return new InputException(List.of(new InputProblem(
                1, "# id", new MessageArgument.Text(id), allowed.with(), InputProblem.Code.CONTRADICTION)));
    }
}
