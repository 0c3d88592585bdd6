package trueseam.garment.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.Point;

/** A rectangle 100 mm wide and 200 mm high, whose lengths are read off; our own. */
class PieceTest {

    private static final Point A = new Point(0, 0);
    private static final Point B = new Point(100, 0);
    private static final Point C = new Point(100, 200);
    private static final Point D = new Point(0, 200);

    private static PieceBuilder rectangle() {
        return new PieceBuilder("front", PieceKind.SKIRT_FRONT)
                .edge("hem", EdgeRole.HEM, Path.through(A, B), 40)
                .edge("side", EdgeRole.SIDE, Path.through(B, C), 15)
                .edge("waist", EdgeRole.WAIST, Path.through(C, D), 15)
                .edge("centre", EdgeRole.CENTRE, Path.through(D, A), 0)
                .onFold("centre")
                .grain(new Grain(new Point(50, 20), new Point(50, 180)));
    }

    private static Dart.EdgeDart dart(String name, String edge, double from, double to) {
        return new Dart.EdgeDart(name, edge, from, to, new Point(50, 120));
    }

    @Test
    void aGapInTheOutlineNamesPieceEdgesAndWidth() {
        PieceBuilder open = rectangle();
        List<Edge> edges = List.of(
                new Edge("hem", EdgeRole.HEM, Path.through(A, B), 0),
                new Edge("side", EdgeRole.SIDE, Path.through(new Point(103, 4), C), 0),
                new Edge("rest", EdgeRole.OTHER, Path.through(C, D, A), 0));
        // 3, 4, 5 triangle
        assertThatThrownBy(() -> open.onFold("rest").edges(edges).build())
                .isInstanceOf(PatternException.class)
                .hasMessage("Piece \"front\": edge \"hem\" ends 5.0 mm from where edge \"side\" begins;"
                        + " the outline must be closed.")
                .extracting(e -> ((PatternException) e).piece())
                .isEqualTo("front");
    }

    @Test
    void aGapBetweenTheLastEdgeAndTheFirstIsFoundToo() {
        assertThatThrownBy(() -> rectangle()
                        .onFold("side")
                        .edges(List.of(
                                new Edge("side", EdgeRole.SIDE, Path.through(B, C), 0),
                                new Edge("rest", EdgeRole.OTHER, Path.through(C, D, A), 0)))
                        .build())
                .hasMessageContaining("edge \"rest\" ends 100.0 mm from where edge \"side\" begins");
    }

    @Test
    void aGapOfRoundingIsNoGap() {
        Point nearB = new Point(100 + 0.9 * Path.CHAIN_MM, 0);
        Piece piece = rectangle()
                .edges(List.of(
                        new Edge("hem", EdgeRole.HEM, Path.through(A, nearB), 0),
                        new Edge("centre", EdgeRole.OTHER, Path.through(B, C, D, A), 0)))
                .build();
        assertThat(piece.outline().isClosed()).isTrue();
    }

    @Test
    void twoEdgesOfOneNameAreRefused() {
        assertThatThrownBy(() -> rectangle()
                        .edges(List.of(
                                new Edge("side", EdgeRole.SIDE, Path.through(A, B, C), 0),
                                new Edge("side", EdgeRole.SIDE, Path.through(C, D, A), 0)))
                        .build())
                .hasMessage("Piece \"front\": two edges are named \"side\"; names must differ.");
    }

    @Test
    void twoDartsOfOneNameAreRefused() {
        assertThatThrownBy(() -> rectangle()
                        .dart(dart("waist dart", "waist", 10, 20))
                        .dart(dart("waist dart", "waist", 60, 70))
                        .build())
                .hasMessage("Piece \"front\": two darts are named \"waist dart\"; names must differ.");
    }

    @Test
    void twoLevelsOfOneNameAreRefused() {
        assertThatThrownBy(() -> rectangle()
                        .level(LevelName.HIP, 100)
                        .level(LevelName.HIP, 90)
                        .build())
                .hasMessage("Piece \"front\": two levels are named \"hip\"; names must differ.");
    }

    @Test
    void aDartBeyondTheEndOfItsEdgeIsRefused() {
        assertThatThrownBy(() ->
                        rectangle().dart(dart("bust dart", "side", 190, 200.5)).build())
                .hasMessage("Piece \"front\": dart \"bust dart\" at 200.5 mm is beyond the end of edge \"side\","
                        + " which is 200.0 mm long.");
    }

    @Test
    void aDartOnAnEdgeThatIsNotThereIsRefused() {
        assertThatThrownBy(() ->
                        rectangle().dart(dart("bust dart", "armhole", 1, 2)).build())
                .hasMessage(
                        "Piece \"front\": dart \"bust dart\" is on edge \"armhole\", which the piece does not have.");
    }

    @Test
    void aNotchBeyondItsEdgeAndAFoldThatIsNoEdgeAreRefused() {
        assertThatThrownBy(
                        () -> rectangle().notch("hem", 100.1, Notch.Kind.SINGLE).build())
                .hasMessageContaining("a notch at 100.1 mm is beyond the end of edge \"hem\"");
        assertThatThrownBy(() -> rectangle().onFold("front edge").build())
                .hasMessage("Piece \"front\": the fold \"front edge\" is not one of its edges"
                        + " [hem, side, waist, centre].");
    }

    @Test
    void aPieceWithoutGrainNameCountOrOutlineIsRefused() {
        assertThatThrownBy(() -> new PieceBuilder("cuff", PieceKind.OTHER).build())
                .hasMessageContaining("the grainline is missing");
        assertThatThrownBy(() -> rectangle().cut(0).build()).hasMessageContaining("a cut count of 0");
        assertThatThrownBy(() -> rectangle()
                        .edges(List.of(new Edge("all", EdgeRole.OTHER, Path.through(A, B, C, A), 0)))
                        .build())
                .hasMessageContaining("at least two edges, and there are 1");
        assertThatThrownBy(() -> new PieceBuilder(" ", PieceKind.OTHER)
                        .edges(rectangle().build().edges())
                        .grain(new Grain(A, D))
                        .build())
                .hasMessageContaining("needs a name");
    }

    @Test
    void numbersThatAreNoLengthsAreRefused() {
        assertThatThrownBy(() -> new Level(LevelName.HIP, Double.NaN)).hasMessageContaining("hip");
        assertThatThrownBy(() -> new Notch("hem", -1, Notch.Kind.SINGLE)).hasMessageContaining("-1.0 mm is not on it");
        assertThatThrownBy(() -> new Notch("hem", Double.NaN, Notch.Kind.SINGLE))
                .hasMessageContaining("NaN");
        assertThatThrownBy(() -> new Edge("hem", EdgeRole.HEM, Path.through(A, B), -0.1))
                .hasMessageContaining("an allowance of -0.1 mm");
        assertThatThrownBy(() -> new Edge("hem", EdgeRole.HEM, Path.through(A, B), Double.NaN))
                .hasMessageContaining("NaN");
        assertThatThrownBy(() -> dart("d", "hem", 20, 10)).hasMessageContaining("in the order of the edge");
        assertThatThrownBy(() -> new Grain(A, new Point(0.5, 0))).hasMessageContaining("too short");
    }

    @Test
    void zeroAndMinusZeroAreOnePlace() {
        assertThat(new Level(LevelName.HIP, -0.0)).isEqualTo(new Level(LevelName.HIP, 0.0));
        assertThat(new Notch("hem", -0.0, Notch.Kind.SINGLE)).isEqualTo(new Notch("hem", 0.0, Notch.Kind.SINGLE));
        assertThat(dart("d", "hem", -0.0, 1)).isEqualTo(dart("d", "hem", 0.0, 1));
        assertThat(new Edge("hem", EdgeRole.HEM, Path.through(A, B), -0.0))
                .isEqualTo(new Edge("hem", EdgeRole.HEM, Path.through(A, B), 0.0));
    }

    @Test
    void sewnLengthLeavesDartMouthsOut() {
        Piece piece = rectangle()
                .dart(dart("second", "waist", 60, 75.5))
                .dart(dart("first", "waist", 10, 20))
                .dart(new Dart.DiamondDart(
                        "inside", new Point(50, 90), new Point(50, 10), new Point(45, 50), new Point(55, 50)))
                .build();
        assertThat(piece.sewnLength("waist")).isCloseTo(100 - 15.5 - 10, within(1e-12));
        assertThat(piece.sewnLength("side")).isEqualTo(200);
        assertThat(piece.dartsOn("waist")).extracting(Dart::name).containsExactly("first", "second");
    }

    @Test
    void edgesAreFoundByNameAndByRole() {
        Piece piece = rectangle().landmark("pocket", new Point(50, 150)).build();
        assertThat(piece.edge("side").length()).isEqualTo(200);
        assertThat(piece.indexOf("waist")).isEqualTo(2);
        assertThat(piece.firstOf(EdgeRole.ARMHOLE)).isEmpty();
        assertThat(piece.only(EdgeRole.HEM).name()).isEqualTo("hem");
        assertThat(piece.landmark("pocket")).contains(new Point(50, 150));
        assertThat(piece.landmark(Landmark.BUST_POINT)).isEmpty();
        assertThat(piece.level(LevelName.HIP)).isEmpty();
        assertThatThrownBy(() -> piece.edge("cap"))
                .hasMessage("Piece \"front\": there is no edge \"cap\"; it has [hem, side, waist, centre].");
        assertThatThrownBy(() -> piece.only(EdgeRole.CAP)).hasMessageContaining("and 0 were found");
    }

    @Test
    void theOutlineRunsAnticlockwiseRoundTheWholePiece() {
        Path outline = rectangle().build().outline();
        assertThat(outline.signedArea()).isEqualTo(20_000);
        assertThat(outline.length()).isEqualTo(600);
        assertThat(outline.isClosed()).isTrue();
    }

    @Test
    void aCopyToChangeHoldsEverything() {
        Piece piece = rectangle()
                .cut(2)
                .dart(dart("waist dart", "waist", 10, 20))
                .notch("side", 5, Notch.Kind.DOUBLE)
                .landmark("pocket", new Point(50, 150))
                .level(LevelName.HIP, 90)
                .marking(new Marking("tuck", Path.through(A, C)))
                .build();
        assertThat(piece.toBuilder().build()).isEqualTo(piece);
    }

    @Test
    void aMovedDartOrGrainIsCongruent() {
        Motion turn = Motion.pivot(new Point(7, 9), 0.3);
        Dart.DiamondDart dart = new Dart.DiamondDart(
                "inside", new Point(50, 90), new Point(50, 10), new Point(45, 50), new Point(55, 50));
        assertThat(dart.intakeMm()).isEqualTo(10);
        assertThat(dart.moved(turn).intakeMm()).isCloseTo(10, within(1e-12));
        Grain grain = new Grain(A, D).moved(turn);
        assertThat(grain.from().distanceTo(grain.to())).isCloseTo(200, within(1e-12));
    }

    @Test
    void wordsReadBack() {
        for (EdgeRole role : EdgeRole.values()) {
            assertThat(EdgeRole.ofWord(" " + role.word().toUpperCase(java.util.Locale.ROOT)))
                    .contains(role);
        }
        for (PieceKind kind : PieceKind.values()) {
            assertThat(PieceKind.ofWord(kind.word())).contains(kind);
        }
        for (LevelName level : LevelName.values()) {
            assertThat(LevelName.ofWord(level.word())).contains(level);
        }
        for (Notch.Kind kind : Notch.Kind.values()) {
            assertThat(Notch.Kind.ofWord(kind.word())).contains(kind);
        }
        assertThat(EdgeRole.ofWord("selvage")).isEmpty();
        // UARK (trade notes, section 8): single notch front, double back; triple: common practice.
        assertThat(Notch.Kind.DOUBLE.cuts()).isEqualTo(2);
    }
}
