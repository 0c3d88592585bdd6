package trueseam.worktable.pattern;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import trueseam.worktable.browser.Browser;
import trueseam.worktable.browser.InBrowser;

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
}
