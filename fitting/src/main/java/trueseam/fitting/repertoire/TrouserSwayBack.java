package trueseam.fitting.repertoire;

import trueseam.fitting.alteration.CrotchLength;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.PieceKind;

/** Sway-back with hip bone and abdomen: the waist of trousers falls at the centre back, rises in front, and the sides fill out. */
final class TrouserSwayBack {

    /** How much of the amount the centre front rises: ours; the handbook names the places and no shares. */
    private static final double FRONT_SHARE = 0.5;

    /** How much of the amount each side edge comes out half way between waist and hip: ours. */
    private static final double SIDE_SHARE = 0.25;

    static final Entry ENTRY = Entry.named(
                    "sway-back with hip bone and abdomen",
                    Family.TROUSERS,
                    Stage.CROTCH,
                    PieceKind.TROUSER_FRONT,
                    PieceKind.TROUSER_BACK)
            .calledForBy(Measure.TOP_HIP_GIRTH, Measure.BACK_CROTCH_LENGTH, Measure.FRONT_CROTCH_LENGTH)
            .folds(
                    "folds lie across under the waist at the centre back while the front pulls over hip bone and abdomen")
            .amount("lowers the centre back waist, raises the centre front, lets the sides out over the hip bone", "")
            .moves("the waist at both centres, to nothing at the sides; the side seams between waist and hip")
            .sharing(
                    "the full amount at the centre back, half at the centre front, a quarter on each of four side edges")
            .pin("side waist; then side waist, top hip and hip")
            .stays(Stay.all(EdgeRole.SIDE), Stay.all(EdgeRole.INSEAM), Stay.all(EdgeRole.HEM))
            .alsoStays("waist and hip girth")
            .lengthens(EdgeRole.CROTCH)
            .trued("the centre seams into the moved waist; the sides at waist and hip")
            .source("common practice (centre back down, sides); the shares are ours")
            .amounts(12.7, 19.05)
            .doneBy(Maker.inTurn(
                    (pattern, mm) -> new CrotchLength(0, FRONT_SHARE * mm, 0, -mm).work(pattern),
                    (pattern, mm) -> HipCurve.on(SIDE_SHARE * mm).work(pattern, mm)));

    private TrouserSwayBack() {}
}
