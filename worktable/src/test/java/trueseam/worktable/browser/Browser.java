package trueseam.worktable.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import org.openqa.selenium.By;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.JavascriptExecutor;
import org.openqa.selenium.Keys;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.support.ui.WebDriverWait;
import trueseam.records.RecordBook;
import trueseam.worktable.Worktable;
import trueseam.worktable.project.Shelf;

/** A browser before a running worktable, as a dressmaker has it: tests do what she does and look at what she sees. */
public final class Browser implements AutoCloseable {

    /** A desk's screen, and a tablet held upright. */
    public static final int DESK = 1440;

    /** A tablet held upright. */
    public static final int TABLET = 820;

    private static final Path AXE = Path.of("target", "npm", "package", "axe.min.js");
    private static final Path SCREENS = Path.of("target", "screens");

    private final ChromeDriver driver;
    private final Path data;
    private Worktable worktable;

    Browser(ChromeDriver driver, Path data) {
        this.driver = driver;
        this.data = data;
        this.worktable = Worktable.open(data, 0);
        width(DESK);
    }

    /** The driver, for what has no word here. */
    public ChromeDriver driver() {
        return driver;
    }

    /** The running worktable. */
    public Worktable worktable() {
        return worktable;
    }

    /** Ends the worktable and starts it anew on the same data folder, as after switching the machine off. */
    public void restart() {
        worktable.close();
        worktable = Worktable.open(data, 0);
    }

    /** The window's width in pixels; it is as high as a screen of that width. */
    public void width(int pixels) {
        driver.manage().window().setSize(new Dimension(pixels, pixels == TABLET ? 1180 : 1000));
    }

    /** Light or dark, as the machine's owner likes it. */
    public void dark(boolean dark) {
        driver.executeCdpCommand(
                "Emulation.setEmulatedMedia",
                Map.of("features", List.of(Map.of("name", "prefers-color-scheme", "value", dark ? "dark" : "light"))));
    }

    /** Goes to an address of the worktable, such as {@code /}. */
    public void open(String address) {
        driver.get(worktable.address().replaceAll("/$", "") + address);
    }

    /** Begins a project and says its mark. */
    public String begin(String name) {
        open("/");
        type("#name", name);
        driver.findElement(By.id("name")).submit();
        waitFor(() -> driver.getCurrentUrl().contains("/p/"));
        return driver.getCurrentUrl().replaceAll(".*/p/([^/]+)/.*", "$1");
    }

    /** Puts a project on the shelf, as if it had been typed on another day, and says its mark. */
    public String put(trueseam.worktable.project.Project project) {
        try (RecordBook book = RecordBook.inFile(data.resolve("record-book.sqlite"), Clock.systemUTC())) {
            return new Shelf(book.drawer(RecordBook.SINGLE_OWNER)).begin(project);
        }
    }

    /** The same for somebody who is in the record book already. */
    public String putFor(String person, trueseam.worktable.project.Project project) {
        try (RecordBook book = RecordBook.inFile(data.resolve("record-book.sqlite"), Clock.systemUTC())) {
            return new Shelf(book.drawer(RecordBook.SINGLE_OWNER)).begin(project, java.util.Optional.of(person));
        }
    }

    /** The one element of a selector; waits until it is there. */
    public WebElement find(String css) {
        return new WebDriverWait(driver, Duration.ofSeconds(10)).until(d -> d.findElement(By.cssSelector(css)));
    }

    /** All elements of a selector, now. */
    public List<WebElement> all(String css) {
        return driver.findElements(By.cssSelector(css));
    }

    /** What the main part of the page says. */
    public String main() {
        return find("#main").getText();
    }

    /** Clicks. A styled radio button or box is clicked by its label, as a hand does. */
    public void click(String css) {
        WebElement element = find(css);
        ((JavascriptExecutor) driver).executeScript("arguments[0].scrollIntoView({block:'center'})", element);
        element.click();
        settled();
    }

    /** Presses keys where the focus is, as a hand on the keyboard does. */
    public void press(CharSequence... keys) {
        driver.switchTo().activeElement().sendKeys(keys);
        settled();
    }

    /** Goes on with the tabulator until the focus is there; fails if the whole page was gone through without meeting it. */
    public void tabTo(String css) {
        for (int i = 0; i < 500; i++) {
            Object there = driver.executeScript(
                    "return document.activeElement !== null && document.activeElement.matches(arguments[0])", css);
            if (Boolean.TRUE.equals(there)) {
                return;
            }
            driver.switchTo().activeElement().sendKeys(Keys.TAB);
        }
        throw new AssertionError("the tabulator does not lead to " + css + " at " + driver.getCurrentUrl());
    }

    /** Chooses in a list. */
    public void choose(String css, String value) {
        new org.openqa.selenium.support.ui.Select(find(css)).selectByValue(value);
        settled();
    }

    /** Waits until every question that the page asked was answered and shown. */
    public void settled() {
        waitFor(
                () -> Boolean.TRUE.equals(
                        driver.executeScript(
                                "return (document.documentElement.dataset.waiting || '0') === '0' && document.readyState === 'complete'")));
    }

    /** Types over what a field has, by hand: clearing it first would be a change of its own. */
    public void type(String css, CharSequence... keys) {
        WebElement field = find(css);
        field.sendKeys(Keys.chord(Keys.CONTROL, "a"));
        field.sendKeys(keys);
        settled();
    }

    /** Waits until something is so; fails after ten seconds. */
    public void waitFor(BooleanSupplier what) {
        new WebDriverWait(driver, Duration.ofSeconds(10))
                .ignoring(org.openqa.selenium.StaleElementReferenceException.class)
                .until(d -> what.getAsBoolean());
    }

    /** Waits until the page says something. */
    public void waitForText(String text) {
        waitFor(() -> main().contains(text));
    }

    /** Writes a picture of the whole page to target/screens. */
    public void picture(String name) {
        try {
            Files.createDirectories(SCREENS);
            Object height = driver.executeScript("return Math.ceil(document.documentElement.scrollHeight)");
            Object width = driver.executeScript("return document.documentElement.clientWidth");
            Map<String, Object> clip = Map.of(
                    "x",
                    0,
                    "y",
                    0,
                    "width",
                    width,
                    "height",
                    Math.min(6000L, ((Number) height).longValue()),
                    "scale",
                    1);
            String base64 = (String) driver.executeCdpCommand(
                            "Page.captureScreenshot",
                            Map.of("format", "png", "captureBeyondViewport", true, "clip", clip))
                    .get("data");
            Files.write(SCREENS.resolve(name + ".png"), OutputType.BYTES.convertFromBase64Png(base64));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The page has no fault that the rules of WCAG 2.2 AA find (axe-core), and nothing is wider than the window. */
    public void assertAccessible() {
        try {
            driver.executeScript(Files.readString(AXE));
        } catch (IOException e) {
            throw new UncheckedIOException(AXE + " is not there; run ./check, which gets it", e);
        }
        Object found = driver.executeAsyncScript("const done = arguments[arguments.length - 1];"
                + "axe.run(document, {runOnly: ['wcag2a','wcag2aa','wcag21a','wcag21aa','wcag22aa','best-practice']})"
                + ".then(r => done(r.violations.map(v => v.id + ': ' + v.help + ' at '"
                + " + v.nodes.map(n => n.target.join(' ') + ' ' + n.failureSummary).join('; '))))"
                + ".catch(e => done(['axe failed: ' + e]));");
        List<String> violations = new ArrayList<>();
        ((List<?>) found).forEach(v -> violations.add(String.valueOf(v)));
        assertThat(violations).as("axe at " + driver.getCurrentUrl()).isEmpty();
        Object over = driver.executeScript(
                "return document.documentElement.scrollWidth - document.documentElement.clientWidth");
        assertThat(((Number) over).intValue())
                .as("pixels wider than the window")
                .isLessThanOrEqualTo(0);
    }

    /** What the browser complained about since it was last asked: blocked styles and scripts, failed requests. */
    public List<String> complaints() {
        return driver.manage().logs().get("browser").getAll().stream()
                .map(org.openqa.selenium.logging.LogEntry::getMessage)
                .toList();
    }

    @Override
    public void close() {
        driver.quit();
        worktable.close();
    }
}
