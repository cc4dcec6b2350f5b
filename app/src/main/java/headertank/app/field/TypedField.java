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

    /**
     * What the control beside a value sends while nobody touches it: where the value came from, and the text of which that was
     * said. With another text it says nothing.
     */
    public String kept() {
        return from.name() + " " + text;
    }

    /** What follows a field's key in the name of the control that says where its value comes from. */
    public static final String FROM = ".from";

    /** Reads one field of a form as it was sent; what the form does not vouch for is guessed. */
    public static TypedField sent(MultiValueMap<String, String> form, BuildField field) {
        String text = first(form, field.key());
        return said(first(form, field.key() + FROM), text)
                .map(from -> new TypedField(text, from))
                .orElseGet(() -> unsaid(text));
    }

    /** What was said of this very text. */
    private static Optional<Provenance> said(String from, String text) {
        int gap = from.indexOf(' ');
        return gap < 0
                ? provenance(from)
                : provenance(from.substring(0, gap))
                        .filter(p -> from.substring(gap + 1).strip().equals(text));
    }

    /**
     * Reads one field of a form as it was sent. What was said of another text makes a value a guess.
     *
     * @param usual stands where the form says nothing of where the value comes from, or nothing that makes sense
     */
    public static TypedField sent(MultiValueMap<String, String> form, BuildField field, Provenance usual) {
        String text = first(form, field.key());
        String from = first(form, field.key() + FROM);
        return new TypedField(text, said(from, text).orElse(from.indexOf(' ') < 0 ? usual : Provenance.GUESSED));
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
