package headertank.app.journey;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** What whoever works without a mouse finds on each page: the first field, the search and the list of keys. */
final class AtTheKeyboard {

    /** Pages that are there for their form. */
    private static final Pattern FORM = Pattern.compile(
            "/(new|edit|spec|intake|settings|password|day|import|from-log|login|first-owner|sign|decision)$");

    private static final String NOT_IN_FIRST_FIELD = """
        const fields = Array.from(document.querySelectorAll('main form:not([method=get]) :is(input, select, textarea)'))
          .filter(f => f.type !== 'hidden' && f.getClientRects().length > 0);
        return fields.length > 0 && !fields.includes(document.activeElement)
          && !(document.activeElement.matches('main input[type=search]'));
        """;

    private static final String NO_KEYS = """
        const press = key => document.body.dispatchEvent(new KeyboardEvent('keydown', {key, bubbles: true, cancelable: true}));
        const before = document.activeElement;
        const faults = [];
        if (document.querySelector('form.out') === null) return faults;
        press('?');
        const list = document.getElementById('keys');
        if (!list || !list.open) faults.push('? does not list the keys'); else list.close();
        const search = document.querySelector('main input[type=search]');
        const finder = document.getElementById('finder');
        if (search !== null || finder !== null) {
          press('/');
          if (finder !== null ? !finder.open : document.activeElement !== search) faults.push('/ does not lead to the search');
          if (finder !== null && finder.open) finder.close();
        } else if (document.querySelector('nav a[href$="/cars"]') === null) {
          faults.push('no way to a search');
        }
        before.focus();
        return faults;
        """;

    private AtTheKeyboard() {}

    /** What is missing on the page that a browser has just opened. */
    @SuppressWarnings("unchecked")
    static List<String> faults(Browser browser, String path) {
        List<String> faults = new ArrayList<>();
        if (FORM.matcher(path.replaceFirst("\\?.*", "")).find()
                && Boolean.TRUE.equals(browser.script(NOT_IN_FIRST_FIELD))) {
            faults.add("the focus is not in the first field");
        }
        faults.addAll((List<String>) browser.script(NO_KEYS));
        return faults;
    }
}
