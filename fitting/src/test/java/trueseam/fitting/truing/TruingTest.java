package trueseam.fitting.truing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trueseam.fitting.Blocks;
import trueseam.fitting.alteration.PieceWork;
import trueseam.fitting.tissue.AlteredPiece;
import trueseam.fitting.tissue.Direction;
import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Run;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.fitting.tissue.Until;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.Seam;
import trueseam.geometry.Line;
import trueseam.geometry.Path;
import trueseam.geometry.Point;

/** Each part of the truing by itself (trade facts, section 5). */
class TruingTest {

    private static final Pattern BODICE = Blocks.bodice();
    private static final Piece FRONT = BODICE.piece("bodice front");

    private static Piece worked(Piece piece, PieceWork work) {
        return AlteredPiece.of(piece).then(work.steps()).now();
    }

    /** The front with a dart of 20 mm sewn into its side seam, from 100 to 120 mm up. */
    private static Piece withSideDart() {
        return FRONT.toBuilder()
                .dart(new Dart.EdgeDart("bust dart", "side", 100, 120, new Point(130, 105)))
                .build();
    }

    @Test
    void anUndividedSideSlidesAsAWholeAndKeepsItsShape() {
        Piece slid = worked(FRONT, new SideSlide(FRONT, "side").work(1.5, 1.5));
        assertThat(slid.edge("side").path().end().y()
                        - FRONT.edge("side").path().end().y())
                .isCloseTo(1.5, within(1e-9));
        assertThat(slid.edge("side").path().start().y()
                        - FRONT.edge("side").path().start().y())
                .isCloseTo(1.5, within(1e-9));
        assertThat(slid.edge("side").length()).isCloseTo(FRONT.edge("side").length(), within(1e-9));
        assertThat(slid.edge("shoulder")).isEqualTo(FRONT.edge("shoulder"));
    }

    @Test
    void whereADartDividesTheSideBothPartsSlideByTheirOwnAmountsAndTheDartTakesTheDifference() {
        Piece darted = withSideDart();
        SideSlide slide = new SideSlide(darted, "side");
        assertThat(slide.isDivided()).isTrue();
        Piece slid = worked(darted, slide.work(2, -1));
        assertThat(slid.edge("side").path().end().y()
                        - darted.edge("side").path().end().y())
                .isCloseTo(2, within(1e-9));
        assertThat(slid.edge("side").path().start().y()
                        - darted.edge("side").path().start().y())
                .isCloseTo(-1, within(1e-9));
        assertThat(slid.sewnLength("side")).isCloseTo(darted.sewnLength("side"), within(1e-9));
        Dart.EdgeDart dart = slid.dartsOn("side").get(0);
        // The side leans by (25, 200): 3 mm along the grain are 3 x 200 / 201.556 = 2.977 mm along it, and a little
        // across.
        assertThat(dart.mouthMm() - 20).isBetween(2.9, 3.0);
        double legs = slid.edge("side").path().pointAt(dart.fromMm()).distanceTo(dart.apex())
                - slid.edge("side").path().pointAt(dart.toMm()).distanceTo(dart.apex());
        assertThat(legs).isCloseTo(0, within(1e-9));
    }

    private static AlteredPiece pivoted(double acrossMm) {
        Place underarm = Place.endOf(FRONT, "side", "underarm point");
        StepList list = new StepList(FRONT);
        list.add(new Step.Mark("bust mark", underarm, acrossMm, 0));
        list.add(new Step.Pin(Place.endOf(FRONT, "armhole", "shoulder point")));
        list.add(new Step.Pivot(new Until.MeetsAcross(underarm, "bust mark")));
        list.trace("armhole", 0, FRONT.edge("armhole").length());
        list.join("side", 0, FRONT.edge("side").length(), JoinForm.STRAIGHT);
        return AlteredPiece.of(FRONT).then(list.finished());
    }

    private static double cornerDegrees(Piece piece, String edge, boolean atStart) {
        return Math.toDegrees(SeamEnds.innerAngle(piece, edge, atStart));
    }

    @ParameterizedTest
    @ValueSource(doubles = {12.7, -12.7, 20})
    void aCornerThatAPivotBentGetsItsAngleBackAndTheSideStays(double acrossMm) {
        AlteredPiece bent = pivoted(acrossMm);
        double original = cornerDegrees(FRONT, "side", false);
        assertThat(Math.abs(cornerDegrees(bent.now(), "side", false) - original))
                .isGreaterThan(3);
        List<Step> steps = new Smoothing(bent).steps();
        AlteredPiece smooth = bent.then(steps);
        assertThat(cornerDegrees(smooth.now(), "side", false)).isCloseTo(original, within(0.01));
        assertThat(smooth.now()
                        .edge("side")
                        .path()
                        .end()
                        .isNear(bent.now().edge("side").path().end(), 1e-9))
                .isTrue();
        assertThat(smooth.now().edge("neck")).isEqualTo(FRONT.edge("neck"));
        // Of the armhole only the part beside the underarm is drawn new; common practice, an inch or a little more.
        double drawn = smooth.runs().stream()
                .filter(r -> r.edge().equals("armhole") && r.isDrawn() && r.fromMm() < 1)
                .mapToDouble(Run::lengthMm)
                .sum();
        assertThat(drawn).isBetween(25.0, 45.0);
    }

    @Test
    void aKinkInsideAnEdgeIsDrawnOver() {
        double whole = FRONT.edge("side").length();
        StepList list = new StepList(FRONT);
        list.add(new Step.Mark("waist mark", Place.startOf("side", "side waist"), 10, 0));
        list.add(new Step.Pin(new Place("side", 120, "half way")));
        list.add(new Step.Pivot(new Until.MeetsAcross(Place.startOf("side", "side waist"), "waist mark")));
        list.trace("side", 0, 120);
        list.join("waist", 150, FRONT.edge("waist").length(), JoinForm.curve(Direction.AS_DRAWN, Direction.AS_DRAWN));
        AlteredPiece kinked = AlteredPiece.of(FRONT).then(list.finished());
        assertThat(sharpestTurn(kinked.now().edge("side"))).isGreaterThan(Math.toRadians(3));
        AlteredPiece smooth = kinked.then(new Smoothing(kinked).steps());
        assertThat(sharpestTurn(smooth.now().edge("side"))).isLessThan(Math.toRadians(0.05));
        assertThat(smooth.now().edge("side").length()).isCloseTo(whole, within(0.1));
    }

    @ParameterizedTest
    @ValueSource(doubles = {10, -10})
    void aWaistCornerThatWasRuledStraightGetsItsAngleBack(double acrossMm) {
        double original = cornerDegrees(FRONT, "side", true);
        Place corner = Place.startOf("side", "side waist");
        StepList list = new StepList(FRONT);
        list.add(new Step.Mark("waist mark", corner, acrossMm, 0));
        list.add(new Step.Pin(Place.endOf(FRONT, "side", "underarm point")));
        list.add(new Step.Pivot(new Until.MeetsAcross(corner, "waist mark")));
        list.trace("side", 0, FRONT.edge("side").length());
        list.join("waist", 150, FRONT.edge("waist").length(), JoinForm.STRAIGHT);
        AlteredPiece bent = AlteredPiece.of(FRONT).then(list.finished());
        assertThat(Math.abs(cornerDegrees(bent.now(), "side", true) - original)).isGreaterThan(2);
        AlteredPiece smooth = bent.then(new Smoothing(bent).steps());
        assertThat(cornerDegrees(smooth.now(), "side", true)).isCloseTo(original, within(0.01));
    }

    private static double sharpestTurn(Edge edge) {
        double worst = 0;
        var segments = edge.path().segments();
        for (int i = 1; i < segments.size(); i++) {
            worst = Math.max(
                    worst,
                    Math.abs(segments.get(i - 1)
                            .tangent(1)
                            .angleTo(segments.get(i).tangent(0))));
        }
        return worst;
    }

    @Test
    void aPieceThatIsStillSmoothIsNotTouched() {
        assertThat(new Smoothing(AlteredPiece.of(FRONT)).steps()).isEmpty();
        assertThat(Truing.smoothingWork(List.of(AlteredPiece.of(FRONT)))).isEmpty();
    }

    private static Pattern withFrontSideLongerBy(double mm) {
        Path side = FRONT.edge("side").path();
        Point low = side.start().plus(side.startTangent().times(-mm));
        Path waist = FRONT.edge("waist").path();
        // The last stroke of the waist runs into the corner: draw it to the new one.
        var segments = new ArrayList<>(waist.segments());
        var last = segments.remove(segments.size() - 1);
        segments.add(new Line(last.start(), low));
        List<Edge> edges = FRONT.edges().stream()
                .map(e -> e.role() == EdgeRole.SIDE
                        ? e.withPath(Path.through(low, side.end()))
                        : e.role() == EdgeRole.WAIST ? e.withPath(Path.of(segments)) : e)
                .toList();
        return BODICE.withPieces(List.of(FRONT.toBuilder().edges(edges).build()));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.4, 0.06, -0.06, -0.4})
    void theShorterOfTwoSeamEdgesIsLetDownUntilTheyWalk(double mm) {
        Pattern off = withFrontSideLongerBy(mm);
        Seam side = BODICE.seams().get(0);
        assertThat(Math.abs(off.mismatchMm(side) - BODICE.mismatchMm(side))).isCloseTo(Math.abs(mm), within(1e-9));
        List<PieceWork> work = Truing.walkWork(BODICE, off, false, edge -> 0);
        assertThat(work).extracting(PieceWork::piece).containsExactly(mm > 0 ? "bodice back" : "bodice front");
        Piece let = worked(off.piece(work.get(0).piece()), work.get(0));
        Pattern walked = off.withPieces(List.of(let));
        assertThat(walked.mismatchMm(side) - BODICE.mismatchMm(side)).isCloseTo(0, within(0.02));
        Point low = let.edge("side").path().start();
        assertThat(low.y() - off.piece(let.name()).edge("side").path().start().y())
                .as("the lower end goes down, and nowhere is the line drawn forth and back")
                .isBetween(-1.01 * Math.abs(mm) - 0.01, -0.9 * Math.abs(mm));
        assertThat(let.edge("side").path().end())
                .as("the underarm stays")
                .isEqualTo(off.piece(let.name()).edge("side").path().end());
    }

    @Test
    void seamsThatWalkAsBeforeAreLeft() {
        assertThat(Truing.walkWork(BODICE, BODICE, false, edge -> 0)).isEmpty();
        assertThat(Truing.walkWork(BODICE, withFrontSideLongerBy(0.01), false, edge -> 0))
                .isEmpty();
    }

    @Test
    void levelsThatAPivotMovedApartAreReportedWithBothShifts() {
        // "Must be trued with the mismatch reported, not hidden."
        AlteredPiece front = pivoted(12.7);
        Pattern altered = BODICE.withPieces(List.of(front.now()));
        LevelShift underarm = Truing.levels(BODICE, altered, List.of()).stream()
                .filter(l -> l.end().equals("underarm"))
                .findFirst()
                .orElseThrow();
        assertThat(underarm.firstMm()).isCloseTo(2.4454, within(5e-5));
        assertThat(underarm.secondMm()).isZero();
        assertThat(underarm.apartMm()).isCloseTo(2.4454, within(5e-5));
        assertThat(underarm.seam()).isEqualTo("side seam");
    }
}
