package trueseam.intake.dxf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import trueseam.garment.finding.Finding;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.Landmark;
import trueseam.garment.pattern.Marking;
import trueseam.garment.pattern.Notch;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;
import trueseam.intake.bring.BringChoices;
import trueseam.intake.bring.Bringing;
import trueseam.intake.bring.Brought;
import trueseam.intake.drawing.DrawingException;

/** What a file of the apparel convention names is taken as it is named. All pieces are invented. */
class BroughtByNameTest {

    /** A pocket of 160 by 200 mm, cut on the fold at its left, in one size. */
    private static Written pocket(Written file, String size, double wide) {
        file.block("POCKET_" + size)
                .polyline(1, true, 0, 0, wide, 0, wide, 200, 0, 200)
                .point(2, 0, 0)
                .point(2, wide, 0)
                .point(2, wide, 200)
                .point(2, 0, 200)
                .line(6, 0, 0, 0, 200)
                .line(7, 40, 150, 40, 30)
                .words(1, 10, 10, "Piece Name: Patch pocket")
                .words(1, 10, 20, "Size: " + size)
                .words(1, 10, 30, "Quantity: 2")
                .words(1, 10, 40, "Material: shell");
        return file;
    }

    private static Brought brought(Written file, BringChoices choices) {
        return Bringing.of(file.read().drawing(), choices);
    }

    private static Piece only(Written file) {
        return brought(file.endBlock().end(), BringChoices.usual(15))
                .pattern()
                .pieces()
                .get(0);
    }

    @Test
    void nameQuantityFoldGrainAndMaterialAreThoseOfTheFile() {
        Written file =
                pocket(new Written().section("BLOCKS"), "M", 160).endBlock().end();
        Brought brought = brought(file, BringChoices.usual(15));
        Piece piece = brought.pattern().pieces().get(0);
        assertThat(piece.name()).isEqualTo("Patch pocket");
        assertThat(piece.kind()).isEqualTo(PieceKind.OTHER);
        assertThat(piece.cutCount()).isEqualTo(2);
        assertThat(piece.edges()).extracting(Edge::length).containsExactlyInAnyOrder(160.0, 200.0, 160.0, 200.0);
        Edge fold = piece.edge(piece.fold().orElseThrow());
        assertThat(fold.path().bounds().maxX()).isCloseTo(0, within(1e-9));
        assertThat(fold.allowanceMm()).isZero();
        assertThat(piece.grain().from().x()).isCloseTo(40, within(1e-9));
        assertThat(piece.grain().to().y()).isCloseTo(150, within(1e-9));
        assertThat(brought.findings()).extracting(Finding::sentence).anyMatch(s -> s.contains("\"shell\""));
    }

    @Test
    void anAllowanceThatIsSaidIsTakenOffAllRoundButAtTheFold() {
        Written file =
                pocket(new Written().section("BLOCKS"), "M", 160).endBlock().end();
        BringChoices choices = new BringChoices("", "", "", OptionalDouble.of(10), 10, Map.of(), Optional.empty());
        Piece piece = brought(file, choices).pattern().pieces().get(0);
        assertThat(piece.outline().bounds().width()).isCloseTo(150, within(0.02));
        assertThat(piece.outline().bounds().height()).isCloseTo(180, within(0.02));
    }

    @Test
    void notchesAreSnappedToTheEdgeAndTheDistanceIsSaid() {
        Written file = pocket(new Written().section("BLOCKS"), "M", 160)
                .point(4, 80, 0.4)
                .point(80, 160.3, 100)
                .point(4, 80, 60)
                .endBlock()
                .end();
        Brought brought = brought(file, BringChoices.usual(15));
        Piece piece = brought.pattern().pieces().get(0);
        assertThat(piece.notches()).extracting(Notch::atMm).allSatisfy(mm -> assertThat(mm % 20)
                .isCloseTo(0, within(1e-6)));
        assertThat(piece.notches()).hasSize(2);
        assertThat(piece.landmarks()).extracting(Landmark::name).containsExactly("notch off the edge 1");
        assertThat(brought.findings())
                .extracting(Finding::sentence)
                .anyMatch(s -> s.startsWith("2 of its notches lay beside its edge") && s.contains("0.40 mm"))
                .anyMatch(s -> s.startsWith("1 of its notches are T, castle"))
                .anyMatch(s -> s.startsWith("1 of its notches lie more than 2.0 mm from its edge"));
    }

    @Test
    void linesHolesAndWhatTheConventionDoesNotKnowAreKept() {
        Piece piece = only(pocket(new Written().section("BLOCKS"), "M", 160)
                .line(8, 20, 20, 140, 20)
                .polyline(11, true, 60, 60, 70, 60, 70, 90)
                .line("SEAM-TAPE", 20, 180, 140, 180)
                .point(13, 100, 100));
        assertThat(piece.markings())
                .extracting(Marking::name)
                .containsExactly("line 1", "cut-out 1", "line of layer SEAM-TAPE 1");
        assertThat(piece.landmarks()).extracting(Landmark::name).containsExactly("drill hole 1");
    }

    @Test
    void turnPointsSayWhatIsACornerAndWhatIsNot() {
        Written file = new Written()
                .section("BLOCKS")
                .block("A")
                // The bend at (150, 30) is 34 degrees and a curve point; the straight run at (0, 100) has a corner in
                // it.
                .polyline(1, true, 0, 0, 100, 0, 150, 30, 180, 120, 180, 200, 0, 200, 0, 100);
        for (double[] p : new double[][] {{0, 0}, {180, 200}, {0, 200}, {0, 100}}) {
            file.point(2, p[0], p[1]);
        }
        file.point(3, 100, 0).point(3, 150, 30).point(3, 180, 120);
        Piece piece = only(file);
        assertThat(piece.edges()).hasSize(4);
        assertThat(piece.edges()).extracting(Edge::length).contains(180.0, 100.0);
    }

    @Test
    void severalSizesAreListedAndOneIsTaken() {
        Written file = new Written().section("BLOCKS");
        pocket(file, "S", 150).endBlock();
        pocket(file, "M", 160).endBlock();
        pocket(file, "L", 170).endBlock().end();
        assertThatThrownBy(() -> brought(file, BringChoices.usual(15)))
                .isInstanceOf(DrawingException.class)
                .hasMessageContaining("sizes S, M, L");
        assertThatThrownBy(() -> brought(file, sized("XL"))).hasMessageContaining("not in size XL");
        Brought large = brought(file, sized("l"));
        assertThat(large.pattern().pieces()).hasSize(1);
        assertThat(large.pattern().pieces().get(0).outline().bounds().width()).isCloseTo(170, within(1e-6));
    }

    private static BringChoices sized(String size) {
        return new BringChoices("", size, "", OptionalDouble.empty(), 15, Map.of(), Optional.empty());
    }

    @Test
    void aLayerThatIsSaidIsTakenAsAPlainDrawing() {
        Written file =
                pocket(new Written().section("BLOCKS"), "M", 160).endBlock().end();
        BringChoices choices = new BringChoices("", "", "", OptionalDouble.empty(), 15, Map.of(), Optional.of("1"));
        assertThat(brought(file, choices).pattern().pieces().get(0).fold()).isEmpty();
    }
}
