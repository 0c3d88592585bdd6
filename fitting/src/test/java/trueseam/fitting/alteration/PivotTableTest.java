package trueseam.fitting.alteration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import trueseam.fitting.Blocks;
import trueseam.fitting.tissue.Frame;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.Tissue;
import trueseam.fitting.truing.LevelShift;
import trueseam.fitting.truing.Truing;
import trueseam.fitting.work.WorkedPattern;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;

/**
 * The derived table of pivots and worked example 35 of the trade facts (sections 4.2 and 6): geometry of a rotation about a pin,
 * derived, recomputable with paper and compasses.
 */
class PivotTableTest {

    private static final double HALF_INCH = 12.7;

    private static Frame afterFirstPivot(Pattern pattern, String piece, Alteration alteration) {
        PieceWork work = alteration.work(pattern).stream()
                .filter(w -> w.piece().equals(piece))
                .findFirst()
                .orElseThrow();
        return Tissue.play(pattern.piece(piece), work.steps()).stream()
                .filter(f -> f.step() instanceof Step.Pivot)
                .findFirst()
                .orElseThrow();
    }

    private static SideGirth bust(double totalMm) {
        return new SideGirth(totalMm, totalMm, 0, HemChoice.CARRIED);
    }

    @Test
    void twoInchesAtTheBustTurnTheFrontBy3Point8531Degrees() {
        // Example 35: bust need 2 in, half an inch an edge; front turn 3.8531, back turn 3.6672 degrees.
        Pattern bodice = Blocks.bodice();
        Frame front = afterFirstPivot(bodice, "bodice front", bust(4 * HALF_INCH));
        Frame back = afterFirstPivot(bodice, "bodice back", bust(4 * HALF_INCH));
        assertThat(Math.toDegrees(front.pose().turnRad())).isCloseTo(3.8531, within(5e-5));
        assertThat(Math.toDegrees(back.pose().turnRad())).isCloseTo(3.6672, within(5e-5));
    }

    @Test
    void theUnderarmsRiseBy2Point4454And3Point2877Millimetres() {
        Pattern bodice = Blocks.bodice();
        Piece front = bodice.piece("bodice front");
        Frame turned = afterFirstPivot(bodice, "bodice front", bust(4 * HALF_INCH));
        var underarm = front.edge("side").path().end();
        assertThat(turned.pose().apply(underarm).y() - underarm.y()).isCloseTo(2.4454, within(5e-5));
        Frame back = afterFirstPivot(bodice, "bodice back", bust(4 * HALF_INCH));
        assertThat(back.pose().apply(underarm).y() - underarm.y()).isCloseTo(3.2877, within(5e-5));
    }

    @Test
    void aQuarterInchTurnsTheFrontBy1Point9203Degrees() {
        Frame front = afterFirstPivot(Blocks.bodice(), "bodice front", bust(2 * HALF_INCH));
        assertThat(Math.toDegrees(front.pose().turnRad())).isCloseTo(1.9203, within(5e-5));
    }

    @Test
    void theWaistPivotsAboutTheUnderarmBy1Point8158Degrees() {
        // Table 4.2, underarm to waist (-25, -200), d = 6.35 mm: 1.8158 degrees, the waist drops by 0.6917 mm.
        Frame front =
                afterFirstPivot(Blocks.bodice(), "bodice front", new SideGirth(0, 2 * HALF_INCH, 0, HemChoice.CARRIED));
        assertThat(Math.toDegrees(front.pose().turnRad())).isCloseTo(1.8158, within(5e-5));
        var waist = Blocks.bodice().piece("bodice front").edge("side").path().start();
        assertThat(front.pose().apply(waist).y() - waist.y()).isCloseTo(-0.6917, within(5e-5));
    }

    @Test
    void aSleeveWidenedAtTheCrownTurnsBy5Point9938DegreesAndRises17Point418Millimetres() {
        // Table 4.2, cap top to sleeve underarm (160, -130), d = 12.7 mm.
        Frame front = afterFirstPivot(
                Blocks.sleevePattern(),
                "sleeve",
                new SleeveGirth(2 * HALF_INCH, CapChoice.KEEP_CAP_SEAM, SleeveReach.UPPER_ARM));
        assertThat(Math.toDegrees(front.pose().turnRad())).isCloseTo(5.9938, within(5e-5));
        var underarm = Blocks.sleeve().edge("underarm front").path().end();
        assertThat(front.pose().apply(underarm).y() - underarm.y()).isCloseTo(17.4180, within(5e-5));
    }

    @Test
    void theMismatchOfTheUnderarmsIsReportedAndTrued() {
        // Example 35: side seam to be trued by 0.84 mm.
        WorkedPattern worked = WorkedPattern.altered(Blocks.bodice(), List.of(bust(4 * HALF_INCH)));
        LevelShift underarm = worked.levels().stream()
                .filter(l -> l.end().equals("underarm"))
                .findFirst()
                .orElseThrow();
        assertThat(underarm.firstMm()).isCloseTo(2.4454, within(5e-4));
        assertThat(underarm.secondMm()).isCloseTo(3.2877, within(5e-4));
        assertThat(Math.abs(underarm.apartMm())).isCloseTo(0.84, within(5e-3));
        assertThat(Truing.levels(worked.original(), worked.altered()))
                .allSatisfy(l -> assertThat(Math.abs(l.apartMm())).isLessThan(0.5));
    }
}
