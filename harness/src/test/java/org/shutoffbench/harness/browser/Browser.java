package org.shutoffbench.harness.browser;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import java.util.stream.Stream;
import org.openqa.selenium.By;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.support.ui.WebDriverWait;

/**
 * A real Chromium with a profile of its own, without network but loopback. Tests that use it are skipped where no browser is
 * installed, unless the property {@code browserTests} is {@code force}.
 */
public final class Browser implements AutoCloseable {

    private static final Path CHROMIUM = Path.of("/usr/bin/chromium");
    private static final Path DRIVER = Path.of("/usr/bin/chromedriver");

    private final ChromeDriver driver;
    private final Path profile;

    private Browser(ChromeDriver driver, Path profile) {
        this.driver = driver;
        this.profile = profile;
    }

    /** Opens a window of a size, light or dark. */
    public static Browser open(int width, int height, String... arguments) {
        boolean installed = Files.isExecutable(CHROMIUM) && Files.isExecutable(DRIVER);
        if ("force".equals(System.getProperty("browserTests"))) {
            assertThat(installed)
                    .as("browser tests are forced and Chromium with its driver is installed")
                    .isTrue();
        }
        assumeTrue(installed, "skipped: Chromium and its driver are not installed");
        try {
            Path profile = Files.createTempDirectory("bench-browser");
            LoggingPreferences logs = new LoggingPreferences();
            logs.enable(LogType.BROWSER, Level.ALL);
            logs.enable(LogType.PERFORMANCE, Level.ALL);
            ChromeOptions options = new ChromeOptions();
            options.setBinary(CHROMIUM.toFile());
            options.addArguments(
                    "--headless",
                    "--no-sandbox",
                    "--disable-gpu",
                    "--disable-quic",
                    "--no-first-run",
                    "--disable-background-networking",
                    "--disable-component-update",
                    "--disable-sync",
                    "--host-resolver-rules=MAP * ~NOTFOUND , EXCLUDE 127.0.0.1",
                    "--user-data-dir=" + profile);
            options.addArguments(arguments);
            options.setCapability("goog:loggingPrefs", logs);
            ChromeDriverService service = new ChromeDriverService.Builder()
                    .usingDriverExecutable(DRIVER.toFile())
                    .usingAnyFreePort()
                    .build();
            Browser browser = new Browser(new ChromeDriver(service, options), profile);
            browser.size(width, height);
            return browser;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public ChromeDriver driver() {
        return driver;
    }

    /** Sets the size of the page itself, also below the least width of a window. */
    public void size(int width, int height) {
        driver.manage().window().setSize(new Dimension(Math.max(width, 500), height));
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
    }

    public void dark() {
        driver.executeCdpCommand(
                "Emulation.setEmulatedMedia",
                Map.of("features", List.of(Map.of("name", "prefers-color-scheme", "value", "dark"))));
    }

    public WebElement find(String css) {
        return driver.findElement(By.cssSelector(css));
    }

    public List<WebElement> all(String css) {
        return driver.findElements(By.cssSelector(css));
    }

    public String text(String css) {
        return find(css).getText();
    }

    public Object script(String script, Object... arguments) {
        return driver.executeScript(script, arguments);
    }

    /** Waits, at most thirty seconds, until a script gives true. */
    public void until(String expression) {
        new WebDriverWait(driver, Duration.ofSeconds(30))
                .withMessage("never true: " + expression)
                .until(d -> Boolean.TRUE.equals(driver.executeScript("return Boolean(" + expression + ")")));
    }

    /** Everything the console was told at the level of a warning or above. */
    public List<String> complaints() {
        return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
                .filter(entry -> entry.getLevel().intValue() >= Level.WARNING.intValue())
                .map(LogEntry::getMessage)
                .toList();
    }

    /** Addresses that were asked for over a network since the last call. */
    public List<String> requests() {
        return driver.manage().logs().get(LogType.PERFORMANCE).getAll().stream()
                .map(LogEntry::getMessage)
                .filter(message -> message.contains("\"Network.requestWillBeSent\""))
                .map(message -> message.replaceFirst("(?s).*\"request\":\\{.*?\"url\":\"([^\"]*)\".*", "$1"))
                .filter(address -> !address.startsWith("data:") && !address.startsWith("blob:"))
                .filter(address -> !address.startsWith("chrome:"))
                .toList();
    }

    /** Serious and critical violations found by axe-core, as text. */
    public List<String> violations() {
        try (InputStream axe = Browser.class.getResourceAsStream("/axe.min.js")) {
            driver.executeScript(new String(axe.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        @SuppressWarnings("unchecked")
        List<String> found = (List<String>) driver.executeAsyncScript("""
                const told = arguments[arguments.length - 1];
                axe.run(document, {resultTypes: ['violations']}).then(result => told(result.violations
                    .filter(v => v.impact === 'serious' || v.impact === 'critical')
                    .map(v => v.id + ': ' + v.help + ' ' + v.nodes.slice(0, 3).map(n => n.html).join(' | '))));
                """);
        return found;
    }

    /** Elements that make the page scroll sideways; empty where it does not. */
    public List<String> widerThanThePage() {
        @SuppressWarnings("unchecked")
        List<String> wide = (List<String>) driver.executeScript("""
                if (document.documentElement.scrollWidth <= window.innerWidth) { return []; }
                return Array.from(document.querySelectorAll('body *'))
                    .filter(e => e.getBoundingClientRect().right > window.innerWidth + 0.01 && !e.closest('.wide'))
                    .map(e => e.tagName + '.' + e.className + '#' + e.id + ' ' + e.getBoundingClientRect().right)
                    .concat(['page ' + document.documentElement.scrollWidth]);
                """);
        return wide;
    }

    /** Fraction of the pixels of an element that differ from its most frequent colour. */
    public double ink(WebElement element) {
        try {
            var image = javax.imageio.ImageIO.read(
                    new java.io.ByteArrayInputStream(element.getScreenshotAs(org.openqa.selenium.OutputType.BYTES)));
            Map<Integer, Integer> colours = new java.util.HashMap<>();
            for (int x = 0; x < image.getWidth(); x++) {
                for (int y = 0; y < image.getHeight(); y++) {
                    colours.merge(image.getRGB(x, y), 1, Integer::sum);
                }
            }
            int most = colours.values().stream().max(Comparator.naturalOrder()).orElseThrow();
            return 1 - (double) most / (image.getWidth() * image.getHeight());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Saves what the window shows where the variable {@code BENCH_PICTURES} names a folder. */
    public void picture(String name) {
        String folder = System.getenv("BENCH_PICTURES");
        if (folder == null) {
            return;
        }
        try {
            Map<String, Object> shot = driver.executeCdpCommand(
                    "Page.captureScreenshot", Map.of("format", "png", "captureBeyondViewport", true));
            Files.write(
                    Path.of(folder, name + ".png"),
                    java.util.Base64.getDecoder().decode((String) shot.get("data")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() {
        driver.quit();
        try (Stream<Path> files = Files.walk(profile)) {
            files.sorted(Comparator.reverseOrder())
                    .forEach(file -> file.toFile().delete());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
