package trueseam.worktable.person;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.openqa.selenium.Keys;
import org.openqa.selenium.OutputType;
import trueseam.worktable.browser.Browser;
import trueseam.worktable.browser.InBrowser;
import trueseam.worktable.browser.Rosalind;
import trueseam.worktable.project.PersonPart;
import trueseam.worktable.project.Project;

/** Measuring a person, as a dressmaker types it in the browser. All people are invented, but the surveyed one. */
@ExtendWith(InBrowser.class)
class PersonScreenTest {

    private static final String BUST = "#f-BUST_GIRTH-0";

    @Test
    void whatIsTypedIsReadInFractionsKeptAndUndone(Browser browser) {
        String id = browser.begin("Typing");
        assertThat(browser.driver().getCurrentUrl()).endsWith("/person");
        browser.type(BUST, "38 1/2");
        browser.waitForText("97.8 cm");

        browser.type("#f-WAIST_GIRTH-0", "31 1/x");
        browser.waitFor(() -> "true".equals(browser.find("#f-WAIST_GIRTH-0").getAttribute("aria-invalid")));
        assertThat(browser.find("#says-WAIST_GIRTH").getText()).contains("31 1/x");
        browser.waitFor(
                () -> browser.find("#heard").getDomProperty("textContent").contains("31 1/x"));
        browser.restart();
        browser.open("/p/" + id + "/person");
        assertThat(value(browser, BUST)).isEqualTo("38 1/2");
        assertThat(value(browser, "#f-WAIST_GIRTH-0")).isEqualTo("31 1/x");

        browser.type("#f-WAIST_GIRTH-0", "31");
        browser.waitForText("78.7 cm");
        browser.waitFor(() -> browser.find("#f-WAIST_GIRTH-0").getAttribute("aria-invalid") == null);
        // A number that no body has is questioned at once, and the page goes on.
        browser.type("#f-HIP_GIRTH-0", "400");
        browser.waitFor(() -> browser.find("#says-HIP_GIRTH").getText().contains("cannot be right"));
        browser.click("#undo");
        browser.waitFor(() -> value(browser, "#f-HIP_GIRTH-0").isEmpty());
        browser.click("#undo");
        // going on typing in one field is one change
        browser.waitFor(() -> value(browser, "#f-WAIST_GIRTH-0").isEmpty());
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void theUnitChangesWhatIsShownAndNotWhatWasTyped(Browser browser) {
        String id = browser.put(Project.named("Units").with(person("bust girth", "38 1/2", "hip girth", "1016 mm")));
        browser.open("/p/" + id + "/person");
        assertThat(value(browser, "#f-HIP_GIRTH-0")).isEqualTo("40");
        browser.choose("#units", "cm");
        browser.waitFor(() -> value(browser, BUST).equals("97.8"));
        browser.type("#f-WAIST_GIRTH-0", "78,7");
        browser.waitFor(() -> browser.find("#comes-WAIST_GIRTH").getText().equals("31 in"));
        browser.choose("#units", "in16");
        browser.waitFor(() -> value(browser, BUST).equals("38 1/2"));
        assertThat(value(browser, "#f-WAIST_GIRTH-0")).isEqualTo("31");
        browser.choose("#units", "cm");
        browser.waitFor(() -> value(browser, "#f-WAIST_GIRTH-0").equals("78,7"));
    }

    @Test
    void theFigureShowsTheTapeOfTheFieldInFocus(Browser browser) throws IOException {
        String id = browser.put(Rosalind.before("bodice"));
        browser.open("/p/" + id + "/person");
        browser.click(BUST);
        browser.waitFor(() -> shows(browser).equals("BUST_GIRTH"));
        assertThat(browser.find("#look .how").getText()).contains("fullest point of the bust");
        assertThat(browser.find("#look .told").getText()).contains("bust point").contains("front and the back");
        browser.find(BUST).sendKeys(Keys.ENTER);
        browser.waitFor(() -> shows(browser).equals("CHEST_GIRTH"));
        browser.click("#f-SHOULDER_LENGTH-0");
        browser.waitFor(() -> shows(browser).equals("SHOULDER_LENGTH"));
        assertThat(browser.all("#look .in-focus")).hasSize(2);
        // typing changes the figure and leaves the field alone
        String before = browser.find("#look svg").getAttribute("outerHTML");
        browser.type("#f-HIP_GIRTH-0", "52");
        browser.waitFor(() -> shows(browser).equals("HIP_GIRTH")
                && !browser.find("#look svg").getAttribute("outerHTML").equals(before));
        assertThat(browser.driver().switchTo().activeElement().getAttribute("id"))
                .isEqualTo("f-HIP_GIRTH-0");
        pictures(browser, "person");
        assertThat(browser.complaints()).isEmpty();
    }

    /** The whole page, and what one sees of it with the field in focus. */
    private static void pictures(Browser browser, String name) throws IOException {
        for (int width : List.of(Browser.DESK, Browser.TABLET)) {
            browser.width(width);
            for (boolean dark : List.of(false, true)) {
                browser.dark(dark);
                browser.assertAccessible();
                String picture = name + "-" + width + (dark ? "-dark" : "");
                browser.picture(picture);
                Files.write(
                        Path.of("target", "screens", picture + "-seen.png"),
                        browser.driver().getScreenshotAs(OutputType.BYTES));
            }
        }
        browser.dark(false);
        browser.width(Browser.DESK);
    }

    @Test
    void severalReadingsAreAveragedAndTooWideASpreadIsQuestioned(Browser browser) {
        String id = browser.put(Project.named("Twice").with(person("bust girth", "38")));
        browser.open("/p/" + id + "/person");
        browser.click("#again-f-BUST_GIRTH-0");
        browser.waitFor(() ->
                browser.driver().switchTo().activeElement().getAttribute("id").equals("f-BUST_GIRTH-1"));
        browser.type("#f-BUST_GIRTH-1", "38 1/4");
        browser.waitForText("mean of 2 38 1/8 in, 96.8 cm; spread 1/4 in");
        browser.type("#f-BUST_GIRTH-1", "39");
        // ISO 20685: large girths 9 mm; an inch apart is more.
        browser.waitFor(() -> browser.find("#says-BUST_GIRTH").getText().contains("measure once more"));
        browser.click("#drop-f-BUST_GIRTH-1");
        browser.waitFor(() -> browser.all("#f-BUST_GIRTH-1").isEmpty());
        assertThat(browser.find("#comes-BUST_GIRTH").getText()).isEqualTo("96.5 cm");
    }

    @Test
    void leftAndRightAreTakenApartWhereTheyDiffer(Browser browser) {
        String id = browser.put(Project.named("Sides").with(person("shoulder length", "5")));
        browser.open("/p/" + id + "/person");
        assertThat(browser.all("#sides-BUST_GIRTH")).isEmpty();
        browser.click("#sides-SHOULDER_LENGTH");
        browser.waitFor(() -> value(browser, "#f-SHOULDER_LENGTH-right-0").equals("5"));
        browser.type("#f-SHOULDER_LENGTH-right-0", "4 1/2");
        browser.waitFor(() -> browser.find("#says-SHOULDER_LENGTH").getText().contains("left is 13 mm"));
        browser.waitFor(() -> "right".equals(browser.find("#look").getAttribute("data-side")));
        browser.click("#sides-SHOULDER_LENGTH");
        browser.waitFor(() -> value(browser, "#f-SHOULDER_LENGTH-0").equals("4 1/2"));
    }

    @Test
    void measuringAgainKeepsTheEarlierDayAndShowsWhatHasChanged(Browser browser) throws IOException {
        String id = browser.put(Project.named("Again").with(Rosalind.measured()));
        browser.open("/p/" + id + "/person");
        String then = value(browser, "#f-WAIST_GIRTH-0");
        browser.click("#next-day");
        browser.waitForText("Measured before on 2026-11-20");
        assertThat(value(browser, "#f-WAIST_GIRTH-0")).isEmpty();
        assertThat(browser.find("#says-WAIST_GIRTH").getText()).isEqualTo("Last time " + then + " in");
        browser.type("#f-WAIST_GIRTH-0", "35");
        browser.waitFor(() -> browser.find("#says-WAIST_GIRTH").getText().contains("more than measuring error"));
        assertThat(browser.find("#since").getText()).contains("Waist", "35 in");
        pictures(browser, "person-again");
        // what was not taken again still counts
        browser.open("/p/" + id + "/pattern");
        browser.click("label:has(#way-draft)");
        browser.click("label:has(#garment-skirt)");
        browser.open("/p/" + id + "/person");
        assertThat(browser.all("[data-go=f-TOP_HIP_GIRTH-0]")).hasSize(1);
        assertThat(browser.all("[data-go=f-HIP_GIRTH-0]")).isEmpty();
        browser.click("#undo");
        browser.click("#undo");
        browser.click("#undo");
        browser.click("#undo");
        browser.waitFor(() -> value(browser, "#f-WAIST_GIRTH-0").equals(then));
    }

    @Test
    void theGarmentSaysWhatIsStillToMeasure(Browser browser) {
        String id = browser.put(Rosalind.before("skirt").with(person("waist girth", "31")));
        browser.open("/p/" + id + "/person");
        assertThat(browser.find("#still").getText()).contains("hip").doesNotContain("shoulder");
        browser.click("#only");
        assertThat(browser.find("#f-SHOULDER_LENGTH-0").isDisplayed()).isFalse();
        browser.click("[data-go=f-HIP_GIRTH-0]");
        assertThat(browser.driver().switchTo().activeElement().getAttribute("id"))
                .isEqualTo("f-HIP_GIRTH-0");
        browser.driver().switchTo().activeElement().sendKeys("40");
        browser.waitFor(() -> browser.all("[data-go=f-HIP_GIRTH-0]").isEmpty());
        browser.click("#only");
    }

    @Test
    void aFileOfMeasuresAndASurveyedPersonAreBrought(Browser browser) throws IOException {
        String id = browser.begin("Bringing");
        Path file = Files.createTempFile("ann", ".csv");
        Files.writeString(file, """
                # label: Ann
                measure,value,side,date
                bust girth,38 1/2 in,,2026-03-09
                Hip,104 cm,,2026-03-09
                elbow,7 ducats,,
                shoulder length,5 in,left,2026-03-09
                shoulder length,4 7/8 in,right,2026-03-09
                """);
        bring(browser, file, "");
        browser.waitFor(() -> value(browser, "#label").equals("Ann"));
        assertThat(browser.main()).contains("ducats");
        assertThat(value(browser, BUST)).isEqualTo("38 1/2");
        assertThat(value(browser, "#f-HIP_GIRTH-0")).isEqualTo("41");
        assertThat(value(browser, "#f-SHOULDER_LENGTH-right-0")).isEqualTo("4 7/8");
        assertThat(value(browser, "#date")).isEqualTo("2026-03-09");

        // data/bodies/ansur2-female.csv, SubjectId 10038: stature 1751, buttockcircumference 893, waistcircumference
        // 708 at the navel.
        bring(browser, Path.of("..", "data", "bodies", "ansur2-female.csv"), "10038");
        browser.waitFor(() -> value(browser, "#label").equals("survey 10038"));
        assertThat(browser.find("#comes-HIP_GIRTH").getText()).isEqualTo("89.3 cm");
        assertThat(browser.find("#says-WAIST_GIRTH").getText())
                .contains("stand-in")
                .contains("navel");
        assertThat(value(browser, "#people")).isEqualTo("women");
        bring(browser, Path.of("..", "data", "bodies", "ansur2-female.csv"), "1");
        browser.waitForText("no person 1");
        assertThat(value(browser, "#label")).isEqualTo("survey 10038");
        Files.delete(file);
        browser.open("/p/" + id + "/person");
        assertThat(browser.complaints()).isEmpty();
    }

    private static void bring(Browser browser, Path file, String row) {
        if (browser.find(".bring").getAttribute("open") == null) {
            browser.click(".bring summary");
        }
        browser.find("#file").sendKeys(file.toAbsolutePath().normalize().toString());
        if (!row.isEmpty()) {
            browser.type("#row", row);
        }
        browser.click(".bring .button");
    }

    private static PersonPart person(String... measureAndText) {
        List<PersonPart.Typed> readings = new ArrayList<>();
        for (int i = 0; i < measureAndText.length; i += 2) {
            readings.add(new PersonPart.Typed(measureAndText[i], "", measureAndText[i + 1], "in"));
        }
        return new PersonPart("Ann", "in", List.of(new PersonPart.Day("2026-11-20", readings, "")));
    }

    private static String value(Browser browser, String css) {
        return browser.find(css).getDomProperty("value");
    }

    private static String shows(Browser browser) {
        return browser.find("#look").getAttribute("data-shows");
    }
}
