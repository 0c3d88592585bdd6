package trueseam.fitting.repertoire;

import java.util.List;
import java.util.Set;
import trueseam.fitting.alteration.AlterationException;
import trueseam.fitting.alteration.SleeveHalf;
import trueseam.fitting.alteration.WristGirth;
import trueseam.fitting.tissue.Direction;
import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.fitting.tissue.Until;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.join.Joining;

/** Girth of a sleeve below the upper arm: at the elbow, at the forearm, at the wrist; cap and upper arm stay. */
final class SeamBulge {

    private static final Set<PieceKind> SLEEVE = Set.of(PieceKind.SLEEVE);

    /** How far to either side of the widest place the seam is drawn new. */
    private static final double BLEND_MM = 15;

    static final Entry ELBOW = named("elbow girth", LevelName.ELBOW)
            .solvedFor(Measure.ELBOW_GIRTH)
            .folds("pulls round a large elbow when the arm is bent")
            .amount("widens the sleeve at the elbow", "narrows the sleeve at the elbow")
            .written();

    static final Entry FOREARM = named("forearm girth", LevelName.BELOW_ELBOW)
            .folds("pulls round a large forearm below the elbow")
            .amount("widens the sleeve at the forearm", "narrows the sleeve at the forearm")
            .written();

    static final Entry WRIST = Entry.named("wrist girth", Family.SLEEVE, Stage.SLEEVE, PieceKind.SLEEVE)
            .solvedFor(Measure.WRIST_GIRTH)
            .folds("the hand does not pass", "the sleeve stands off at the wrist")
            .amount("widens the wrist", "narrows the wrist")
            .moves("the seam below the elbow and the wrist edge")
            .sharing("N/2 at each edge of the seam under the arm")
            .pin("elbow on the seam")
            .stays(Stay.all(EdgeRole.CAP))
            .alsoStays("cap, upper arm, length of the seam")
            .trued("the wrist edge; the seam at the elbow; a cuff takes the same")
            .source("common practice")
            .amounts(12.7, 38.1)
            .doneBy((pattern, mm) -> new WristGirth(mm).work(pattern));

    private SeamBulge() {}

    private static EntryBuilder named(String name, LevelName level) {
        return Entry.named(name, Family.SLEEVE, Stage.SLEEVE, PieceKind.SLEEVE)
                .moves("both edges of the seam under the arm")
                .sharing("N/2 at each edge of the seam under the arm")
                .pin("underarm point to the place, then wrist corner to the place")
                .stays(Stay.all(EdgeRole.CAP), Stay.all(EdgeRole.WRIST))
                .alsoStays("upper arm and wrist")
                .trued("the seam is drawn smooth at the widest place; its two edges stay of one length")
                .source("common practice; [HERR32]")
                .amounts(12.7, 38.1)
                .variant(
                        "both edges",
                        "the sleeve keeps its grain in the middle (common practice)",
                        Maker.each(SLEEVE, (list, piece, mm) -> steps(list, piece, level, mm)));
    }

    private static void steps(StepList list, Piece piece, LevelName level, double mm) {
        List<SleeveHalf> halves = SleeveHalf.of(piece);
        double growth = Double.NEGATIVE_INFINITY;
        for (SleeveHalf half : halves) {
            growth = Math.max(growth, growth(half, at(half, level, mm), mm));
        }
        for (SleeveHalf half : halves) {
            half(list, half, at(half, level, mm), mm, growth);
        }
    }

    private static double at(SleeveHalf half, LevelName level, double mm) {
        return half.seamAt(level)
                .orElseThrow(() -> new AlterationException(
                        half.piece().name(),
                        half.seam().name(),
                        mm,
                        "the " + level.word() + " level does not cross this seam; mark it on the piece."));
    }

    private static void half(StepList list, SleeveHalf half, double at, double mm, double growth) {
        String seam = half.seam().name();
        String mark = half.word() + " mark";
        Place place = new Place(seam, at, "widest place of the " + half.word() + " seam");
        Place above = new Place(seam, at + (half.right() ? BLEND_MM : -BLEND_MM), "above");
        Place below = new Place(seam, at - (half.right() ? BLEND_MM : -BLEND_MM), "below");
        list.add(new Step.LayBack());
        list.add(new Step.Mark(mark, place, half.outward() * mm / 2, 0));
        list.add(new Step.Pin(half.underarm()));
        list.add(new Step.Pivot(new Until.MeetsAcross(place, mark)));
        list.trace(half.underarm(), above);
        list.add(new Step.LayBack());
        list.add(new Step.Pin(half.wristCorner()));
        list.add(new Step.Pivot(new Until.MeetsAcross(place, mark)));
        list.trace(half.wristCorner(), below);
        list.join(above, below, JoinForm.curveOfLength(Direction.AS_DRAWN, Direction.AS_DRAWN, 2 * BLEND_MM + growth));
    }

    /** By how much the gentle line at the widest place is longer than the seam was there. */
    private static double growth(SleeveHalf half, double at, double mm) {
        Path up = half.right() ? half.seam().path() : half.seam().path().reversed();
        double along = half.right() ? at : up.length() - at;
        if (along < 2 * BLEND_MM || along > up.length() - 2 * BLEND_MM) {
            throw new AlterationException(
                    half.piece().name(),
                    half.seam().name(),
                    mm,
                    "the seam is too short at this level; mark the level farther from its ends.");
        }
        double out = half.outward() * mm / 2;
        Point place = up.pointAt(along);
        Motion lower = Motion.pivotAcross(up.start(), place, out);
        Motion upper = Motion.pivotAcross(up.end(), place, out);
        return Joining.smooth(
                                lower.apply(up.pointAt(along - BLEND_MM)),
                                lower.apply(up.tangentAt(along - BLEND_MM)),
                                upper.apply(up.pointAt(along + BLEND_MM)),
                                upper.apply(up.tangentAt(along + BLEND_MM)))
                        .length()
                - 2 * BLEND_MM;
    }
}
