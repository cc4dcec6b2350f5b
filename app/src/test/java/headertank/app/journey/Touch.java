package headertank.app.journey;

import java.util.ArrayList;
import java.util.List;

/** What is wrong with a page for somebody who holds a phone or a tablet in a glove. */
final class Touch {

    /** Of a small phone in use today [px] (modelling choice). */
    private static final int PHONE_HEIGHT = 667;

    private static final int PHONE_WIDTH = 390;

    private static final String HEAD_HEIGHT = "return document.querySelector('.top').getBoundingClientRect().height";

    /** A verdict is seen without pushing its table aside. */
    private static final String VERDICT_OUT_OF_SIGHT = """
        return Array.from(document.querySelectorAll('.verdict, .what-verdict')).filter(e => {
          if (!e.checkVisibility()) return false;
          const r = e.getBoundingClientRect();
          const box = (e.closest('.scroll') ?? document.documentElement).getBoundingClientRect();
          return r.right > box.right + 1 || r.left < box.left - 1 || r.width === 0;
        }).slice(0, 2).map(e => e.textContent.trim().slice(0, 60))\
        """;

    /** Targets that a finger has to hit; a link in running text and a box whose label is as large are none. What lies over a link counts as it. */
    private static final String SMALL = """
        const small = [];
        for (const e of document.querySelectorAll('a[href], button, input, select, textarea, summary')) {
          if (e.disabled || e.type === 'hidden' || !e.checkVisibility({visibilityProperty: true}) || e.matches('.skip')) continue;
          const label = e.closest('label');
          const r = (label !== null && e.matches('[type=checkbox], [type=radio]') ? label : e).getBoundingClientRect();
          const over = getComputedStyle(e, '::after');
          const size = side => Math.max(r[side], over.position === 'absolute' ? parseFloat(over[side]) : 0);
          const around = e.parentElement;
          const inText = e.tagName === 'A' && Array.from(around.childNodes).some(n => n.nodeType === 3 && n.textContent.trim().length > 2);
          if (!inText && r.height > 0 && (size('height') < 43.5 || size('width') < 43.5)) small.push(Math.round(r.width) + 'x' + Math.round(r.height) + ' ' + e.outerHTML.slice(0, 140));
        }
        return small.slice(0, 6)\
        """;

    private static final String OPEN = """
        document.querySelectorAll('details:not([open])').forEach(d => d.setAttribute('open', ''));
        document.querySelector('.field:has(.what) .typed')?.focus();
        """;

    private Touch() {}

    /** What is hidden until somebody asks for it, or is in its field, is touched then. */
    static void openAll(Browser browser) {
        browser.script(OPEN);
    }

    static List<String> smallTargets(Browser browser) {
        return said(browser, SMALL).stream()
                .map(e -> "smaller than 44 px: " + e)
                .toList();
    }

    /** What does not fit the width that the browser has now. */
    static List<String> misfits(Browser browser, int width) {
        List<String> all = new ArrayList<>();
        said(browser, VERDICT_OUT_OF_SIGHT).forEach(e -> all.add("verdict out of sight: " + e));
        if (width == PHONE_WIDTH && ((Number) browser.script(HEAD_HEIGHT)).doubleValue() > PHONE_HEIGHT / 10.0) {
            all.add("the head is higher than a tenth of a phone");
        }
        if (browser.scrollsSideways()) {
            all.add("wider than the window");
        }
        return all;
    }

    @SuppressWarnings("unchecked")
    private static List<String> said(Browser browser, String script) {
        return (List<String>) browser.script(script);
    }
}
