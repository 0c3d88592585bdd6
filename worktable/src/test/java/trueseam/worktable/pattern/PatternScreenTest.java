package trueseam.worktable.pattern;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.openqa.selenium.Keys;
import trueseam.drafting.Allowances;
import trueseam.drafting.DraftFigure;
import trueseam.drafting.garment.Garment;
import trueseam.intake.patternfile.PatternFile;
import trueseam.intake.size.SizeTables;
import trueseam.worktable.browser.Browser;
import trueseam.worktable.browser.InBrowser;
import trueseam.worktable.browser.Rosalind;

/** Choosing a pattern, as a dressmaker does it in the browser. */
@ExtendWith(InBrowser.class)
class PatternScreenTest {

    @Test
    void aShellIsDraftedInAChosenSizeAndUndone(Browser browser) {
        String id = browser.begin("Choosing");
        browser.open("/p/" + id + "/pattern");
        assertThat(browser.main()).contains("No pattern yet");
        browser.click("label:has(#way-draft)");
        browser.click("label:has(#garment-bodice)");
        browser.choose("#size", "14");
        browser.waitForText("Size 14");
        assertThat(browser.main()).contains("bodice front").contains("sleeve");
        browser.assertAccessible();
        browser.picture("pattern-1440");
        browser.width(Browser.TABLET);
        browser.assertAccessible();
        browser.picture("pattern-820");
        browser.dark(true);
        browser.assertAccessible();
        browser.picture("pattern-820-dark");
        browser.dark(false);
        browser.width(Browser.DESK);

        browser.click("#undo");
        browser.waitFor(() -> !browser.main().contains("Size 14"));
        browser.click("#redo");
        browser.waitForText("Size 14");
        browser.restart();
        browser.open("/p/" + id + "/pattern");
        browser.waitForText("Size 14");
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void aPaperPatternIsTypedAsTheTapeReadsIt(Browser browser) {
        String id =
                browser.put(trueseam.worktable.project.Project.named("Paper").with(Rosalind.measured()));
        browser.open("/p/" + id + "/pattern");
        browser.click("label:has(#way-paper)");
        browser.click("label:has(#garment-skirt)");
        assertThat(browser.main()).contains("or type what the tape reads on the paper");
        browser.type("#flat-hip\\ girth", "39 1/2 in", Keys.TAB);
        browser.type("#flat-waist\\ girth", "wide", Keys.TAB);
        assertThat(browser.find("#flat-waist\\ girth").getAttribute("aria-invalid"))
                .isEqualTo("true");
        assertThat(browser.find("#flat-waist\\ girth").getAttribute("value")).isEqualTo("wide");
        browser.assertAccessible();
        browser.picture("pattern-paper");
        browser.open("/p/" + id + "/chart");
        // 39 1/2 in on the paper, typed, comes back on the chart.
        assertThat(browser.find("tr[data-measure='hip girth']").getText()).contains("39 1/2 in");
    }

    @Test
    void aPatternFileIsBroughtAndABrokenOneIsRefusedBesideTheField(Browser browser) throws IOException {
        Path folder = Files.createTempDirectory("patterns");
        Path good = folder.resolve("my skirt.svg");
        Files.writeString(
                good,
                PatternFile.write(
                        Garment.skirt.draft(DraftFigure.of(SizeTables.named("misses"), "16"), Allowances.inches())));
        Path bad = Files.writeString(folder.resolve("broken.svg"), "<svg xmlns='http://www.w3.org/2000/svg'><g>");
        String id = browser.put(trueseam.worktable.project.Project.named("File").with(Rosalind.measured()));
        browser.open("/p/" + id + "/pattern");
        browser.click("label:has(#way-file)");
        browser.find("#file").sendKeys(bad.toString());
        browser.click("form[enctype] button");
        browser.waitForText("broken.svg");
        assertThat(browser.find("#file").getAttribute("aria-invalid")).isEqualTo("true");
        assertThat(browser.main()).doesNotContain(folder.toString());
        browser.find("#file").sendKeys(good.toString());
        browser.click("form[enctype] button");
        browser.waitForText("Size 16");
        assertThat(browser.main()).contains("Now: my skirt.svg").contains("skirt front");
        browser.assertAccessible();
        browser.picture("pattern-file");
    }
}
