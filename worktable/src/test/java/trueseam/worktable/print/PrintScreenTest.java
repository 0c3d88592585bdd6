package trueseam.worktable.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;
import org.openqa.selenium.Pdf;
import org.openqa.selenium.print.PrintOptions;
import trueseam.worktable.browser.Browser;
import trueseam.worktable.browser.InBrowser;
import trueseam.worktable.browser.Rosalind;
import trueseam.worktable.project.ChartPart;
import trueseam.worktable.project.PatternPart;

/** Choosing paper and lines, looking at pages and taking files away, as a dressmaker does it in the browser. */
@ExtendWith(InBrowser.class)
class PrintScreenTest {

    /** Pictures of a page are measured at so many dots an inch: a tenth of a millimetre is four of them. */
    private static final float DOTS = 1016;

    private static final double DOTS_PER_MM = DOTS / 25.4;

    @TempDir
    Path downloads;

    private String id;

    @BeforeEach
    void rosalindsBodiceIsFitted(Browser browser) {
        id = browser.put(Rosalind.before("bodice"));
        browser.driver()
                .executeCdpCommand(
                        "Browser.setDownloadBehavior",
                        Map.of("behavior", "allow", "downloadPath", downloads.toString()));
    }

    @Test
    void thePagesAreOnAMapAndThePaperChangesThem(Browser browser) {
        browser.open("/p/" + id + "/print");
        browser.waitForText("pages: page 1 with the test squares, then");
        int letter = browser.all(".map .tile").size();
        assertThat(browser.main()).contains(letter + " pages").contains("sheets of US Letter");
        looksRightEverywhere(browser, "print");

        browser.click("label:has(#paper-a3)");
        browser.waitForText("sheets of A3");
        assertThat(browser.all(".map .tile").size()).isLessThan(letter);
        browser.click("label:has(#paper-roll)");
        browser.waitForText("one sheet 914 mm wide");
        browser.type("#roll", "5 in", Keys.TAB);
        browser.waitForText("is not possible");
        assertThat(browser.find("#roll").getDomAttribute("aria-invalid")).isEqualTo("true");
        browser.assertAccessible();
        browser.click("#undo");
        browser.waitForText("one sheet 914 mm wide");
        assertThat(browser.complaints()).isEmpty();
    }

    private static void looksRightEverywhere(Browser browser, String name) {
        for (int width : new int[] {Browser.DESK, Browser.TABLET}) {
            browser.width(width);
            for (boolean dark : new boolean[] {false, true}) {
                browser.dark(dark);
                browser.waitFor(() -> isDrawn(browser));
                browser.assertAccessible();
                browser.picture(name + "-" + width + (dark ? "-dark" : ""));
            }
        }
        browser.dark(false);
        browser.width(Browser.DESK);
    }

    private static boolean isDrawn(Browser browser) {
        return Boolean.TRUE.equals(browser.driver()
                .executeScript("const p = document.getElementById('page'); return p.complete && p.naturalWidth > 0"));
    }

    @Test
    void aPageIsLookedAtByMouseAndByKey(Browser browser) {
        browser.open("/p/" + id + "/print");
        browser.click("#tile-3");
        browser.waitFor(() -> browser.find("#shown").getText().startsWith("Page 3"));
        assertThat(browser.find("#tile-3").getDomAttribute("aria-current")).isEqualTo("true");
        browser.waitFor(() -> isDrawn(browser));
        browser.find("#tile-4").sendKeys(Keys.ENTER);
        browser.waitFor(() -> browser.find("#shown").getText().startsWith("Page 4"));
        browser.settled();
        assertThat(browser.driver().switchTo().activeElement().getDomAttribute("id"))
                .as("the key's place is kept")
                .isEqualTo("tile-4");
        browser.click("#after");
        browser.waitFor(() -> browser.find("#shown").getText().startsWith("Page 5"));
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void linesThatNobodyCouldCutAreRefusedInOneSentence(Browser browser) {
        browser.open("/p/" + id + "/print");
        browser.click("label:has(#line-stitching)");
        browser.click("label:has(#line-cutting)");
        browser.waitForText("Neither stitching nor cutting lines were asked for");
        assertThat(browser.all(".map")).isEmpty();
        browser.assertAccessible();
        browser.click("label:has(#line-cutting)");
        browser.waitFor(() -> !browser.all(".map").isEmpty() && isDrawn(browser));
        browser.restart();
        browser.open("/p/" + id + "/print");
        assertThat(browser.find("#line-stitching").isSelected()).isFalse();
        assertThat(browser.find("#line-cutting").isSelected()).isTrue();
    }

    @Test
    void theDownloadedPrintHasBothTestSquaresAtFullSizeAndAnHonestName(Browser browser) throws IOException {
        browser.open("/p/" + id + "/print");
        browser.click("label:has(#paper-a4)");
        browser.waitForText("sheets of A4");
        browser.click("a[download='rosalind-s-bodice-print-a4.pdf']");
        browser.waitForText("is in your downloads");
        Path file = downloads.resolve("rosalind-s-bodice-print-a4.pdf");
        browser.waitFor(() -> Files.exists(file));
        try (PDDocument pdf = Loader.loadPDF(Files.readAllBytes(file))) {
            // ISO 216: A4 is 210 mm by 297 mm.
            assertThat(pdf.getPage(0).getMediaBox().getWidth() / 72 * 25.4).isCloseTo(210, within(0.1));
            BufferedImage page = new PDFRenderer(pdf).renderImageWithDPI(0, DOTS);
            List<Integer> uprights = uprights(page);
            // The squares stand side by side: 50 mm, a gap, 2 in. Printed scale is to hold to 0.1 % (design, proofs).
            assertThat(sides(uprights)).anySatisfy(side -> assertThat(side).isCloseTo(50, within(0.05)));
            assertThat(sides(uprights)).anySatisfy(side -> assertThat(side).isCloseTo(50.8, within(0.05)));
        }
    }

    /** The squares stand in the upper part of page one; below it are the map of the pages and the key. */
    private static final double UPPER_MM = 110;

    /** The middles of upright lines at least 45 mm high, in dots from the left. */
    private static List<Integer> uprights(BufferedImage page) {
        List<Integer> all = new java.util.ArrayList<>();
        int last = -100;
        int first = -100;
        for (int x = 0; x < page.getWidth(); x++) {
            if (longestDark(page, x) >= 45 * DOTS_PER_MM) {
                if (x > last + 1) {
                    first = x;
                } else {
                    all.remove(all.size() - 1);
                }
                all.add((first + x) / 2);
                last = x;
            }
        }
        return all;
    }

    private static int longestDark(BufferedImage page, int x) {
        int longest = 0;
        int run = 0;
        for (int y = 0; y < UPPER_MM * DOTS_PER_MM; y++) {
            run = (page.getRGB(x, y) & 0xff) < 128 ? run + 1 : 0;
            longest = Math.max(longest, run);
        }
        return longest;
    }

    private static List<Double> sides(List<Integer> uprights) {
        return Stream.iterate(1, i -> i < uprights.size(), i -> i + 1)
                .map(i -> (uprights.get(i) - uprights.get(i - 1)) / DOTS_PER_MM)
                .toList();
    }

    @Test
    void everyFileOfTheListComesAndNoPageNamesAPlaceOfTheMachine(Browser browser) throws IOException {
        browser.open("/p/" + id + "/print");
        List<String> names = browser.all("a[data-file]").stream()
                .map(link -> link.getDomAttribute("download"))
                .toList();
        assertThat(names).hasSize(7).contains("rosalind-s-bodice-report.json", "rosalind-s-bodice-altered.svg");
        for (String name : names) {
            browser.click("a[download='" + name + "']");
            browser.waitForText(name + " is in your downloads");
            browser.waitFor(() -> Files.exists(downloads.resolve(name)));
        }
        String report = Files.readString(downloads.resolve("rosalind-s-bodice-report.json"));
        assertThat(report).contains("\"label\" : \"Rosalind\"").contains("\"made\" : \"20");
        for (String text : List.of(browser.driver().getPageSource(), report)) {
            assertThat(text)
                    .doesNotContain(System.getProperty("user.home") + "/")
                    .doesNotContain(System.getProperty("java.io.tmpdir"));
        }
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void stripsAreShownPageByPage(Browser browser) {
        browser.open("/p/" + id + "/print");
        browser.click("label:has(#what-strips)");
        browser.waitForText("the first with the test squares");
        browser.click("#tile-2");
        browser.waitFor(() -> browser.find("#shown").getText().equals("Page 2: strips"));
        browser.waitFor(() -> isDrawn(browser));
        browser.assertAccessible();
        browser.picture("print-strips-1440");
    }

    @Test
    void sheetsThatAreNotPutTogetherAreNotSaidToBe(Browser browser) {
        String dress = browser.put(Rosalind.before("dress"));
        browser.open("/p/" + dress + "/print");
        browser.click("label:has(#paper-a0)");
        browser.waitForText("sheets of A0, nothing to put together");
        browser.click("#tile-2");
        browser.waitFor(() -> browser.find("#shown").getText().equals("Page 2: sheet 2"));
    }

    @Test
    void aPaperPatternsPiecesAreNotToBeCutAndAPlanThatCannotBeTakenIsNotPrinted(Browser browser) {
        String paper = browser.put(Rosalind.before("skirt")
                .with(new PatternPart("paper", "skirt", List.of(), "misses", "14", "", "", Map.of())));
        browser.open("/p/" + paper + "/print");
        browser.waitForText("the pieces here only show the steps, do not cut them");
        browser.assertAccessible();
        String refused = browser.put(Rosalind.before("skirt")
                .with(new ChartPart(Map.of(), Map.of("waist girth", "400 in"), Map.of(), List.of())));
        browser.open("/p/" + refused + "/print");
        browser.waitForText("reachable");
        assertThat(browser.main()).contains("Nothing can be made of this plan");
        assertThat(browser.all("a[data-file], .map, #worn")).isEmpty();
        browser.assertAccessible();
    }

    @Test
    void beforeAnythingIsThereThePageSaysWhatToDo(Browser browser) {
        String empty = browser.put(trueseam.worktable.project.Project.named("Nothing yet"));
        browser.open("/p/" + empty + "/print");
        assertThat(browser.main()).contains("There is no pattern yet");
        assertThat(browser.all("a[data-file]")).isEmpty();
        browser.assertAccessible();
        browser.picture("print-empty-1440");
    }

    @Test
    void theBrowsersOwnPrintOfThePageLeavesTheFormsOut(Browser browser) throws IOException {
        browser.open("/p/" + id + "/print");
        browser.waitFor(() -> isDrawn(browser));
        Pdf printed = browser.driver().print(new PrintOptions());
        byte[] bytes = java.util.Base64.getDecoder().decode(printed.getContent());
        Files.createDirectories(Path.of("target", "screens"));
        Files.write(Path.of("target", "screens", "print-of-the-page.pdf"), bytes);
        try (PDDocument pdf = Loader.loadPDF(bytes)) {
            String text = new org.apache.pdfbox.text.PDFTextStripper().getText(pdf);
            assertThat(text)
                    .contains("Page one first")
                    .contains("bodice front")
                    .contains("only the map")
                    .doesNotContain("On which paper?");
            assertThat(pdf.getNumberOfPages()).isEqualTo(1);
        }
    }
}
