package trueseam.fitting.repertoire;

import java.util.EnumSet;
import java.util.Set;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.StepList;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;

/** Hip curve: the side between waist and hip bulges more or less, front and back alike; waist and hip stay where they are. */
final class HipCurve {

    static final Entry SKIRT = written(Entry.named(
            "hip curve",
            Family.SKIRT,
            Stage.WIDTH,
            PieceKind.SKIRT_FRONT,
            PieceKind.SKIRT_BACK,
            PieceKind.SKIRT_SIDE_FRONT,
            PieceKind.SKIRT_SIDE_BACK,
            PieceKind.DRESS_FRONT,
            PieceKind.DRESS_BACK));

    static final Entry TROUSERS = written(Entry.named(
            "trouser hip curve", Family.TROUSERS, Stage.WIDTH, PieceKind.TROUSER_FRONT, PieceKind.TROUSER_BACK));

    private HipCurve() {}

    private static Entry written(EntryBuilder entry) {
        return entry.solvedFor(Measure.TOP_HIP_GIRTH)
                .folds("the side seam stands off or strains between waist and hip; folds lie round the hip bone")
                .amount(
                        "draws the curve fuller, for hips that are broad near the waist",
                        "draws the curve flatter, for hips that are broad only low down")
                .moves("the side seams between waist and hip")
                .sharing("N/4 on each of four side edges, half way between waist and hip")
                .pin("side waist, then top hip, then hip")
                .stays(Stay.all(EdgeRole.SIDE), Stay.all(EdgeRole.WAIST))
                .alsoStays("waist and hip girth; front and back curve alike")
                .trued("the side is blended at waist and hip; the hem at the side")
                .source("common practice")
                .amounts(12.7, 25.4)
                .doneBy((pattern, mm) -> on(mm / 4).work(pattern, mm));
    }

    /** Each edge out by so much. */
    static Maker on(double edgeMm) {
        Set<PieceKind> kinds = EnumSet.of(
                PieceKind.SKIRT_FRONT,
                PieceKind.SKIRT_BACK,
                PieceKind.SKIRT_SIDE_FRONT,
                PieceKind.SKIRT_SIDE_BACK,
                PieceKind.DRESS_FRONT,
                PieceKind.DRESS_BACK,
                PieceKind.TROUSER_FRONT,
                PieceKind.TROUSER_BACK);
        return Maker.each(kinds, (list, piece, mm) -> steps(list, piece, edgeMm));
    }

    private static void steps(StepList list, Piece piece, double outMm) {
        SeamLine side = new SeamLine(piece, EdgeRole.SIDE);
        Place waist = piece.kind().isDress() ? side.at(LevelName.WAIST, "side waist") : side.top("side waist");
        Place hip = side.at(LevelName.HIP, "hip point");
        Place topHip = side.between(waist, hip, 0.5, "top hip");
        side.swing(list, waist, topHip, outMm);
        side.swing(list, topHip, hip, 0);
        side.hang(list, hip, EdgeRole.HEM);
    }
}
