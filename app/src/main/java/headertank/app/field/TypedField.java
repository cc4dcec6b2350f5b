package headertank.app.field;

import headertank.calc.carspec.BuildField;
import headertank.calc.quantity.Provenance;
import java.util.Arrays;
import java.util.Optional;
import org.springframework.util.MultiValueMap;

/**
 * What somebody wrote for a field.
 *
 * @param text a number with its unit, or the option's token; empty when unknown
 * @param from where the value comes from
 * @param said whether a person has said so; until then a value counts as guessed
 */
public record TypedField(String text, Provenance from, boolean said) {

    public TypedField(String text, Provenance from) {
        this(text, from, true);
    }

    /** A value of which nobody has said where it comes from. */
    public static TypedField unsaid(String text) {
        return new TypedField(text, Provenance.GUESSED, false);
    }

    /** What follows a field's key in the name of the control that says where its value comes from. */
    public static final String FROM = ".from";

    /** Reads one field of a form as it was sent; what the form does not vouch for is guessed. */
    public static TypedField sent(MultiValueMap<String, String> form, BuildField field) {
        String text = first(form, field.key());
        return provenance(first(form, field.key() + FROM))
                .map(from -> new TypedField(text, from))
                .orElseGet(() -> unsaid(text));
    }

    /**
     * Reads one field of a form as it was sent.
     *
     * @param usual stands where the form says nothing of where the value comes from, or nothing that makes sense
     */
    public static TypedField sent(MultiValueMap<String, String> form, BuildField field, Provenance usual) {
        return new TypedField(
                first(form, field.key()),
                provenance(first(form, field.key() + FROM)).orElse(usual));
    }

    /** Empty for a token that stands for no provenance. */
    public static Optional<Provenance> provenance(String token) {
        return Arrays.stream(Provenance.values())
                .filter(p -> p.name().equals(token))
                .findFirst();
    }

    private static String first(MultiValueMap<String, String> form, String name) {
        String value = form.getFirst(name);
        return value == null ? "" : value.strip();
    }
}
