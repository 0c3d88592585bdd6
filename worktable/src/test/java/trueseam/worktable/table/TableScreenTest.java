package trueseam.worktable.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;
import trueseam.worktable.browser.Browser;
import trueseam.worktable.browser.InBrowser;
import trueseam.worktable.browser.Rosalind;

/** Working at the table, as a dressmaker and a teacher do it in the browser. */
@ExtendWith(InBrowser.class)
class TableScreenTest {

    private static final String HIP = "#skirt-front-hip-girth-side-at-the-hip-level";

    private static void open(Browser browser, String garment) {
        String id = browser.put(Rosalind.before(garment));
        browser.open("/p/" + id + "/table");
        browser.find("#hands .knob");
    }

    private static String change(Browser browser, String measure) {
        return browser.find("#panel-drag tr[data-term='" + measure + "'] [data-change]")
                .getText();
    }

    private static String stitching(Browser browser) {
        return browser.find("[data-piece='skirt front'] .stitching").getAttribute("d");
    }

    private static double pixelsPerMm(Browser browser) {
        return ((Number) browser.driver().executeScript("return document.getElementById('table').getScreenCTM().a"))
                .doubleValue();
    }

    private static void lessMotion(Browser browser, boolean less) {
        browser.driver()
                .executeCdpCommand(
                        "Emulation.setEmulatedMedia",
                        Map.of(
                                "features",
                                List.of(Map.of("name", "prefers-reduced-motion", "value", less ? "reduce" : ""))));
    }

    @Test
    void aDraggedHandleMovesThePieceWhileItIsHeldAndIsOneChangeToUndo(Browser browser) {
        open(browser, "skirt");
        assertThat(change(browser, "hip girth")).isEqualTo("+1 in");
        String before = stitching(browser);
        browser.picture("table-1440");

        WebElement knob = browser.find(HIP + " .knob");
        // 3/8 in out at one of four edges is 1 1/2 in in all (common practice: a girth over its cut edges).
        int pixels = (int) Math.round(9.525 * pixelsPerMm(browser));
        Actions hand = new Actions(browser.driver());
        hand.moveToElement(knob).clickAndHold().moveByOffset(pixels, 0).perform();
        browser.waitFor(() -> !change(browser, "hip girth").equals("+1 in")
                && !stitching(browser).equals(before));
        browser.picture("table-held");
        assertThat(browser.find("#undo").getAttribute("title")).isEqualTo("Nothing to undo");
        assertThat(browser.find(".amount text").getText()).startsWith("Hip +2");
        String held = change(browser, "hip girth");
        hand.release().perform();
        browser.waitFor(() -> browser.find("#undo").getAttribute("title").startsWith("Undo: Hip"));
        assertThat(browser.find("#undo").getAttribute("title")).contains(held);
        assertThat(change(browser, "hip girth")).isEqualTo(held);
        assertThat(browser.find("#proofs").getText()).contains("proofs hold");
        assertThat(browser.driver().switchTo().activeElement().getAttribute("id"))
                .isEqualTo(HIP.substring(1));

        browser.click("#undo");
        browser.waitFor(() -> change(browser, "hip girth").equals("+1 in"));
        assertThat(stitching(browser)).isEqualTo(before);
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void arrowKeysMoveAHandleByAnEighthAndEscapePutsItBack(Browser browser) {
        open(browser, "skirt");
        String before = stitching(browser);
        WebElement handle = browser.find(HIP);
        browser.driver().executeScript("arguments[0].focus()", handle);
        handle.sendKeys(Keys.ARROW_RIGHT, Keys.ARROW_RIGHT, Keys.ESCAPE);
        browser.waitFor(() -> browser.find("#table-says").getText().equals("Put back as it was."));
        assertThat(change(browser, "hip girth")).isEqualTo("+1 in");
        assertThat(stitching(browser)).isEqualTo(before);
        handle.sendKeys(Keys.ARROW_RIGHT, Keys.ARROW_RIGHT);
        browser.waitFor(() -> browser.find("#undo").getAttribute("title").equals("Undo: Hip +1 1/4 in"));
        assertThat(change(browser, "hip girth")).isEqualTo("+1 1/4 in");
        assertThat(browser.find(HIP).getAttribute("aria-valuetext")).isEqualTo("+1 1/4 in");

        browser.find(HIP).sendKeys(Keys.chord(Keys.SHIFT, Keys.ARROW_LEFT), Keys.ENTER);
        browser.waitFor(() -> browser.find("#undo").getAttribute("title").equals("Undo: Hip +3/4 in"));
        assertThat(change(browser, "hip girth")).isEqualTo("+3/4 in");
        browser.assertAccessible();
    }

    @Test
    void aHandleThatCannotFollowSaysHowFarItCan(Browser browser) {
        open(browser, "bodice");
        Object answer = browser.driver()
                .executeAsyncScript("const done = arguments[arguments.length - 1];"
                        + "import('/static/desk.js').then(m => m.ask('table/drag', {measure: 'upper arm girth', mm: 900}))"
                        + ".then(a => done(a.refused)).catch(e => done('failed: ' + e));");
        assertThat(String.valueOf(answer)).contains("As far as it goes: +").contains("sleeve");
    }

    @Test
    void theStepsArePlayedForwardAndBackWithTheirWords(Browser browser) {
        lessMotion(browser, true);
        open(browser, "skirt");
        browser.click("[data-tool=steps]");
        browser.waitFor(() -> browser.all("#step-list li").size() > 4);
        int steps = browser.all("#step-list li").size();
        for (int i = 1; i <= 4; i++) {
            int step = i;
            browser.click("[data-play=next]");
            browser.waitFor(() -> step(browser).equals(step + " 1.00"));
        }
        assertThat(browser.find("#step-list [aria-current=step]").getText()).isNotEmpty();
        browser.click("[data-play=back]");
        browser.waitFor(() -> step(browser).equals("3 1.00"));
        browser.click("#step-list li:last-child button");
        browser.waitFor(() -> step(browser).equals(steps + " 1.00"));
        assertThat(browser.all("#acting .traced").size()).isGreaterThan(2);
        assertThat(browser.all("#acting .fresh").stream().filter(line -> line.getAttribute("stroke-dasharray") != null))
                .isEmpty();
        browser.assertAccessible();
        browser.picture("table-steps");
        lessMotion(browser, false);
    }

    private static String step(Browser browser) {
        return String.valueOf(browser.find("#table").getAttribute("data-step"));
    }

    @Test
    void aPivotSwingsAboutItsPinWhileItIsPlayed(Browser browser) {
        open(browser, "bodice");
        browser.click("[data-tool=steps]");
        String girth = browser.all("#chapter option").stream()
                .filter(option -> option.getText().contains("girth at the side seams: bodice front"))
                .findFirst()
                .orElseThrow()
                .getAttribute("value");
        browser.choose("#chapter", girth);
        browser.waitFor(() -> browser.find("#step-list").getText().contains("Pivot the pattern"));
        int pivot = -1;
        List<WebElement> words = browser.all("#step-list li");
        for (int i = 0; i < words.size() && pivot < 0; i++) {
            pivot = words.get(i).getText().startsWith("Pivot") ? i : -1;
        }
        assertThat(pivot).isPositive();
        browser.click("#step-list li:nth-child(" + pivot + ") button");
        String lies = sheet(browser);
        browser.choose("#pace", "0.5");
        browser.click("[data-play=next]");
        browser.waitFor(() -> !sheet(browser).equals(lies) && !step(browser).endsWith("1.00"));
        browser.picture("table-swinging");
        String at = (pivot + 1) + " 1.00";
        browser.waitFor(() -> step(browser).equals(at));
        assertThat(sheet(browser)).contains("rotate(").isNotEqualTo(lies);

        browser.click("[data-play=play]");
        String next = (pivot + 2) + " 0.";
        browser.waitFor(() -> step(browser).startsWith(next) && !step(browser).endsWith("0.00"));
        browser.click("[data-play=play]");
        assertThat(browser.find("[data-play=play]").getText()).isEqualTo("Play");
        String paused = step(browser);
        browser.click("[data-play=back]");
        browser.waitFor(() -> !step(browser).equals(paused));
    }

    private static String sheet(Browser browser) {
        return browser.find("#acting .sheet-paper").getAttribute("transform");
    }

    @Test
    void aTapeIsLaidBetweenTwoPlaces(Browser browser) {
        open(browser, "skirt");
        browser.click("[data-tool=tape]");
        browser.click("#tape-form button");
        browser.waitFor(() -> !browser.all("#acting .along").isEmpty());
        String byName = browser.find("[data-tape=shorter]").getText();
        assertThat(byName).endsWith("in");
        assertThat(browser.find("#tape-says").getText()).startsWith("skirt front");

        // The corners of the hem by hand: the tape reads the hem, half of the front.
        Actions hand = new Actions(browser.driver());
        WebElement table = browser.find("#table");
        int[] left = pixel(browser, "skirt front", 0);
        int[] right = pixel(browser, "skirt front", 1);
        hand.moveToElement(table).moveByOffset(left[0], left[1]).click().perform();
        browser.waitFor(() -> browser.all("#acting .end").size() == 1);
        new Actions(browser.driver())
                .moveToElement(table)
                .moveByOffset(right[0], right[1])
                .click()
                .perform();
        browser.waitFor(() -> browser.all("#acting .end").size() == 2);
        assertThat(browser.find("#tape-says").getText()).contains("hem");
        browser.assertAccessible();
        browser.picture("table-tape");
    }

    /** A place on the hem of a piece as a distance from the middle of the table, in pixels. */
    private static int[] pixel(Browser browser, String piece, int end) {
        List<?> at = (List<?>) browser.driver()
                .executeScript(
                        "const line = document.querySelector(\"[data-piece='\" + arguments[0] + \"'] .stitching\");"
                                + "const box = line.getBoundingClientRect();"
                                + "const t = document.getElementById('table').getBoundingClientRect();"
                                + "const x = box.left + box.width * (arguments[1] === 0 ? 0.2 : 0.7);"
                                + "return [Math.round(x - t.left - t.width / 2), Math.round(box.bottom - 4 - t.top - t.height / 2)]",
                        piece,
                        end);
        return new int[] {((Number) at.get(0)).intValue(), ((Number) at.get(1)).intValue()};
    }

    @Test
    void aSeamIsWalkedToItsEndAndSaysWhatIsLeftOver(Browser browser) {
        open(browser, "bodice");
        browser.click("[data-tool=walk]");
        browser.waitFor(() -> browser.all("#walk-numbers tr").size() == 5);
        browser.choose("#seam", "3"); // armhole and sleeve
        browser.waitFor(() -> browser.find("#walk-numbers").getText().contains("in"));
        browser.waitFor(() -> browser.all("#landings tr").size() > 2);
        browser.click("[data-walk=end]");
        browser.waitFor(
                () -> browser.find(".left-over").getAttribute("visibility").equals("visible"));
        // The drafted cap is 1 in longer than the armhole, and the alteration keeps that (DraftEase.fitted()).
        assertThat(browser.find("#walk-numbers").getText()).contains("Left over at the end +1 in");
        double walked = Double.parseDouble(browser.find("#table").getAttribute("data-walked"));
        assertThat(walked).isGreaterThan(300);
        WebElement slider = browser.find("#walked");
        slider.sendKeys(Keys.HOME);
        browser.waitFor(() -> Double.parseDouble(browser.find("#table").getAttribute("data-walked")) < 0.1);
        slider.sendKeys(Keys.PAGE_UP, Keys.PAGE_UP);
        browser.waitFor(() -> Double.parseDouble(browser.find("#table").getAttribute("data-walked")) > 20);
        browser.assertAccessible();
        browser.picture("table-walk");
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void theTableComesCloserAndFrontsAreLaidOnBacks(Browser browser) {
        open(browser, "trousers");
        double far = pixelsPerMm(browser);
        browser.click("[data-zoom=in]");
        browser.click("[data-zoom=in]");
        assertThat(pixelsPerMm(browser)).isCloseTo(far * 1.69, within(0.02 * far));
        browser.driver().executeScript("document.getElementById('table').focus()");
        browser.find("#table").sendKeys("0");
        assertThat(pixelsPerMm(browser)).isCloseTo(far, within(0.01 * far));
        String apart = browser.find("[data-piece='trouser back']").getAttribute("transform");
        browser.choose("#overlay", "side");
        assertThat(browser.find("[data-piece='trouser back']").getAttribute("transform"))
                .isNotEqualTo(apart);
        browser.picture("table-overlay");
        browser.assertAccessible();
    }

    @Test
    void itIsAccessibleAndSharpOnADeskAndATabletInLightAndDark(Browser browser) {
        open(browser, "dress");
        browser.assertAccessible();
        browser.dark(true);
        browser.assertAccessible();
        browser.picture("table-1440-dark");
        browser.width(Browser.TABLET);
        browser.assertAccessible();
        browser.picture("table-820-dark");
        browser.dark(false);
        browser.assertAccessible();
        browser.picture("table-820");
        browser.width(Browser.DESK);
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void withoutAFitThePageTeachesWhatWillLieThere(Browser browser) {
        String id = browser.begin("Nothing yet");
        browser.open("/p/" + id + "/table");
        assertThat(browser.main()).contains("There is no pattern yet").contains("at scale");
        browser.assertAccessible();
    }
}
