package trueseam.worktable;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.openqa.selenium.Keys;
import trueseam.worktable.browser.Browser;
import trueseam.worktable.browser.InBrowser;
import trueseam.worktable.browser.Rosalind;
import trueseam.worktable.page.Step;

/** The whole job, from nothing to a printed pattern, without a mouse; and every screen on a desk and on a tablet, by day and by night. */
@ExtendWith(InBrowser.class)
class WholeJobTest {

    private static void go(Browser browser, Step step) {
        browser.tabTo("nav a[href$='/" + step.word() + "']");
        browser.press(Keys.ENTER);
        browser.waitFor(() -> browser.driver().getCurrentUrl().endsWith("/" + step.word()));
        browser.settled();
    }

    private static void fill(Browser browser, String css, String text) {
        browser.tabTo(css);
        browser.press(Keys.chord(Keys.CONTROL, "a"));
        browser.press(text, Keys.TAB);
    }

    @Test
    void fromNothingToAPrintedPatternByKeyboardAlone(Browser browser) throws IOException, InterruptedException {
        browser.open("/");
        assertThat(browser.main()).contains("None yet");
        browser.tabTo("#name");
        browser.press("A skirt", Keys.ENTER);
        browser.waitFor(() -> browser.driver().getCurrentUrl().endsWith("/person"));

        fill(browser, "#label", "Rosalind");
        fill(browser, "#f-WAIST_GIRTH-0", "31 1/2");
        fill(browser, "#f-HIP_GIRTH-0", "41 1/4");

        go(browser, Step.PATTERN);
        browser.tabTo("#way-draft");
        browser.press(Keys.SPACE);
        browser.tabTo("#garment-bodice");
        browser.press(Keys.ARROW_DOWN);
        browser.waitForText("skirt front");
        // The hip decides for a skirt (State College of Washington Extension 78, 1922): 41 1/4 in is nearest to size
        // 16's 40 or 18's 42.
        assertThat(browser.main()).contains("Size 18");

        go(browser, Step.CHART);
        assertThat(browser.main()).contains("proofs hold");
        fill(browser, "#amount-waist\\ girth", "1");
        assertThat(browser.find("tr[data-measure='waist girth']").getText()).contains("+1/4 in × 4");

        go(browser, Step.TABLE);
        assertThat(browser.main()).isNotBlank();
        go(browser, Step.EASE);
        assertThat(browser.main()).contains("least ease");
        go(browser, Step.TRIAL);
        assertThat(browser.main()).isNotBlank();
        go(browser, Step.PRINT);
        browser.tabTo("a[href$='print.pdf']");
        String address = browser.driver().switchTo().activeElement().getAttribute("href");
        HttpResponse<byte[]> pdf = HttpClient.newHttpClient()
                .send(HttpRequest.newBuilder(URI.create(address)).build(), HttpResponse.BodyHandlers.ofByteArray());
        assertThat(pdf.statusCode()).isEqualTo(200);
        assertThat(new String(pdf.body(), 0, 5, StandardCharsets.US_ASCII)).isEqualTo("%PDF-");

        // Everything is there after the machine was switched off, and can still be taken back.
        String path = URI.create(browser.driver().getCurrentUrl()).getPath();
        browser.restart();
        browser.open(path.replace("/print", "/chart"));
        assertThat(browser.find("tr[data-measure='waist girth']").getText()).contains("+1/4 in × 4");
        browser.tabTo("#undo");
        browser.press(Keys.ENTER);
        browser.waitFor(
                () -> !browser.find("tr[data-measure='waist girth']").getText().contains("+1/4 in × 4"));
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void everyScreenIsWholeOnADeskAndOnATabletByDayAndByNight(Browser browser) {
        String id = browser.put(Rosalind.before("bodice"));
        for (Step step : Step.values()) {
            browser.open("/p/" + id + "/" + step.word());
            browser.settled();
            for (int width : new int[] {Browser.DESK, Browser.TABLET}) {
                for (boolean dark : new boolean[] {false, true}) {
                    browser.width(width);
                    browser.dark(dark);
                    browser.assertAccessible();
                    browser.picture("all-" + step.word() + "-" + width + (dark ? "-dark" : ""));
                }
            }
            assertThat(browser.find("[aria-current='page']").getText()).contains(step.label());
        }
        browser.width(Browser.DESK);
        browser.dark(false);
        assertThat(browser.complaints()).isEmpty();
    }
}
