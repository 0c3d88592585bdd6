package trueseam.garment.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import trueseam.garment.body.Side;
import trueseam.geometry.Path;
import trueseam.geometry.Point;

/** A body whose sides differ: the half pieces part into right and left (trade.md 4.1, one-sided body; common practice). */
class SidesTest {

    private static final Path SIDE = Path.through(new Point(230, 0), new Point(250, 400));

    private static Piece half(String name, PieceKind kind) {
        return new PieceBuilder(name, kind)
                .edge("waist", EdgeRole.WAIST, Path.through(new Point(0, 0), new Point(230, 0)), 15)
                .edge("side", EdgeRole.SIDE, SIDE, 15)
                .edge("top", EdgeRole.ARMHOLE, Path.through(new Point(250, 400), new Point(0, 380)), 15)
                .edge("centre", EdgeRole.CENTRE, Path.through(new Point(0, 380), new Point(0, 0)), 0)
                .onFold("centre")
                .dart(new Dart.EdgeDart("waist dart", "waist", 80, 100, new Point(90, 120)))
                .notch("side", 100, Notch.Kind.SINGLE)
                .landmark("bust point", new Point(90, 200))
                .level(LevelName.WAIST, 0)
                .grain(new Grain(new Point(120, 50), new Point(120, 250)))
                .build();
    }

    private static Pattern bodice() {
        return new Pattern(
                "bodice",
                "14",
                "misses",
                "",
                List.of(half("front", PieceKind.BODICE_FRONT), half("back", PieceKind.BODICE_BACK)),
                List.of(Seam.of("side", new EdgeRef("front", "side"), new EdgeRef("back", "side"), 0)),
                Map.of());
    }

    @Test
    void halfPieceBecomesTwoPiecesThatAreEachOthersMirrorImage() {
        Pattern split = Sides.split(bodice());

        assertThat(split.pieces().stream().map(Piece::name))
                .containsExactly("front, right", "front, left", "back, right", "back, left");
        Piece right = split.piece("front, right");
        Piece left = split.piece("front, left");
        assertThat(right.cutCount()).isEqualTo(1);
        assertThat(right.fold()).isEmpty();
        assertThat(right.outline().signedArea())
                .isCloseTo(left.outline().signedArea(), within(1e-9))
                .isPositive();
        assertThat(right.landmark("bust point")).isEqualTo(Optional.of(new Point(-90, 200)));
        assertThat(left.landmark("bust point")).isEqualTo(Optional.of(new Point(90, 200)));
        Dart.EdgeDart dart = right.dartsOn("waist").get(0);
        assertThat(right.edge("waist").path().pointAt(dart.fromMm()).x()).isCloseTo(-100, within(1e-9));
        assertThat(dart.mouthMm()).isCloseTo(20, within(1e-9));
    }

    @Test
    void frontWithItsSideToTheRightIsTheWearersLeftAndABackHerRight() {
        Pattern split = Sides.split(bodice());

        assertThat(split.piece("front, left").edge("side").path()).isEqualTo(SIDE);
        assertThat(split.piece("back, right").edge("side").path()).isEqualTo(SIDE);
        assertThat(Sides.of("front, left")).contains(Side.LEFT);
        assertThat(Sides.of("front")).isEmpty();
    }

    @Test
    void everySeamIsSewnOnEitherSideAndTheFoldBecomesASeam() {
        Pattern split = Sides.split(bodice());

        assertThat(split.seams().stream().map(Seam::name))
                .containsExactly("centre", "centre", "side, right", "side, left");
        for (Seam seam : split.seams()) {
            assertThat(split.mismatchMm(seam))
                    .isCloseTo(bodice().mismatchMm(bodice().seams().get(0)), within(1e-9));
        }
    }

    @Test
    void patternOfWholePiecesStaysAsItIs() {
        Pattern split = Sides.split(bodice());

        assertThat(Sides.split(split)).isEqualTo(split);
    }
}
