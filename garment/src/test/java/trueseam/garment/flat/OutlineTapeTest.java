package trueseam.garment.flat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Grain;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceBuilder;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.Path;
import trueseam.geometry.Point;

class OutlineTapeTest {

    private static final double EXACT_MM = 1e-9;

    /** 300 wide and 400 high, with a dart of 20 in the top edge. */
    private static Piece board() {
        return new PieceBuilder("board", PieceKind.SKIRT_FRONT)
                .edge("hem", EdgeRole.HEM, Path.through(new Point(0, 0), new Point(300, 0)), 15)
                .edge("side", EdgeRole.SIDE, Path.through(new Point(300, 0), new Point(300, 400)), 15)
                .edge("waist", EdgeRole.WAIST, Path.through(new Point(300, 400), new Point(0, 400)), 15)
                .edge("centre", EdgeRole.CENTRE, Path.through(new Point(0, 400), new Point(0, 0)), 15)
                .dart(new Dart.EdgeDart("waist dart", "waist", 140, 160, new Point(150, 300)))
                .grain(new Grain(new Point(50, 50), new Point(50, 350)))
                .build();
    }

    private static OutlinePlace at(double x, double y) {
        return OutlinePlace.nearest(board(), new Point(x, y));
    }

    @Test
    void theTapeRoundACornerReadsBothLegsAndTheRulerTheDiagonal() {
        OutlineTape tape = OutlineTape.between(board(), at(260, 0), at(300, 30));
        assertThat(tape.onMm()).isCloseTo(70, within(EXACT_MM));
        assertThat(tape.straightMm()).isCloseTo(50, within(EXACT_MM)); // 3-4-5
        assertThat(tape.backMm()).isCloseTo(1400 - 70, within(EXACT_MM));
        assertThat(tape.backSewnMm()).isCloseTo(1380 - 70, within(EXACT_MM));
    }

    @Test
    void aDartIsClosedForTheSewnLengthAndHalfOfItWhereTheTapeEndsInItsMouth() {
        OutlineTape across = OutlineTape.between(board(), at(300, 400), at(0, 400));
        assertThat(across.onMm()).isCloseTo(300, within(EXACT_MM));
        assertThat(across.onSewnMm()).isCloseTo(280, within(EXACT_MM));
        OutlineTape half = OutlineTape.between(board(), at(300, 400), at(150, 400));
        assertThat(half.onMm()).isCloseTo(150, within(EXACT_MM));
        assertThat(half.onSewnMm()).isCloseTo(140, within(EXACT_MM));
    }

    @Test
    void aPlaceInsideIsTakenToTheNearestEdge() {
        OutlinePlace place = at(290, 120);
        assertThat(place.edge()).isEqualTo("side");
        assertThat(place.alongMm()).isCloseTo(120, within(EXACT_MM));
        assertThat(place.point()).isEqualTo(new Point(300, 120));
    }

    @Test
    void bothWaysAddUpToTheOutlineAndNoneIsShorterThanTheRuler() {
        Random random = new Random(20261126);
        for (Piece piece :
                List.of(board(), Boards.sleeve(), Boards.trouser("trouser front", PieceKind.TROUSER_FRONT))) {
            double whole = piece.edges().stream().mapToDouble(Edge::length).sum();
            for (int i = 0; i < 200; i++) {
                OutlinePlace one = somewhere(piece, random);
                OutlinePlace other = somewhere(piece, random);
                OutlineTape tape = OutlineTape.between(piece, one, other);
                OutlineTape turned = OutlineTape.between(piece, other, one);
                assertThat(tape.onMm() + tape.backMm()).isCloseTo(whole, within(1e-6));
                assertThat(tape.onMm()).isCloseTo(turned.backMm(), within(1e-6));
                assertThat(tape.onSewnMm()).isCloseTo(turned.backSewnMm(), within(1e-6));
                assertThat(Math.min(tape.onMm(), tape.backMm())).isGreaterThanOrEqualTo(tape.straightMm() - 1e-9);
                lies(tape.on(piece), one.point(), other.point(), tape.onMm());
                lies(tape.back(piece), other.point(), one.point(), tape.backMm());
            }
        }
    }

    private static OutlinePlace somewhere(Piece piece, Random random) {
        Edge edge = piece.edges().get(random.nextInt(piece.edges().size()));
        double along = random.nextDouble() * edge.length();
        return new OutlinePlace(edge.name(), along, edge.path().pointAt(along));
    }

    private static void lies(List<Path> way, Point from, Point to, double mm) {
        assertThat(way.stream().mapToDouble(Path::length).sum()).isCloseTo(mm, within(1e-6));
        assertThat(way.get(0).start().isNear(from, 1e-6)).isTrue();
        assertThat(way.get(way.size() - 1).end().isNear(to, 1e-6)).isTrue();
    }

    @Test
    void anEdgeThatIsNotThereIsRefused() {
        OutlinePlace nowhere = new OutlinePlace("collar", 0, new Point(0, 0));
        assertThatThrownBy(() -> OutlineTape.between(board(), nowhere, at(0, 0)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("collar");
    }
}
