package trueseam.fitting.repertoire;

import java.util.List;
import java.util.Set;
import trueseam.fitting.alteration.PieceWork;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.PieceKind;

/** Full and flat abdomen of a skirt and of trousers: the centre front of the waist rises or falls, to nothing at the hip. */
final class FullAbdomen {

    static final Entry SKIRT = Entry.named(
                    "full abdomen",
                    Family.SKIRT,
                    Stage.WIDTH,
                    PieceKind.SKIRT_FRONT,
                    PieceKind.SKIRT_CENTRE_FRONT,
                    PieceKind.SKIRT_SIDE_FRONT)
            .calledForBy(Measure.TOP_HIP_GIRTH)
            .folds("the front of the skirt stands out and its hem rises", "the side seams swing forward")
            .amount(
                    "raises the centre front waist, widens the front at the side above the hip, deepens the dart",
                    "lowers the centre front waist, narrows the front at the side above the hip, makes the dart shallower")
            .moves("the front above the hip line; in gores the seam beside the centre gore does what a dart does")
            .sharing("the full height at the centre front, to nothing at the hip; the width alike on both half fronts")
            .pin("hip at the side seam")
            .stays(
                    Stay.all(EdgeRole.WAIST),
                    Stay.all(EdgeRole.SIDE),
                    Stay.all(EdgeRole.HEM),
                    Stay.back(EdgeRole.CENTRE))
            .alsoStays("the hem level")
            .trued("the centre front is ruled straight on the fold; the darts are drawn with legs of one length")
            .source(
                    "ND1921, DM1911 (raised an inch or more to nothing at the hip, the waist the same); hinge common practice")
            .amounts(25.4, 38.1)
            .doneBy(FullAbdomen::onSkirt);

    static final Entry TROUSERS = Entry.named("trouser abdomen", Family.TROUSERS, Stage.WIDTH, PieceKind.TROUSER_FRONT)
            .calledForBy(Measure.FRONT_CROTCH_LENGTH, Measure.TOP_HIP_GIRTH)
            .folds(
                    "folds run from the fork to the side seam; the front pulls down",
                    "for a flat one: loose folds across the front below the waist")
            .amount(
                    "raises the centre front waist, rounds the centre seam, widens the front at the side above the hip",
                    "lowers the centre front waist, flattens the centre seam, narrows the front at the side above the hip")
            .moves("the front above the hip line")
            .sharing("the full height at the centre front, to nothing at the hip; the width alike on both fronts")
            .pin("hip at the side seam")
            .stays(
                    Stay.all(EdgeRole.WAIST),
                    Stay.all(EdgeRole.SIDE),
                    Stay.all(EdgeRole.INSEAM),
                    Stay.all(EdgeRole.HEM),
                    Stay.back(EdgeRole.CROTCH))
            .alsoStays("the back")
            .lengthens(EdgeRole.CROTCH)
            .trued("the centre seam is drawn anew above the hip line; the darts get legs of one length")
            .source("common practice; web:pants for the folds")
            .amounts(19.05, 31.75)
            .doneBy(Maker.each(
                    Set.of(PieceKind.TROUSER_FRONT), (list, piece, mm) -> UpperSwing.write(list, piece, mm, 0)));

    private FullAbdomen() {}

    private static List<PieceWork> onSkirt(Pattern pattern, double mm) {
        return Gore.isInGores(pattern, PieceKind::isFront)
                ? GoreSwing.work(pattern, PieceKind::isFront, mm, 0)
                : Maker.each(Set.of(PieceKind.SKIRT_FRONT), (list, piece, up) -> UpperSwing.write(list, piece, up, 0))
                        .work(pattern, mm);
    }
}
