package trueseam.garment.flat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Grain;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceBuilder;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.Path;
import trueseam.geometry.Point;

/** Girths by height of garments whose girth is known in closed form. */
class FlatGirthsTest {

    private static final double READING_MM = 1e-9;

    @Test
    void atEveryHeightAConeIsAsFarRoundAsItsFormulaSays() {
        // A skirt of four flat gores: the circumference of a cone grows evenly with the way down, c(s) = c0 + s (c1 -
        // c0) / l
        // (from memory; any book of plane and solid geometry, lateral surface of a frustum).
        double waist = 700;
        double hem = 1500;
        double length = 600;
        Pattern cone = Boards.pattern(
                gore("front", PieceKind.SKIRT_FRONT, waist / 4, hem / 4, length),
                gore("back", PieceKind.SKIRT_BACK, waist / 4, hem / 4, length));
        FlatGirths girths = FlatGirths.of(cone, BodyPart.TRUNK).orElseThrow();
        for (GirthAt at : girths.every(5)) {
            assertThat(at.girthMm())
                    .as("at %s", at.heightMm())
                    .isCloseTo(waist + -at.heightMm() * (hem - waist) / length, within(READING_MM));
        }
        assertThat(girths.topMm()).isZero();
        assertThat(girths.bottomMm()).isEqualTo(-length);
    }

    @Test
    void aRectangleIsAsFarRoundAtEveryHeight() {
        Pattern tube = Boards.pattern(
                gore("front", PieceKind.SKIRT_FRONT, 240, 240, 700), gore("back", PieceKind.SKIRT_BACK, 250, 250, 700));
        FlatGirths girths = FlatGirths.of(tube, BodyPart.TRUNK).orElseThrow();
        assertThat(girths.every(5)).allSatisfy(at -> assertThat(at.girthMm()).isCloseTo(980, within(READING_MM)));
    }

    @Test
    void cuttingFinerDoesNotChangeTheEnds() {
        Pattern bodice = Boards.pattern(
                Boards.bodice("front", PieceKind.BODICE_FRONT, 240), Boards.bodice("back", PieceKind.BODICE_BACK, 220));
        FlatGirths girths = FlatGirths.of(bodice, BodyPart.TRUNK).orElseThrow();
        List<GirthAt> coarse = girths.every(50);
        List<GirthAt> fine = girths.every(0.5);
        assertThat(fine).hasSizeGreaterThan(10 * coarse.size() / 2);
        assertThat(fine.get(0)).isEqualTo(coarse.get(0)).isEqualTo(new GirthAt(200, 920));
        assertThat(fine.get(fine.size() - 1))
                .isEqualTo(coarse.get(coarse.size() - 1))
                .isEqualTo(new GirthAt(0, 920));
    }

    @Test
    void aBodiceStopsAtTheUnderarm() {
        Pattern bodice = Boards.pattern(
                Boards.bodice("front", PieceKind.BODICE_FRONT, 240), Boards.bodice("back", PieceKind.BODICE_BACK, 220));
        FlatGirths girths = FlatGirths.of(bodice, BodyPart.TRUNK).orElseThrow();
        assertThat(girths.at(200)).hasValue(920);
        assertThat(girths.at(200.001)).isEmpty();
        assertThat(girths.at(-0.001)).isEmpty();
        assertThat(girths.level(Measure.BUST_GIRTH)).contains(new GirthAt(150, 920));
    }

    @Test
    void whatIsLongerOnPaperInFrontMeetsTheBackAtTheMarkedLines() {
        // A front marked 30 mm higher at the bust than the back, as a side dart makes it: at the front's bust height
        // the back is
        // read at its own mark.
        Piece front = Boards.bodice("front", PieceKind.BODICE_FRONT, 240);
        Piece back = new PieceBuilder("back", PieceKind.BODICE_BACK)
                .edge("waist", EdgeRole.WAIST, Path.through(Point.ORIGIN, new Point(200, 0)), 15)
                .edge("side", EdgeRole.SIDE, Path.through(new Point(200, 0), new Point(260, 180)), 15)
                .edge("armhole", EdgeRole.ARMHOLE, Path.through(new Point(260, 180), new Point(190, 370)), 15)
                .edge("shoulder", EdgeRole.SHOULDER, Path.through(new Point(190, 370), new Point(0, 390)), 15)
                .edge("centre", EdgeRole.CENTRE, Path.through(new Point(0, 390), Point.ORIGIN), 0)
                .onFold("centre")
                .level(LevelName.BUST, 120)
                .level(LevelName.WAIST, 0)
                .grain(new Grain(new Point(30, 50), new Point(30, 250)))
                .build();
        FlatGirths girths =
                FlatGirths.of(Boards.pattern(front, back), BodyPart.TRUNK).orElseThrow();
        // Back at y = 120: 200 + 60 * 120 / 180 = 240. At half the height, y = 60: 220.
        assertThat(girths.at(150).orElseThrow()).isCloseTo(2 * (240 + 240), within(READING_MM));
        assertThat(girths.at(75).orElseThrow()).isCloseTo(2 * (240 + 220), within(READING_MM));
    }

    @Test
    void downTheSideIsMeasuredAlongTheSeam() {
        // 3-4-5: 300 out for 400 down is 500 along.
        Pattern skirt = Boards.pattern(gore("front", PieceKind.SKIRT_FRONT, 200, 500, 400));
        FlatGirths girths = FlatGirths.of(skirt, BodyPart.TRUNK).orElseThrow();
        assertThat(girths.downTheSideMm(250).orElseThrow()).isCloseTo(-200, within(READING_MM));
        assertThat(girths.downTheSideMm(501)).isEmpty();
    }

    @Test
    void aStepThatDoesNotGoDownIsRefused() {
        FlatGirths girths = FlatGirths.of(
                        Boards.pattern(gore("front", PieceKind.SKIRT_FRONT, 200, 200, 400)), BodyPart.TRUNK)
                .orElseThrow();
        assertThatThrownBy(() -> girths.every(0)).isInstanceOf(IllegalArgumentException.class);
        assertThat(FlatGirths.of(Boards.pattern(gore("front", PieceKind.SKIRT_FRONT, 200, 200, 400)), BodyPart.ARM))
                .isEmpty();
    }

    /** A half piece on the fold, straight from waist to hem. */
    private static Piece gore(String name, PieceKind kind, double waist, double hem, double length) {
        Point centre = new Point(0, length);
        Point side = new Point(waist, length);
        Point sideHem = new Point(hem, 0);
        return new PieceBuilder(name, kind)
                .edge("hem", EdgeRole.HEM, Path.through(Point.ORIGIN, sideHem), 30)
                .edge("side", EdgeRole.SIDE, Path.through(sideHem, side), 15)
                .edge("waist", EdgeRole.WAIST, Path.through(side, centre), 15)
                .edge("centre", EdgeRole.CENTRE, Path.through(centre, Point.ORIGIN), 0)
                .onFold("centre")
                .level(LevelName.HIP, length - 200)
                .grain(new Grain(new Point(30, 50), new Point(30, 250)))
                .build();
    }
}
