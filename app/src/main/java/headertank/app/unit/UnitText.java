package headertank.app.unit;

import java.util.Locale;

/** Spelling of units: people type degree signs, superscripts and capitals as their keyboard allows. */
final class UnitText {

    private UnitText() {}

    /** Small letters, no spaces, {@code ³} as 3, {@code °} and "deg" alike dropped before a letter. */
    static String plain(String unit) {
        String s = unit.strip()
                .toLowerCase(Locale.ROOT)
                .replace('³', '3')
                .replace('²', '2')
                .replace("^", "")
                .replace("·", "")
                .replace("µ", "u")
                .replace("μ", "u")
                .replaceAll("[\\s\\u00a0\\u202f]+", "");
        if (s.equals("°") || s.equals("deg")) {
            return "deg";
        }
        return s.replace("°", "").replaceFirst("^deg(?=[cfk]$)", "");
    }
}
