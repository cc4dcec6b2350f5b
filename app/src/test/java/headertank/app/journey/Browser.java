package headertank.app.journey;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.logging.Level;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.openqa.selenium.Alert;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.NoAlertPresentException;
import org.openqa.selenium.NotFoundException;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.WindowType;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.remote.http.ClientConfig;

/** A real browser at a running app. A test that asks for one is skipped where none is installed. */
public final class Browser implements AutoCloseable {

    /** A command that takes longer is lost, not slow. */
    private static final Duration LOST = Duration.ofMinutes(10);

    /** Whether pictures are kept; they take a third of the time of a test that only looks. */
    private static final boolean PICTURES = Boolean.getBoolean("headertank.pictures");

    private final ChromeDriver driver;
    private final String home;
    private final Patience patience = new Patience();

    private Browser(ChromeDriver driver, String home) {
        this.driver = driver;
        this.home = home;
    }

    public static Browser at(int port) {
        File chromium = installed("chromium");
        File chromedriver = installed("chromedriver");
        Assumptions.assumeTrue(chromium != null && chromedriver != null, "no browser is installed");
        ChromeOptions options = new ChromeOptions();
        options.setBinary(chromium);
        options.addArguments(
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--disable-dev-shm-usage",
                "--hide-scrollbars",
                "--window-size=1440,900");
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        options.setCapability(ChromeOptions.LOGGING_PREFS, logs);
        var service = new ChromeDriverService.Builder()
                .usingDriverExecutable(chromedriver)
                .withTimeout(LOST)
                .build();
        ChromeDriver driver =
                new ChromeDriver(service, options, ClientConfig.defaultConfig().readTimeout(LOST));
        driver.manage().timeouts().pageLoadTimeout(LOST).scriptTimeout(LOST);
        return new Browser(driver, "http://localhost:" + port);
    }

    private static File installed(String program) {
        return Stream.of(System.getenv("PATH").split(File.pathSeparator))
                .map(folder -> new File(folder, program))
                .filter(File::canExecute)
                .findFirst()
                .orElse(null);
    }

    public Browser open(String path) {
        driver.get(home + path);
        return this;
    }

    /** Closes the tab without a word and opens a page in a new one. */
    public Browser inANewTab(String path) {
        String old = driver.getWindowHandle();
        driver.switchTo().newWindow(WindowType.TAB);
        String tab = driver.getWindowHandle();
        driver.switchTo().window(old).close();
        driver.switchTo().window(tab);
        return open(path);
    }

    /** Keys of the browser's store for this site. */
    public List<?> stored() {
        return (List<?>) driver.executeScript("return Object.keys(localStorage)");
    }

    public void acceptQuestion() {
        patience.until(this::question).orElseThrow(() -> never("a question")).accept();
    }

    public Browser width(int pixels) {
        return size(pixels, 900);
    }

    public Browser size(int width, int height) {
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
        return this;
    }

    /** A window that can be touched. */
    public Browser touch() {
        driver.executeCdpCommand("Emulation.setTouchEmulationEnabled", Map.of("enabled", true, "maxTouchPoints", 1));
        return this;
    }

    /** Touches the middle of the first element that fits, wherever on the page it is. */
    public Browser tap(String css) {
        WebElement element = find(css);
        driver.executeScript("arguments[0].scrollIntoView({block: 'center'})", element);
        List<?> middle = (List<?>) driver.executeScript(
                "const r = arguments[0].getBoundingClientRect(); return [r.x + r.width / 2, r.y + r.height / 2]",
                element);
        Map<String, Object> point = Map.of("x", middle.get(0), "y", middle.get(1));
        driver.executeCdpCommand(
                "Input.dispatchTouchEvent", Map.of("type", "touchStart", "touchPoints", List.of(point)));
        driver.executeCdpCommand("Input.dispatchTouchEvent", Map.of("type", "touchEnd", "touchPoints", List.of()));
        return this;
    }

    /** Takes the connection away, or gives it back. */
    public Browser offline(boolean away) {
        driver.executeCdpCommand("Network.enable", Map.of());
        driver.executeCdpCommand(
                "Network.emulateNetworkConditions",
                Map.of("offline", away, "latency", 0, "downloadThroughput", -1, "uploadThroughput", -1));
        return this;
    }

    public void signIn(String login, String password) {
        open("/login");
        type("username", login);
        type("password", password);
        find("input[name=password]").sendKeys(Keys.ENTER);
        waitFor("nav");
    }

    /** Replaces what stands in a field, found by its name. */
    public Browser type(String field, String text) {
        WebElement element = driver.findElement(By.name(field));
        element.clear();
        element.sendKeys(text);
        return this;
    }

    /** Clicks the first element that fits, wherever on the page it is. */
    public Browser press(String css) {
        WebElement element = find(css);
        driver.executeScript("arguments[0].scrollIntoView({block: 'center'})", element);
        element.click();
        return this;
    }

    /** What a script on the page returns; scripts of tests are not bound by the page's own policy. */
    public Object script(String script, Object... arguments) {
        return driver.executeScript(script, arguments);
    }

    /** The same for a script that calls its last argument when it is done. */
    public Object awaited(String script, Object... arguments) {
        return driver.executeAsyncScript(script, arguments);
    }

    /** Tells pages that the person wants nothing to move, and on what they like to read. */
    public Browser still(String scheme) {
        driver.executeCdpCommand(
                "Emulation.setEmulatedMedia",
                Map.of(
                        "features",
                        List.of(
                                Map.of("name", "prefers-reduced-motion", "value", "reduce"),
                                Map.of("name", "prefers-color-scheme", "value", scheme))));
        return this;
    }

    public void signOut() {
        driver.manage().deleteAllCookies();
    }

    /** Presses a key wherever the focus is. */
    public Browser key(Keys key) {
        focused().sendKeys(key);
        return this;
    }

    /** Presses a key on the keyboard itself, whatever kind of field has the focus. */
    public Browser stroke(CharSequence key) {
        new Actions(driver).sendKeys(key).perform();
        return this;
    }

    public WebElement focused() {
        return driver.switchTo().activeElement();
    }

    public WebElement find(String css) {
        return driver.findElement(By.cssSelector(css));
    }

    public List<WebElement> all(String css) {
        return driver.findElements(By.cssSelector(css));
    }

    public WebElement waitFor(String css) {
        return patience.until(() -> isComplete() ? all(css).stream().findFirst() : Optional.<WebElement>empty())
                .orElseThrow(() -> never(css));
    }

    public void waitUntil(BooleanSupplier condition) {
        patience.until(() -> holds(condition) ? Optional.of(true) : Optional.empty())
                .orElseThrow(() -> never("what was waited for"));
    }

    /** A part of the page that is replaced meanwhile is asked for again. */
    private boolean holds(BooleanSupplier condition) {
        try {
            return isComplete() && condition.getAsBoolean();
        } catch (NotFoundException | StaleElementReferenceException e) {
            return false;
        }
    }

    /** Keys that are pressed while a page still loads get lost. */
    private boolean isComplete() {
        return "complete".equals(driver.executeScript("return document.readyState"));
    }

    private Optional<Alert> question() {
        try {
            return Optional.of(driver.switchTo().alert());
        } catch (NoAlertPresentException e) {
            return Optional.empty();
        }
    }

    private AssertionError never(String what) {
        return new AssertionError(what + " never came on " + path() + ", which shows:\n" + text());
    }

    public String text() {
        return driver.findElement(By.tagName("main")).getText();
    }

    public String path() {
        return driver.getCurrentUrl().substring(home.length());
    }

    /** True when the page is wider than the window. */
    public boolean scrollsSideways() {
        return (Boolean) driver.executeScript(
                "return document.documentElement.scrollWidth > document.documentElement.clientWidth");
    }

    /**
     * What the browser complained about: refused scripts and styles, failed requests, errors. A preview that a newer one
     * overtook, or that a page left behind, is no complaint.
     */
    public List<String> complaints() {
        return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
                .filter(e -> e.getLevel().intValue() >= Level.WARNING.intValue())
                .map(LogEntry::getMessage)
                .filter(m -> !m.contains("htmx:sendAbort") && !m.contains("htmx:afterRequest"))
                .toList();
    }

    /** Keeps a picture of the whole page in {@code target/screenshots}, when pictures are asked for. */
    public void screenshot(String name) throws IOException {
        picture(name, true);
    }

    /** Keeps a picture of the whole page, or of what the window shows, in {@code target/screenshots}, when pictures are asked for. */
    void picture(String name, boolean whole) throws IOException {
        if (!PICTURES) {
            return;
        }
        Object picture = driver.executeCdpCommand(
                        "Page.captureScreenshot", Map.of("format", "png", "captureBeyondViewport", whole))
                .get("data");
        Path folder = Files.createDirectories(Path.of("target", "screenshots"));
        Files.write(folder.resolve(name + ".png"), Base64.getDecoder().decode((String) picture));
    }

    @Override
    public void close() {
        driver.quit();
    }
}
