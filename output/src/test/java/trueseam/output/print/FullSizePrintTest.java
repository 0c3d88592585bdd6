package trueseam.output.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import trueseam.fitting.work.WorkedPattern;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.pattern.CuttingLine;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Grain;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceBuilder;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.Bounds;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.geometry.polygon.Region;
import trueseam.output.Fits;

class FullSizePrintTest {

    private static PrintOptions usual(Paper paper) {
        return PrintOptions.usual(paper, LengthFormat.inches(8), "Anna");
    }

    private static FullSizePrint print(WorkedPattern worked, Paper paper) {
        return FullSizePrint.of(worked, usual(paper), List.of());
    }

    // ISO 216: A4 210 x 297, A3 297 x 420, A0 841 x 1189 mm. US Letter 8 1/2 x 11 in.
    @ParameterizedTest
    @CsvSource({"A4, 210, 297", "A3, 297, 420", "A0, 841, 1189", "letter, 215.9, 279.4"})
    void everyPageHasTheSizeOfThePaper(String name, double width, double height) throws IOException {
        FullSizePrint print = print(Samples.dress(), Paper.ofWord(name).orElseThrow());
        try (PDDocument read = Loader.loadPDF(print.pdf())) {
            assertThat(read.getNumberOfPages()).isEqualTo(print.layout().pages());
            read.getPages().forEach(page -> {
                assertThat(page.getMediaBox().getWidth() / 72 * 25.4).isCloseTo(width, within(0.001));
                assertThat(page.getMediaBox().getHeight() / 72 * 25.4).isCloseTo(height, within(0.001));
            });
        }
    }

    @Test
    void aRollIsOnePageOfItsWidthWithEveryPieceOnIt() throws IOException {
        FullSizePrint print = print(Samples.dress(), new Paper.Roll(900));
        assertThat(print.layout().joined()).isFalse();
        try (PDDocument read = Loader.loadPDF(print.pdf())) {
            assertThat(read.getNumberOfPages()).isEqualTo(1);
            assertThat(read.getPage(0).getMediaBox().getWidth() / 72 * 25.4).isCloseTo(900, within(0.001));
        }
        Bounds frame = print.layout().tiles().get(0).frame();
        for (Placed placed : print.layout().pieces()) {
            assertThat(frame.with(placed.area())).isEqualTo(frame);
        }
    }

    @Test
    void aPieceWiderThanTheRollIsNamedWithTheWidthThatItNeeds() {
        assertThatThrownBy(() -> print(Samples.bodice(), new Paper.Roll(300)))
                .isInstanceOfSatisfying(PieceTooWideException.class, e -> {
                    assertThat(e.neededMm()).isGreaterThan(300);
                    assertThat(e.piece()).isNotBlank();
                    assertThat(e).hasMessageContaining("300 mm wide").hasMessageContaining(e.piece());
                });
    }

    @Test
    void sheetsThatAreNotJoinedHoldWholePiecesOnly() {
        Layout layout = print(Samples.dress(), Paper.A0).layout();
        assertThat(layout.joined()).isFalse();
        assertThat(layout.marks()).isEmpty();
        for (Placed placed : layout.pieces()) {
            assertThat(layout.tiles())
                    .filteredOn(t -> t.frame().with(placed.area()).equals(t.frame()))
                    .hasSize(1);
        }
    }

    @Test
    void piecesNeverOverlap() {
        for (Paper paper : List.of(Paper.A4, Paper.A3, Paper.A0, new Paper.Roll(914))) {
            List<Placed> placed = print(Samples.bodice(), paper).layout().pieces();
            for (Placed a : placed) {
                for (Placed b : placed) {
                    assertThat(a.equals(b) || !a.area().meets(b.area(), -0.001)).isTrue();
                }
            }
        }
    }

    @Test
    void pageOneSaysWhatItIsAndWhatToMindAndThePiecesSayHowTheyAreCut() throws IOException {
        try (PDDocument read =
                Loader.loadPDF(print(Samples.bodice(), Paper.LETTER).pdf())) {
            String one = Words.text(read, 0).replaceAll("\\s+", " ");
            assertThat(one)
                    .contains("bodice for misses 14", "for Anna", "50 mm", "2 in")
                    .contains("Print at 100 %", "Never \u201cfit to page\u201d", "Measure both squares before cutting")
                    .contains("trial garment first", "children", "safety rules")
                    .contains("bodice front: cut 1 on the fold", "sleeve: cut 2")
                    .contains("cutting line before altering", "A1");
            // Words that stand upright are read letter by letter: spaces tell nothing.
            String all = Words.text(read, -1).replaceAll("\\s+", "");
            for (String words : List.of(
                    "centre front: place on the fold of the cloth",
                    "grain",
                    "bust point",
                    "waist dart",
                    "lengthen or shorten here",
                    "bust level",
                    "across front",
                    "across back",
                    "side, allowance \u215d in",
                    "seam allowances included",
                    "altered",
                    "sheet 1 of")) {
                assertThat(all).contains(words.replace(" ", ""));
            }
        }
    }

    @Test
    void allowancesAreShownInTheUnitAskedFor() throws IOException {
        PrintOptions metric = PrintOptions.usual(Paper.A0, LengthFormat.millimetres(), "");
        try (PDDocument read = Loader.loadPDF(
                FullSizePrint.of(Samples.bodice(), metric, List.of()).pdf())) {
            assertThat(Words.text(read, -1)).contains("allowance 16 mm").doesNotContain("\u215d");
        }
    }

    @Test
    void aPatternThatIsNotProvenSaysSoOnPageOne() throws IOException {
        byte[] pdf = FullSizePrint.of(
                        Samples.skirt(), usual(Paper.A4), List.of("Side seam: off by 3 mm.", "b", "c", "d", "e"))
                .pdf();
        try (PDDocument read = Loader.loadPDF(pdf)) {
            assertThat(Words.text(read, 0)).contains("Do not cut this yet", "Side seam: off by 3 mm.", "and 1 more");
        }
    }

    @Test
    void piecesThatOnlyShowTheStepsSayThatTheyAreNotToBeCut() throws IOException {
        byte[] pdf = FullSizePrint.of(Fits.onPaper(LengthFormat.inches(8)), usual(Paper.A4))
                .pdf();
        try (PDDocument read = Loader.loadPDF(pdf)) {
            assertThat(Words.text(read, 0).replaceAll("\\s+", " "))
                    .contains("Do not cut this yet", "they are not your paper pattern");
            assertThat(Words.text(read, -1)).contains("drafted to show the steps: not your pattern");
        }
    }

    @ParameterizedTest
    @EnumSource(names = {"ORIGINAL", "ALTERED"})
    void eachOutlineIsOnItsOwnLayer(PrintedLine which) throws IOException {
        WorkedPattern worked = Samples.skirt();
        FullSizePrint print = print(worked, Paper.A0);
        Placed placed = print.layout().pieces().get(0);
        Piece piece = which == PrintedLine.ORIGINAL
                ? worked.original().piece(placed.piece())
                : worked.altered().piece(placed.piece());
        Piece other = which == PrintedLine.ORIGINAL
                ? worked.altered().piece(placed.piece())
                : worked.original().piece(placed.piece());
        try (PDDocument read = Loader.loadPDF(print.pdf())) {
            var layers = read.getDocumentCatalog().getOCProperties();
            assertThat(layers.getGroupNames()).containsExactlyInAnyOrder("original", "altered", "allowance", "marks");
            double before = ink(read, print, placed, CuttingLine.of(piece), CuttingLine.of(other));
            layers.setGroupEnabled(which == PrintedLine.ORIGINAL ? "original" : "altered", false);
            double hidden = ink(read, print, placed, CuttingLine.of(piece), CuttingLine.of(other));
            layers.setGroupEnabled(which == PrintedLine.ORIGINAL ? "original" : "altered", true);
            layers.setGroupEnabled("allowance", false);
            double alone = ink(read, print, placed, CuttingLine.of(piece), CuttingLine.of(other));
            // The original is broken, so about half of it is dark.
            assertThat(before).isGreaterThan(which == PrintedLine.ORIGINAL ? 0.3 : 0.9);
            assertThat(hidden).isLessThan(0.1);
            assertThat(alone).isLessThan(0.1);
        }
    }

    /** Which share of a line is inked where it lies well apart from another. */
    private static double ink(PDDocument read, FullSizePrint print, Placed placed, Path line, Path other)
            throws IOException {
        Bounds window = print.layout().tiles().get(0).window();
        Scan scan = Scan.of(read, 0, 100);
        Vec there = placed.origin().minus(new Point(window.minX(), window.minY()));
        int asked = 0;
        int inked = 0;
        for (double s = 0; s < line.length(); s += 1) {
            Point p = line.pointAt(s);
            if (other.nearest(p).point().distanceTo(p) > 4) {
                asked++;
                Vec across = line.tangentAt(s).left();
                List<Scan.Dark> dark = scan.along(p.plus(there).minus(across.times(0.5)), across, 1.0);
                inked += dark.isEmpty() ? 0 : 1;
            }
        }
        assertThat(asked).isGreaterThan(100);
        return (double) inked / asked;
    }

    @Test
    void onlyTheLinesAskedForArePrinted() throws IOException {
        PrintOptions stitchingOnly = new PrintOptions(
                Paper.A0, 12, Set.of(PrintedLine.STITCHING, PrintedLine.ALTERED), LengthFormat.inches(8), "");
        byte[] pdf = FullSizePrint.of(Samples.skirt(), stitchingOnly, List.of()).pdf();
        try (PDDocument read = Loader.loadPDF(pdf)) {
            assertThat(Words.text(read, -1))
                    .contains("stitching lines only", "add \u215d in")
                    .doesNotContain("cut here", "before altering");
        }
        assertThatThrownBy(
                        () -> new PrintOptions(Paper.A4, 12, Set.of(PrintedLine.STITCHING), LengthFormat.inches(8), ""))
                .hasMessageContaining("original nor the altered");
        assertThatThrownBy(
                        () -> new PrintOptions(Paper.A4, 12, Set.of(PrintedLine.ALTERED), LengthFormat.inches(8), ""))
                .hasMessageContaining("stitching nor cutting");
        assertThatThrownBy(
                        () -> new PrintOptions(Paper.A4, 200, Set.of(PrintedLine.values()), LengthFormat.inches(8), ""))
                .hasMessageContaining("overlap");
    }

    @Test
    void theSamePatternGivesTheSameFile() {
        assertThat(print(Samples.skirt(), Paper.A4).pdf())
                .isEqualTo(print(Samples.skirt(), Paper.A4).pdf());
    }

    /** On each page every label is there as a whole or not at all; what is cut here stands whole on a neighbour. */
    @ParameterizedTest
    @MethodSource("tiled")
    void noLabelIsCutOffByTheEdgeOfASheet(WorkedPattern worked, Paper paper) throws IOException {
        FullSizePrint print = print(worked, paper);
        List<String> cut = new ArrayList<>();
        int labels = 0;
        try (PDDocument read = Loader.loadPDF(print.pdf())) {
            for (Tile tile : print.layout().tiles()) {
                Bounds frame = tile.frame();
                Vec toPage = Point.ORIGIN.minus(
                        new Point(tile.window().minX(), tile.window().minY()));
                Bounds shown = Bounds.of(
                        new Point(frame.minX(), frame.minY()).plus(toPage),
                        new Point(frame.maxX(), frame.maxY()).plus(toPage));
                for (Words.Letters letters : Words.letters(read, tile.page() - 1)) {
                    long inside = letters.at().stream()
                            .filter(p -> shown.with(p).equals(shown))
                            .count();
                    labels += inside > 0 ? 1 : 0;
                    if (inside > 0 && inside < letters.at().size()) {
                        cut.add(tile.label() + ": " + letters.text());
                    }
                }
            }
        }
        assertThat(labels).isGreaterThan(60);
        assertThat(cut).isEmpty();
    }

    static Stream<Arguments> tiled() {
        return Stream.of(
                Arguments.of(Samples.bodice(), Paper.A4),
                Arguments.of(Samples.bodice(), Paper.LETTER),
                Arguments.of(Samples.skirt(), Paper.A4),
                Arguments.of(Samples.skirt(), Paper.LETTER),
                Arguments.of(Samples.dress(), Paper.LETTER),
                Arguments.of(Samples.dress(), Paper.A3));
    }

    /** Side and armhole change places at the underarm, so that the outline crosses itself there. */
    @Test
    void aPieceWhoseOutlineCrossesItselfHasNoCuttingLineAndSaysSo() throws IOException {
        Point cross = new Point(300, 200);
        Piece crossed = new PieceBuilder("bodice front", PieceKind.BODICE_FRONT)
                .onFold("centre")
                .edge("waist", EdgeRole.WAIST, Path.through(new Point(0, 0), new Point(200, 0)), 15)
                .edge("side", EdgeRole.SIDE, Path.through(new Point(200, 0), new Point(320, 300), cross), 15)
                .edge("armhole", EdgeRole.ARMHOLE, Path.through(cross, new Point(150, 400)), 15)
                .edge("neck", EdgeRole.NECK, Path.through(new Point(150, 400), new Point(0, 350)), 15)
                .edge("centre", EdgeRole.CENTRE, Path.through(new Point(0, 350), new Point(0, 0)), 0)
                .grain(new Grain(new Point(60, 40), new Point(60, 300)))
                .build();
        Path bow = crossed.outline();
        assertThat(Region.faultOf(bow)).isPresent();
        WorkedPattern worked = WorkedPattern.of(
                new Pattern("crossed", "14", "misses", "for a test", List.of(crossed), List.of(), Map.of()));
        FullSizePrint print = FullSizePrint.of(worked, usual(Paper.A4), List.of());
        assertThat(CuttingLine.find(crossed)).isEmpty();
        try (PDDocument read = Loader.loadPDF(print.pdf())) {
            assertThat(Words.text(read, 0).replaceAll("\\s+", " "))
                    .contains(
                            "Do not cut this yet",
                            "the outline crosses itself, so it is printed without a cutting line")
                    .contains("bodice front: DO NOT CUT");
            assertThat(Words.text(read, -1))
                    .contains("DO NOT CUT: the outline crosses itself, so there is no cutting line");
        }
    }
}
