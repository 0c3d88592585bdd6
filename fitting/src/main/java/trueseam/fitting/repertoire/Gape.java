package trueseam.fitting.repertoire;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.StepList;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.PieceKind;

/**
 * A neck line or an armhole that stands away in front: a wedge is folded out from there to the bust point, and the dart of the side
 * seam takes it.
 */
final class Gape {

    private static final Set<PieceKind> FRONTS = EnumSet.of(PieceKind.BODICE_FRONT, PieceKind.DRESS_FRONT);

    /** Where a neck line gapes, from the centre: a little nearer the centre than its middle (common practice). */
    private static final double NECK_SHARE = 0.4;

    /** Where an armhole gapes, from the underarm: about its front notch (common practice). */
    private static final double ARMHOLE_SHARE = 0.4;

    static final Entry NECK = named("gaping neck")
            .folds("the neck gapes in front")
            .amount("folds a wedge out of the neck line to the bust point; the side dart grows", "")
            .moves("the front beside the wedge, shoulder and armhole with it, about the bust point")
            .stays(
                    Stay.front(EdgeRole.SHOULDER),
                    Stay.front(EdgeRole.ARMHOLE),
                    Stay.front(EdgeRole.SIDE),
                    Stay.back(EdgeRole.NECK))
            .lengthens(EdgeRole.NECK)
            .trued("the neck line is drawn smooth; facing and collar take the same; the dart's legs are of one length")
            .doneBy(Maker.each(FRONTS, (list, piece, mm) -> neck(list, new BustFront(piece), mm)));

    static final Entry ARMHOLE = named("gaping armhole")
            .folds("the armhole gapes in front")
            .amount("folds a wedge out of the armhole to the bust point; the side dart grows", "")
            .moves("the front between armhole and side dart, about the bust point")
            .stays(Stay.front(EdgeRole.SHOULDER), Stay.front(EdgeRole.NECK), Stay.front(EdgeRole.SIDE))
            .lengthens(EdgeRole.ARMHOLE)
            .trued("the armhole is drawn smooth; the front half of the cap takes the same")
            .doneBy(Maker.each(FRONTS, (list, piece, mm) -> armhole(list, new BustFront(piece), mm)));

    private Gape() {}

    private static EntryBuilder named(String name) {
        return Entry.named(name, Family.BODICE, Stage.BUST, FRONTS.toArray(PieceKind[]::new))
                .sharing("as much on each half front as is pinned out there")
                .pin("hinge at the bust point")
                .alsoStays("the centre front, the waist and all below the side dart")
                .source("common practice; [HERR32]")
                .amounts(9.525, 15.875);
    }

    private static void neck(StepList list, BustFront front, double mm) {
        Place centre = front.corners.centreNeck();
        Place corner = front.corners.at(EdgeRole.NECK, EdgeRole.SHOULDER, "neck point");
        double whole = front.piece.edge(centre.edge()).length();
        Wedge wedge = new Wedge(front, front.corners.from(centre, whole * NECK_SHARE, "neck"), mm);
        Place leg = front.upperLeg(front.neededSideDart(mm));
        Place outer = wedge.edgeTowards(corner);
        list.cut("side of the front", outer, List.of(front.bust), leg, front.corners.shoulderPoint());
        wedge.close(list, corner);
        front.traceWhole(list, EdgeRole.SHOULDER);
        front.traceWhole(list, EdgeRole.ARMHOLE);
        closed(list, front, mm, leg, wedge);
    }

    private static void armhole(StepList list, BustFront front, double mm) {
        Place underarm = front.underarmOnArmhole();
        double whole = front.piece.edge(underarm.edge()).length();
        Wedge wedge = new Wedge(front, front.corners.from(underarm, whole * ARMHOLE_SHARE, "armhole"), mm);
        Place leg = front.upperLeg(front.neededSideDart(mm));
        Place lower = wedge.edgeTowards(underarm);
        list.cut("below the armhole", lower, List.of(front.bust), leg, front.corners.underarm());
        wedge.close(list, underarm);
        closed(list, front, mm, leg, wedge);
    }

    private static void closed(StepList list, BustFront front, double mm, Place leg, Wedge wedge) {
        Dart.EdgeDart dart = front.neededSideDart(mm);
        list.trace(leg, front.corners.underarm());
        list.join(front.side, dart.fromMm(), dart.toMm(), JoinForm.REFIT);
        wedge.join(list);
    }
}
