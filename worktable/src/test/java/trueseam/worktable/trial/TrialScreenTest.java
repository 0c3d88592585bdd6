package trueseam.worktable.trial;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import trueseam.worktable.browser.Browser;
import trueseam.worktable.browser.InBrowser;
import trueseam.worktable.browser.Rosalind;
import trueseam.worktable.project.TrialPart;

/** Reading the folds of a trial garment and pinning them, as a dressmaker does it in the browser. */
@ExtendWith(InBrowser.class)
class TrialScreenTest {

    private static void answer(Browser browser, String words) {
        WebElement link = browser.all(".answers a").stream()
                .filter(one -> one.getText().contains(words))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no answer " + words + " in " + browser.main()));
        link.click();
        browser.settled();
    }

    private static void point(Browser browser, String place) {
        browser.find("a.place[aria-label='" + place + "']").sendKeys(Keys.ENTER);
        browser.settled();
    }

    private static String cause(Browser browser, int place) {
        return browser.all(".causes > li").get(place).getText();
    }

    @Test
    void foldsArePointedAtReadPinnedAndTakenIntoTheNextFit(Browser browser) {
        String id = browser.put(Rosalind.before("bodice"));
        browser.open("/p/" + id + "/trial");
        assertThat(browser.main()).contains("Point at the folds").contains("Nothing was pinned yet");
        browser.assertAccessible();
        browser.picture("trial-1440");

        point(browser, "The waist behind");
        assertThat(browser.find(".given").getText()).contains("the waist behind");
        answer(browser, "Straight across");
        answer(browser, "Slack");
        browser.waitForText("Which of these is what you see?");
        answer(browser, "stop short of the sides");
        // trade facts, section 7, row 11 [web:sway1].
        assertThat(cause(browser, 0))
                .contains("The back is hollow at the waist")
                .contains("web:sway1")
                .contains("Sway-back: raises the centre back waist");
        browser.assertAccessible();
        browser.picture("trial-causes-1440");

        browser.click(".causes .change a");
        browser.type("#amount", "much", Keys.ENTER);
        browser.waitFor(() -> "true".equals(browser.find("#amount").getAttribute("aria-invalid")));
        assertThat(browser.find("#amount-says").getText()).contains("much");
        assertThat(browser.find("#amount").getAttribute("value")).isEqualTo("much");
        browser.assertAccessible();
        browser.picture("trial-form-1440");
        browser.click("label:has(#side-centre)");
        browser.type("#amount", "1/8", Keys.ENTER);
        browser.waitForText("Sitting 1");
        // A fold lies double: 1/8 in deep takes up 1/4 in (common practice).
        assertThat(browser.find(".found").getText())
                .contains("takes up 1/4 in across the centre")
                .contains("sway-back +1/4 in");
        assertThat(browser.main()).contains("proofs hold");
        browser.assertAccessible();
        browser.picture("trial-sitting-1440");

        browser.type("#pinned-0-0", "3/16 in", Keys.TAB);
        browser.waitFor(() -> browser.find(".found").getText().contains("sway-back +3/8 in"));
        browser.type("#pinned-0-0", "a bit", Keys.TAB);
        browser.waitFor(() -> browser.find(".found").getText().contains("a bit"));
        assertThat(browser.find("#pinned-0-0").getAttribute("aria-invalid")).isEqualTo("true");
        browser.click("#undo");
        browser.click("#undo");
        browser.waitForText("Nothing was pinned yet");
        browser.click("#redo");
        browser.waitForText("Sitting 1");
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void causesWithTheSameFoldsAreToldApartOnATablet(Browser browser) {
        browser.width(Browser.TABLET);
        String id = browser.put(Rosalind.before("skirt"));
        browser.open("/p/" + id + "/trial");
        point(browser, "The skirt below the band behind");
        answer(browser, "I am not sure");
        browser.waitForText("Pull the skirt (or the trousers) down");
        browser.assertAccessible();
        browser.picture("trial-820");
        // trade facts, section 11, 8: two opposite cures for the same folds; pull the skirt down.
        answer(browser, "They stay");
        assertThat(cause(browser, 0))
                .contains("The back is hollow at the waist")
                .contains("Speaks for it");
        assertThat(cause(browser, 2)).contains("spoken against");
        browser.dark(true);
        browser.assertAccessible();
        browser.picture("trial-820-dark");
        browser.dark(false);
        browser.find(".given li:last-child a").click();
        browser.settled();
        browser.waitForText("Pull the skirt (or the trousers) down");
        browser.width(Browser.DESK);
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void sittingsAddUpAndCanBeTakenOff(Browser browser) {
        String id = browser.put(Rosalind.before("skirt"));
        for (int sitting = 1; sitting <= 2; sitting++) {
            browser.open("/p/" + id + "/trial?seen=32");
            browser.click(".causes .change a");
            browser.type("#amount", "1/4", Keys.ENTER);
            int now = sitting;
            browser.waitFor(() -> browser.all(".found").size() == now);
            if (sitting == 1) {
                browser.click("form[hx-post$='trial/sitting'] button");
                browser.waitForText("Sitting 2");
                browser.assertAccessible();
            }
        }
        // 1/4 in let out at each side seam is 1/2 in round the body, twice.
        WebElement hip = browser.all("table tbody tr").stream()
                .filter(row -> row.findElement(By.tagName("th")).getText().contains("ip"))
                .findFirst()
                .orElseThrow();
        assertThat(hip.getText()).contains("+1 in");
        browser.assertAccessible();
        browser.picture("trial-sittings-1440");
        browser.open("/p/" + id + "/chart");
        assertThat(browser.main()).contains("proofs hold").contains("The pins of the trial garment add +1/2 in");
        browser.open("/p/" + id + "/trial");
        browser.click(".found .drop button");
        browser.waitFor(() -> browser.all(".found").size() == 1);
        assertThat(browser.main()).contains("+1/2 in");
        browser.restart();
        browser.open("/p/" + id + "/trial");
        assertThat(browser.all(".found")).hasSize(1);
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void aSittingLeavesAsTheFileThatTheCommandLineTakes(Browser browser) throws Exception {
        String id = browser.put(Rosalind.before("skirt")
                .with(TrialPart.empty()
                        .withSeen(new TrialPart.Seen(
                                "32",
                                "tight-hip",
                                "skirt hip +",
                                "1/4 in",
                                "opened",
                                "both",
                                "at both sides, alike"))));
        String file = new String(
                java.net
                        .URI
                        .create(browser.worktable().address() + "p/" + id + "/trial/sitting.csv?sitting=0")
                        .toURL()
                        .openStream()
                        .readAllBytes(),
                java.nio.charset.StandardCharsets.UTF_8);
        assertThat(file.lines())
                .contains("# sitting: sitting 1")
                .contains("seen,cause,alteration,pinned,as,side,note")
                .contains("32,tight-hip,skirt hip +,1/4 in,opened,both,\"at both sides, alike\"");
    }

    @Test
    void withoutAPatternFoldsCanBeReadAndThePageSaysWhatIsMissing(Browser browser) {
        String id = browser.begin("Only reading");
        browser.open("/p/" + id + "/trial");
        assertThat(browser.main()).contains("There is no pattern yet").contains("nothing can be pinned to it");
        browser.assertAccessible();
        browser.picture("trial-empty");
        browser.open("/p/" + id + "/trial?seen=34");
        assertThat(browser.main()).contains("like a smile").contains("The crotch is not deep enough");
        assertThat(browser.all(".causes .change a")).isEmpty();
        assertThat(browser.complaints()).isEmpty();
    }
}
