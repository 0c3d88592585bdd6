package trueseam.worktable.standing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import trueseam.worktable.browser.Browser;
import trueseam.worktable.browser.InBrowser;
import trueseam.worktable.browser.Rosalind;
import trueseam.worktable.project.ChartPart;
import trueseam.worktable.project.PatternPart;
import trueseam.worktable.project.Project;

/**
 * From earlier projects to a new one, as a dressmaker does it in the browser. The person is invented; her waist is 31 1/2 in, and the waist
 * column of the misses' chart has 26 1/2 in at size 12, 28 at 14 and 30 at 16 (trade facts, 1.2).
 */
@ExtendWith(InBrowser.class)
class StandingScreenTest {

    @TempDir
    Path folder;

    private static Project skirt(String size, Map<String, String> decisions) {
        return Rosalind.before("skirt")
                .with(new PatternPart("draft", "skirt", List.of(), "misses", size, "", "", Map.of()))
                .with(new ChartPart(Map.of(), decisions, Map.of(), List.of()));
    }

    /** The report of a skirt that she made for an inch more than the tape reads. */
    private Path report(Browser browser, String size, String amount) throws IOException, InterruptedException {
        HttpResponse<String> answer = taken(browser, browser.put(skirt(size, Map.of("waist girth", amount))));
        return Files.writeString(folder.resolve("skirt-" + size + "-report.json"), answer.body());
    }

    private static HttpResponse<String> taken(Browser browser, String id) throws IOException, InterruptedException {
        URI report = URI.create(browser.worktable().address() + "p/" + id + "/print/file/report.json");
        HttpResponse<String> answer = HttpClient.newHttpClient()
                .send(HttpRequest.newBuilder(report).build(), HttpResponse.BodyHandlers.ofString());
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
        return answer;
    }

    private static void bring(Browser browser, String files) {
        browser.find("#reports").sendKeys(files);
        browser.click("form:has(#reports) button");
    }

    @Test
    void whatTwoSkirtsAgreeOnStartsTheThirdAndIsTakenOffAgain(Browser browser) throws Exception {
        Path fourteen = report(browser, "14", "4 1/2 in");
        Path sixteen = report(browser, "16", "2 1/2 in");
        String id = browser.put(skirt("12", Map.of()));
        browser.open("/p/" + id + "/chart");
        browser.click("a[href='/p/" + id + "/standing']");
        browser.waitForText("Nothing yet");
        browser.assertAccessible();

        bring(browser, fourteen.toString());
        browser.waitForText("one pattern alone");
        bring(browser, sixteen.toString());
        browser.waitForText("agreed");
        assertThat(browser.main()).contains("32 1/2 in").contains("+6 in").contains("2 patterns agree within 0 in");
        for (int width : new int[] {Browser.DESK, Browser.TABLET}) {
            browser.width(width);
            for (boolean dark : new boolean[] {false, true}) {
                browser.dark(dark);
                browser.assertAccessible();
                browser.picture("standing-" + width + (dark ? "-dark" : ""));
            }
        }
        browser.dark(false);
        browser.width(Browser.DESK);

        browser.open("/p/" + id + "/chart");
        browser.waitForText("Standing: +6 in instead of the +5 in by the tape");
        assertThat(browser.main()).contains("alter (standing)");
        browser.open("/p/" + id + "/standing");
        browser.click("#take");
        browser.open("/p/" + id + "/chart");
        assertThat(browser.main()).contains("The fitting chart").doesNotContain("Standing:");
        browser.click("#undo");
        browser.waitForText("Standing: +6 in instead");
        browser.open("/p/" + id + "/standing");
        browser.click(".brought li:first-child button");
        browser.waitForText("one pattern alone");
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void whatIsNoReportOrAnotherPersonsIsRefusedInOneSentence(Browser browser) throws Exception {
        Path hers = report(browser, "14", "4 1/2 in");
        Path other = Files.writeString(
                folder.resolve("bea.json"), Files.readString(hers).replace("\"Rosalind\"", "\"Bea\""));
        Path none = Files.writeString(folder.resolve("letter.json"), "Dear Rosalind");
        String id = browser.put(skirt("12", Map.of()));
        browser.open("/p/" + id + "/standing");
        bring(browser, none.toString());
        browser.waitForText("letter.json, line 1: This is not JSON");
        browser.assertAccessible();
        bring(browser, other.toString());
        browser.waitForText("figures of several people (Bea, Rosalind)");
        browser.open("/p/" + id + "/chart");
        assertThat(browser.main()).contains("Waist").doesNotContain("Standing:");
    }

    @Test
    void whatWasWornIsSaidInTheReport(Browser browser) throws Exception {
        String id = browser.put(skirt("14", Map.of()));
        browser.open("/p/" + id + "/print");
        browser.click("#worn");
        browser.waitFor(() -> browser.find("#worn").isSelected());
        HttpResponse<String> answer = taken(browser, id);
        assertThat(answer.body()).contains("\"worn\" : true");
        assertThat(answer.headers().firstValue("Content-Disposition"))
                .contains(
                        "attachment; filename=\"rosalind-s-skirt-report.json\"; filename*=UTF-8''rosalind-s-skirt-report.json");
    }
}
