package headertank.app.log.file;

import headertank.app.unit.Scaling;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A heading taken apart.
 *
 * @param text as it stands in the file
 * @param words all its words, small, parted by single spaces, without a unit in brackets
 * @param name the same without a unit that is written as its last word
 * @param unit as written; empty when it stands nowhere
 * @param from where the unit was written
 */
public record Heading(String text, String words, String name, String unit, From from) {

    /** Where a unit was written. */
    public enum From {
        HEADING,
        ROW,
        CELL,
        NOWHERE
    }

    private static final Pattern BRACKETS = Pattern.compile("(.*?)[\\[({<]([^\\[\\](){}<>]*)[\\])}>]\\s*(.*)");
    private static final int LONGEST_UNIT = 3;

    /**
     * @param below the cell of the line of units, empty for none
     * @param inCells the unit that stands behind numbers, empty for none
     */
    static Heading of(String text, String below, String inCells) {
        String shown = text.strip().replaceFirst("^#+\\s*", "");
        Matcher m = BRACKETS.matcher(shown.replaceAll("[\\r\\n]+", " "));
        String bracketed = m.matches() ? m.group(2).strip() : "";
        boolean unitInBrackets = m.matches() && (bracketed.isEmpty() || Scaling.isUnit(bracketed));
        List<String> words = words(unitInBrackets ? m.group(1) + " " + m.group(3) : shown);
        int unitWords = unitInBrackets && !bracketed.isEmpty() ? 0 : unitWords(words);
        String name = String.join(" ", words.subList(0, words.size() - unitWords));
        String whole = String.join(" ", words);
        String suffix = unit(words.subList(words.size() - unitWords, words.size()));
        String under = below.replaceAll("[\\[\\](){}<>]", "").strip();
        if (unitInBrackets && !bracketed.isEmpty()) {
            return new Heading(shown, whole, name, bracketed, From.HEADING);
        }
        if (!under.isEmpty() && Scaling.isUnit(under)) {
            return new Heading(shown, whole, name, under, From.ROW);
        }
        if (!suffix.isEmpty()) {
            return new Heading(shown, whole, name, suffix, From.HEADING);
        }
        return new Heading(shown, whole, name, inCells, inCells.isEmpty() ? From.NOWHERE : From.CELL);
    }

    private static List<String> words(String text) {
        String s = text.replaceAll("(?<=[a-zäöü])(?=[A-Z])", " ")
                .replaceAll("(?<=[A-Z])(?=[A-Z][a-z]{2})", " ")
                .toLowerCase(Locale.ROOT)
                .replace("ß", "ss")
                .replace("ä", "ae")
                .replace("ö", "oe")
                .replace("ü", "ue")
                .replace("°", " °")
                .replaceAll("[_.,:;|\\\\\\-\"'\\[\\](){}<>=*#\\s\\u00a0]+", " ")
                .strip();
        List<String> words = new ArrayList<>();
        for (String w : s.split(" ")) {
            int slash = w.indexOf('/');
            if (slash < 0 || Scaling.isUnit(w)) {
                words.add(w);
            } else if (Scaling.isUnit(w.substring(slash + 1))) {
                words.addAll(List.of(w.substring(0, slash), w.substring(slash + 1)));
            } else {
                words.addAll(Arrays.asList(w.split("/")));
            }
        }
        words.removeIf(String::isEmpty);
        return words;
    }

    /** How many of the last words name a unit. */
    private static int unitWords(List<String> words) {
        for (int n = Math.min(LONGEST_UNIT + 1, words.size() - 1); n >= 1; n--) {
            List<String> last = words.subList(words.size() - n, words.size());
            if (Scaling.isUnit(unit(last))) {
                return n;
            }
        }
        return 0;
    }

    private static String unit(List<String> words) {
        if (words.isEmpty()) {
            return "";
        }
        boolean in = words.size() > 1 && words.get(0).equals("in");
        return String.join("", in ? words.subList(1, words.size()) : words);
    }

    /** Whether a line looks like units below headings. */
    static boolean areUnits(List<String> cells) {
        long told = cells.stream().filter(c -> !c.isBlank()).count();
        long units = cells.stream()
                .map(c -> c.replaceAll("[\\[\\](){}<>]", "").strip())
                .filter(c -> !c.isEmpty()
                        && (Scaling.isUnit(c) || Arrays.asList("-", "°", "deg").contains(c)))
                .count();
        return told > 0 && 2 * units >= told;
    }
}
