package trueseam.worktable.cloth;

import static org.assertj.core.api.Assertions.assertThat;
import static trueseam.worktable.cloth.OnCloth.length;
import static trueseam.worktable.cloth.OnCloth.looksRightEverywhere;
import static trueseam.worktable.cloth.OnCloth.middle;
import static trueseam.worktable.cloth.OnCloth.open;
import static trueseam.worktable.cloth.OnCloth.search;
import static trueseam.worktable.cloth.OnCloth.searched;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;
import trueseam.worktable.browser.Browser;
import trueseam.worktable.browser.InBrowser;
import trueseam.worktable.browser.Rosalind;
import trueseam.worktable.project.PatternPart;
import trueseam.worktable.project.Project;

/** Choosing cloth, letting the pieces be laid and taking the layout away, as a dressmaker does it in the browser. */
@ExtendWith(InBrowser.class)
class ClothScreenTest {

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
    void aFirstLayoutIsThereAtOnceAndTheSearchMakesItShorter(Browser browser) {
        open(browser, id);
        assertThat(browser.main()).contains("A first layout, made at once");
        assertThat(browser.all("#pieces .piece")).hasSizeGreaterThanOrEqualTo(3);
        looksRightEverywhere(browser, "cloth-first");
        browser.choose("#patience", "quick");
        browser.click("#search");
        searched(browser);
        browser.waitForText("Found after 10 rounds from seed 1.");
        assertThat(browser.all(".widths").get(0).findElements(org.openqa.selenium.By.cssSelector("tbody tr")))
                .hasSize(7);
        assertThat(browser.main()).contains("as bought").contains("as altered");
        looksRightEverywhere(browser, "cloth");
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void aLongSearchIsStoppedAndTheBestIsKeptThroughARestart(Browser browser) {
        open(browser, id);
        browser.choose("#patience", "longest");
        browser.click("#search");
        assertThat(browser.main()).contains("Stop, and keep the best");
        browser.waitFor(() -> browser.find("#progress").getText().contains("round "));
        browser.assertAccessible();
        browser.picture("cloth-searching-1440");
        browser.click("#stop");
        searched(browser);
        browser.waitForText("from seed 1.");
        String found = length(browser);
        List<Double> there = middle(browser, 0);
        browser.restart();
        open(browser, id);
        assertThat(length(browser)).isEqualTo(found);
        assertThat(middle(browser, 0)).isEqualTo(there);
    }

    @Test
    void theSameSeedGivesTheSameLayoutAndTheFilesAreOfIt(Browser browser) throws IOException {
        open(browser, id);
        browser.choose("#patience", "quick");
        search(browser);
        String other = browser.put(Rosalind.before("bodice"));
        String first = places(browser);
        browser.open("/p/" + other + "/cloth");
        browser.choose("#patience", "quick");
        search(browser);
        assertThat(places(browser)).isEqualTo(first);
        for (String name : List.of("layout.pdf", "layout.svg", "layout.json")) {
            browser.click("a[download='rosalind-s-bodice-" + name + "']");
            browser.waitForText(name + " is in your downloads");
            browser.waitFor(() -> Files.exists(downloads.resolve("rosalind-s-bodice-" + name)));
        }
        try (PDDocument pdf = Loader.loadPDF(Files.readAllBytes(downloads.resolve("rosalind-s-bodice-layout.pdf")))) {
            String across = browser.all(".pins tbody td")
                    .get(3)
                    .getText()
                    .lines()
                    .findFirst()
                    .orElseThrow();
            assertThat(new PDFTextStripper().getText(pdf))
                    .contains("Where to pin")
                    .contains("bodice front")
                    .contains(across);
        }
        assertThat(Files.readString(downloads.resolve("rosalind-s-bodice-layout.json")))
                .contains("\"rounds\" : 10")
                .contains("\"seed\" : 1")
                .contains("\"widths\"");
        assertThat(Files.readString(downloads.resolve("rosalind-s-bodice-layout.svg")))
                .contains("data-piece=\"sleeve\"");
    }

    private static String places(Browser browser) {
        return browser.find(".pins tbody").getText();
    }

    @Test
    void everythingAboutTheClothIsChosenAndKept(Browser browser) {
        open(browser, id);
        browser.type("#width", "45", Keys.TAB);
        browser.waitForText("45 in wide, folded lengthwise.");
        browser.choose("#layers", "single");
        browser.waitForText("45 in wide, single layer.");
        browser.click("#nap");
        browser.waitForText("all pieces one way up");
        browser.click("#more-shrink summary");
        browser.type("#shrink", "5", Keys.TAB);
        browser.waitForText("wash it before you lay the pieces");
        browser.click("#more-stripes summary");
        browser.type("#repeat-along", "3", Keys.TAB);
        browser.waitFor(() -> !browser.all("#stripes .stripe").isEmpty());
        browser.waitForText("The stripes do not match at it too");
        // With one seam chosen none is left that could not be matched as well.
        for (int i = 1; i < browser.all("[name=seam]").size(); i++) {
            browser.click("#seam-" + i);
        }
        browser.waitFor(() -> !browser.main().contains("The stripes do not match at it too"));
        browser.click("#more-remnant summary");
        browser.type("#have", "20", Keys.TAB);
        browser.waitForText("in are missing; search longer");
        for (Map.Entry<String, String> field :
                Map.of("from", "10", "to", "12", "low", "8", "high", "10").entrySet()) {
            browser.type("#flaw-0-" + field.getKey(), field.getValue(), Keys.TAB);
        }
        browser.waitFor(() -> browser.all("rect.flaw").size() == 1);
        looksRightEverywhere(browser, "cloth-chosen");
        browser.restart();
        open(browser, id);
        assertThat(browser.find("#width").getDomProperty("value")).isEqualTo("45");
        assertThat(browser.find("#nap").isSelected()).isTrue();
        assertThat(browser.all("rect.flaw")).hasSize(1);
        assertThat(browser.find("#seam-1").isSelected()).isFalse();
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void whatCannotBeIsSaidInOneSentenceAtItsField(Browser browser) {
        open(browser, id);
        browser.type("#width", "wide", Keys.TAB);
        browser.waitFor(() -> "true".equals(browser.find("#width").getDomAttribute("aria-invalid")));
        assertThat(browser.all("#cloth")).isEmpty();
        browser.assertAccessible();
        browser.type("#width", "12", Keys.TAB);
        browser.waitForText("does not fit across the cloth");
        assertThat(browser.main()).contains("take a wider cloth");
        browser.picture("cloth-too-narrow-1440");
        browser.type("#width", "60", Keys.TAB);
        browser.waitFor(() -> !browser.all("#cloth").isEmpty());
        browser.choose("#layers", "crosswise");
        browser.click("#nap");
        browser.waitForText("must not be folded crosswise");
        browser.assertAccessible();
        browser.click("#nap");
        browser.waitForText("The picture shows the upper layer");
    }

    @Test
    void liningAndInterfacingHaveTheirOwnPiecesAndCloth(Browser browser) {
        String skirt = browser.put(Rosalind.before("skirt")
                .with(new PatternPart("draft", "skirt", List.of("waistband"), "misses", "", "", "", Map.of())));
        browser.open("/p/" + skirt + "/cloth");
        browser.waitForText("A first layout");
        int pieces = browser.all("#pieces .piece").size();
        browser.click("label:has(#stuff-interfacing)");
        browser.waitFor(() -> browser.all("#pieces .piece").size() == 1);
        assertThat(pieces).isGreaterThan(1);
        browser.type("#width", "36", Keys.TAB);
        browser.waitForText("36 in wide");
        browser.click("label:has(#stuff-lining)");
        browser.waitForText("No piece of it is cut from lining");
        browser.assertAccessible();
        browser.click("#more-pieces summary");
        browser.click("#cut-0");
        browser.waitFor(() -> browser.all("#pieces .piece").size() == 1);
        assertThat(browser.find("#width").getDomProperty("value")).isEqualTo("60 in");
        browser.click("label:has(#stuff-interfacing)");
        browser.waitFor(() -> browser.find("#width").getDomProperty("value").equals("36"));
    }

    @Test
    void centimetresAreShownToWhoMeasuresInThem(Browser browser) {
        Project bodice = Rosalind.before("bodice");
        String metric = browser.put(bodice.with(new trueseam.worktable.project.PersonPart(
                "Rosalind", "cm", bodice.person().days())));
        browser.open("/p/" + metric + "/cloth");
        browser.waitForText("150 cm wide, folded lengthwise");
        assertThat(length(browser)).matches("Needs [0-9.]+ cm, buy [0-9.]+ m");
        assertThat(browser.find(".measured").getText()).endsWith(" cm");
    }

    @Test
    void beforeAnythingIsThereThePageSaysWhatToDo(Browser browser) {
        String empty = browser.put(Project.named("Nothing yet"));
        browser.open("/p/" + empty + "/cloth");
        assertThat(browser.main()).contains("There is no pattern yet").contains("Choose the pattern");
        assertThat(browser.all("#cloth, a[data-file]")).isEmpty();
        browser.assertAccessible();
        browser.picture("cloth-empty-1440");
        String unfitted = browser.put(Project.named("Not measured")
                .with(new PatternPart("draft", "skirt", List.of(), "misses", "14", "", "", Map.of())));
        browser.open("/p/" + unfitted + "/cloth");
        browser.waitForText("they have not been fitted to anybody yet");
        assertThat(browser.all("#pieces .piece")).isNotEmpty();
        browser.assertAccessible();
    }
}
