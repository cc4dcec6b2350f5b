package headertank.calc.carspec;

import static headertank.calc.quantity.InputProblem.Code.NOT_UNDERSTOOD;
import static headertank.calc.quantity.InputProblem.Code.OUT_OF_RANGE;

import headertank.calc.quantity.Chosen;
import headertank.calc.quantity.Entry;
import headertank.calc.quantity.FigureKind;
import headertank.calc.quantity.InputException;
import headertank.calc.quantity.InputProblem;
import headertank.calc.quantity.InputText;
import headertank.calc.quantity.Message;
import headertank.calc.quantity.MessageArgument;
import headertank.calc.quantity.Provenance;
import headertank.calc.quantity.Stated;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What is known of a car's cooling: the class of car and, for each field that somebody stated, its value and provenance.
 * Fields that nobody stated are absent; {@link Resolved} fills them with the defaults of the class.
 *
 * @param carClass kind of car, chooses the defaults
 * @param entries stated fields; numbers are {@link Stated} in SI, choices {@link Chosen}
 */
public record Build(CarClass carClass, Map<BuildField, Entry> entries) {

    /** Depth that a row of tubes needs at least [m]. */
    public static final double THINNEST_ROW_M = 0.008;

    /**
     * Checks each field by itself, not one against the other: a comparison of two builds rates mixed states of both.
     *
     * @throws InputException with every fault at once, each naming field, value and allowed range
     */
    public Build {
        if (carClass == null) {
            throw new InputException(List.of(InputProblem.of(
                    "carClass", Message.NONE, oneOf(List.of(CarClass.values())), InputProblem.Code.MISSING)));
        }
        Map<BuildField, Entry> copy = new EnumMap<>(BuildField.class);
        copy.putAll(entries);
        List<InputProblem> problems = new ArrayList<>();
        singly(copy, problems);
        if (!problems.isEmpty()) {
            throw new InputException(problems);
        }
        entries = Collections.unmodifiableMap(copy);
    }

    /** @return a build of which nothing is known but its class */
    public static Build of(CarClass carClass) {
        return new Build(carClass, Map.of());
    }

    /** @return a builder that starts with nothing but the class */
    public static Builder forCar(CarClass carClass) {
        return new Builder(carClass, Map.of());
    }

    /** @return a builder that starts from this build */
    public Builder change() {
        return new Builder(carClass, entries);
    }

    public Optional<Entry> entry(BuildField field) {
        return Optional.ofNullable(entries.get(field));
    }

    /** @return this build with the field as in {@code other}, stated or absent */
    public Build withFieldOf(Build other, BuildField field) {
        Map<BuildField, Entry> copy = new EnumMap<>(BuildField.class);
        copy.putAll(entries);
        Entry theirs = other.entries.get(field);
        if (theirs == null) {
            copy.remove(field);
        } else {
            copy.put(field, theirs);
        }
        return new Build(carClass, copy);
    }

    /** @return this build with another class, hence other defaults */
    public Build withClass(CarClass other) {
        return new Build(other, entries);
    }

    /** @return every fault of these entries: out of range, not an option, two fields that cannot both be right */
    public static List<InputProblem> problems(Map<BuildField, Entry> entries) {
        List<InputProblem> found = new ArrayList<>();
        singly(entries, found);
        Contradictions.find(entries, found);
        return found;
    }

    private static void singly(Map<BuildField, Entry> entries, List<InputProblem> found) {
        entries.forEach((field, entry) -> {
            if (field.isChoice()) {
                if (!(entry instanceof Chosen chosen)) {
                    found.add(problem(field, value(field, entry), oneOf(field.options()), NOT_UNDERSTOOD));
                } else if (!field.options().isEmpty() && !field.options().contains(chosen.token())) {
                    found.add(problem(field, value(field, entry), oneOf(field.options()), NOT_UNDERSTOOD));
                }
            } else if (!(entry instanceof Stated stated)) {
                found.add(problem(field, value(field, entry), InputText.NUMBER.with(), NOT_UNDERSTOOD));
            } else if (!field.allowed().contains(stated.si())
                    || field.kind() == FigureKind.COUNT && stated.si() != Math.rint(stated.si())) {
                found.add(problem(field, value(field, entry), allowed(field), OUT_OF_RANGE));
            }
        });
    }

    private static InputProblem problem(
            BuildField field, MessageArgument value, Message allowed, InputProblem.Code code) {
        return InputProblem.of(field.key(), value, allowed, code);
    }

    /** @return what is stated, as a fault names it */
    static MessageArgument value(BuildField field, Entry entry) {
        if (entry == null) {
            return Message.NONE;
        }
        return entry instanceof Stated stated
                ? new MessageArgument.FieldValue(field.key(), stated.si())
                : new MessageArgument.OptionName(field.key(), ((Chosen) entry).token());
    }

    private static Message allowed(BuildField field) {
        InputText range = field.kind() == FigureKind.COUNT ? InputText.WHOLE_RANGE : InputText.RANGE;
        return range.with(
                new MessageArgument.FieldValue(field.key(), field.allowed().min()),
                new MessageArgument.FieldValue(field.key(), field.allowed().max()));
    }

    private static Message oneOf(List<?> options) {
        return InputText.ONE_OF.with(
                new MessageArgument.Text(options.stream().map(String::valueOf).collect(Collectors.joining(", "))));
    }

    /**
     * @param ambientK air around the car [K]
     * @return the same car in other air; a coldest day above it is no contradiction
     * @throws InputException outside what {@link BuildField#AMBIENT} allows
     */
    public Build inAir(double ambientK) {
        Map<BuildField, Entry> changed = new EnumMap<>(BuildField.class);
        changed.putAll(entries);
        changed.put(BuildField.AMBIENT, Stated.measured(ambientK));
        return new Build(carClass, changed);
    }

    /** Collects fields; {@link #build()} reports every fault at once. */
    public static final class Builder {

        private CarClass carClass;
        private final Map<BuildField, Entry> entries = new EnumMap<>(BuildField.class);

        private Builder(CarClass carClass, Map<BuildField, Entry> start) {
            this.carClass = carClass;
            entries.putAll(start);
        }

        public Builder carClass(CarClass other) {
            carClass = other;
            return this;
        }

        public Builder set(BuildField field, Entry entry) {
            entries.put(field, entry);
            return this;
        }

        /** States a choice as measured, i.e. seen on the car. */
        public Builder seen(BuildField field, Enum<?> option) {
            return set(field, new Chosen(field.token(option), Provenance.MEASURED));
        }

        /** States a choice as measured, i.e. seen on the car. */
        public Builder seen(BuildField field, String option) {
            return set(field, new Chosen(option, Provenance.MEASURED));
        }

        /** Forgets what was stated: the class default takes its place. */
        public Builder unknown(BuildField field) {
            entries.remove(field);
            return this;
        }

        /** @throws InputException with every fault at once */
        public Build build() {
            List<InputProblem> problems = problems(entries);
            if (!problems.isEmpty()) {
                throw new InputException(problems);
            }
            return new Build(carClass, entries);
        }
    }
}
