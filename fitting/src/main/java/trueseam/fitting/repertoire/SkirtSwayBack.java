package trueseam.fitting.repertoire;

import java.util.List;
import java.util.Set;
import trueseam.fitting.alteration.PieceWork;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.PieceKind;

/** Sway-back of a skirt: the waist falls at the centre back, to nothing at the side. */
final class SkirtSwayBack {

    static final Entry ENTRY = Entry.named(
                    "sway-back of a skirt",
                    Family.SKIRT,
                    Stage.BACK,
                    PieceKind.SKIRT_BACK,
                    PieceKind.SKIRT_CENTRE_BACK,
                    PieceKind.SKIRT_SIDE_BACK)
            .folds("folds lie across under the band at the centre back")
            .amount("lowers the centre back waist", "raises the centre back waist")
            .moves("the back waist line, to nothing at the side seam")
            .sharing("the full amount on the half back; each gore by its place between centre and side")
            .pin("side waist")
            .stays(
                    Stay.all(EdgeRole.SIDE),
                    Stay.all(EdgeRole.WAIST),
                    Stay.all(EdgeRole.HEM),
                    Stay.front(EdgeRole.CENTRE))
            .alsoStays("the front, the hem level, the band")
            .trued(
                    "in gores the seams between them are drawn anew from hip to waist; the centre back is ruled straight on the fold; the darts get legs of one length")
            .source("common practice (1/4 to 1/2 in)")
            .amounts(9.525, 12.7)
            .doneBy(SkirtSwayBack::work);

    private SkirtSwayBack() {}

    private static List<PieceWork> work(Pattern pattern, double mm) {
        return Gore.isInGores(pattern, PieceKind::isBack)
                ? GoreTilt.raiseCentre(pattern, PieceKind::isBack, -mm)
                : Maker.each(
                                Set.of(PieceKind.SKIRT_BACK),
                                (list, piece, down) -> UpperSwing.tiltWaist(list, piece, -down))
                        .work(pattern, mm);
    }
}
