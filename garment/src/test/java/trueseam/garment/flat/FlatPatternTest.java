package trueseam.garment.flat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Level;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.Bounds;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.offset.Margin;
import trueseam.geometry.offset.Offset;

class FlatPatternTest {

    private static final double INCH = 25.4;

    private static double mm(Pattern pattern, Measure measure) {
        return FlatPattern.measure(pattern, measure).orElseThrow().mm();
    }

    private static Pattern bodice() {
        return Boards.pattern(Boards.front(240), Boards.back(230), Boards.sleeve());
    }

    // Worked example 39 of the trade notes, derived: half bust front 9 1/4 in + back 9 3/4 in: 2 x 19 = 38 in in all.
    @Test
    void halfBustsOfNineAndAQuarterAndNineAndThreeQuartersMakeThirtyEight() {
        Pattern p = Boards.pattern(Boards.front(9.25 * INCH), Boards.back(9.75 * INCH));
        assertThat(mm(p, Measure.BUST_GIRTH)).isCloseTo(38 * INCH, within(1e-9));
    }

    // The doubling trap, trade notes section 3 (common practice): a half pattern on the fold 1/2 in too narrow makes
    // the
    // garment 1 in too small for that one piece, and 2 in if front and back both lack it.
    @Test
    void halfAnInchOffAHalfPieceIsAnInchOffTheGarment() {
        double right = mm(Boards.pattern(Boards.front(240), Boards.back(230)), Measure.BUST_GIRTH);
        double half = INCH / 2;
        double one = mm(Boards.pattern(Boards.front(240 - half), Boards.back(230)), Measure.BUST_GIRTH);
        double both = mm(Boards.pattern(Boards.front(240 - half), Boards.back(230 - half)), Measure.BUST_GIRTH);
        assertThat(right - one).isCloseTo(INCH, within(1e-9));
        assertThat(right - both).isCloseTo(2 * INCH, within(1e-9));
    }

    // Worked example 40 of the trade notes, derived: an allowance of 1.5 cm read as 5/8 in on the four side edges is
    // 4 x 0.875 = 3.5 mm. Here the stitching lines are found by insetting one cutting line by either.
    @Test
    void fifteenMillimetresReadAsFiveEighthsIsThreeAndAHalfInTheGirth() {
        double metric = girthWithin(15);
        double inches = girthWithin(5 * INCH / 8);
        assertThat(metric).isCloseTo(2 * (225 + 215), within(1e-6));
        assertThat(metric - inches).isCloseTo(3.5, within(1e-6));
    }

    private static double girthWithin(double allowanceMm) {
        return mm(
                Boards.pattern(Boards.front(inset(240, allowanceMm)), Boards.back(inset(230, allowanceMm))),
                Measure.BUST_GIRTH);
    }

    /** The width left of a half piece on the fold when its cutting line is inset at the side. */
    private static double inset(double cutWidthMm, double allowanceMm) {
        Point b = new Point(cutWidthMm, 0);
        Point c = new Point(cutWidthMm, 400);
        Point d = new Point(0, 400);
        Bounds within = Offset.outline(
                        List.of(
                                new Margin(Path.through(Point.ORIGIN, b), -allowanceMm),
                                new Margin(Path.through(b, c), -allowanceMm),
                                new Margin(Path.through(c, d), -allowanceMm),
                                new Margin(Path.through(d, Point.ORIGIN), 0)),
                        1e-6)
                .bounds();
        return within.width();
    }

    /** Where each measure lies: common practice, as the class doc of FlatPattern says; the figures from the corners of Boards. */
    @Test
    void theMeasuresOfABodiceAreReadOffItsCorners() {
        Pattern p = bodice();
        assertThat(mm(p, Measure.BUST_GIRTH)).isEqualTo(2 * (240 + 230));
        assertThat(mm(p, Measure.WAIST_GIRTH)).isEqualTo(2 * (240 + 230));
        assertThat(mm(p, Measure.ACROSS_FRONT_WIDTH)).isEqualTo(2 * 195);
        assertThat(mm(p, Measure.ACROSS_BACK_WIDTH)).isEqualTo(2 * 185);
        assertThat(mm(p, Measure.FRONT_WAIST_LENGTH)).isEqualTo(320);
        assertThat(mm(p, Measure.BACK_WAIST_LENGTH)).isEqualTo(320);
        // Armhole of each: 75 (45, 60) and 110 mm. Neck of each: 100 (60, 80) mm, doubled.
        assertThat(mm(p, Measure.ARMSCYE_GIRTH)).isCloseTo(2 * (75 + 110), within(1e-9));
        assertThat(mm(p, Measure.NECK_BASE_GIRTH)).isCloseTo(4 * 100, within(1e-9));
        assertThat(mm(p, Measure.SHOULDER_LENGTH)).isCloseTo(Math.hypot(135, 30), within(1e-9));
        // Neck point (60, 400), bust point (90, 160).
        assertThat(mm(p, Measure.BUST_POINT_HEIGHT)).isCloseTo(Math.hypot(30, 240), within(1e-9));
        assertThat(mm(p, Measure.BUST_POINT_WIDTH)).isEqualTo(180);
        assertThat(mm(p, Measure.FRONT_WAIST_LENGTH_OVER_BUST)).isCloseTo(Math.hypot(30, 240) + 160, within(1e-9));
    }

    /** A whole front, cut once and not on the fold, against the half front: the same garment. Derived. */
    @Test
    void aWholePieceCutOnceMeasuresLikeTheHalfPieceOnTheFold() {
        Pattern half = Boards.pattern(Boards.front(240), Boards.back(230));
        Pattern whole = Boards.pattern(Boards.wholeFront(240), Boards.back(230));
        for (Measure measure : List.of(
                Measure.BUST_GIRTH,
                Measure.WAIST_GIRTH,
                Measure.ACROSS_FRONT_WIDTH,
                Measure.NECK_BASE_GIRTH,
                Measure.SHOULDER_LENGTH,
                Measure.ARMSCYE_GIRTH)) {
            assertThat(mm(whole, measure)).as(measure.term()).isCloseTo(mm(half, measure), within(1e-9));
        }
    }

    @Test
    void theMeasuresOfASleeveAreNotDoubled() {
        Pattern p = bodice();
        assertThat(mm(p, Measure.UPPER_ARM_GIRTH)).isEqualTo(360);
        assertThat(mm(p, Measure.ELBOW_GIRTH)).isCloseTo(300, within(1e-9)); // half way from 360 to 240
        assertThat(mm(p, Measure.WRIST_GIRTH)).isEqualTo(240);
        assertThat(mm(p, Measure.ARM_LENGTH)).isEqualTo(135 + 450);
        assertThat(mm(p, Measure.UPPER_ARM_LENGTH)).isEqualTo(135 + 225);
    }

    @Test
    void girthsOfALegAreSingleAndOfTheTrunkDouble() {
        Pattern p = Boards.pattern(
                Boards.trouser("front", PieceKind.TROUSER_FRONT), Boards.trouser("back", PieceKind.TROUSER_BACK));
        assertThat(mm(p, Measure.HIP_GIRTH)).isCloseTo(2 * 2 * 220, within(1e-9));
        assertThat(mm(p, Measure.WAIST_GIRTH)).isCloseTo(2 * 2 * 220, within(1e-9));
        assertThat(mm(p, Measure.THIGH_GIRTH)).isCloseTo(2 * 300, within(1e-9));
        assertThat(mm(p, Measure.KNEE_GIRTH)).isCloseTo(2 * 270, within(1e-9)); // inseam half way from -60 to 0
        assertThat(mm(p, Measure.BODY_RISE)).isEqualTo(300);
        // Crotch seam: 240 down and 100 (80, 60); front and back are added and not doubled.
        assertThat(mm(p, Measure.FRONT_CROTCH_LENGTH)).isCloseTo(340, within(1e-9));
        assertThat(mm(p, Measure.TOTAL_CROTCH_LENGTH)).isCloseTo(680, within(1e-9));
        assertThat(mm(p, Measure.INSIDE_LEG_LENGTH)).isCloseTo(Math.hypot(60, 700), within(1e-9));
        assertThat(mm(p, Measure.TROUSER_LENGTH)).isEqualTo(1000);
        assertThat(mm(p, Measure.WAIST_TO_HIP)).isEqualTo(200);
    }

    // Half way between waist and hip: the standard's high hip, level round the top of the hip bones (common practice).
    // The
    // fullest calf is a third of the way from knee to hem (common practice): the inseam is at -20 there.
    @Test
    void theTopHipIsHalfWayToTheHipAndTheCalfAThirdOfTheWayToTheHem() {
        Pattern p = Boards.pattern(
                Boards.trouser("front", PieceKind.TROUSER_FRONT), Boards.trouser("back", PieceKind.TROUSER_BACK));
        assertThat(mm(p, Measure.TOP_HIP_GIRTH)).isCloseTo(2 * 2 * 220, within(1e-9));
        assertThat(mm(p, Measure.CALF_GIRTH)).isCloseTo(2 * 260, within(1e-9));
        assertThat(FlatPattern.hemSweepMm(p)).hasValueCloseTo(2 * 240.0, within(1e-9));
        assertThat(FlatPattern.hemSweepMm(Boards.pattern(Boards.front(240)))).isEmpty();
    }

    // Thigh: front and back from inseam to outseam at the crotch line (trade notes, section 3, common practice): 300 at
    // the
    // crotch point, though the level passes above it into the curve; 70 lower the inseam has come in by 6.
    @Test
    void theThighIsMeasuredFromTheInseamAlsoWhereTheCrotchPointIsDropped() {
        Piece front = Boards.trouser("front", PieceKind.TROUSER_FRONT);
        Piece raised = front.toBuilder()
                .levels(List.of(new Level(LevelName.CROTCH, 710)))
                .build();
        Piece lowered = front.toBuilder()
                .levels(List.of(new Level(LevelName.CROTCH, 630)))
                .build();
        assertThat(mm(Boards.pattern(raised), Measure.THIGH_GIRTH)).isCloseTo(300, within(1e-9));
        assertThat(mm(Boards.pattern(lowered), Measure.THIGH_GIRTH)).isCloseTo(294, within(1e-9));
    }

    // Worked example 26 of the trade notes speaks of the waist after darts; that darts are left out: TRUE1, common
    // practice.
    @Test
    void dartsAreLeftOutOfTheWaistAndOfTheBustTheyReach() {
        Piece front = Boards.front(240).toBuilder()
                .dart(new Dart.EdgeDart("waist dart", "waist", 80, 110, new Point(95, 140)))
                .build();
        Pattern p = Boards.pattern(front, Boards.back(230));
        assertThat(mm(p, Measure.WAIST_GIRTH)).isCloseTo(2 * (240 - 30 + 230), within(1e-9));
        assertThat(mm(p, Measure.BUST_GIRTH)).isCloseTo(2 * (240 + 230), within(1e-9));
    }

    @Test
    void aPatternWithoutThePieceHasNoSuchMeasure() {
        Pattern p = Boards.pattern(Boards.front(240));
        assertThat(FlatPattern.measure(p, Measure.UPPER_ARM_GIRTH)).isEmpty();
        assertThat(FlatPattern.measure(p, Measure.HIP_GIRTH)).isEmpty();
        assertThat(FlatPattern.measure(p, Measure.STATURE)).isEmpty();
        assertThat(FlatPattern.all(p))
                .extracting(FlatMeasure::measure)
                .doesNotHaveDuplicates()
                .isSorted();
    }

    @Test
    void theWorkingAddsUpAndNamesItsPieces() {
        FlatMeasure bust = FlatPattern.measure(bodice(), Measure.BUST_GIRTH).orElseThrow();
        assertThat(bust.parts())
                .containsExactly(
                        new FlatPart("front", "across at the bust level", 240, 2),
                        new FlatPart("back", "across at the bust level", 230, 2));
    }

    /** Law: which way a piece lies on the table changes no measure. */
    @Test
    void aPieceSeenFromItsWrongSideMeasuresTheSame() {
        Pattern p = bodice();
        Piece[] mirrored = p.pieces().stream().map(Boards::mirrored).toArray(Piece[]::new);
        assertSame(FlatPattern.all(p), FlatPattern.all(Boards.pattern(mirrored)));
        Pattern legs = Boards.pattern(
                Boards.trouser("front", PieceKind.TROUSER_FRONT), Boards.trouser("back", PieceKind.TROUSER_BACK));
        Piece[] turned = legs.pieces().stream().map(Boards::mirrored).toArray(Piece[]::new);
        assertSame(FlatPattern.all(legs), FlatPattern.all(Boards.pattern(turned)));
    }

    static IntStream places() {
        return IntStream.range(0, 6);
    }

    /** Law: with which edge the list of a piece's edges begins changes no measure. */
    @ParameterizedTest
    @MethodSource("places")
    void aPieceBegunAtAnotherEdgeMeasuresTheSame(int place) {
        Pattern p = bodice();
        Piece[] begun =
                p.pieces().stream().map(piece -> Boards.begunAt(piece, place)).toArray(Piece[]::new);
        assertSame(FlatPattern.all(p), FlatPattern.all(Boards.pattern(begun)));
    }

    private static void assertSame(List<FlatMeasure> one, List<FlatMeasure> other) {
        assertThat(one).hasSizeGreaterThan(8);
        assertThat(other).hasSameSizeAs(one);
        for (int i = 0; i < one.size(); i++) {
            assertThat(other.get(i).measure()).isEqualTo(one.get(i).measure());
            assertThat(other.get(i).mm())
                    .as(one.get(i).measure().term())
                    .isCloseTo(one.get(i).mm(), within(1e-9));
        }
    }
}
