package trueseam.fitting.repertoire;

import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.PieceKind;

/** A front that is wide or narrow between the armholes: the front armhole alone is pivoted above its notch, as at the back. */
final class AcrossFront {

    static final Entry ENTRY = Entry.named(
                    "across front", Family.BODICE, Stage.BUST, PieceKind.BODICE_FRONT, PieceKind.DRESS_FRONT)
            .solvedFor(Measure.ACROSS_FRONT_WIDTH)
            .folds(
                    "the front armhole cuts into the arm when the arms come forward: the front is too wide between the armholes",
                    "the front strains across the upper chest, and the armhole is pulled in: it is too narrow")
            .amount("makes the front broader between the armholes", "makes the front narrower between the armholes")
            .moves("the front armhole alone")
            .sharing("N/2 on each half front")
            .pin("shoulder point, turned to the notch")
            .stays(
                    Stay.back(EdgeRole.ARMHOLE),
                    Stay.all(EdgeRole.NECK),
                    Stay.all(EdgeRole.SHOULDER),
                    Stay.all(EdgeRole.SIDE))
            .alsoStays(
                    "the length of the front armhole, as far as it can be drawn; the centre, the underarm, the bust dart; the back")
            .lengthens(EdgeRole.ARMHOLE)
            .trued(
                    "the armhole is drawn smooth at its notch; where it would become too flat or too full the sleeve follows it")
            .source("common practice: the pivot of a broad back, done in front")
            .amounts(12.7, 19.05)
            .doneBy(Maker.each(UpperPart.FRONTS, AcrossBack::pivot));

    private AcrossFront() {}
}
