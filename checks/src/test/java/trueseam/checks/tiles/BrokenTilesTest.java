package trueseam.checks.tiles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import trueseam.garment.finding.Severity;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.intake.drawing.Drawing;
import trueseam.intake.drawing.DrawingException;
import trueseam.intake.drawing.Stroke;
import trueseam.intake.file.DrawingFiles;
import trueseam.intake.file.ReadChoices;
import trueseam.intake.tiles.TileChoices;

/** Pages that do not go together, layouts that are said, and damaged files. */
class BrokenTilesTest {

    private static final TileStyle NO_HELP = new TileStyle(
            "no label, no mark",
            210,
            297,
            10,
            0,
            false,
            TileStyle.Marks.NONE,
            TileStyle.Label.NONE,
            true,
            true,
            false,
            false,
            0);

    private static ReadChoices said(String layout) {
        return ReadChoices.NONE.withTiles(new TileChoices(TileChoices.layout(layout), OptionalDouble.empty()));
    }

    private static List<Stroke> bodice() {
        return Drawn.lines(TiledPrintsTest.garment("bodice", "12"));
    }

    /** Lines that run off every page and meet nothing: each page shows another part than its neighbours. */
    private static byte[] strangers() throws IOException {
        List<Stroke> lines = new ArrayList<>();
        Random random = new Random(7);
        for (int i = 0; i < 40; i++) {
            Path line = Path.through(
                    new Point(50 + 900 * random.nextDouble(), 900 * random.nextDouble()),
                    new Point(50 + 900 * random.nextDouble(), 900 * random.nextDouble()));
            lines.add(new Stroke(line, Drawn.CUTTING, "", ""));
        }
        return TiledPrint.scattered(NO_HELP, lines, random);
    }

    @Test
    void pagesWhoseLinesMeetNothingAreRefusedWithTheOptionsToSayIt() throws IOException {
        byte[] pdf = strangers();
        assertThatThrownBy(() -> DrawingFiles.read("odd.pdf", pdf, ReadChoices.NONE))
                .isInstanceOf(DrawingException.class)
                .hasMessageContaining("cannot be told")
                .hasMessageContaining("--tiles \"4x3\"")
                .hasMessageContaining("--overlap");
    }

    @Test
    void aLayoutThatIsSaidIsTakenAndDoubtedAloudWhereLinesDoNotMeet() throws IOException {
        byte[] pdf = strangers();
        Drawing drawing = DrawingFiles.read("odd.pdf", pdf, said("2x40"));
        assertThat(drawing.findings())
                .anyMatch(f -> f.severity() == Severity.WARNING && f.sentence().contains("as you said"));
    }

    @Test
    void aLayoutBySizeOrByPagesGivesTheSameAsTheOneThatIsFound() throws IOException {
        List<Stroke> meant = bodice();
        byte[] pdf = TiledPrint.of(NO_HELP, meant);
        Drawing found = DrawingFiles.read("print.pdf", pdf, ReadChoices.NONE);
        String words = found.findings().get(0).sentence();
        int rows = Integer.parseInt(words.replaceAll(".*as (\\d+) rows? of (\\d+).*", "$1"));
        int columns = Integer.parseInt(words.replaceAll(".*as (\\d+) rows? of (\\d+).*", "$2"));
        StringBuilder byPage = new StringBuilder();
        for (int r = 0; r < rows; r++) {
            byPage.append(r == 0 ? "" : " / ");
            for (int c = 0; c < columns; c++) {
                byPage.append(r * columns + c + 1).append(' ');
            }
        }
        for (String layout : List.of(columns + "x" + rows, byPage.toString())) {
            Drawing drawing = DrawingFiles.read("print.pdf", pdf, said(layout));
            assertThat(drawing.findings()).anyMatch(f -> f.sentence().contains("as you said (100 in 100 sure)"));
            TiledPrintsTest.sameLines(drawing.strokes(), meant);
        }
    }

    @Test
    void aPageThatIsNotThereIsNamed() throws IOException {
        byte[] pdf = TiledPrint.of(NO_HELP, bodice());
        assertThatThrownBy(() -> DrawingFiles.read("print.pdf", pdf, said("1 2 / 3 99")))
                .hasMessageContaining("names page 99");
        assertThatThrownBy(() -> DrawingFiles.read("print.pdf", pdf, said("2x2")))
                .hasMessageContaining("more than 2 x 2");
    }

    @Test
    void twoHundredDamagedFilesEndInASentenceOrADrawing() throws IOException {
        byte[] whole = TiledPrint.of(TiledPrintsTest.STYLES.get(0), bodice());
        Random random = new Random(26);
        int read = 0;
        for (int i = 0; i < 200; i++) {
            byte[] broken = i % 4 == 0 ? Arrays.copyOf(whole, random.nextInt(whole.length)) : whole.clone();
            for (int k = 0; k < 1 + random.nextInt(12) && broken.length > 0; k++) {
                broken[random.nextInt(broken.length)] ^= (byte) (1 << random.nextInt(8));
            }
            try {
                assertThat(DrawingFiles.read("broken.pdf", broken, ReadChoices.NONE)
                                .strokes())
                        .isNotEmpty();
                read++;
            } catch (DrawingException e) {
                assertThat(e.getMessage()).startsWith("broken.pdf").doesNotContain("\n");
            }
        }
        assertThat(read).as("files that could be read all the same").isPositive();
    }

    @Test
    void thePartOfALineThatTwoPagesShowIsThereOnce() throws IOException {
        Stroke line = new Stroke(
                Path.through(new Point(0, 0), new Point(700, 411)).moved(Motion.slide(new Vec(3, 5))),
                Drawn.CUTTING,
                "",
                "");
        TileStyle overlapping = new TileStyle(
                "overlap",
                210,
                297,
                10,
                20,
                true,
                TileStyle.Marks.CROSSES,
                TileStyle.Label.LETTER_ROW,
                true,
                true,
                false,
                false,
                0);
        byte[] pdf = TiledPrint.of(overlapping, List.of(line));
        Drawing drawing = DrawingFiles.read("line.pdf", pdf, ReadChoices.NONE);
        assertThat(drawing.strokes()).hasSize(1);
        // The straight line through both points, by Pythagoras.
        assertThat(drawing.strokes().get(0).path().length())
                .isCloseTo(Math.hypot(700, 411), org.assertj.core.api.Assertions.within(0.01));
        assertThat(Optional.of(drawing.strokes().get(0).path().segments()))
                .hasValueSatisfying(s -> assertThat(s).hasSize(1));
    }
}
