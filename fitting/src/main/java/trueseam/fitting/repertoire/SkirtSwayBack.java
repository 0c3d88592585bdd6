package trueseam.fitting.repertoire;

import java.util.Set;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.PieceKind;

/** Sway-back of a skirt: the waist falls at the centre back, to nothing at the side. */
final class SkirtSwayBack {

    static final Entry ENTRY = Entry.named("sway-back of a skirt", Family.SKIRT, Stage.BACK, PieceKind.SKIRT_BACK)
            .folds("folds lie across under the band at the centre back")
            .amount("lowers the centre back waist", "raises the centre back waist")
            .moves("the back waist line, to nothing at the side seam")
            .sharing("the full amount on the half back")
            .pin("side waist")
            .stays(
                    Stay.all(EdgeRole.SIDE),
                    Stay.all(EdgeRole.WAIST),
                    Stay.all(EdgeRole.HEM),
                    Stay.front(EdgeRole.CENTRE))
            .alsoStays("the front, the hem level, the band")
            .trued("the centre back is ruled straight on the fold; the darts get legs of one length")
            .source("common practice (1/4 to 1/2 in)")
            .amounts(9.525, 12.7)
            .doneBy(Maker.each(
                    Set.of(PieceKind.SKIRT_BACK), (list, piece, mm) -> UpperSwing.tiltWaist(list, piece, -mm)));

    private SkirtSwayBack() {}
}
