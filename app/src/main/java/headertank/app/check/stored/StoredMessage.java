package headertank.app.check.stored;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import java.util.List;

/**
 * What a check says somewhere: a code with what belongs into its sentence. Words are made when it is shown.
 *
 * @param code name of the sentence; {@link #PLAIN} for a text that is shown as it was stored; empty when nothing is said
 * @param arguments what stands in the sentence
 */
public record StoredMessage(
        String code,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) List<Argument> arguments) {

    /** Code of a text that is shown as it was stored, with that text as its argument. */
    public static final String PLAIN = "plain";

    /** Nothing is said. */
    public static final StoredMessage NONE = new StoredMessage("", List.of());

    public StoredMessage {
        arguments = arguments == null ? List.of() : List.copyOf(arguments);
    }

    /** A text that is shown as it is. */
    public static StoredMessage plain(String text) {
        return text.isEmpty() ? NONE : new StoredMessage(PLAIN, List.of(new Text(text)));
    }

    @JsonIgnore
    public boolean isEmpty() {
        return code.isEmpty();
    }

    /** What can stand in a sentence; each carries its type. */
    @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "type")
    @JsonSubTypes({
        @JsonSubTypes.Type(value = Nested.class, name = "message"),
        @JsonSubTypes.Type(value = Amount.class, name = "amount"),
        @JsonSubTypes.Type(value = FieldName.class, name = "field"),
        @JsonSubTypes.Type(value = OptionName.class, name = "option"),
        @JsonSubTypes.Type(value = DutyName.class, name = "duty"),
        @JsonSubTypes.Type(value = PointName.class, name = "point"),
        @JsonSubTypes.Type(value = Text.class, name = "text")
    })
    public sealed interface Argument permits Nested, Amount, FieldName, OptionName, DutyName, PointName, Text {}

    /** Another message within the sentence. */
    public record Nested(StoredMessage message) implements Argument {}

    /**
     * A figure.
     *
     * @param si its value [SI]
     * @param kind what it is a figure of, so that it can be put into another unit
     */
    public record Amount(double si, AmountKind kind) implements Argument {}

    /** What a stored figure is, each in its SI unit; a charge in coulomb, a speed of rotation in revolutions per second. */
    public enum AmountKind {
        TEMPERATURE,
        TEMPERATURE_DIFFERENCE,
        PRESSURE_ABSOLUTE,
        PRESSURE_GAUGE,
        PRESSURE_DIFFERENCE,
        AIR_FLOW,
        LIQUID_FLOW,
        POWER,
        CURRENT,
        VOLTAGE,
        CHARGE,
        LENGTH,
        ALTITUDE,
        AREA,
        VOLUME,
        MASS,
        CONDUCTANCE,
        FOULING,
        ANGLE,
        SPEED,
        TIME,
        ROTATION,
        SHARE,
        PROBABILITY,
        RATIO,
        COUNT
    }

    /** Name of a field, by its key. */
    public record FieldName(String field) implements Argument {}

    /** Name of an option of a field. */
    public record OptionName(String field, String token) implements Argument {}

    /** Name of a duty; {@code label} is what its author calls it. */
    public record DutyName(String duty, String label) implements Argument {}

    /** Name of an operating point of a duty; {@code label} is what its author calls it. */
    public record PointName(String duty, String point, String label) implements Argument {}

    /** A text that is shown as it is. */
    public record Text(String text) implements Argument {}
}
