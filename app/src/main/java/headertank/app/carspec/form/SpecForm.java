package headertank.app.carspec.form;

import headertank.app.carspec.Spec;
import headertank.app.field.CoreSize;
import headertank.app.field.FieldText;
import headertank.app.field.TypedField;
import headertank.app.part.PartKind;
import headertank.app.part.PartRef;
import headertank.calc.carspec.BuildField;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.springframework.util.MultiValueMap;

/**
 * What stands in the form, word for word, so that whatever was typed is shown again.
 *
 * @param carClass token of the class of car, empty when none is chosen
 * @param fields each field that was sent
 * @param reason why the spec changes
 * @param parent the revision that the form was filled from; null for a car without any
 * @param key of this form: sent twice, it saves once
 * @param parts each slot that was sent or holds a part
 */
record SpecForm(
        String carClass,
        List<String> duties,
        Map<BuildField, TypedField> fields,
        String reason,
        Integer parent,
        UUID key,
        Map<PartKind, Slot> parts) {

    /**
     * One slot for a part of the catalogue.
     *
     * @param chosen id of the part that is chosen, empty for none
     * @param fitted the part whose values the form holds; null for none
     */
    record Slot(String chosen, PartRef fitted) {

        static Slot of(PartRef ref) {
            return new Slot(Long.toString(ref.partId()), ref);
        }

        /** Whether a part was chosen whose values are not in the form yet. */
        boolean pending() {
            return !chosen.isEmpty() && (fitted == null || !chosen.equals(Long.toString(fitted.partId())));
        }

        /** The part that is on the car, if its values are in the form. */
        Optional<PartRef> settled() {
            return chosen.isEmpty() || pending() ? Optional.empty() : Optional.of(fitted);
        }
    }

    SpecForm {
        duties = List.copyOf(duties);
        fields = Collections.unmodifiableMap(fields);
        parts = Collections.unmodifiableMap(parts);
    }

    /** Reads a form as it was sent; what is missing or makes no sense is as if it were empty. */
    static SpecForm sent(MultiValueMap<String, String> sent) {
        Map<BuildField, TypedField> fields = new EnumMap<>(BuildField.class);
        for (BuildField field : BuildField.values()) {
            fields.put(field, TypedField.sent(sent, field));
        }
        List<String> duties = new ArrayList<>(sent.getOrDefault("duties", List.of()));
        String reason = first(sent, "reason").strip();
        return new SpecForm(
                first(sent, "carClass"),
                duties,
                CoreSize.spread(fields),
                reason,
                parent(first(sent, "parent")),
                key(first(sent, "key")),
                slots(sent));
    }

    /** An empty form for a car without a revision. */
    static SpecForm blank() {
        return new SpecForm("", List.of(), new EnumMap<>(BuildField.class), "", null, UUID.randomUUID(), Map.of());
    }

    /** A form filled from a spec. */
    static SpecForm of(Spec spec, String reason, Integer parent, FieldText text) {
        Map<BuildField, TypedField> fields = new EnumMap<>(BuildField.class);
        spec.build()
                .entries()
                .forEach((field, entry) ->
                        fields.put(field, new TypedField(text.prefill(spec.values(), field), entry.from())));
        Map<PartKind, Slot> slots = new EnumMap<>(PartKind.class);
        spec.parts().forEach((kind, ref) -> slots.put(kind, Slot.of(ref)));
        return new SpecForm(
                spec.build().carClass().name(), spec.dutyIds(), fields, reason, parent, UUID.randomUUID(), slots);
    }

    /** Name of a slot's choice in the form. */
    static String slotName(PartKind kind) {
        return "part." + kind.name();
    }

    private static Map<PartKind, Slot> slots(MultiValueMap<String, String> sent) {
        Map<PartKind, Slot> slots = new EnumMap<>(PartKind.class);
        for (PartKind kind : PartKind.values()) {
            String chosen = first(sent, slotName(kind));
            PartRef fitted = PartRef.of(first(sent, slotName(kind) + ".fitted")).orElse(null);
            if (!chosen.isEmpty() || fitted != null) {
                slots.put(kind, new Slot(chosen, fitted));
            }
        }
        return slots;
    }

    Slot slot(PartKind kind) {
        return parts.getOrDefault(kind, new Slot("", null));
    }

    /** The parts whose values are in the form. */
    public Map<PartKind, PartRef> fitted() {
        Map<PartKind, PartRef> fitted = new EnumMap<>(PartKind.class);
        parts.forEach((kind, slot) -> slot.settled().ifPresent(ref -> fitted.put(kind, ref)));
        return fitted;
    }

    /** The same form with other fields and slots. */
    SpecForm with(Map<BuildField, TypedField> otherFields, Map<PartKind, Slot> otherParts) {
        return new SpecForm(carClass, duties, otherFields, reason, parent, key, otherParts);
    }

    /** The same form for another class of car. */
    SpecForm ofClass(String otherClass) {
        return new SpecForm(otherClass, duties, fields, reason, parent, key, parts);
    }

    /** The same form with a reason. */
    SpecForm because(String otherReason) {
        return new SpecForm(carClass, duties, fields, otherReason, parent, key, parts);
    }

    TypedField field(BuildField field) {
        return fields.getOrDefault(field, TypedField.unsaid(""));
    }

    private static String first(MultiValueMap<String, String> sent, String name) {
        String value = sent.getFirst(name);
        return value == null ? "" : value;
    }

    private static Integer parent(String sent) {
        return sent.matches("[1-9]\\d{0,8}") ? Integer.valueOf(sent) : null;
    }

    private static UUID key(String sent) {
        try {
            return UUID.fromString(sent);
        } catch (IllegalArgumentException e) {
            return UUID.randomUUID();
        }
    }
}
