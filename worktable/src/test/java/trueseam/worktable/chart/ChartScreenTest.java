package trueseam.worktable.chart;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.openqa.selenium.Keys;
import trueseam.worktable.browser.Browser;
import trueseam.worktable.browser.InBrowser;
import trueseam.worktable.browser.Rosalind;

/** Deciding on the fitting chart, as a dressmaker does it in the browser. */
@ExtendWith(InBrowser.class)
class ChartScreenTest {

    private static String row(Browser browser, String measure) {
        return browser.find("tr[data-measure='" + measure + "']").getText();
    }

    @Test
    void ownDecisionsMoveEverythingDownstreamAndCanBeUndone(Browser browser) {
        String id = browser.put(Rosalind.before("bodice"));
        browser.open("/p/" + id + "/chart");
        assertThat(browser.main()).contains("proofs hold");
        // Common practice: a girth is shared over the four side edges, 2 in / 4 = 1/2 in.
        assertThat(row(browser, "bust girth"))
                .contains("+2 in")
                .contains("+1/2 in × 4")
                .contains("41 in");
        browser.assertAccessible();
        browser.picture("chart-1440");

        browser.type("#amount-bust\\ girth", "1", Keys.TAB);
        browser.waitFor(() -> row(browser, "bust girth").contains("+1/4 in × 4"));
        assertThat(row(browser, "bust girth")).contains("40 in");
        assertThat(browser.find("#undo").getAttribute("title")).contains("Full bust: 1");

        browser.choose("#decision-waist\\ girth", "leave");
        assertThat(browser.find("tr[data-measure='waist girth']").getAttribute("class"))
                .isEqualTo("left");
        browser.click("#undo");
        assertThat(browser.find("tr[data-measure='waist girth']").getAttribute("class"))
                .isEqualTo("altered");

        browser.type("#amount-bust\\ girth", "a lot", Keys.TAB);
        assertThat(browser.find("#amount-bust\\ girth").getAttribute("aria-invalid"))
                .isEqualTo("true");
        assertThat(browser.find("#amount-bust\\ girth").getAttribute("value")).isEqualTo("a lot");
        assertThat(row(browser, "bust girth")).contains("a lot");
        browser.assertAccessible();
        browser.type("#amount-bust\\ girth", Keys.DELETE, Keys.TAB);
        browser.waitFor(() -> row(browser, "bust girth").contains("+1/2 in × 4"));

        browser.choose("#ask-entry", "sway-back");
        browser.type("#ask-amount", "3/8", Keys.ENTER);
        browser.waitFor(() -> !browser.all("#asked-amount-0").isEmpty());
        assertThat(browser.main()).contains("proofs hold").contains("sway-back");
        browser.width(Browser.TABLET);
        browser.assertAccessible();
        browser.picture("chart-820");
        browser.dark(true);
        browser.assertAccessible();
        browser.picture("chart-820-dark");
        browser.dark(false);
        browser.width(Browser.DESK);
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void anotherTabsChangeIsNotOverwrittenSilently(Browser browser) {
        String id = browser.put(Rosalind.before("skirt"));
        browser.open("/p/" + id + "/chart");
        String first = browser.driver().getWindowHandle();
        browser.driver().switchTo().newWindow(org.openqa.selenium.WindowType.TAB);
        browser.open("/p/" + id + "/chart");
        browser.choose("#decision-waist\\ girth", "leave");
        browser.driver().close();
        browser.driver().switchTo().window(first);
        browser.choose("#decision-hip\\ girth", "leave");
        assertThat(browser.find("#notice").getText()).contains("changed in another tab");
        browser.driver().navigate().refresh();
        assertThat(browser.find("tr[data-measure='waist girth']").getAttribute("class"))
                .isEqualTo("left");
        assertThat(browser.find("#decision-hip\\ girth").getAttribute("value")).isEmpty();
    }

    @Test
    void withoutMeasuresThePageTeachesWhatWillStandThere(Browser browser) {
        String id = browser.begin("Nothing yet");
        browser.open("/p/" + id + "/chart");
        assertThat(browser.main()).contains("There is no pattern yet").contains("Measure the person");
        browser.assertAccessible();
        browser.picture("chart-empty");
    }
}
