package trueseam.garment.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import trueseam.garment.measure.Measure;
import trueseam.geometry.Path;
import trueseam.geometry.Point;

class PatternTest {

    private static Piece rectangle(String name, double heightMm, Dart... darts) {
        Point b = new Point(100, 0);
        Point c = new Point(100, heightMm);
        Point d = new Point(0, heightMm);
        return new PieceBuilder(name, PieceKind.OTHER)
                .edge("hem", EdgeRole.HEM, Path.through(Point.ORIGIN, b), 0)
                .edge("side", EdgeRole.SIDE, Path.through(b, c), 0)
                .edge("top", EdgeRole.WAIST, Path.through(c, d), 0)
                .edge("centre", EdgeRole.CENTRE, Path.through(d, Point.ORIGIN), 0)
                .darts(List.of(darts))
                .grain(new Grain(Point.ORIGIN, d))
                .build();
    }

    private static Pattern pattern(List<Piece> pieces, Seam... seams) {
        return new Pattern("two rectangles", "", "", "", pieces, List.of(seams), Map.of());
    }

    private static final EdgeRef FRONT_SIDE = new EdgeRef("front", "side");
    private static final EdgeRef BACK_SIDE = new EdgeRef("back", "side");

    @Test
    void mismatchIsWhatIsLeftAfterTheIntendedEase() {
        // Front side 200 mm; back side 220 mm with a dart of 12 mm: sewn 208 mm, 8 mm longer, 6 mm of it intended.
        Dart dart = new Dart.EdgeDart("elbow dart", "side", 100, 112, new Point(40, 100));
        Seam seam = Seam.of("side", FRONT_SIDE, BACK_SIDE, 6);
        Pattern pattern = pattern(List.of(rectangle("front", 200), rectangle("back", 220, dart)), seam);
        assertThat(pattern.mismatchMm(seam)).isCloseTo(2, within(1e-12));
        Seam turned = Seam.of("side", BACK_SIDE, FRONT_SIDE, -6);
        assertThat(pattern.mismatchMm(turned)).isCloseTo(-2, within(1e-12));
    }

    @Test
    void aSeamOfSeveralEdgesAddsThemUp() {
        Seam seam = new Seam(
                "armhole", List.of(FRONT_SIDE, BACK_SIDE), List.of(new EdgeRef("sleeve", "side")), 0.75 * 25.4);
        Pattern pattern = pattern(
                List.of(rectangle("front", 200), rectangle("back", 210), rectangle("sleeve", 410 + 0.75 * 25.4)), seam);
        assertThat(pattern.sewnLength(seam.first())).isEqualTo(410);
        assertThat(pattern.mismatchMm(seam)).isCloseTo(0, within(1e-12));
    }

    @Test
    void aSeamOfEdgesThatAreNotThereIsRefused() {
        List<Piece> pieces = List.of(rectangle("front", 200));
        assertThatThrownBy(() -> pattern(pieces, Seam.of("side", FRONT_SIDE, BACK_SIDE, 0)))
                .isInstanceOf(PatternException.class)
                .hasMessage("Piece \"back\": seam \"side\" names this piece, which is not there.");
        assertThatThrownBy(() -> pattern(pieces, Seam.of("cap", FRONT_SIDE, new EdgeRef("front", "cap"), 0)))
                .hasMessageContaining("there is no edge \"cap\"");
        assertThatThrownBy(() -> new Seam("side", List.of(), List.of(FRONT_SIDE), 0))
                .hasMessageContaining("needs an edge on either side");
        assertThatThrownBy(() -> Seam.of("side", FRONT_SIDE, FRONT_SIDE, Double.NaN))
                .hasMessageContaining("NaN mm is no length");
    }

    @Test
    void twoPiecesOfOneNameAndNoPieceAtAllAreRefused() {
        assertThatThrownBy(() -> pattern(List.of(rectangle("front", 200), rectangle("front", 300))))
                .hasMessage("Piece \"front\": two pieces have this name; names must differ.");
        assertThatThrownBy(() -> pattern(List.of())).hasMessageContaining("at least one piece");
    }

    @Test
    void easeThatIsNoLengthIsRefused() {
        assertThatThrownBy(() -> new Pattern(
                        "p",
                        "",
                        "",
                        "",
                        List.of(rectangle("front", 100)),
                        List.of(),
                        Map.of(Measure.BUST_GIRTH, Double.POSITIVE_INFINITY)))
                .hasMessageContaining("bust girth");
    }

    @Test
    void otherPiecesOfTheSameNamesTakeTheirPlaces() {
        Piece front = rectangle("front", 200);
        Piece back = rectangle("back", 210);
        Piece longer = rectangle("back", 300);
        Pattern pattern = pattern(List.of(front, back));
        assertThat(pattern.withPieces(List.of(longer)).pieces()).containsExactly(front, longer);
        assertThat(pattern.piece("back")).isEqualTo(back);
        assertThat(pattern.firstOf(PieceKind.SLEEVE)).isEmpty();
        assertThatThrownBy(() -> pattern.piece("cuff")).hasMessageContaining("it has [front, back]");
    }
}
