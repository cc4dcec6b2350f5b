package headertank.app.part;

import headertank.app.field.FieldFormat;
import headertank.app.field.FieldValues;
import headertank.app.shop.CurrentUser;
import headertank.calc.carspec.BuildField;
import headertank.calc.quantity.Chosen;
import headertank.calc.quantity.Entry;
import headertank.calc.quantity.Provenance;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Which parts revisions name, with what the catalogue said of them at the time. */
@Component("fittedParts")
@Transactional(readOnly = true)
public class FittedParts {

    /**
     * A part that a revision names.
     *
     * @param name at the time
     * @param values the catalogue's, at the time
     * @param changed fields in which the revision differs from them
     */
    public record Fitted(PartKind slot, PartRef ref, String name, FieldValues values, List<BuildField> changed) {}

    /**
     * One slot in which two revisions differ.
     *
     * @param before name of the part, empty when there was none
     */
    public record SlotChange(PartKind slot, String before, String after) {}

    private final FittedPartStore store;
    private final CurrentUser user;

    FittedParts(FittedPartStore store, CurrentUser user) {
        this.store = store;
        this.user = user;
    }

    /** Parts of a revision of the current shop, in the order of their kinds. */
    public List<Fitted> of(long revisionId) {
        return store.of(user.shopId(), revisionId).stream()
                .sorted(Comparator.comparing(Fitted::slot))
                .toList();
    }

    /** Slots whose part is another one in the later revision. */
    public List<SlotChange> changes(long beforeId, long afterId) {
        Map<PartKind, Fitted> before = bySlot(beforeId);
        Map<PartKind, Fitted> after = bySlot(afterId);
        return Arrays.stream(PartKind.values())
                .filter(k -> id(before.get(k)) != id(after.get(k)))
                .map(k -> new SlotChange(k, name(before.get(k)), name(after.get(k))))
                .toList();
    }

    private Map<PartKind, Fitted> bySlot(long revisionId) {
        return of(revisionId).stream().collect(Collectors.toMap(Fitted::slot, f -> f));
    }

    private static long id(Fitted fitted) {
        return fitted == null ? 0 : fitted.ref().partId();
    }

    private static String name(Fitted fitted) {
        return fitted == null ? "" : fitted.name();
    }

    /** What the catalogue said of a part when it was chosen: kept from a revision, or still in the catalogue; empty when neither. */
    public Optional<FieldValues> valuesOf(PartRef ref) {
        return store.said(user.shopId(), ref).map(f -> FieldFormat.read(f.valuesText()));
    }

    /** The part of this kind and name, as a new spec names it. */
    public Optional<PartRef> named(long shopId, PartKind kind, String name) {
        return store.named(shopId, kind, name);
    }

    /**
     * Writes down the parts of a new revision.
     *
     * @param stated what the revision says of the car
     * @throws headertank.app.problem.NotFoundException when the shop has no such part
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public void store(long shopId, long revisionId, Map<PartKind, PartRef> parts, Map<BuildField, Entry> stated) {
        parts.forEach((slot, ref) -> store.add(shopId, revisionId, slot, ref, stated));
    }

    /** Fields in which a car differs from what this part brings along. */
    public static List<BuildField> changed(PartKind kind, FieldValues said, Map<BuildField, Entry> stated) {
        return withImplied(kind, said).differing(stated);
    }

    /**
     * What fitting the part states of a car: its values, and what follows from there being such a part. That is known no better
     * than the part itself: measured only where all that the catalogue says of it is.
     */
    public static FieldValues withImplied(PartKind kind, FieldValues said) {
        Map<BuildField, Entry> entries = new EnumMap<>(BuildField.class);
        entries.putAll(said.entries());
        Provenance loosest = said.entries().values().stream()
                .map(Entry::from)
                .max(Comparator.naturalOrder())
                .orElse(Provenance.GUESSED);
        kind.implied().forEach((field, token) -> entries.put(field, new Chosen(token, loosest)));
        return new FieldValues(entries, said.typed());
    }
}
