package trueseam.worktable.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import trueseam.worktable.browser.Browser;
import trueseam.worktable.browser.InBrowser;
import trueseam.worktable.browser.Rosalind;
import trueseam.worktable.project.PersonPart;
import trueseam.worktable.project.Project;

/** The start page as the record book. The person is invented. */
@ExtendWith(InBrowser.class)
class RecordBookPageTest {

    @TempDir
    Path folder;

    /** Measured long ago too, when her waist was an inch and a half less; her hip has not changed. */
    private static Project withAnEarlierDay() {
        Project before = Rosalind.before("skirt");
        List<PersonPart.Day> days = new ArrayList<>(List.of(new PersonPart.Day(
                "2024-11-20",
                List.of(
                        new PersonPart.Typed("waist girth", "", "30", "in"),
                        new PersonPart.Typed("hip girth", "", "41", "in")),
                "")));
        days.addAll(before.person().days());
        return before.with(new PersonPart("Rosalind", "in", days));
    }

    private static String personAddress(Browser browser) {
        return browser.find(".people a").getAttribute("href").replaceAll("^.*?(?=/people/)", "");
    }

    private static byte[] get(Browser browser, String address) throws IOException, InterruptedException {
        HttpResponse<byte[]> answer = HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(URI.create(browser.worktable().address())
                                        .resolve(address))
                                .build(),
                        HttpResponse.BodyHandlers.ofByteArray());
        assertThat(answer.statusCode()).isEqualTo(200);
        return answer.body();
    }

    @Test
    void peopleAndProjectsAreFoundDuplicatedPutAwayComparedTakenAwayAndBroughtBack(Browser browser) throws Exception {
        String id = browser.put(withAnEarlierDay());
        get(browser, "/p/" + id + "/print/file/steps.pdf");

        // The person: her trend, with the change beyond measuring error told in a word, and one within it not.
        browser.open("/");
        assertThat(browser.main()).contains("Rosalind").contains("2 days").contains("Take everything away");
        String person = personAddress(browser);
        browser.open(person);
        assertThat(browser.main())
                .contains("Changed by +1 1/2 in since 2024-11-20")
                .contains("No change that the tape can tell since 2024-11-20")
                .contains("1 taken away, last on");
        assertThat(browser.all(".changed")).hasSize(1);
        browser.assertAccessible();
        browser.picture("person-of-the-book-1440");
        browser.type("#note", "left shoulder lower");
        browser.click("form[action='" + person + "'] button");
        browser.waitForText("Back to the record book");
        assertThat(browser.find("#note").getAttribute("value")).isEqualTo("left shoulder lower");

        // The same for another pattern: measures kept, pattern open.
        browser.open("/");
        browser.click(".more summary");
        browser.click("form[action='/projects/" + id + "/duplicate'] button");
        browser.waitFor(() -> browser.driver().getCurrentUrl().contains("/person"));
        assertThat(browser.find("#project-name").getAttribute("value")).isEqualTo("Rosalind's skirt, another pattern");
        String second = browser.driver().getCurrentUrl().replaceAll(".*/p/([0-9a-f]+)/.*", "$1");
        browser.open("/p/" + second + "/chart");
        assertThat(browser.main()).doesNotContain("Amount taken");
        browser.open("/?text=another");
        assertThat(browser.all("table.list tbody tr")).hasSize(1);

        // Put away, and found again.
        browser.click(".more summary");
        browser.click("form[action='/projects/" + second + "/archive'] button");
        browser.waitFor(() -> browser.all("table.list tbody tr").size() == 1
                && browser.find("table.list").getText().contains("Rosalind's skirt")
                && !browser.find("table.list").getText().contains("another pattern"));
        browser.open("/?archived=yes");
        assertThat(browser.find("table.list").getText()).contains("another pattern (put away)");
        browser.assertAccessible();
        browser.picture("record-book-1440");
        browser.width(Browser.TABLET);
        browser.dark(true);
        browser.assertAccessible();
        browser.picture("record-book-820-dark");
        browser.dark(false);
        browser.width(Browser.DESK);

        // Out, deleted for good, and back.
        byte[] zip = get(browser, "/take-away");
        assertThat(names(zip)).contains("people.csv", "projects/" + id + ".json", "made/" + id + "/steps.pdf");
        assertThat(names(zip)).anyMatch(name -> name.matches("altered/[0-9a-f]{64}\\.svg"));
        browser.open("/");
        browser.click(".more summary");
        browser.click(".more .delete summary");
        assertThat(browser.find(".more .delete").getText()).contains("Stays: the person and her measuring days");
        browser.click("form[action='/projects/" + id + "/delete'] button");
        browser.waitForText("No project is like that");
        Path file = Files.write(folder.resolve("book.zip"), zip);
        browser.find("#archive").sendKeys(file.toString());
        browser.click("form[action='/bring-back'] button");
        browser.waitForText("Brought back: 0 people, 1 project");
        assertThat(browser.find("table.list").getText()).contains("Rosalind's skirt");
        assertThat(browser.complaints()).isEmpty();
    }

    private static List<String> names(byte[] zip) throws IOException {
        List<String> names = new ArrayList<>();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                names.add(entry.getName());
            }
        }
        return names;
    }
}
