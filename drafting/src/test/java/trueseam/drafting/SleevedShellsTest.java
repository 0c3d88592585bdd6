package trueseam.drafting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trueseam.garment.flat.FlatPattern;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Landmark;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Path;
import trueseam.geometry.Point;

class SleevedShellsTest {

    private static final DraftEase FITTED = DraftEase.fitted();
    private static final Allowances INCHES = Allowances.inches();

    @ParameterizedTest
    @MethodSource("trueseam.drafting.TableFigures#all")
    void everySizeOfTheKimonoMeasuresRightAndWalks(DraftFigure figure) {
        DraftProof.prove(SleevedShells.kimono(figure, FITTED, INCHES), figure);
    }

    @ParameterizedTest
    @MethodSource("trueseam.drafting.TableFigures#all")
    void everySizeOfTheRaglanMeasuresRightAndWalks(DraftFigure figure) {
        DraftProof.prove(SleevedShells.raglan(figure, FITTED, INCHES), figure);
    }

    // Common practice (truing): where two pieces meet at a seam, their edges run on into each other.
    @ParameterizedTest
    @MethodSource("trueseam.drafting.TableFigures#all")
    void cornersRunOnIntoEachOtherAcrossTheSeams(DraftFigure figure) {
        Pattern kimono = SleevedShells.kimono(figure, FITTED, INCHES);
        straight(kimono, "kimono front", "waist", "side", "kimono back", "waist", "side");
        straight(kimono, "kimono front", "underarm", "wrist", "kimono back", "underarm", "wrist");
        straight(kimono, "kimono front", "wrist", "overarm", "kimono back", "wrist", "overarm");
        straight(kimono, "kimono front", "shoulder", "neck", "kimono back", "shoulder", "neck");
        for (Piece piece : kimono.pieces()) {
            smooth(piece, "side", "underarm");
            smooth(piece, "overarm", "shoulder");
        }
        Pattern raglan = SleevedShells.raglan(figure, FITTED, INCHES);
        straight(raglan, "raglan front", "waist", "side", "raglan back", "waist", "side");
        straight(raglan, "raglan front", "side", "raglan", "raglan back", "side", "raglan");
        straight(raglan, "raglan front", "raglan", "neck", "raglan sleeve", "raglan front", "neck");
        straight(raglan, "raglan back", "raglan", "neck", "raglan sleeve", "neck", "raglan back");
        straight(
                raglan,
                "raglan sleeve",
                "underarm front",
                "raglan front",
                "raglan sleeve",
                "raglan back",
                "underarm back");
        straight(raglan, "raglan sleeve", "wrist", "underarm front", "raglan sleeve", "underarm back", "wrist");
    }

    private static void straight(
            Pattern p, String piece, String before, String after, String other, String otherBefore, String otherAfter) {
        assertThat(SewnCorners.sewn(p, piece, before, after, other, otherBefore, otherAfter))
                .as(p.name() + ": " + piece + " at " + before + " and " + after)
                .isCloseTo(180, within(DraftProof.SMOOTH_DEGREES));
    }

    private static void smooth(Piece piece, String before, String after) {
        double turn = piece.edge(before)
                .path()
                .endTangent()
                .angleTo(piece.edge(after).path().startTangent());
        assertThat(Math.toDegrees(turn)).as(piece.name() + " at " + after).isCloseTo(0, within(0.01));
    }

    // Common practice: a kimono is deeper under the arm than a set-in sleeve, and its seams under the arm still leave a
    // side.
    @ParameterizedTest
    @MethodSource("trueseam.drafting.TableFigures#all")
    void aKimonoIsDeepUnderTheArmAndKeepsASide(DraftFigure figure) {
        Pattern kimono = SleevedShells.kimono(figure, FITTED, INCHES);
        Pattern bodice = Shells.bodice(figure, FITTED, INCHES);
        double left = kimono.piece("kimono back").edge("side").length();
        assertThat(bodice.piece("bodice back").edge("side").length() - left).isGreaterThan(40);
        assertThat(left).isGreaterThan(80);
    }

    // [ND1921]: a kimono is measured from the centre back to within 3/8 in of the edge, which was its allowance: to the
    // stitching line.
    @ParameterizedTest
    @MethodSource("trueseam.drafting.TableFigures#all")
    void aKimonoIsMeasuredFromTheCentreBackToTheStitchingLineOfItsWrist(DraftFigure figure) {
        Pattern kimono = SleevedShells.kimono(figure, FITTED, INCHES);
        Piece back = kimono.piece("kimono back");
        Point nape = back.edge("neck").path().end();
        Point shoulder = back.edge("shoulder").path().start();
        Point wrist = back.edge("overarm").path().start();
        assertThat(FlatPattern.measure(kimono, Measure.NAPE_TO_WRIST_LENGTH)
                        .orElseThrow()
                        .mm())
                .isCloseTo(nape.distanceTo(shoulder) + shoulder.distanceTo(wrist), within(1e-6));
    }

    // Common practice: nothing is eased into a raglan seam; its dart ends where the shoulder does and opens at the
    // neck.
    @ParameterizedTest
    @MethodSource("trueseam.drafting.TableFigures#all")
    void theDartOfARaglanIsTheShoulder(DraftFigure figure) {
        Piece sleeve = SleevedShells.raglan(figure, FITTED, INCHES).piece("raglan sleeve");
        Dart.EdgeDart dart = sleeve.dartsOn("neck").get(0);
        Path neck = sleeve.edge("neck").path();
        assertThat(sleeve.landmark(Landmark.SHOULDER_POINT)).contains(dart.apex());
        assertThat(neck.pointAt(dart.fromMm()).distanceTo(neck.pointAt(dart.toMm())))
                .isBetween(5.0, 80.0);
        assertThat(dart.apex().distanceTo(neck.pointAt(dart.fromMm())))
                .isCloseTo(figure.mm(Measure.SHOULDER_LENGTH), within(1e-6));
    }
}
