package trueseam.worktable.pattern;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.openqa.selenium.Keys;
import org.openqa.selenium.interactions.Actions;
import trueseam.drafting.Allowances;
import trueseam.drafting.DraftFigure;
import trueseam.drafting.garment.Garment;
import trueseam.intake.patternfile.PatternFile;
import trueseam.intake.size.SizeTables;
import trueseam.worktable.browser.Browser;
import trueseam.worktable.browser.InBrowser;
import trueseam.worktable.browser.Rosalind;
import trueseam.worktable.project.Project;

/** Bringing a drawing in on the screen, and saying what it is where the program is wrong. */
@ExtendWith(InBrowser.class)
class DrawingScreenTest {

    private static void bring(Browser browser, Path drawing) {
        browser.click("label:has(#way-file)");
        browser.find("#file").sendKeys(drawing.toAbsolutePath().normalize().toString());
        browser.click("form.bring button");
    }

    private static void look(Browser browser, String name) {
        for (int width : new int[] {Browser.DESK, Browser.TABLET}) {
            browser.width(width);
            for (boolean dark : new boolean[] {false, true}) {
                browser.dark(dark);
                browser.assertAccessible();
                browser.picture(name + "-" + width + (dark ? "-dark" : ""));
            }
        }
        browser.dark(false);
        browser.width(Browser.DESK);
    }

    /** A half circle skirt and its band by somebody else (data/patterns/README.md): the band is 9.3 mm longer than the waist. */
    @Test
    void anEdgeOfASkirtIsClickedNamedAndSewnToItsBand(Browser browser) {
        String id = browser.put(Project.named("Half circle").with(Rosalind.measured()));
        browser.open("/p/" + id + "/pattern");
        bring(browser, Path.of("..", "data", "patterns", "half-circle-skirt.svg"));
        browser.waitForText("What the drawing was taken for");
        assertThat(browser.find("#piece-2-head").getText())
                .contains("waistband")
                .contains("likely");
        look(browser, "drawing-half-circle");

        browser.choose("#kind-1", "skirt front");
        browser.waitForText("1. skirt front");
        // The waist is 689.6 mm long and was taken for something else: its line in the picture is clicked, and the list
        // has it.
        int waist = row(browser, "689.6 mm");
        new Actions(browser.driver())
                .moveToElement(browser.find("text[data-edge='edge-1-" + waist + "']"))
                .click()
                .perform();
        assertThat(browser.driver().switchTo().activeElement().getAttribute("id"))
                .isEqualTo("edge-1-" + waist);
        assertThat(browser.find(".brought path.chosen").getAttribute("data-edge"))
                .isEqualTo("edge-1-" + waist);
        String before = browser.find("#edge-1-" + waist).getAttribute("value");
        browser.choose("#edge-1-" + waist, "waist");
        // What was taken for the waist gets the other name, and the piece may lie the other way round now.
        waist = row(browser, "689.6 mm");
        assertThat(browser.find("#edge-1-" + waist).getAttribute("value")).isEqualTo("waist");
        assertThat(browser.all("#piece-1 .edges select"))
                .extracting(s -> s.getAttribute("value"))
                .contains(before)
                .doesNotHaveDuplicates();

        browser.type("#seam-name", "waist-band");
        choose(browser, "#seam-first", "skirt front, waist");
        choose(browser, "#seam-second", "waistband, edge 2");
        browser.click("#sew");
        browser.waitForText("waist-band");
        assertThat(browser.main()).contains("689.6 and 698.9 mm").contains("+9.3 mm, meant: +0.0 mm; they do not walk");
        browser.picture("drawing-half-circle-sewn");

        browser.click("#undo");
        browser.waitFor(() -> !browser.main().contains("waist-band"));
        browser.click("#redo");
        browser.waitForText("waist-band");
        browser.click("#right");
        browser.waitForText("You found this right");
        browser.restart();
        browser.open("/p/" + id + "/pattern");
        assertThat(browser.main()).contains("You found this right").contains("waist-band");
        assertThat(browser.complaints()).isEmpty();
    }

    private static int row(Browser browser, String length) {
        var cells = browser.all("#piece-1 .edges td.number");
        for (int i = 0; i < cells.size(); i++) {
            if (cells.get(i).getText().equals(length)) {
                return i;
            }
        }
        throw new AssertionError("no edge is " + length + " long");
    }

    private static void choose(Browser browser, String css, String text) {
        new org.openqa.selenium.support.ui.Select(browser.find(css)).selectByVisibleText(text);
        browser.settled();
    }

    /** A drafted bodice without names; a wrong word in its front makes a wrong proposal, and its keyboard alone mends it. */
    @Test
    void aFrontTakenForABackIsCorrectedByKeyboardAndFittedToTheEnd(Browser browser) throws IOException {
        Path drawing = Files.writeString(Files.createTempDirectory("drawings").resolve("bodice.svg"), misnamed());
        String id = browser.put(Project.named("Bodice").with(Rosalind.measured()));
        browser.open("/p/" + id + "/pattern");
        bring(browser, drawing);
        browser.waitForText("What the drawing was taken for");
        assertThat(browser.main()).contains("bodice back 2");
        browser.open("/p/" + id + "/chart");
        assertThat(browser.main()).contains("The drawing is not confirmed yet");
        browser.open("/p/" + id + "/pattern");

        int front = browser.all("section.piece h3").stream()
                .map(h -> h.getText())
                .filter(h -> h.contains("bodice back 2"))
                .mapToInt(h -> Integer.parseInt(h.substring(0, 1)))
                .findFirst()
                .orElseThrow();
        browser.click("#drawing-cutting");
        browser.tabTo("#kind-" + front);
        browser.press("bodice front");
        browser.press(Keys.TAB);
        browser.waitFor(() -> !browser.main().contains("bodice back 2"));
        assertThat(browser.find("#piece-" + front + "-head").getText())
                .contains("bodice front")
                .contains("said");
        browser.click("#drawing-cutting");
        browser.tabTo("#right");
        browser.press(Keys.ENTER);
        browser.waitForText("You found this right");
        look(browser, "drawing-bodice");

        browser.open("/p/" + id + "/chart");
        assertThat(browser.find("tr[data-measure='bust girth']").getText()).isNotEmpty();
        browser.open("/p/" + id + "/print");
        assertThat(browser.main()).doesNotContain("not confirmed").contains("bodice front");
        assertThat(browser.complaints()).isEmpty();
    }

    /** Gores of front and back have one shape: the screen asks, and one press answers. */
    @Test
    void whatNobodyCanSeeIsAskedOutright(Browser browser) throws IOException {
        String drawn = PatternFile.write(
                        Garment.gored.draft(DraftFigure.of(SizeTables.named("misses"), "14"), Allowances.inches()))
                .replaceAll("(?s)<metadata.*?</metadata>", "")
                .replaceAll("(?s)<text[^>]*>.*?</text>", "")
                .replaceAll(" data-[a-z-]+=\"[^\"]*\"", "");
        Path drawing = Files.writeString(Files.createTempDirectory("drawings").resolve("gores.svg"), drawn);
        String id = browser.put(Project.named("Gores").with(Rosalind.measured()));
        browser.open("/p/" + id + "/pattern");
        bring(browser, drawing);
        browser.waitForText("What the drawing was taken for");
        assertThat(browser.main()).contains("Front and back of such a piece look alike");
        assertThat(browser.complaints()).isEmpty();
    }

    private static String misnamed() {
        return PatternFile.write(
                        Garment.bodice.draft(DraftFigure.of(SizeTables.named("misses"), "14"), Allowances.inches()))
                .replaceAll("(?s)<metadata.*?</metadata>", "")
                .replaceAll("(?s)(<g data-piece=\"bodice front\".*?<text[^>]*>)[^<]*", "$1BACK")
                .replaceAll("(?s)<text[^>]*>(?!BACK).*?</text>", "")
                .replaceAll(" data-[a-z-]+=\"[^\"]*\"", "");
    }

    @Test
    void whatCannotBeIsToldBesideAndNothingIsChanged(Browser browser) throws IOException {
        Path folder = Files.createTempDirectory("drawings");
        Path empty = Files.writeString(
                folder.resolve("empty.svg"), "<svg xmlns='http://www.w3.org/2000/svg' width='9mm' height='9mm'/>");
        String id = browser.put(Project.named("Wrong").with(Rosalind.measured()));
        browser.open("/p/" + id + "/pattern");
        bring(browser, empty);
        browser.waitForText("There is no closed outline");
        assertThat(browser.find("#file").getAttribute("aria-invalid")).isEqualTo("true");
        browser.assertAccessible();

        browser.find("#file")
                .sendKeys(Path.of("..", "data", "patterns", "half-circle-skirt.svg")
                        .toAbsolutePath()
                        .normalize()
                        .toString());
        browser.click("form.bring button");
        browser.waitForText("What the drawing was taken for");
        browser.type("#allowance-2", "wide", Keys.TAB);
        browser.waitForText("wide");
        assertThat(browser.find("#drawing .problem").getText()).contains("wide");
        browser.type("#drawing-cutting", "15 cm", Keys.TAB);
        browser.waitForText("No line lies 150.0 mm inside it");
        assertThat(browser.all("section.piece")).hasSize(2);

        Path names = Files.writeString(folder.resolve("half-circle-skirt.names.txt"), "piece 2: waistbnd\n");
        browser.find("#file").sendKeys(names.toString());
        browser.click("form.bring button");
        browser.waitForText("half-circle-skirt.names.txt, line 1: \"waistbnd\" cannot be read");
        Files.writeString(names, "piece 2: waistband\n");
        browser.find("#file").sendKeys(names.toString());
        browser.click("form.bring button");
        browser.waitForText("2. waistband");
    }

    /** Printed at 96 %, as printers do that shrink to fit: the square says so, and what it is to measure makes it right. */
    @Test
    void aTestSquareOfTheWrongSizeIsToldAndScalesTheDrawing(Browser browser) throws IOException {
        Path drawing = Files.writeString(
                Files.createTempDirectory("drawings").resolve("shrunk.svg"),
                "<svg xmlns='http://www.w3.org/2000/svg' width='400mm' height='400mm' viewBox='0 0 400 400'>"
                        + "<path d='M100 20H292V308H100Z'/><path d='M10 10H58V58H10Z'/>"
                        + "<text x='20' y='35' font-size='6'>5 cm</text></svg>");
        String id = browser.put(Project.named("Shrunk").with(Rosalind.measured()));
        browser.open("/p/" + id + "/pattern");
        bring(browser, drawing);
        browser.waitForText("not at true scale");
        assertThat(browser.main()).contains("48.00 by 48.00 mm").contains("into the field for the test square");
        assertThat(browser.find("#kind-1 ~ .hint").getText()).contains("192 mm wide and 288 mm high");
        browser.type("#drawing-square", "5 cm", Keys.TAB);
        browser.waitForText("200 mm wide and 300 mm high");
        browser.assertAccessible();
        browser.picture("drawing-square");
    }

    /** Three sizes in three colours: none is brought in before one is chosen. */
    @Test
    void ofANestASizeIsChosenFirst(Browser browser) throws IOException {
        StringBuilder svg = new StringBuilder(
                "<svg xmlns='http://www.w3.org/2000/svg' width='900mm' height='500mm' viewBox='0 0" + " 900 500'>");
        String[] colours = {"#c00000", "#00a000", "#0000c0"};
        for (int size = 0; size < 3; size++) {
            int more = 8 * size;
            svg.append("<g id='size-")
                    .append(10 + 2 * size)
                    .append("' fill='none' stroke='")
                    .append(colours[size])
                    .append("'><path d='M20 20H")
                    .append(320 + more)
                    .append("V")
                    .append(420 + more)
                    .append("H20Z'/>")
                    .append("<path d='M420 20H")
                    .append(700 + more)
                    .append("V")
                    .append(400 + more)
                    .append("H420Z'/></g>");
        }
        Path drawing = Files.writeString(
                Files.createTempDirectory("drawings").resolve("nest.svg"),
                svg.append("</svg>").toString());
        String id = browser.put(Project.named("Nest").with(Rosalind.measured()));
        browser.open("/p/" + id + "/pattern");
        bring(browser, drawing);
        browser.waitForText("The drawing holds 3 sizes");
        assertThat(browser.all("section.piece")).isEmpty();
        browser.assertAccessible();
        browser.picture("drawing-nest");
        new org.openqa.selenium.support.ui.Select(browser.find("#drawing-size")).selectByIndex(2);
        browser.settled();
        assertThat(browser.all("section.piece")).hasSize(2);
        assertThat(browser.find("#kind-1 ~ .hint").getText()).contains("308 mm wide and 408 mm high");
        browser.choose("#drawing-size", "one size");
        assertThat(browser.find("#kind-1 ~ .hint").getText()).contains("316 mm wide and 416 mm high");
    }
}
