package trueseam.output.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trueseam.fitting.work.WorkedPattern;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.pattern.CuttingLine;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/** Puts the pages together as a person does, by the diamonds of the same number, and compares with the pattern. */
class TilesTest {

    private static final double DPI = 200;

    /** The bound on a stitched outline. */
    private static final double STITCHED_MM = 0.2;

    private record Page(Scan scan, Map<String, Point> diamonds) {}

    private static Page page(PDDocument read, int number) throws IOException {
        Scan scan = Scan.of(read, number, DPI);
        List<Point> spots = scan.spots();
        Map<String, Point> diamonds = new HashMap<>();
        for (Words.Word word : Words.of(read, number)) {
            if (word.text().matches("\\d+[ab]")) {
                Point nearest = spots.stream()
                        .min((p, q) -> Double.compare(p.distanceTo(word.at()), q.distanceTo(word.at())))
                        .orElseThrow();
                assertThat(nearest.distanceTo(word.at())).isLessThan(12);
                diamonds.put(word.text(), nearest);
            }
        }
        assertThat(diamonds.values()).as("one number for each diamond").hasSameSizeAs(spots);
        return new Page(scan, diamonds);
    }

    /** Where each page lies relative to the first, by matching numbers only. */
    private static List<Vec> putTogether(List<Page> pages) {
        Vec[] at = new Vec[pages.size()];
        at[0] = Vec.ZERO;
        Deque<Integer> waiting = new ArrayDeque<>(List.of(0));
        while (!waiting.isEmpty()) {
            int here = waiting.remove();
            for (int other = 0; other < pages.size(); other++) {
                if (at[other] != null) {
                    continue;
                }
                List<Vec> apart = new ArrayList<>();
                for (Map.Entry<String, Point> mark : pages.get(here).diamonds().entrySet()) {
                    Point same = pages.get(other).diamonds().get(mark.getKey());
                    if (same != null) {
                        apart.add(mark.getValue().minus(same));
                    }
                }
                if (!apart.isEmpty()) {
                    assertThat(apart).as("two diamonds where two pages meet").hasSize(2);
                    assertThat(apart.get(0).minus(apart.get(1)).length()).isLessThan(0.15);
                    at[other] = at[here].plus(apart.get(0).plus(apart.get(1)).times(0.5));
                    waiting.add(other);
                }
            }
        }
        assertThat(at).as("every page is joined to the others").doesNotContainNull();
        return List.of(at);
    }

    @ParameterizedTest
    @ValueSource(strings = {"A4", "LETTER", "A3"})
    void pagesPutTogetherByTheirDiamondsShowTheCuttingLine(String name) throws IOException {
        Paper paper = Paper.ofWord(name).orElseThrow();
        WorkedPattern worked = Samples.bodice();
        FullSizePrint print =
                FullSizePrint.of(worked, PrintOptions.usual(paper, LengthFormat.millimetres(), "Anna"), List.of());
        List<Page> pages = new ArrayList<>();
        try (PDDocument read = Loader.loadPDF(print.pdf())) {
            for (int i = 1; i < read.getNumberOfPages(); i++) {
                pages.add(page(read, i));
            }
        }
        List<Vec> places = putTogether(pages);
        Point first = new Point(
                print.layout().tiles().get(0).window().minX(),
                print.layout().tiles().get(0).window().minY());
        int seen = 0;
        int asked = 0;
        double worst = 0;
        for (Placed placed : print.layout().pieces()) {
            Piece piece = worked.altered().piece(placed.piece());
            Path cut = CuttingLine.of(piece).moved(Motion.slide(placed.origin().minus(Point.ORIGIN)));
            double fold = foldX(piece, placed);
            for (double s = 1.5; s < cut.length(); s += 7.3) {
                Point p = cut.pointAt(s);
                if (Math.abs(p.x() - fold) < 1) {
                    continue; // nothing is cut along the fold
                }
                asked++;
                double off = off(
                        pages,
                        places,
                        p.minus(first.minus(Point.ORIGIN)),
                        cut.tangentAt(s).left());
                if (off >= 0) {
                    seen++;
                    worst = Math.max(worst, off);
                }
            }
        }
        assertThat(worst).isLessThan(STITCHED_MM);
        assertThat(asked).isGreaterThan(500);
        // Where a notch, a word or a diamond touches the line, its own middle cannot be seen.
        assertThat(seen).isGreaterThan(asked * 9 / 10);
    }

    private static double foldX(Piece piece, Placed placed) {
        return piece.fold()
                .map(f -> piece.edge(f).path().start().x() + placed.origin().x())
                .orElse(Double.NaN);
    }

    /** How far the printed line is from a place of the pattern, seen across it; -1 where something else is printed over it. */
    private static double off(List<Page> pages, List<Vec> places, Point p, Vec across) {
        double reach = 1.5;
        for (int i = 0; i < pages.size(); i++) {
            Point there = p.minus(places.get(i));
            List<Scan.Dark> dark = pages.get(i).scan().along(there.minus(across.times(reach)), across, 2 * reach);
            for (Scan.Dark d : dark) {
                // The cutting line is 0.6 mm thick, and blurred by a pixel on either side.
                if (0.5 < d.lengthMm() && d.lengthMm() < 1.0 && Math.abs(d.middleMm() - reach) < 0.8) {
                    return Math.abs(d.middleMm() - reach);
                }
            }
        }
        return -1;
    }

    @Test
    void emptyPagesAreLeftOutAndNoneThatIsNeeded() {
        FullSizePrint print = FullSizePrint.of(
                Samples.bodice(), PrintOptions.usual(Paper.A4, LengthFormat.millimetres(), ""), List.of());
        Layout layout = print.layout();
        int rows = layout.tiles().stream().mapToInt(Tile::row).max().orElseThrow() + 1;
        int columns = layout.tiles().stream().mapToInt(Tile::column).max().orElseThrow() + 1;
        assertThat(layout.tiles().size()).isLessThan(rows * columns);
        assertThat(layout.pages()).isEqualTo(layout.tiles().size() + 1);
        WorkedPattern worked = Samples.bodice();
        Map<String, Integer> shown = new HashMap<>();
        for (Placed placed : layout.pieces()) {
            for (Path line : List.of(
                    CuttingLine.of(worked.altered().piece(placed.piece())),
                    CuttingLine.of(worked.original().piece(placed.piece())))) {
                Path cut = line.moved(Motion.slide(placed.origin().minus(Point.ORIGIN)));
                for (double s = 0; s < cut.length(); s += 3) {
                    Point p = cut.pointAt(s);
                    List<Tile> on =
                            layout.tiles().stream().filter(t -> holds(t, p)).toList();
                    assertThat(on).as("page of " + p).isNotEmpty();
                    on.forEach(t -> shown.merge(t.label(), 1, Integer::sum));
                }
            }
        }
        // Every page of this print has some outline in its own part: none was printed for nothing.
        assertThat(shown.keySet())
                .containsExactlyInAnyOrderElementsOf(
                        layout.tiles().stream().map(Tile::label).toList());
    }

    private static boolean holds(Tile tile, Point p) {
        return tile.cell().minX() <= p.x()
                && p.x() <= tile.cell().maxX()
                && tile.cell().minY() <= p.y()
                && p.y() <= tile.cell().maxY();
    }

    @Test
    void labelsGoOnAfterTheLastLetter() {
        var nowhere = new trueseam.geometry.Bounds(0, 0, 1, 1);
        assertThat(new Tile(0, 0, 2, nowhere, nowhere, nowhere).label()).isEqualTo("A1");
        assertThat(new Tile(25, 11, 2, nowhere, nowhere, nowhere).label()).isEqualTo("Z12");
        assertThat(new Tile(26, 0, 2, nowhere, nowhere, nowhere).label()).isEqualTo("AA1");
    }
}
