package headertank.app.journey;

import static org.assertj.core.api.Assertions.assertThat;

import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** Somebody without a mouse: moves by Tab to what they are after, and fails where Tab does not lead. */
final class Keyboard {

    private static final int MOST_TABS = 150;

    private final Browser browser;

    Keyboard(Browser browser) {
        this.browser = browser;
    }

    /** Jumps over the head of the page by the link that is there for it. */
    Keyboard skipHead() {
        browser.stroke(Keys.TAB);
        assertThat(browser.focused().getAttribute("href")).endsWith("#content");
        browser.stroke(Keys.ENTER);
        browser.waitUntil(() -> browser.path().endsWith("#content"));
        return this;
    }

    /** Tabs forward to the first element that fits. */
    Keyboard to(String css) {
        return to(browser.waitFor(css));
    }

    private Keyboard to(WebElement wanted) {
        for (int tabs = 0; !hasFocus(wanted); tabs++) {
            assertThat(tabs).as("tabs to %s", wanted).isLessThan(MOST_TABS);
            browser.stroke(Keys.TAB);
        }
        return this;
    }

    private boolean hasFocus(WebElement wanted) {
        return (Boolean) browser.script("return document.activeElement === arguments[0]", wanted);
    }

    Keyboard type(String text) {
        browser.focused().sendKeys(text);
        return this;
    }

    /** Types over what stands in the field. */
    Keyboard replace(String text) {
        browser.focused().sendKeys(Keys.chord(Keys.CONTROL, "a"), text);
        return this;
    }

    Keyboard press(Keys... keys) {
        for (Keys key : keys) {
            browser.stroke(key);
        }
        return this;
    }

    /** Presses what has the focus, and waits for the page that says so. */
    void enter(String css) {
        browser.stroke(Keys.ENTER);
        browser.waitUntil(() -> !browser.all(css).isEmpty());
    }
}
