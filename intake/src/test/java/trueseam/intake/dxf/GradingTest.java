package trueseam.intake.dxf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import trueseam.garment.finding.Finding;
import trueseam.geometry.Bounds;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.intake.apparel.ApparelPiece;
import trueseam.intake.drawing.Drawing;
import trueseam.intake.drawing.DrawingException;
import trueseam.intake.grade.Grading;

/** Rules carried out on invented pieces, against sums that anybody can do. */
class GradingTest {

    /** Size 16 is 10 wider on the right half and 20 taller at the top than size 12; size 14 half of it. */
    private static final RuleTable TABLE = RuleTable.read("x.rul", """
            UNITS: METRIC
            NUMBER OF SIZES: 3
            SIZE LIST: 12 14 16
            SAMPLE SIZE: 12
            RULE: DELTA 1
            0 0 0 0 0 0
            RULE: DELTA 2
            0 0 5 0 10 0
            RULE: DELTA 3
            0 0 5 10 10 20
            RULE: DELTA 4
            0 0 0 10 0 20
            """);

    private static Written piece() {
        return new Written()
                .section("BLOCKS")
                .block("A_12")
                .polyline(1, true, 0, 0, 100, 0, 100, 60, 100, 200, 50, 210, 0, 200)
                .point(2, 0, 0)
                .point(2, 100, 0)
                .point(2, 100, 200)
                .point(2, 0, 200)
                .point(3, 50, 210)
                .polyline(14, true, 10, 10, 90, 10, 90, 190, 10, 190)
                .point(4, 100, 60)
                .words(1, 0, 0, "# 1")
                .words(1, 100, 0, "# 2")
                .words(1, 100, 200, "# 3")
                .words(1, 0, 200, "# 4");
    }

    private static Drawing drawing(Written piece) {
        return piece.endBlock().end().read().drawing();
    }

    private static ApparelPiece graded(Written piece, String size) {
        return Grading.inSize(drawing(piece), TABLE, size).apparel().pieces().get(0);
    }

    private static void has(Path line, double x, double y) {
        Point p = new Point(x, y);
        assertThat(line.nearest(p).point().distanceTo(p))
                .as("(%s, %s) on the line", x, y)
                .isLessThan(1e-6);
    }

    @Test
    void ruledPointsMoveByTheirRuleAndPointsBetweenInProportionToTheWay() {
        Path line = graded(piece(), "16").boundary();
        has(line, 0, 0);
        has(line, 110, 0);
        has(line, 110, 220);
        has(line, 0, 220);
        // 60 of 200 up the right side: 30 in 100 of the 20 that its upper end rises.
        has(line, 110, 66);
        // Half way along the top, which bulges by 10: half of the 10 and all of the 20.
        has(line, 55, 230);
        assertThat(line.isClosed()).isTrue();
    }

    @Test
    void theSampleSizeIsAsItWas() {
        ApparelPiece as = drawing(piece()).apparel().pieces().get(0);
        ApparelPiece same = graded(piece(), "12");
        assertThat(same.boundary().length()).isCloseTo(as.boundary().length(), within(1e-9));
        assertThat(same.size()).isEqualTo("12");
    }

    @Test
    void aSewLineWithoutRulesKeepsItsAllowanceAndNotchesStayOnTheEdge() {
        ApparelPiece piece = graded(piece(), "16");
        Bounds sewn = piece.sewing().orElseThrow().bounds();
        assertThat(sewn.minX()).isCloseTo(10, within(1e-6));
        assertThat(sewn.maxX()).isCloseTo(100, within(1e-6));
        assertThat(sewn.maxY()).isCloseTo(210, within(1e-6));
        assertThat(piece.boundary().pointAt(piece.notches().get(0).alongMm()).distanceTo(new Point(110, 66)))
                .isLessThan(1e-6);
    }

    @Test
    void rulesRunAlongTheGradeReferenceLine() {
        // The line runs up, so x of a rule is up and y to the left.
        ApparelPiece piece = graded(piece().line(5, 50, 20, 50, 150), "16");
        has(piece.boundary(), 100, 10);
        has(piece.boundary(), 80, 210);
    }

    @Test
    void whatInsideHasNoRuleAndMeetsNoEdgeStaysAndIsTold() {
        Drawing graded = Grading.inSize(
                drawing(piece().line(8, 0, 100, 100, 100)
                        .line(8, 30, 50, 60, 50)
                        .point(13, 40, 40)),
                TABLE,
                "16");
        List<Path> lines = graded.apparel().pieces().get(0).internalLines();
        has(lines.get(0), 0, 110);
        has(lines.get(0), 110, 110);
        has(lines.get(1), 30, 50);
        assertThat(graded.findings())
                .extracting(Finding::sentence)
                .anyMatch(s -> s.startsWith("2 of the lines and holes inside it have no rule"));
    }

    @Test
    void aSizeOrARuleThatIsMissingIsSaid() {
        assertThatThrownBy(() -> graded(piece(), "18"))
                .isInstanceOf(DrawingException.class)
                .hasMessageContaining("12, 14, 16");
        assertThatThrownBy(() -> graded(piece().words(1, 50, 210, "# 9"), "16"))
                .hasMessageContaining("Rule 9 at (50.0, 210.0) is not in the table");
    }
}
