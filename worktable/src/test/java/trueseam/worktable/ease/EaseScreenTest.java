package trueseam.worktable.ease;

import static org.assertj.core.api.Assertions.assertThat;

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
import trueseam.worktable.project.PatternPart;
import trueseam.worktable.project.Project;

/** Seeing where it will be tight, and reading the picture out by pointer and by keys. */
@ExtendWith(InBrowser.class)
class EaseScreenTest {

    /** A dress for her with the hip left alone: 41 in round her, and 40 1/2 in round the paper. */
    private static Project tightAtTheHip() {
        Project before = Rosalind.before("dress");
        return before.with(before.chart().withDecision("hip girth", "leave"));
    }

    @Test
    void theTightPlaceIsSaidAndLeadsToItsLineOfTheChart(Browser browser) {
        String id = browser.put(tightAtTheHip());
        browser.open("/p/" + id + "/ease");
        assertThat(browser.main()).contains("Tight at the hip").contains("as you decided");
        assertThat(browser.find("#ease-drawing svg").getText()).contains("TIGHT");
        browser.assertAccessible();
        browser.picture("ease-1440");
        browser.width(Browser.TABLET);
        browser.assertAccessible();
        browser.picture("ease-820");
        browser.dark(true);
        browser.assertAccessible();
        browser.picture("ease-820-dark");
        browser.width(Browser.DESK);
        browser.picture("ease-1440-dark");
        browser.dark(false);
        browser.click(".problem a");
        browser.waitFor(() -> browser.driver().getCurrentUrl().contains("/chart#decision-hip"));
        browser.choose("#decision-hip\\ girth", "alter");
        browser.open("/p/" + id + "/ease");
        assertThat(browser.main()).contains("Nothing is tighter than the least ease");
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void whoseLeastEaseCountsIsChosenWithItsReason(Browser browser) {
        String id = browser.put(tightAtTheHip());
        browser.open("/p/" + id + "/ease");
        assertThat(browser.main()).contains("Whose least ease counts at the hip?");
        browser.choose("#choice-least-ease-at-the-hip", "encyclopedia");
        browser.waitForText("an encyclopedia's entry on ease, its first source, 3 in");
        assertThat(browser.find(".ease-table tr.tight").getText()).contains("3 in");
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void aHeightIsReadOutByThePointerAndByKeys(Browser browser) {
        String id = browser.put(tightAtTheHip());
        browser.open("/p/" + id + "/ease");
        // It begins where it is tightest.
        String first = browser.find("#ease-says").getText();
        assertThat(first).contains("(hip)").contains("least 2 in");
        WebElement slider = browser.find("#ease-height");
        slider.sendKeys(Keys.ARROW_UP);
        String above = browser.find("#ease-says").getText();
        assertThat(above).isNotEqualTo(first).contains("drawn in");
        assertThat(slider.getAttribute("aria-valuetext")).isEqualTo(above);
        slider.sendKeys(Keys.ARROW_DOWN);
        assertThat(browser.find("#ease-says").getText()).isEqualTo(first);
        WebElement waist = browser.all(".ease-dot").get(1);
        browser.driver().executeScript("arguments[0].scrollIntoView({block:'center'})", waist);
        new Actions(browser.driver()).moveToElement(waist).perform();
        browser.waitFor(() -> browser.find("#ease-says").getText().startsWith("At the waist"));
        assertThat(browser.find("#ease-says").getText()).contains("(waist)").contains("ease 1 in, least 1 in");
    }

    @Test
    void theArmIsShownApart(Browser browser) {
        String id = browser.put(tightAtTheHip());
        browser.open("/p/" + id + "/ease");
        browser.click(".parts a[href$='part=arm']");
        browser.waitFor(() -> browser.find("#ease-drawing").getText().contains("Upper arm"));
        assertThat(browser.find(".parts [aria-current]").getText()).startsWith("Arm");
        browser.assertAccessible();
        browser.picture("ease-arm-1440");
    }

    @Test
    void withoutMeasuresOrPatternThePageTeaches(Browser browser) {
        String id = browser.begin("Nothing yet");
        browser.open("/p/" + id + "/ease");
        assertThat(browser.main()).contains("Measure the person").contains("Ease is what a garment is larger");
        browser.assertAccessible();
        browser.picture("ease-empty");
        String paper = browser.put(Rosalind.before("skirt")
                .with(new PatternPart("paper", "skirt", List.of(), "misses", "14", "", "", Map.of())));
        browser.open("/p/" + paper + "/ease");
        assertThat(browser.main()).contains("On paper only");
        browser.assertAccessible();
    }
}
