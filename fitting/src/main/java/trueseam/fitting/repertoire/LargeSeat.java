package trueseam.fitting.repertoire;

import java.util.List;
import java.util.Set;
import trueseam.fitting.alteration.PieceWork;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.PieceKind;

/** Large and flat seat of a skirt: the back longer at the centre and wider at the hip, with deeper darts; or the inverse. */
final class LargeSeat {

    static final Entry ENTRY = Entry.named(
                    "large seat",
                    Family.SKIRT,
                    Stage.WIDTH,
                    PieceKind.SKIRT_BACK,
                    PieceKind.SKIRT_CENTRE_BACK,
                    PieceKind.SKIRT_SIDE_BACK)
            .calledForBy(Measure.HIP_GIRTH)
            .folds(
                    "the back hem rises and the skirt cups under the seat",
                    "for a flat one: the back bags and its hem drops")
            .amount(
                    "widens the back at the hip, raises the centre back waist, deepens the darts",
                    "narrows the back at the hip, lowers the centre back waist, makes the darts shallower")
            .moves(
                    "the back: its side from the hip down, and all above the hip line; in gores the seams between them do what darts do")
            .sharing("N/2 in width on each half back, N/2 in height at the centre back; the front takes nothing")
            .pin("hip at the side seam")
            .stays(
                    Stay.all(EdgeRole.WAIST),
                    Stay.all(EdgeRole.SIDE),
                    Stay.front(EdgeRole.CENTRE),
                    Stay.front(EdgeRole.HEM))
            .alsoStays("the front")
            .trued("the centre back is ruled straight on the fold; the darts get legs of one length; the back hem")
            .source("common practice")
            .amounts(19.05, 38.1)
            .doneBy(LargeSeat::work);

    private LargeSeat() {}

    private static List<PieceWork> work(Pattern pattern, double mm) {
        return Gore.isInGores(pattern, PieceKind::isBack)
                ? GoreSwing.work(pattern, PieceKind::isBack, mm / 2, mm / 2)
                : Maker.each(
                                Set.of(PieceKind.SKIRT_BACK),
                                (list, piece, need) -> UpperSwing.write(list, piece, need / 2, need / 2))
                        .work(pattern, mm);
    }
}
