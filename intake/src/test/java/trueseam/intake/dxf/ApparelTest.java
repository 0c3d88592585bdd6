package trueseam.intake.dxf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import trueseam.garment.finding.Finding;
import trueseam.geometry.Cubic;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.intake.apparel.ApparelNotch;
import trueseam.intake.apparel.ApparelPiece;
import trueseam.intake.apparel.ApparelPieces;
import trueseam.intake.apparel.GradePoint;
import trueseam.intake.drawing.DrawingException;

/**
 * Files by the apparel convention as it is written down in our notes, invented for the purpose: much of the convention is from memory, and
 * no real file was at hand.
 */
class ApparelTest {

    private static Written piece(String block) {
        return new Written().section("BLOCKS").block(block);
    }

    private static Written square(Written w) {
        return w.polyline(1, true, 0, 0, 300, 0, 300, 400, 0, 400);
    }

    private static List<String> said(DxfReading read) {
        return read.drawing().findings().stream().map(Finding::sentence).toList();
    }

    @Test
    void aBlockWithABoundaryIsAPiece() {
        ApparelPiece piece = square(piece("FRONT_M"))
                .point(2, 0, 0)
                .point(2, 300, 0)
                .point(2, 300, 400)
                .point(2, 0, 400)
                .point(80, 150, 0.5)
                .line(6, 0, 0, 0, 400)
                .line(7, 100, 350, 100, 50)
                .polyline(8, false, 20, 20, 30, 90, 50, 20)
                .polyline(11, true, 200, 200, 210, 200, 210, 210)
                .point(13, 40, 40)
                .polyline(14, true, 15, 15, 285, 15, 285, 385, 15, 385)
                .words(1, 100, 100, "piece name:  Front ")
                .words(1, 100, 90, "QUANTITY:1,1")
                .words(1, 100, 80, "Material: Lining")
                .words(15, 10, 10, "# 7")
                .endBlock()
                .end()
                .section("ENTITIES")
                .insert("FRONT_M", 1000, 0)
                .words(1, 0, 0, "Sample Size: M")
                .words(1, 0, 0, "Units: METRIC")
                .end()
                .read()
                .apparel()
                .pieces()
                .get(0);
        assertThat(piece.name()).isEqualTo("Front");
        assertThat(piece.size()).isEqualTo("M");
        assertThat(piece.cutCount()).isEqualTo(2);
        assertThat(piece.material()).isEqualTo("Lining");
        assertThat(piece.boundary().length()).isEqualTo(1400);
        assertThat(piece.corners()).hasSize(4);
        assertThat(piece.sewing().orElseThrow().length()).isEqualTo(1280);
        assertThat(piece.mirrorLine().orElseThrow().length()).isEqualTo(400);
        assertThat(piece.grain().orElseThrow().from()).isEqualTo(new Point(100, 50));
        assertThat(piece.internalLines()).hasSize(1);
        assertThat(piece.cutOuts()).hasSize(1);
        assertThat(piece.drillHoles()).containsExactly(new Point(40, 40));
        assertThat(piece.gradePoints()).containsExactly(new GradePoint(new Point(10, 10), 7));
        assertThat(piece.notches()).singleElement().satisfies(notch -> {
            assertThat(notch.kind()).isEqualTo(ApparelNotch.Kind.T);
            assertThat(notch.offMm()).isCloseTo(0.5, within(1e-9));
        });
    }

    @Test
    void aBoundaryInSeveralLinesIsJoinedWithinATenthOfAMillimetre() {
        DxfReading read = piece("A")
                .line(1, 0, 0, 300, 0)
                .line(1, 300, 400, 300.04, 0)
                .polyline(1, false, 0, 0.05, 0, 400, 300, 400)
                .endBlock()
                .end()
                .read();
        assertThat(read.apparel().pieces()).singleElement().satisfies(piece -> {
            assertThat(piece.boundary().isClosed()).isTrue();
            assertThat(piece.boundary().length()).isCloseTo(1400, within(0.1));
            assertThat(piece.corners()).hasSize(4);
        });
        assertThat(said(read)).anyMatch(s -> s.contains("4 bends of more than 20 degrees were taken for its corners"));
    }

    @Test
    void anOpenBoundaryIsRefusedWithPieceAndGap() {
        DxfReading read = piece("SLEEVE")
                .polyline(1, false, 0, 0, 300, 0, 300, 400, 0, 3)
                .endBlock()
                .end()
                .read();
        assertThat(read.apparel().pieces()).isEmpty();
        assertThat(read.drawing().findings()).anySatisfy(f -> assertThat(f.place() + ": " + f.sentence())
                .contains("block \"SLEEVE\"", "a gap of 3.0 mm"));
    }

    @Test
    void curvePointsAreSmoothAndTurnPointsAreCorners() {
        // A quarter of a circle, 100 mm, in chords of 3 degrees: 0.034 mm from the arc.
        Written w = piece("CURVE").group(0, "POLYLINE").group(8, 1).group(66, 1).group(70, 1);
        w.group(0, "VERTEX").group(8, 1).group(10, 0).group(20, 0);
        for (int i = 0; i <= 30; i++) {
            double angle = Math.toRadians(3 * i);
            w.group(0, "VERTEX").group(8, 1).group(10, 100 * Math.cos(angle)).group(20, 100 * Math.sin(angle));
        }
        w.group(0, "SEQEND");
        w.point(2, 0, 0).point(2, 100, 0).point(2, 0, 100);
        DxfReading read = w.endBlock().end().read();
        ApparelPiece piece = read.apparel().pieces().get(0);
        assertThat(piece.corners()).hasSize(3);
        assertThat(piece.boundary().segments().stream().filter(s -> s instanceof Cubic))
                .hasSize(30);
        assertThat(piece.boundary().length()).isCloseTo(200 + 50 * Math.PI, within(1e-3));
        for (var s : piece.boundary().segments()) {
            if (s instanceof Cubic c) {
                assertThat(c.at(0.5).distanceTo(Point.ORIGIN)).isCloseTo(100, within(1e-3));
            }
        }
        assertThat(said(read)).anyMatch(s -> s.startsWith("30 chords between curve points were drawn as curves"));
    }

    @Test
    void coarseCurvesStayAsDrawnAndThatIsSaid() {
        DxfReading read = piece("COARSE")
                .polyline(1, true, 0, 0, 100, 0, 96, 28, 80, 60, 60, 80, 28, 96, 0, 100)
                .point(2, 0, 0)
                .point(2, 100, 0)
                .point(2, 0, 100)
                .endBlock()
                .end()
                .read();
        assertThat(read.apparel().pieces().get(0).boundary().segments()).noneMatch(s -> s instanceof Cubic);
        assertThat(said(read)).anyMatch(s -> s.contains("stay as drawn"));
    }

    @Test
    void sizesAreTheirTextOrWhatFollowsTheUnderscore() {
        Written w = new Written().section("BLOCKS");
        for (String size : List.of("S", "M", "L")) {
            square(w.block("FRONT_" + size)).endBlock();
        }
        square(w.block("B1")).words(1, 0, 0, "Size: XL").endBlock();
        ApparelPieces pieces = w.end().read().apparel();
        assertThat(pieces.sizes()).containsExactly("S", "M", "L", "XL");
        assertThat(pieces.ofSize("L"))
                .singleElement()
                .extracting(ApparelPiece::name)
                .isEqualTo("FRONT");
    }

    @Test
    void blocksWithoutABoundaryAndUnknownLayersAreTold() {
        DxfReading read = square(piece("A"))
                .line(99, 0, 0, 5, 5)
                .endBlock()
                .block("LOGO")
                .line(8, 0, 0, 9, 9)
                .endBlock()
                .block("$MODEL_SPACE")
                .endBlock()
                .end()
                .read();
        assertThat(said(read))
                .anyMatch(s -> s.equals("blocks without a boundary on layer 1 are no pieces: LOGO."))
                .anyMatch(s -> s.endsWith("kept as lines inside: 99."))
                .anyMatch(s -> s.contains("does not say whether seam allowance"));
    }

    @Test
    void aNotchFarFromTheBoundaryIsKeptWithAWarning() {
        DxfReading read = square(piece("A")).point(4, 150, 60).endBlock().end().read();
        assertThat(read.apparel().pieces().get(0).notches()).hasSize(1);
        assertThat(said(read)).anyMatch(s -> s.contains("lies 60.0 mm from the boundary"));
    }

    private static final String TABLE = """
            UNITS: ENGLISH
            NUMBER OF SIZES: 3
            SIZE LIST: S M L
            SAMPLE SIZE: M
            RULE: DELTA 1
            -1.0, 0.5  0.0, 0.0
            2.0, .25
            RULE: DELTA 2
            0,0 0,0 0,0
            END
            """;

    @Test
    void aRuleTableSaysHowPointsMoveFromTheSampleSize() {
        RuleTable table = RuleTable.read("x.rul", TABLE);
        assertThat(table.sizes()).containsExactly("S", "M", "L");
        assertThat(table.move(1, "L")).isEqualTo(new Vec(50.8, 6.35));
        assertThat(table.move(2, "S")).isEqualTo(Vec.ZERO);
    }

    @Test
    void aRuleTableWithAMissingNumberIsRefusedByItsRule() {
        assertThatThrownBy(() -> RuleTable.read("x.rul", TABLE.replace("2.0, .25", "2.0")))
                .isInstanceOf(DrawingException.class)
                .hasMessageContaining("rule 1")
                .hasMessageContaining("5 numbers found");
        assertThatThrownBy(() -> RuleTable.read("x.rul", TABLE.replace("SAMPLE SIZE: M", "SAMPLE SIZE: 14")))
                .hasMessageContaining("[S, M, L]");
    }
}
