package headertank.app.field;

import headertank.calc.carspec.BuildField;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Width, height and depth of a core in one go, as they are written on its box: {@code 700x420x52}, {@code 27.5 x 16.5 x 2 in}. */
public final class CoreSize {

    /** The fields, in the order in which such a size is written. */
    public static final List<BuildField> FIELDS =
            List.of(BuildField.CORE_WIDTH, BuildField.CORE_HEIGHT, BuildField.CORE_DEPTH);

    private static final String ONE = "\\s*(\\d+(?:[.,]\\d+)?)\\s*([^\\sxX×*\\d.,]*)\\s*";
    private static final Pattern THREE = Pattern.compile(ONE + "[xX×*]" + ONE + "[xX×*]" + ONE);

    private CoreSize() {}

    static boolean isOne(BuildField field, String text) {
        return field == FIELDS.get(0) && THREE.matcher(text).matches();
    }

    /** Spreads a size that stands in the first field over all three, while nothing else stands in the others. */
    public static Map<BuildField, TypedField> spread(Map<BuildField, TypedField> sent) {
        TypedField first = sent.get(FIELDS.get(0));
        Matcher three = THREE.matcher(first == null ? "" : first.text());
        boolean others = FIELDS.stream()
                .skip(1)
                .anyMatch(f -> sent.containsKey(f) && !sent.get(f).text().isEmpty());
        if (others || !three.matches()) {
            return sent;
        }
        Map<BuildField, TypedField> spread = new EnumMap<>(sent);
        for (int i = 0; i < FIELDS.size(); i++) {
            String own = three.group(2 * i + 2);
            String unit = own.isEmpty() ? three.group(6) : own;
            String text = (three.group(2 * i + 1) + " " + unit).strip();
            spread.put(FIELDS.get(i), new TypedField(text, first.from(), first.said()));
        }
        return spread;
    }
}
