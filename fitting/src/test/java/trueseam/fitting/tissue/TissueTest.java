package trueseam.fitting.tissue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import trueseam.fitting.Blocks;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Point;

class TissueTest {

    private static final Piece FRONT = Blocks.bodice().piece("bodice front");
    private static final Place SHOULDER = Place.endOf(FRONT, "armhole", "shoulder point");
    private static final Place UNDERARM = Place.endOf(FRONT, "side", "underarm point");

    @Test
    void tracingEverythingWithoutMovingGivesThePieceBack() {
        Worked worked = Tissue.work(FRONT, new StepList(FRONT).finished());
        assertThat(worked.piece()).isEqualTo(FRONT);
        assertThat(worked.runs()).allMatch(Run::isKept);
    }

    @Test
    void aPivotBeyondReachNamesPieceAndPlaceAndTheLargestReachableAmount() {
        // |(30, -190)| = 192.354 mm, so from x = 30 the underarm reaches 162.4 mm outwards and no farther.
        List<Step> steps = List.of(
                new Step.Mark("far", UNDERARM, 200, 0),
                new Step.Pin(SHOULDER),
                new Step.Pivot(new Until.MeetsAcross(UNDERARM, "far")));
        assertThatThrownBy(() -> Tissue.work(FRONT, steps))
                .isInstanceOf(BeyondReachException.class)
                .hasMessageContaining("bodice front, underarm point")
                .hasMessageContaining("200.0 mm wanted, 162.4 mm reachable from the shoulder point");
    }

    @Test
    void aGapThatNobodyJoinedIsRefusedWithPieceEdgeAndPlace() {
        StepList list = new StepList(FRONT);
        list.add(new Step.Slide(5, 0));
        list.trace("side", 0, FRONT.edge("side").length());
        assertThatThrownBy(() -> Tissue.work(FRONT, list.finished()))
                .isInstanceOf(TissueException.class)
                .hasMessageContaining("bodice front, side")
                .hasMessageContaining("join it");
    }

    @Test
    void anEdgeDrawnTwiceIsRefused() {
        StepList list = new StepList(FRONT);
        list.trace("side", 0, 120);
        list.trace("side", 100, FRONT.edge("side").length());
        assertThatThrownBy(() -> Tissue.work(FRONT, list.finished()))
                .isInstanceOf(TissueException.class)
                .hasMessageContaining("drawn twice");
    }

    @Test
    void aPivotWithoutAPinIsRefused() {
        assertThatThrownBy(() -> Tissue.work(FRONT, List.of(new Step.Pivot(new Until.GrainUpright()))))
                .isInstanceOf(TissueException.class)
                .hasMessageContaining("put in the pin first");
    }

    @Test
    void aDartGoesWithItsEdgePointIncluded() {
        StepList list = new StepList(FRONT);
        list.add(new Step.Slide(0, -20));
        list.trace("waist", 0, FRONT.edge("waist").length());
        list.join("side", 0, 100, JoinForm.STRAIGHT);
        list.join("centre front", 200, FRONT.edge("centre front").length(), JoinForm.STRAIGHT);
        Piece slid = Tissue.work(FRONT, list.finished()).piece();
        Dart.EdgeDart before = (Dart.EdgeDart) FRONT.darts().get(0);
        Dart.EdgeDart after = (Dart.EdgeDart) slid.darts().get(0);
        assertThat(after.apex()
                        .isNear(new Point(before.apex().x(), before.apex().y() - 20), 1e-9))
                .isTrue();
        assertThat(after.mouthMm()).isCloseTo(before.mouthMm(), within(1e-9));
    }

    @Test
    void legsDrawnNearerToEachOtherGiveTheWaistWhatTheDartTookAndKeepThePoint() {
        StepList list = new StepList(FRONT);
        list.add(new Step.Remark(Step.Inside.DART_LEGS, "waist dart", -3, 0));
        Piece after = Tissue.work(FRONT, list.finished()).piece();
        Dart.EdgeDart was = (Dart.EdgeDart) FRONT.darts().get(0);
        Dart.EdgeDart is = (Dart.EdgeDart) after.darts().get(0);
        assertThat(is.apex().isNear(was.apex(), 1e-9)).isTrue();
        assertThat(is.fromMm()).isCloseTo(was.fromMm() + 3, within(1e-9));
        assertThat(after.sewnLength("waist") - FRONT.sewnLength("waist")).isCloseTo(6, within(1e-9));
    }

    @Test
    void aNotchKeepsItsWalkedDistanceOnACarriedEdge() {
        StepList list = new StepList(FRONT);
        list.add(new Step.Mark("bust mark", UNDERARM, 12.7, 0));
        list.add(new Step.Pin(SHOULDER));
        list.add(new Step.Pivot(new Until.MeetsAcross(UNDERARM, "bust mark")));
        list.trace("armhole", 0, FRONT.edge("armhole").length());
        list.join("side", 0, FRONT.edge("side").length(), JoinForm.STRAIGHT);
        Piece turned = Tissue.work(FRONT, list.finished()).piece();
        assertThat(turned.notches().get(0).atMm())
                .isCloseTo(FRONT.notches().get(0).atMm(), within(1e-9));
    }

    @Test
    void playingShowsAFrameForEveryStepAndEndsWithTheWholeOutlineDrawn() {
        StepList list = new StepList(FRONT);
        list.add(new Step.Mark("bust mark", UNDERARM, 12.7, 0));
        list.add(new Step.Pin(SHOULDER));
        list.add(new Step.Pivot(new Until.MeetsAcross(UNDERARM, "bust mark")));
        list.trace("armhole", 0, FRONT.edge("armhole").length());
        list.join("side", 0, FRONT.edge("side").length(), JoinForm.STRAIGHT);
        List<Step> steps = list.finished();
        List<Frame> frames = Tissue.play(FRONT, steps);
        assertThat(frames).hasSameSizeAs(steps);
        double drawn = frames.get(frames.size() - 1).drawn().stream()
                .mapToDouble(d -> d.path().length())
                .sum();
        assertThat(drawn).isCloseTo(Tissue.work(FRONT, steps).piece().outline().length(), within(1e-6));
    }

    @Test
    void twoAlterationsComposeToOneMotionOfTheOriginal() {
        AlteredPiece piece = AlteredPiece.of(FRONT);
        for (int i = 0; i < 2; i++) {
            Piece now = piece.now();
            StepList list = new StepList(now);
            list.add(new Step.Slide(3, 4));
            list.trace("side", 20, now.edge("side").length() - 20);
            list.join("side", 0, 20, JoinForm.STRAIGHT);
            list.join("side", now.edge("side").length() - 20, now.edge("side").length(), JoinForm.STRAIGHT);
            piece = piece.then(list.finished());
        }
        assertThat(piece.runs())
                .filteredOn(r -> r.edge().equals("side") && !r.isDrawn())
                .anySatisfy(r -> {
                    assertThat(r.origin().orElseThrow().motion().dx()).isCloseTo(6, within(1e-12));
                    assertThat(r.origin().orElseThrow().motion().dy()).isCloseTo(8, within(1e-12));
                });
    }
}
