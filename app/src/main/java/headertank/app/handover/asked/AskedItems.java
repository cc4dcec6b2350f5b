package headertank.app.handover.asked;

import headertank.app.audit.AuditTrail;
import headertank.app.form.FormKeys;
import headertank.app.handover.item.ChecklistTask;
import headertank.app.problem.ConflictException;
import headertank.app.problem.NotFoundException;
import headertank.app.shop.CurrentUser;
import headertank.calc.Rater;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * The owner's setting of what check lists ask, for each duty. A check keeps the list that it was made with: what is decided later
 * is about later checks, so that a list that somebody is working on, or has decided, never changes under their hands. Only items
 * that {@link ChecklistTask#mayBeLeftOut} can be left out, whatever is stored.
 */
@Service
@Transactional(readOnly = true)
public class AskedItems {

    private final AskedItemStore store;
    private final Supplier<Rater> rater;
    private final CurrentUser user;
    private final AuditTrail audit;
    private final FormKeys forms;

    AskedItems(AskedItemStore store, Supplier<Rater> rater, CurrentUser user, AuditTrail audit, FormKeys forms) {
        this.store = store;
        this.rater = rater;
        this.user = user;
        this.audit = audit;
        this.forms = forms;
    }

    /** What holds now for a duty, by item; an item without a line is asked. */
    public Map<String, AskedItem> of(String dutyId) {
        requireDuty(dutyId);
        return store.now(user.shopId(), dutyId).stream()
                .filter(AskedItems::mayBeLeftOut)
                .collect(Collectors.toMap(AskedItem::item, i -> i));
    }

    /**
     * What the list of a check leaves out, by item: what none of its duties asked when it was made.
     *
     * @param dutyIds duties that it was rated for
     */
    public Map<String, AskedItem> leftOut(long checkId, Collection<String> dutyIds) {
        Map<String, List<AskedItem>> byItem = store.whenMade(user.shopId(), checkId).stream()
                .filter(i -> !i.asked() && dutyIds.contains(i.dutyId()) && mayBeLeftOut(i))
                .collect(Collectors.groupingBy(AskedItem::item));
        return byItem.values().stream()
                .filter(rows -> rows.size() == dutyIds.size())
                .map(rows -> rows.stream()
                        .max(Comparator.comparing(AskedItem::setAt))
                        .orElseThrow())
                .collect(Collectors.toMap(AskedItem::item, i -> i));
    }

    private static boolean mayBeLeftOut(AskedItem item) {
        return ChecklistTask.of(item.item()).filter(ChecklistTask::mayBeLeftOut).isPresent();
    }

    /**
     * Leaves an item out for a duty, or asks it again, of cars that are rated from now on.
     *
     * @throws ConflictException when the item is one that is always asked, or somebody else has decided the same meanwhile
     */
    @Transactional
    public void change(String dutyId, AskedItemForm form) {
        requireDuty(dutyId);
        ChecklistTask task =
                ChecklistTask.of(form.item()).orElseThrow(() -> new NotFoundException("item", form.item()));
        if (!task.mayBeLeftOut()) {
            throw new ConflictException("handover.asked.always");
        }
        String said = dutyId + " " + form;
        forms.once(user.shopId(), form.key(), "asked_item", said, () -> {
            forms.oneAtATime("list of " + dutyId);
            AskedItem now = store.now(user.shopId(), dutyId).stream()
                    .filter(i -> i.item().equals(form.item()))
                    .findFirst()
                    .orElse(null);
            if ((now == null || now.asked()) == form.asked()) {
                throw new ConflictException("handover.asked.meanwhile");
            }
            long id = store.insert(user.shopId(), user.accountId(), dutyId, form);
            audit.record(
                    form.asked() ? "list.item-asked" : "list.item-left-out",
                    "asked_item",
                    id,
                    dutyId + " " + form.item());
            return id;
        });
    }

    private void requireDuty(String dutyId) {
        Optional.ofNullable(rater.get().duties().get(dutyId)).orElseThrow(() -> new NotFoundException("duty", dutyId));
    }
}
