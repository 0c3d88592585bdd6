package trueseam.checks.tiles;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import trueseam.fitting.work.WorkedPattern;
import trueseam.garment.finding.Severity;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.pattern.CuttingLine;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Bounds;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.intake.drawing.Drawing;
import trueseam.intake.drawing.Stroke;
import trueseam.intake.file.DrawingFiles;
import trueseam.intake.file.ReadChoices;
import trueseam.output.print.FullSizePrint;
import trueseam.output.print.Paper;
import trueseam.output.print.PrintOptions;

/** What we print ourselves over pages comes back exactly. Demo garments: drafted, their figures invented. */
class OwnPrintTest {

    private static final double SAME_MM = 0.05;

    static Stream<Arguments> prints() {
        List<Arguments> prints = new ArrayList<>();
        for (Paper paper : List.of(Paper.A4, Paper.LETTER, Paper.A3)) {
            prints.add(Arguments.of(paper, "bodice", "8"));
            prints.add(Arguments.of(paper, "dress", "18"));
            prints.add(Arguments.of(paper, "trousers", "12"));
        }
        return prints.stream();
    }

    @ParameterizedTest
    @MethodSource("prints")
    void everyPieceComesBack(Paper paper, String garment, String size) {
        Pattern pattern = TiledPrintsTest.garment(garment, size);
        PrintOptions options = PrintOptions.usual(paper, LengthFormat.inches(8), "");
        byte[] pdf =
                FullSizePrint.of(WorkedPattern.of(pattern), options, List.of()).pdf();
        Drawing drawing = DrawingFiles.read("print.pdf", pdf, ReadChoices.NONE);
        assertThat(drawing.findings()).allMatch(f -> f.severity() == Severity.NOTE);
        assertThat(drawing.findings()).anyMatch(f -> f.sentence().contains("by labels of row and column"));
        for (Piece piece : pattern.pieces()) {
            whole(drawing.strokes(), CuttingLine.of(piece), piece.name() + ", cutting line");
        }
    }

    /** One line of the drawing is the meant one, shifted. On a fold nothing is cut: there it is open, and closed straight here. */
    private static void whole(List<Stroke> read, Path meant, String what) {
        assertThat(read.stream()
                        .map(Stroke::path)
                        .map(p -> p.isClosed() ? p : p.then(Path.through(p.end(), p.start())))
                        .filter(p -> isSame(p, meant)))
                .as(what)
                .hasSize(1);
    }

    private static boolean isSame(Path read, Path meant) {
        if (Math.abs(read.length() - meant.length()) > SAME_MM) {
            return false;
        }
        Bounds a = read.bounds();
        Bounds b = meant.bounds();
        Path there = read.moved(Motion.slide(new Vec(b.minX() - a.minX(), b.minY() - a.minY())));
        for (int i = 0; i < 300; i++) {
            Point p = there.pointAt(there.length() * i / 300);
            Point q = meant.pointAt(meant.length() * i / 300);
            if (meant.nearest(p).point().distanceTo(p) > SAME_MM
                    || there.nearest(q).point().distanceTo(q) > SAME_MM) {
                return false;
            }
        }
        return true;
    }
}
