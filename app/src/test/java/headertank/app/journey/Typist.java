package headertank.app.journey;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.openqa.selenium.Keys;

/**
 * Somebody who uses nothing but the keyboard, and the time a person would need for it: the keystroke-level model of Card,
 * Moran and Newell (The keystroke-level model for user performance time with interactive systems, Communications of the ACM
 * 23, 1980), from memory: 0.28 s for each key of an average typist, 1.35 s of thought before each unit of work; a shifted
 * character is two keys. One second for each page that loads (modelling choice, several times what it takes).
 */
final class Typist {

    private static final double KEY_S = 0.28;
    private static final double THOUGHT_S = 1.35;
    private static final double LOAD_S = 1.0;
    private static final String SHIFTED = "#!?+_:\"()%";

    private final Browser browser;
    private int keys;
    private int thoughts;
    private int loads;

    Typist(Browser browser) {
        this.browser = browser;
    }

    /** Looks at the sheet or the page and makes up their mind. */
    Typist think() {
        thoughts++;
        return this;
    }

    Typist type(String text) {
        keys += text.chars()
                .map(c -> Character.isUpperCase(c) || SHIFTED.indexOf(c) >= 0 ? 2 : 1)
                .sum();
        browser.focused().sendKeys(text);
        return this;
    }

    Typist press(Keys key) {
        keys++;
        browser.focused().sendKeys(key);
        return this;
    }

    Typist pressWithControl(Keys key) {
        keys += 2;
        browser.focused().sendKeys(Keys.chord(Keys.CONTROL, key));
        return this;
    }

    /** Into a field for a date, in the order in which the browser has its parts. */
    Typist date(LocalDate date) {
        return type(date.format(DateTimeFormatter.ofPattern("MMddyyyy")));
    }

    int keys() {
        return keys;
    }

    void waitForPage(String css) {
        loads++;
        browser.waitFor(css);
    }

    /** Chooses in the focused list by its first letters or by arrows, whichever takes fewer keys. */
    void choose(String value) {
        List<String> labels = options("o.text.trim().toLowerCase()");
        List<String> values = options("o.value");
        int at = values.indexOf(value);
        String letters = letters(labels, at);
        if (letters.length() < at) {
            type(letters);
        } else {
            for (int i = 0; i < at; i++) {
                press(Keys.ARROW_DOWN);
            }
        }
    }

    /** One word with the browser for the whole list. */
    @SuppressWarnings("unchecked")
    private List<String> options(String each) {
        return (List<String>) browser.script("return Array.from(document.activeElement.options, o => " + each + ")");
    }

    private static String letters(List<String> labels, int wanted) {
        String label = labels.get(wanted);
        for (int n = 1; n < label.length(); n++) {
            String start = label.substring(0, n);
            if (labels.stream()
                    .filter(l -> l.startsWith(start))
                    .findFirst()
                    .orElseThrow()
                    .equals(label)) {
                return start;
            }
        }
        return label;
    }

    double seconds() {
        return keys * KEY_S + thoughts * THOUGHT_S + loads * LOAD_S;
    }

    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%.0f s: %d keys, %d thoughts, %d pages", seconds(), keys, thoughts, loads);
    }
}
