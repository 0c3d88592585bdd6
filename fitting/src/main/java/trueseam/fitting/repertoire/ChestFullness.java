package trueseam.fitting.repertoire;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Spot;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.fitting.tissue.Until;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;

/**
 * A full (pigeon) or hollow chest: the front is opened or lapped across the chest at the centre, to nothing at the armhole, and the
 * centre front is ruled straight again.
 */
final class ChestFullness {

    private static final Set<PieceKind> FRONTS = EnumSet.of(PieceKind.BODICE_FRONT, PieceKind.DRESS_FRONT);

    static final Entry ENTRY = Entry.named(
                    "full or hollow chest", Family.BODICE, Stage.BUST, FRONTS.toArray(PieceKind[]::new))
            .folds("folds across the upper chest: it is hollow", "strain across the chest above the bust: it is full")
            .amount("raises the centre front neck for a full chest", "lowers the centre front neck for a hollow chest")
            .moves("the neck and the shoulder, to nothing at the armhole")
            .sharing("the full amount on the half front")
            .pin("hinge on the armhole at the chest line")
            .stays(
                    Stay.front(EdgeRole.ARMHOLE),
                    Stay.front(EdgeRole.SHOULDER),
                    Stay.front(EdgeRole.SIDE),
                    Stay.back(EdgeRole.NECK))
            .alsoStays("the front from the chest line down")
            .lengthens(EdgeRole.NECK)
            .trued(
                    "the centre front is ruled straight on the fold; the neck line gains or loses there, facing and collar with it")
            .source("[ND1921] [HERR32]; common practice")
            .amounts(6.35, 12.7)
            .doneBy(Maker.each(FRONTS, ChestFullness::steps));

    private ChestFullness() {}

    private static void steps(StepList list, Piece piece, double mm) {
        Corners corners = new Corners(piece);
        Place centre = corners.onLevel(EdgeRole.CENTRE, LevelName.ACROSS, "centre front at the chest line");
        Place hinge = corners.onLevel(EdgeRole.ARMHOLE, LevelName.ACROSS, "armhole at the chest line");
        list.cut("neck and shoulder", centre, List.of(), hinge, corners.neckPoint());
        list.add(new Step.Spread(Spot.of(piece, hinge), new Until.MovesAlong(Spot.of(piece, centre), mm)));
        list.trace(centre, corners.at(EdgeRole.CENTRE, EdgeRole.NECK, "neck at the centre front"));
        for (EdgeRole role : List.of(EdgeRole.NECK, EdgeRole.SHOULDER)) {
            String edge = corners.edge(role).name();
            list.trace(edge, 0, piece.edge(edge).length());
        }
        list.trace(hinge, corners.shoulderPoint());
        list.join(centre.edge(), centre.alongMm(), centre.alongMm(), JoinForm.STRAIGHT);
        list.add(new Step.Straighten(centre.edge()));
    }
}
