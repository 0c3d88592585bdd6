package trueseam.fitting.repertoire;

import java.util.Set;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.PieceKind;

/**
 * Sway-back of a back without a waist seam: a fold across the waist, pinched at the centre to nothing at the side, and what becomes of
 * the hip below it.
 */
final class SwayBackFold {

    private static final Set<PieceKind> BACK = Set.of(PieceKind.DRESS_BACK);

    static final Entry ENTRY = Entry.named(
                    "sway-back without a waist seam", Family.BODICE, Stage.BACK, PieceKind.DRESS_BACK)
            .folds(
                    "folds across the waist at the centre back that stop before the side, and stay when the skirt is pulled down; where they go,"
                            + " the hip is tight and is to be widened instead [web:sway2]")
            .amount("pinches a fold out of the centre back at the waist", "")
            .moves("the back below the waist")
            .sharing("the full amount on the half back, at its centre, to nothing at the side seam")
            .pin("hinge at the side waist")
            .stays(
                    Stay.back(EdgeRole.SIDE),
                    Stay.back(EdgeRole.ARMHOLE),
                    Stay.back(EdgeRole.SHOULDER),
                    Stay.back(EdgeRole.NECK))
            .alsoStays("the front; the back above the waist; the hip, but for the way that says so")
            .trued("on the fold the centre back is ruled straight; with a seam it is drawn smooth at the waist")
            .source("web:sway1, common practice")
            .amounts(6.35, 12.7)
            .variant(
                    "given back at the side",
                    "the centre stays on the fold, and the side seam stays where it is: what the fold takes below the waist opens as a"
                            + " wedge beside the side seam, so that the hip keeps its girth (common practice)",
                    Maker.each(BACK, (list, piece, mm) -> new WaistSwing(list, piece, mm).givenBackAtTheSide()))
            .variant(
                    "centre back seam",
                    "the best fit: the centre follows the hollow of the back and is no longer cut on the fold; the hip keeps its girth"
                            + " (common practice)",
                    Maker.each(BACK, (list, piece, mm) -> new WaistSwing(list, piece, mm).withASeam()))
            .variant(
                    "on the fold",
                    "where the hip has room: the centre is ruled straight on the fold, and the hip becomes smaller by what stands over it"
                            + " (common practice)",
                    Maker.each(BACK, (list, piece, mm) -> new WaistSwing(list, piece, mm).onTheFold()))
            .written();

    private SwayBackFold() {}
}
