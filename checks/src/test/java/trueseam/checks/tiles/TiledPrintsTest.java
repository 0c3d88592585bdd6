package trueseam.checks.tiles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trueseam.drafting.DraftEase;
import trueseam.drafting.DraftFigure;
import trueseam.drafting.Shells;
import trueseam.garment.finding.Severity;
import trueseam.garment.pattern.Pattern;
import trueseam.geometry.Bounds;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.intake.drawing.Drawing;
import trueseam.intake.drawing.Look;
import trueseam.intake.drawing.Stroke;
import trueseam.intake.file.DrawingFiles;
import trueseam.intake.file.ReadChoices;
import trueseam.intake.size.SizeTables;
import trueseam.intake.tiles.TileChoices;

/** Patterns printed over pages in invented styles come back whole, each line once. Demo garments: drafted, their figures invented. */
class TiledPrintsTest {

    private static final double SAME_MM = 0.05;

    private record Printed(TileStyle style, String garment, String size) {
        @Override
        public String toString() {
            return garment + " " + size + ", " + style;
        }
    }

    static final List<TileStyle> STYLES = List.of(
            new TileStyle(
                    "frames and labels",
                    210,
                    297,
                    10,
                    0,
                    true,
                    TileStyle.Marks.NONE,
                    TileStyle.Label.LETTER_ROW,
                    true,
                    true,
                    false,
                    true,
                    0),
            new TileStyle(
                    "marks only",
                    210,
                    297,
                    12,
                    0,
                    false,
                    TileStyle.Marks.HALF_DIAMONDS,
                    TileStyle.Label.NONE,
                    true,
                    true,
                    false,
                    true,
                    0),
            new TileStyle(
                    "lines run over, no frame, no label",
                    210,
                    297,
                    6,
                    9,
                    false,
                    TileStyle.Marks.NONE,
                    TileStyle.Label.NONE,
                    true,
                    true,
                    false,
                    true,
                    0),
            new TileStyle(
                    "odd overlap, column by column",
                    210,
                    297,
                    10,
                    17.3,
                    true,
                    TileStyle.Marks.NONE,
                    TileStyle.Label.NONE,
                    false,
                    false,
                    false,
                    true,
                    0),
            new TileStyle(
                    "landscape Letter, pairs",
                    279.4,
                    215.9,
                    12.7,
                    12.7,
                    true,
                    TileStyle.Marks.CROSSES,
                    TileStyle.Label.PAIR,
                    false,
                    true,
                    true,
                    true,
                    0),
            new TileStyle(
                    "blanks left out, no label",
                    215.9,
                    279.4,
                    10,
                    0,
                    true,
                    TileStyle.Marks.NONE,
                    TileStyle.Label.NONE,
                    true,
                    true,
                    true,
                    true,
                    0),
            new TileStyle(
                    "numbered circles, column by column",
                    210,
                    297,
                    10,
                    10,
                    false,
                    TileStyle.Marks.NUMBERED_CIRCLES,
                    TileStyle.Label.NONE,
                    false,
                    false,
                    true,
                    true,
                    0),
            new TileStyle(
                    "counted, blanks left out",
                    210,
                    297,
                    8,
                    15,
                    false,
                    TileStyle.Marks.CROSSES,
                    TileStyle.Label.COUNTED,
                    false,
                    true,
                    true,
                    false,
                    0),
            new TileStyle(
                    "letters for columns",
                    297,
                    420,
                    15,
                    0,
                    true,
                    TileStyle.Marks.NONE,
                    TileStyle.Label.LETTER_COLUMN,
                    true,
                    false,
                    false,
                    true,
                    0),
            new TileStyle(
                    "turned pages in words",
                    297,
                    210,
                    10,
                    8,
                    true,
                    TileStyle.Marks.NONE,
                    TileStyle.Label.WORDS,
                    false,
                    true,
                    true,
                    true,
                    1));

    static Stream<Printed> prints() {
        String[] garments = {"bodice", "skirt", "trousers", "dress"};
        String[] sizes = {"8", "14", "20"};
        List<Printed> prints = new ArrayList<>();
        int i = 0;
        for (TileStyle style : STYLES) {
            for (int k = 0; k < 2; k++) {
                prints.add(new Printed(style, garments[i % garments.length], sizes[i % sizes.length]));
                i++;
            }
            i++;
        }
        prints.addAll(drawnByLot(24));
        return prints.stream();
    }

    /** Styles put together by lot: only what no maker would do is left out, pages without anything to go by. */
    private static List<Printed> drawnByLot(int count) {
        Random random = new Random(20261126);
        double[][] papers = {{210, 297}, {297, 210}, {215.9, 279.4}, {279.4, 215.9}, {297, 420}};
        String[] garments = {"bodice", "skirt", "trousers", "dress"};
        List<Printed> prints = new ArrayList<>();
        while (prints.size() < count) {
            double[] paper = papers[random.nextInt(papers.length)];
            TileStyle.Marks[] marks = TileStyle.Marks.values();
            TileStyle.Label[] labels = TileStyle.Label.values();
            TileStyle style = new TileStyle(
                    "by lot " + prints.size(),
                    paper[0],
                    paper[1],
                    5 + 10 * random.nextDouble(),
                    random.nextBoolean() ? 0 : 20 * random.nextDouble(),
                    random.nextBoolean(),
                    marks[random.nextInt(marks.length)],
                    labels[random.nextInt(labels.length)],
                    random.nextBoolean(),
                    random.nextBoolean(),
                    random.nextBoolean(),
                    random.nextBoolean(),
                    random.nextInt(4) == 0 ? 1 : 0);
            String garment = garments[random.nextInt(garments.length)];
            String size = "" + (6 + 2 * random.nextInt(8));
            prints.add(new Printed(style, garment, size));
        }
        return prints;
    }

    static Pattern garment(String name, String size) {
        DraftFigure figure = DraftFigure.of(SizeTables.named("misses"), size);
        return switch (name) {
            case "bodice" -> Shells.bodice(figure, DraftEase.fitted());
            case "skirt" -> Shells.skirt(figure, DraftEase.fitted());
            case "trousers" -> Shells.trousers(figure, DraftEase.fitted());
            default -> Shells.dress(figure, DraftEase.fitted());
        };
    }

    @ParameterizedTest
    @MethodSource("prints")
    void aPatternOverPagesComesBackWhole(Printed printed) throws IOException {
        List<Stroke> meant = Drawn.lines(garment(printed.garment, printed.size));
        byte[] pdf = TiledPrint.of(printed.style, meant);
        Drawing drawing = DrawingFiles.read("print.pdf", pdf, ReadChoices.NONE);
        // Where only level lines cross upright edges, cut lines without marks do not say how far the pages overlap.
        boolean open = printed.style.cut() && printed.style.marks() == TileStyle.Marks.NONE;
        boolean asked = drawing.findings().stream().anyMatch(f -> f.sentence().contains("say --overlap"));
        assertThat(asked).as("asks for the overlap").isIn(false, open);
        assertThat(drawing.findings()).as("findings").allMatch(f -> f.severity() == Severity.NOTE || asked);
        if (asked) {
            TileChoices overlap = new TileChoices(Optional.empty(), OptionalDouble.of(printed.style.overlap()));
            drawing = DrawingFiles.read("print.pdf", pdf, ReadChoices.NONE.withTiles(overlap));
        }
        sameLines(drawing.strokes(), meant);
    }

    /** Every line is there once and whole, where it belongs to the others; a page that no line joins may lie elsewhere. */
    static void sameLines(List<Stroke> read, List<Stroke> meant) {
        for (Look look : List.of(Drawn.CUTTING, Drawn.STITCHING, Drawn.GRAIN)) {
            List<Path> got = of(read, look);
            List<Path> want = of(meant, look);
            assertThat(got).as("lines drawn as " + look).hasSameSizeAs(want);
            for (Path path : want) {
                assertThat(got.stream().anyMatch(g -> isSame(g, path)))
                        .as("a line of " + path.length() + " mm drawn as " + look + " among "
                                + got.stream().map(Path::length).toList())
                        .isTrue();
            }
        }
        Bounds a = Drawn.bounds(
                read.stream().filter(s -> s.look().equals(Drawn.CUTTING)).toList());
        Bounds b = Drawn.bounds(
                meant.stream().filter(s -> s.look().equals(Drawn.CUTTING)).toList());
        assertThat(a.height()).as("height of all").isCloseTo(b.height(), within(SAME_MM));
    }

    private static List<Path> of(List<Stroke> strokes, Look look) {
        return strokes.stream()
                .filter(s -> s.look().colour().equals(look.colour())
                        && Math.abs(s.look().widthMm() - look.widthMm()) < 0.01
                        && s.look().dashMm().size() == look.dashMm().size()
                        && s.path().length() > 20)
                .map(Stroke::path)
                .toList();
    }

    private static boolean isSame(Path read, Path meant) {
        if (Math.abs(read.length() - meant.length()) > SAME_MM || read.isClosed() != meant.isClosed()) {
            return false;
        }
        Bounds a = read.bounds();
        Bounds b = meant.bounds();
        Path there = read.moved(Motion.slide(new Vec(b.minX() - a.minX(), b.minY() - a.minY())));
        for (int i = 0; i <= 200; i++) {
            Point p = there.pointAt(there.length() * i / 200);
            if (meant.nearest(p).point().distanceTo(p) > SAME_MM) {
                return false;
            }
        }
        return true;
    }
}
