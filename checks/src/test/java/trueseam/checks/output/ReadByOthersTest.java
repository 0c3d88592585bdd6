package trueseam.checks.output;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import trueseam.checks.script.PythonScript;
import trueseam.drafting.Allowances;
import trueseam.drafting.DraftFigure;
import trueseam.drafting.garment.Garment;
import trueseam.fitting.work.WorkedPattern;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.pattern.CuttingLine;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Bounds;
import trueseam.geometry.Motion;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.intake.patternfile.PatternFile;
import trueseam.intake.size.SizeTables;
import trueseam.output.print.FullSizePrint;
import trueseam.output.print.Paper;
import trueseam.output.print.Placed;
import trueseam.output.print.PrintOptions;
import trueseam.output.print.Tile;

/**
 * Every garment as SVG and as PDF at full size, on one sheet and on pages, read by libraries of other people: svgelements and pdfminer.
 * Patterns: drafted, their figures invented.
 */
class ReadByOthersTest {

    private static final double SAME_MM = 0.05;

    /** A place is looked for on a page if it lies so far within what is printed there. */
    private static final double WITHIN_MM = 1;

    private static final double STEP_MM = 5;

    @TempDir
    private static Path folder;

    private static final Map<String, FullSizePrint> PRINTS = new HashMap<>();
    private static final Map<String, List<Chords>> READ = new HashMap<>();

    /** What was read of one line: file, page, names, and where it runs. */
    private record Chords(int page, String piece, String edge, List<Point> points, Bounds around) {

        double off(Point p) {
            double least = Double.POSITIVE_INFINITY;
            if (!around.meets(Bounds.of(p, p), 0)) {
                return least;
            }
            for (int i = 1; i < points.size(); i++) {
                Point a = points.get(i - 1);
                Vec along = points.get(i).minus(a);
                double length = along.dot(along);
                double t = length > 0 ? Math.max(0, Math.min(1, p.minus(a).dot(along) / length)) : 0;
                least = Math.min(least, p.distanceTo(a.plus(along.times(t))));
            }
            return least;
        }
    }

    private static Bounds bounds(List<Point> points) {
        Bounds bounds = Bounds.of(points.get(0), points.get(0));
        for (Point p : points) {
            bounds = bounds.with(Bounds.of(p, p));
        }
        return bounds;
    }

    private static Pattern drafted(Garment garment) {
        return garment.draft(DraftFigure.of(SizeTables.named("misses"), "14"), Allowances.inches());
    }

    @BeforeAll
    static void letOthersRead() throws IOException, InterruptedException {
        for (Garment garment : Garment.values()) {
            Pattern pattern = drafted(garment);
            Files.writeString(folder.resolve(garment.name() + ".svg"), PatternFile.write(pattern));
            for (Paper paper : List.of(Paper.A0, Paper.A4)) {
                FullSizePrint print = FullSizePrint.of(
                        WorkedPattern.of(pattern),
                        PrintOptions.usual(paper, LengthFormat.centimetres(), ""),
                        List.of());
                String file = garment.name() + "-" + paper.name() + ".pdf";
                PRINTS.put(file, print);
                Files.write(folder.resolve(file), print.pdf());
            }
        }
        for (String row :
                PythonScript.run(ReadByOthersTest.class, "lines.py", folder).get("lines.csv")) {
            String[] cells = row.split("\\|", -1);
            String[] numbers = cells[4].split(" ");
            List<Point> points = new ArrayList<>();
            for (int i = 0; i < numbers.length; i += 2) {
                points.add(new Point(Double.parseDouble(numbers[i]), Double.parseDouble(numbers[i + 1])));
            }
            READ.computeIfAbsent(cells[0], f -> new ArrayList<>())
                    .add(new Chords(
                            Integer.parseInt(cells[1]),
                            cells[2],
                            cells[3],
                            points,
                            bounds(points).grown(WITHIN_MM)));
        }
    }

    @ParameterizedTest
    @EnumSource(Garment.class)
    void everyEdgeOfTheSvgIsReadWhereThePatternHasIt(Garment garment) {
        for (Piece piece : drafted(garment).pieces()) {
            List<Chords> read = READ.get(garment.name() + ".svg").stream()
                    .filter(c -> c.piece().equals(piece.name()))
                    .toList();
            Vec shift = shift(piece, read);
            for (Edge edge : piece.edges()) {
                List<Chords> same =
                        read.stream().filter(c -> c.edge().equals(edge.name())).toList();
                assertThat(same).as(piece.name() + ", " + edge.name()).isNotEmpty();
                for (double mm = 0; mm <= edge.length(); mm += STEP_MM) {
                    Point p = edge.path().pointAt(mm).plus(shift);
                    assertThat(same.stream().mapToDouble(c -> c.off(p)).min().orElseThrow())
                            .as("%s, %s at %.0f mm", piece.name(), edge.name(), mm)
                            .isLessThan(SAME_MM);
                }
            }
            trueseam.geometry.Path cut = CuttingLine.of(piece).moved(Motion.slide(shift));
            List<Chords> unnamed = read.stream().filter(c -> c.edge().isEmpty()).toList();
            for (double mm = 0; mm <= cut.length(); mm += STEP_MM) {
                Point p = cut.pointAt(mm);
                assertThat(unnamed.stream().mapToDouble(c -> c.off(p)).min().orElseThrow())
                        .as("%s, cutting line at %.0f mm", piece.name(), mm)
                        .isLessThan(SAME_MM);
            }
        }
    }

    /** Pieces lie beside each other on the sheet, shifted and not turned. */
    private static Vec shift(Piece piece, List<Chords> read) {
        Edge first = piece.edges().get(0);
        Point start = read.stream()
                .filter(c -> c.edge().equals(first.name()))
                .findFirst()
                .orElseThrow()
                .points()
                .get(0);
        return start.minus(first.path().start());
    }

    @ParameterizedTest
    @EnumSource(Garment.class)
    void everyOutlineIsReadOnTheSheetForTheCopyShop(Garment garment) {
        assertThat(places(garment, Paper.A0)).isGreaterThan(300);
    }

    @ParameterizedTest
    @EnumSource(Garment.class)
    void everyOutlineIsReadOnEveryPageThatShowsIt(Garment garment) {
        assertThat(places(garment, Paper.A4)).isGreaterThan(300);
    }

    /** How many places of stitching and cutting lines were looked for; each was found on every page that it is on. */
    private static int places(Garment garment, Paper paper) {
        String file = garment.name() + "-" + paper.name() + ".pdf";
        FullSizePrint print = PRINTS.get(file);
        int looked = 0;
        for (Placed placed : print.layout().pieces()) {
            Piece piece = drafted(garment).pieces().stream()
                    .filter(p -> p.name().equals(placed.piece()))
                    .findFirst()
                    .orElseThrow();
            for (trueseam.geometry.Path line : List.of(piece.outline(), CuttingLine.of(piece))) {
                trueseam.geometry.Path lying =
                        line.moved(Motion.slide(placed.origin().minus(Point.ORIGIN)));
                for (double mm = 0; mm < lying.length(); mm += STEP_MM) {
                    looked += onEveryPage(print, file, lying.pointAt(mm), placed.piece());
                }
            }
        }
        return looked;
    }

    private static int onEveryPage(FullSizePrint print, String file, Point p, String piece) {
        int pages = 0;
        for (Tile tile : print.layout().tiles()) {
            if (tile.frame().grown(-WITHIN_MM).meets(Bounds.of(p, p), 0)) {
                Point there =
                        p.minus(new Vec(tile.window().minX(), tile.window().minY()));
                pages++;
                assertThat(READ.get(file).stream()
                                .filter(c -> c.page() == tile.page())
                                .mapToDouble(c -> c.off(there))
                                .min()
                                .orElse(Double.POSITIVE_INFINITY))
                        .as("%s, %s at %s on page %d", file, piece, p, tile.page())
                        .isLessThan(SAME_MM);
            }
        }
        return pages;
    }
}
