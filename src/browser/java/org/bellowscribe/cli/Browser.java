package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import java.util.stream.Stream;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A headless Chromium of this computer; a test that wants one is skipped, and says so, where there is none. */
final class Browser implements AutoCloseable {

    private static final Duration PATIENCE = Duration.ofSeconds(60);

    private final ChromeDriver driver;

    Browser() {
        Path browser = program("chromium", "chromium-browser", "google-chrome");
        Path helper = program("chromedriver");
        assumeTrue(browser != null && helper != null, "chromium and chromedriver must be on the path");
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        logs.enable(LogType.PERFORMANCE, Level.ALL);
        ChromeOptions options = new ChromeOptions();
        options.setBinary(browser.toString());
        options.setCapability("goog:loggingPrefs", logs);
        options.addArguments(
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-quic",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--autoplay-policy=no-user-gesture-required");
        driver = new ChromeDriver(
                new ChromeDriverService.Builder()
                        .usingDriverExecutable(helper.toFile())
                        .build(),
                options);
        driver.manage().timeouts().scriptTimeout(PATIENCE.multipliedBy(2));
    }

    private static Path program(String... names) {
        return Stream.of(System.getenv("PATH").split(File.pathSeparator))
                .flatMap(folder -> Stream.of(names).map(name -> Path.of(folder, name)))
                .filter(Files::isExecutable)
                .findFirst()
                .orElse(null);
    }

    /** Opens a page from disk. */
    void open(Path page) {
        driver.get(page.toUri().toString());
    }

    /** Opens the page of a tune and waits until its score is engraved. */
    void openTune(Path page) {
        open(page);
        until("return 'ready' in document.documentElement.dataset");
    }

    /** Shows pages in a width, light or dark. */
    void look(int width, String scheme) {
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", 900, "deviceScaleFactor", 1, "mobile", width < 500));
        driver.executeCdpCommand(
                "Emulation.setEmulatedMedia",
                Map.of("features", List.of(Map.of("name", "prefers-color-scheme", "value", scheme))));
    }

    /** Shows pages to somebody who wants no motion, or to anybody. */
    void stillness(boolean wanted) {
        driver.executeCdpCommand(
                "Emulation.setEmulatedMedia",
                Map.of("features", List.of(Map.of("name", "prefers-reduced-motion", "value", wanted ? "reduce" : ""))));
    }

    /** Opens a page whose scripts may not run. */
    void openWithoutScripts(Path page) {
        driver.executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", true));
        open(page);
    }

    /** Lets scripts run again in the pages that are opened next. */
    void allowScripts() {
        driver.executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", false));
    }

    /** Prints the page, and returns how many sheets it takes. */
    int sheets() {
        Object data = driver.executeCdpCommand("Page.printToPDF", Map.of("preferCSSPageSize", true)).get("data");
        String pdf = new String(Base64.getDecoder().decode((String) data), StandardCharsets.ISO_8859_1);
        return pdf.split("/Type /Page\\b", -1).length - 1;
    }

    /** Presses keys where the keyboard is. */
    void press(CharSequence... keys) {
        new Actions(driver).sendKeys(keys).perform();
    }

    /** Runs a script in the page and returns what it returns. */
    Object ask(String script, Object... arguments) {
        return driver.executeScript(script, arguments);
    }

    /** Runs a script that ends later, and tells its result to the function that is its last argument. */
    Object await(String script, Object... arguments) {
        return driver.executeAsyncScript(script, arguments);
    }

    /** Clicks on the middle of an element. */
    void click(String selector) {
        WebElement element = (WebElement) ask(
                "const e = document.querySelector(arguments[0]); e.scrollIntoView({block: 'center', behavior: 'instant'}); return e", selector);
        new Actions(driver).moveToElement(element).click().perform();
    }

    /** Gives an element the keyboard and presses keys. */
    void keys(String selector, CharSequence... keys) {
        ask("document.querySelector(arguments[0]).focus({preventScroll: true})", selector);
        press(keys);
    }

    /** Returns what axe-core finds to stand in the way of people, in WCAG 2.2 AA and by good practice. */
    Object obstacles() throws IOException {
        try (InputStream in = Browser.class.getResourceAsStream("/META-INF/resources/webjars/axe-core/4.6.3/axe.min.js")) {
            ask(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        }
        return await("""
                const done = arguments[arguments.length - 1];
                axe.run(document, {
                  runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'], rules: {'target-size': {enabled: true}}
                }).then(r => done(r.violations.map(v => v.id + ': ' + v.nodes.slice(0, 3).map(n => n.target + ' ' + n.failureSummary).join('; '))), e => done(['' + e]));
                """);
    }

    /** Says where files go that pages save. */
    void saveInto(Path folder) {
        driver.executeCdpCommand(
                "Browser.setDownloadBehavior", Map.of("behavior", "allow", "downloadPath", folder.toString()));
    }

    /** Waits until a script that is asked again and again returns true. */
    void until(String script) {
        new WebDriverWait(driver, PATIENCE).until(now -> Boolean.TRUE.equals(ask(script)));
    }

    /** Returns what the console has told since it was asked last. */
    List<String> console() {
        return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
                .map(LogEntry::getMessage)
                .toList();
    }

    /** Returns what was asked of a network since it was asked last: all but files and what a page itself holds. */
    List<String> requests() {
        return driver.manage().logs().get(LogType.PERFORMANCE).getAll().stream()
                .map(LogEntry::getMessage)
                .filter(message -> message.contains("\"Network.requestWillBeSent\""))
                .filter(message -> message.matches("(?s).*\"url\":\"(https?|wss?):.*"))
                .toList();
    }

    @Override
    public void close() {
        driver.quit();
    }
}
