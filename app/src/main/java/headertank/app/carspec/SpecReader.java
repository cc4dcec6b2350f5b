package headertank.app.carspec;

import headertank.app.part.PartKind;
import headertank.app.part.PartRef;
import headertank.app.unit.DecimalSign;
import headertank.app.unit.UnitException;
import headertank.app.unit.Units;
import headertank.calc.Rater;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import headertank.calc.quantity.Chosen;
import headertank.calc.quantity.Entry;
import headertank.calc.quantity.InputProblem;
import headertank.calc.quantity.Provenance;
import headertank.calc.quantity.SiUnit;
import headertank.calc.quantity.Stated;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.springframework.stereotype.Component;

/** Turns what was typed into a spec, or into a sentence for each fault: all of them at once. */
@Component
class SpecReader {

    static final int LONGEST_TEXT = 60;
    static final int LONGEST_REASON = 500;

    private final Supplier<Rater> rater;
    private final FieldText text;

    SpecReader(Supplier<Rater> rater, FieldText text) {
        this.rater = rater;
        this.text = text;
    }

    /**
     * What came of a form.
     *
     * @param carClass empty when none was chosen
     * @param dutyIds the duties that are known here
     * @param entries fields without a fault
     * @param typed numbers as they were typed
     * @param parts of the catalogue that are on the car
     * @param faults a sentence for each faulty field, by its name in the form
     */
    record Reading(
            Optional<CarClass> carClass,
            List<String> dutyIds,
            Map<BuildField, Entry> entries,
            Map<BuildField, String> typed,
            Map<PartKind, PartRef> parts,
            Map<String, String> faults) {

        /** The spec of a form without a fault. */
        Spec spec() {
            return new Spec(new Build(carClass.orElseThrow(), entries), dutyIds, typed, parts);
        }

        /** What could be rated already: the faulty fields count as unknown. */
        Optional<Build> draft() {
            return carClass.map(c -> new Build(c, entries));
        }
    }

    /**
     * @param parent the spec that the form was filled from; a field that still reads as it did there keeps its exact value
     * @param reasonAsked whether a change needs its reason
     */
    Reading read(SpecForm form, Optional<Spec> parent, boolean reasonAsked) {
        Map<String, String> faults = new LinkedHashMap<>();
        Optional<CarClass> carClass = Arrays.stream(CarClass.values())
                .filter(c -> c.name().equals(form.carClass()))
                .findFirst();
        if (carClass.isEmpty()) {
            faults.put("carClass", text.message("spec.class.missing", ""));
        }
        Set<String> installed = rater.get().duties().keySet();
        List<String> duties = form.duties().stream()
                .filter(installed::contains)
                .distinct()
                .sorted()
                .toList();
        List<String> gone =
                form.duties().stream().filter(d -> !installed.contains(d)).toList();
        if (!gone.isEmpty()) {
            faults.put("duties", text.message("spec.duties.gone", "", String.join(", ", gone)));
        } else if (duties.isEmpty()) {
            faults.put("duties", text.message("spec.duties.missing", ""));
        }
        Map<BuildField, Entry> entries = new EnumMap<>(BuildField.class);
        Map<BuildField, String> typed = new EnumMap<>(BuildField.class);
        for (BuildField field : BuildField.values()) {
            SpecForm.Typed sent = form.field(field);
            if (!sent.text().isEmpty()) {
                read(field, sent, parent, entries, typed, faults);
            }
        }
        for (InputProblem problem : Build.problems(entries)) {
            BuildField field = BuildField.ofKey(problem.field()).orElseThrow();
            faults.putIfAbsent(field.key(), sentence(field, problem, entries, form));
        }
        faults.keySet().forEach(key -> BuildField.ofKey(key).ifPresent(entries::remove));
        if (reasonAsked && form.reason().isEmpty()) {
            faults.put("reason", text.message("spec.reason.missing", ""));
        } else if (form.reason().length() > LONGEST_REASON || !storable(form.reason())) {
            faults.put("reason", text.message("spec.fault.text", "", LONGEST_REASON));
        }
        form.parts().forEach((kind, slot) -> {
            if (slot.pending()) {
                faults.put(SpecForm.slotName(kind), text.message("part.fit.pending", ""));
            }
        });
        return new Reading(carClass, duties, entries, typed, form.fitted(), faults);
    }

    private void read(
            BuildField field,
            SpecForm.Typed sent,
            Optional<Spec> parent,
            Map<BuildField, Entry> entries,
            Map<BuildField, String> typed,
            Map<String, String> faults) {
        if (sent.text().length() > LONGEST_TEXT || !storable(sent.text())) {
            faults.put(field.key(), text.message("spec.fault.text", "", LONGEST_TEXT));
            return;
        }
        if (field.isChoice()) {
            if (field == BuildField.CORE_CLASS && !rater.get().coreClasses().containsKey(sent.text())) {
                faults.put(field.key(), text.message("spec.fault.option", "", sent.text()));
            } else {
                entries.put(field, new Chosen(sent.text(), sent.from()));
            }
            return;
        }
        Optional<Stated> before = parent.filter(
                        p -> SpecForm.prefill(p, field, text).equals(DecimalSign.in(sent.text())))
                .flatMap(p -> p.build().entry(field))
                .map(Stated.class::cast);
        if (before.isPresent()) {
            entries.put(field, asBefore(before.get(), sent.from()));
            String as = parent.get().typed().get(field);
            if (as != null) {
                typed.put(field, as);
            }
            return;
        }
        try {
            entries.put(field, new Stated(FieldUnit.parse(field, sent.text(), text.system()), sent.from(), null));
            typed.put(field, Units.withUnit(sent.text(), FieldUnit.of(field), text.system()));
        } catch (UnitException e) {
            faults.put(field.key(), text.message(e.messageKey(), e.getMessage(), e.messageArguments()));
        } catch (IllegalArgumentException e) {
            faults.put(field.key(), range(field, sent.text()));
        }
    }

    private static Stated asBefore(Stated before, Provenance from) {
        return before.from() == from ? before : new Stated(before.si(), from, null);
    }

    private String sentence(BuildField field, InputProblem problem, Map<BuildField, Entry> entries, SpecForm form) {
        return switch (problem.code()) {
            case OUT_OF_RANGE -> range(field, form.field(field).text());
            case CONTRADICTION ->
                text.message("contradiction." + field.key(), problem.message(), other(field, entries));
            case NOT_UNDERSTOOD, MISSING ->
                text.message("spec.fault.option", "", form.field(field).text());
        };
    }

    private String range(BuildField field, String typed) {
        String low = text.show(field, field.allowed().min());
        String high = text.show(field, field.allowed().max());
        return field.unit() == SiUnit.COUNT
                ? text.message("spec.fault.count", "", typed, low, high)
                : text.message("spec.fault.range", "", typed, low, high);
    }

    /** The other field's value that a contradiction is about. */
    private String other(BuildField field, Map<BuildField, Entry> entries) {
        return switch (field) {
            case ENGINE_IDLE -> text.show(field, 0.6 * number(entries, BuildField.ENGINE_SPEED));
            case FAN_START_CURRENT -> text.show(field, number(entries, BuildField.FAN_CURRENT));
            case LOWEST_AMBIENT -> text.show(field, number(entries, BuildField.AMBIENT));
            default -> "";
        };
    }

    private static double number(Map<BuildField, Entry> entries, BuildField field) {
        return ((Stated) entries.get(field)).si();
    }

    /** The database keeps no zero character, and half a character has no canonical form. */
    private static boolean storable(String text) {
        return text.codePoints()
                .noneMatch(c -> c < 0x20 && c != '\n' && c != '\r' && c != '\t' || c >= 0xD800 && c <= 0xDFFF);
    }
}
