package trueseam.fitting.alteration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trueseam.fitting.Blocks;
import trueseam.fitting.tissue.Frame;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.fitting.tissue.Tissue;
import trueseam.fitting.tissue.Until;
import trueseam.fitting.truing.LevelShift;
import trueseam.fitting.work.WorkedPattern;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Grain;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceBuilder;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.Path;
import trueseam.geometry.Point;

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
        assertThat(worked.apart())
                .allSatisfy(l -> assertThat(Math.abs(l.apartMm())).isLessThan(0.5));
    }

    /** A piece with nothing but a pin and a point at an offset from it, to turn. */
    private static Piece board(Point offset) {
        Point pin = new Point(0, 0);
        Point below = new Point(offset.x(), -400);
        return new PieceBuilder("board", PieceKind.OTHER)
                .edge("moved", EdgeRole.OTHER, Path.through(pin, offset), 0)
                .edge(
                        "rest",
                        EdgeRole.OTHER,
                        Path.through(offset, new Point(200, -400), below, new Point(-200, -400), pin),
                        0)
                .grain(new Grain(new Point(0, -100), new Point(0, -50)))
                .build();
    }

    private static Frame pivoted(Point offset, double acrossMm, double alongMm) {
        Piece board = board(offset);
        Place point = Place.endOf(board, "moved", "point");
        Until until = acrossMm != 0 ? new Until.MeetsAcross(point, "mark") : new Until.MeetsAlong(point, "mark");
        StepList list = new StepList(board);
        list.add(new Step.Mark("mark", point, acrossMm, alongMm));
        list.add(new Step.Pin(Place.startOf("moved", "pin")));
        list.add(new Step.Pivot(until));
        List<Frame> frames = Tissue.play(board, list.finished());
        return frames.get(frames.size() - 1);
    }

    @ParameterizedTest
    @CsvSource({
        // Table 4.2, all its rows: offset from the pin, d, turn in degrees, vertical shift.
        "30, -190, 12.70, 3.8531, 2.4454",
        "30, -190, 6.35, 1.9203, 1.1120",
        "45, -200, 12.70, 3.6672, 3.2877",
        "-25, -200, 6.35, 1.8158, -0.6917",
        "50, -200, 6.35, 1.8267, 1.6955",
        "160, -130, 12.70, 5.9938, 17.4180"
    })
    void aPivotAcrossTheGrainTurnsAndLiftsAsTheTableSays(
            double x, double y, double acrossMm, double degrees, double upMm) {
        Point offset = new Point(x, y);
        Frame turned = pivoted(offset, acrossMm, 0);
        assertThat(Math.toDegrees(turned.pose().turnRad())).isCloseTo(degrees, within(5e-5));
        assertThat(turned.pose().apply(offset).x() - x).isCloseTo(acrossMm, within(1e-9));
        assertThat(turned.pose().apply(offset).y() - y).isCloseTo(upMm, within(5e-5));
    }

    @ParameterizedTest
    @CsvSource({"6.35, 3.0557, 2.07", "12.70, 6.0638, 3.78"})
    void aShoulderPivotedUpAboutTheNeckPointMovesOutwardToo(double upMm, double degrees, double outMm) {
        // Section 4.2, last line: shoulder point (118, -42) from the neck point.
        Point offset = new Point(118, -42);
        Frame turned = pivoted(offset, 0, upMm);
        assertThat(Math.toDegrees(turned.pose().turnRad())).isCloseTo(degrees, within(5e-5));
        assertThat(turned.pose().apply(offset).y() - offset.y()).isCloseTo(upMm, within(1e-9));
        assertThat(turned.pose().apply(offset).x() - offset.x()).isCloseTo(outMm, within(5e-3));
    }
}
