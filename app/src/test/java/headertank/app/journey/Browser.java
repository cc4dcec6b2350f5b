package headertank.app.journey;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.logging.Level;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.openqa.selenium.By;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.Keys;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A real browser at a running app. A test that asks for one is skipped where none is installed. */
public final class Browser implements AutoCloseable {

    private final ChromeDriver driver;
    private final String home;

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
                .build();
        return new Browser(new ChromeDriver(service, options), "http://localhost:" + port);
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

    public Browser width(int pixels) {
        driver.manage().window().setSize(new Dimension(pixels, 900));
        return this;
    }

    public void signIn(String login, String password) {
        open("/login");
        type("username", login);
        type("password", password);
        focused().sendKeys(Keys.ENTER);
        waitFor("nav");
    }

    /** Replaces what stands in a field, found by its name. */
    public Browser type(String field, String text) {
        WebElement element = driver.findElement(By.name(field));
        element.clear();
        element.sendKeys(text);
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
        return new WebDriverWait(driver, Duration.ofSeconds(10)).until(d -> d.findElement(By.cssSelector(css)));
    }

    public void waitUntil(BooleanSupplier condition) {
        new WebDriverWait(driver, Duration.ofSeconds(10)).until(d -> condition.getAsBoolean());
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

    /** What the browser complained about: refused scripts and styles, failed requests, errors. */
    public List<String> complaints() {
        return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
                .filter(e -> e.getLevel().intValue() >= Level.WARNING.intValue())
                .map(LogEntry::getMessage)
                .toList();
    }

    /** Keeps a picture in {@code target/screenshots}. */
    public void screenshot(String name) throws IOException {
        Path folder = Files.createDirectories(Path.of("target", "screenshots"));
        Files.write(folder.resolve(name + ".png"), driver.getScreenshotAs(OutputType.BYTES));
    }

    @Override
    public void close() {
        driver.quit();
    }
}
