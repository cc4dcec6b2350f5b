package headertank.app.field;

import headertank.app.unit.DecimalSign;
import headertank.app.unit.UnitException;
import headertank.app.unit.Units;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.quantity.Chosen;
import headertank.calc.quantity.Entry;
import headertank.calc.quantity.FigureKind;
import headertank.calc.quantity.InputProblem;
import headertank.calc.quantity.Provenance;
import headertank.calc.quantity.Stated;
import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;

/** Turns what was typed for fields into values, or into a sentence for each fault: all of them at once. */
@Component
public class FieldReader {

    static final int LONGEST_TEXT = 60;

    private final FieldText text;

    public FieldReader(FieldText text) {
        this.text = text;
    }

    /**
     * What came of what was typed.
     *
     * @param values of the fields without a fault
     * @param faults a sentence for each field that could not be read
     * @param meant what a number was probably meant as, where it makes no sense as it stands
     */
    public record Reading(FieldValues values, Map<BuildField, String> faults, Map<BuildField, String> meant) {}

    /** @param before what was there; a field that still reads as it did there keeps its exact value */
    public Reading read(Map<BuildField, TypedField> sent, FieldValues before) {
        Map<BuildField, Entry> entries = new EnumMap<>(BuildField.class);
        Map<BuildField, String> typed = new EnumMap<>(BuildField.class);
        Map<BuildField, String> faults = new EnumMap<>(BuildField.class);
        for (BuildField field : BuildField.values()) {
            TypedField one = sent.get(field);
            if (one != null && !one.text().isEmpty()) {
                read(field, one, before, entries, typed, faults);
            }
        }
        for (InputProblem problem : Build.problems(entries)) {
            BuildField field = BuildField.ofKey(problem.field()).orElseThrow();
            faults.putIfAbsent(field, sentence(field, problem, sent.get(field).text()));
        }
        entries.keySet().removeAll(faults.keySet());
        return new Reading(new FieldValues(entries, typed), faults, meant(faults.keySet(), sent));
    }

    private void read(
            BuildField field,
            TypedField sent,
            FieldValues before,
            Map<BuildField, Entry> entries,
            Map<BuildField, String> typed,
            Map<BuildField, String> faults) {
        if (sent.text().length() > LONGEST_TEXT || !storable(sent.text())) {
            faults.put(field, text.message("spec.fault.text", "", LONGEST_TEXT));
            return;
        }
        if (field.isChoice()) {
            if (field == BuildField.CORE_CLASS && !text.options(field).contains(sent.text())) {
                faults.put(field, text.message("spec.fault.option", "", sent.text()));
            } else {
                entries.put(field, new Chosen(sent.text(), sent.from()));
            }
            return;
        }
        Entry was = before.entries().get(field);
        if (was != null && text.prefill(before, field).equals(DecimalSign.in(sent.text()))) {
            entries.put(field, asBefore((Stated) was, sent.from()));
            String as = before.typed().get(field);
            if (as != null) {
                typed.put(field, as);
            }
            return;
        }
        if (CoreSize.isOne(field, sent.text())) {
            faults.put(field, text.message("spec.fault.size", "", sent.text()));
            return;
        }
        if (field == BuildField.COOLANT_GLYCOL && isUnevenMix(sent.text())) {
            faults.put(field, text.message("spec.fault.mix", "", sent.text()));
            return;
        }
        if (isEither(field, sent.text())) {
            faults.put(field, text.message("unit.ambiguous-comma", "", sent.text()));
            return;
        }
        try {
            String whole = FieldUnit.unfold(field, sent.text());
            entries.put(field, new Stated(FieldUnit.parse(field, whole, text.system()), sent.from(), null));
            typed.put(field, Units.withUnit(whole, FieldUnit.of(field), text.system()));
        } catch (UnitException e) {
            faults.put(field, text.message(e.messageKey(), e.getMessage(), e.messageArguments()));
        } catch (IllegalArgumentException e) {
            faults.put(field, range(field, sent.text()));
        }
    }

    /** Two shares of a hundred of which nobody can tell which is the glycol. */
    private static boolean isUnevenMix(String typed) {
        return typed.matches("\\d{1,2} ?/ ?\\d{1,2}")
                && FieldUnit.unfold(BuildField.COOLANT_GLYCOL, typed).equals(typed);
    }

    /** A number that makes sense with a decimal sign and with one between thousands. */
    private boolean isEither(BuildField field, String typed) {
        return Units.withoutThousands(typed)
                .filter(thousands -> isAllowed(field, thousands) && isAllowed(field, typed))
                .isPresent();
    }

    /** For each faulty number what it was meant as: without the sign between thousands, or in the first unit in which it is allowed. */
    private Map<BuildField, String> meant(Set<BuildField> faulty, Map<BuildField, TypedField> sent) {
        Map<BuildField, String> meant = new EnumMap<>(BuildField.class);
        for (BuildField field : faulty) {
            if (field.isChoice() || field.kind() == FigureKind.COUNT) {
                continue;
            }
            String typed = sent.get(field).text();
            Stream.concat(
                            Units.withoutThousands(typed).stream(),
                            Units.inOtherUnits(typed, FieldUnit.of(field), text.system()).stream())
                    .filter(other -> isAllowed(field, other))
                    .findFirst()
                    .ifPresent(other -> meant.put(field, other));
        }
        return meant;
    }

    private boolean isAllowed(BuildField field, String typed) {
        try {
            return field.allowed().contains(FieldUnit.parse(field, typed, text.system()));
        } catch (UnitException e) {
            return false;
        }
    }

    private static Stated asBefore(Stated before, Provenance from) {
        return before.from() == from ? before : new Stated(before.si(), from, null);
    }

    private String sentence(BuildField field, InputProblem problem, String typed) {
        return switch (problem.code()) {
            case OUT_OF_RANGE -> range(field, typed);
            case CONTRADICTION -> text.said(problem.allowed());
            case NOT_UNDERSTOOD, MISSING -> text.message("spec.fault.option", "", typed);
        };
    }

    private String range(BuildField field, String typed) {
        String low = text.show(field, field.allowed().min());
        String high = text.show(field, field.allowed().max());
        return field.kind() == FigureKind.COUNT
                ? text.message("spec.fault.count", "", typed, low, high)
                : text.message("spec.fault.range", "", typed, low, high);
    }

    /** Whether a text can be kept: the database keeps no zero character, and half a character has no canonical form. */
    public static boolean storable(String text) {
        return text.codePoints()
                .noneMatch(c -> c < 0x20 && c != '\n' && c != '\r' && c != '\t' || c >= 0xD800 && c <= 0xDFFF);
    }
}
