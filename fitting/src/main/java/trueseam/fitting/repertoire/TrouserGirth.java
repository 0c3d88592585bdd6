package trueseam.fitting.repertoire;

import java.util.EnumSet;
import java.util.Set;
import trueseam.fitting.alteration.HemChoice;
import trueseam.fitting.alteration.SideGirth;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.StepList;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;

/** Waist and hip of trousers. */
final class TrouserGirth {

    static final Set<PieceKind> TROUSERS = EnumSet.of(PieceKind.TROUSER_FRONT, PieceKind.TROUSER_BACK);

    static final Entry WAIST = Entry.named(
                    "trouser waist", Family.TROUSERS, Stage.WIDTH, PieceKind.TROUSER_FRONT, PieceKind.TROUSER_BACK)
            .solvedFor(Measure.WAIST_GIRTH)
            .folds("the waist cuts in or stands away while the hip fits")
            .amount("makes the waist larger", "makes the waist smaller")
            .moves("the side seams above the hip, or the legs of the darts, or the centre back seam")
            .sharing("N/4 on each of four side edges; or N/(2k) on each dart; or N/2 on each centre back edge")
            .pin("hip point; for the centre back: the centre seam at the hip line")
            .stays(Stay.all(EdgeRole.SIDE), Stay.all(EdgeRole.INSEAM), Stay.all(EdgeRole.HEM))
            .alsoStays("the hip")
            .lengthens(EdgeRole.WAIST)
            .trued("the waist at the side or at the centre back; the waistband changes by the whole amount")
            .source("common practice; shares [CWU17]")
            .amounts(25.4, 50.8)
            .variant(
                    "side seams",
                    "when the figure is straighter or more hollow at the side than the pattern",
                    (pattern, mm) -> new SideGirth(0, mm, 0, HemChoice.CARRIED).work(pattern))
            .variant(
                    "darts",
                    "when the side seam fits and the darts stand full or strain; keeps the side seam as it is",
                    WaistDarts.on(TROUSERS))
            .variant(
                    "centre back",
                    "when only the back stands away or strains: the seam that tailors leave to let out",
                    Maker.each(Set.of(PieceKind.TROUSER_BACK), TrouserGirth::centreBack))
            .written();

    static final Entry HIP = Entry.named(
                    "trouser hip", Family.TROUSERS, Stage.WIDTH, PieceKind.TROUSER_FRONT, PieceKind.TROUSER_BACK)
            .solvedFor(Measure.HIP_GIRTH)
            .folds("lines across at the hip; the pockets gape")
            .amount("makes the hip larger", "makes the hip smaller")
            .moves("the side seams from the waist over the hip to the knee")
            .sharing("N/4 on each of four side edges")
            .pin("side waist; then hip point; then knee")
            .stays(Stay.all(EdgeRole.WAIST), Stay.all(EdgeRole.CROTCH), Stay.all(EdgeRole.INSEAM))
            .trued(
                    "the side is blended at hip and knee and let down at the hem until the hem is level; front and back alike")
            .source("common practice")
            .amounts(25.4, 50.8)
            .doneBy((pattern, mm) -> new SideGirth(0, 0, mm, HemChoice.CARRIED).work(pattern));

    private TrouserGirth() {}

    private static void centreBack(StepList list, Piece piece, double mm) {
        SeamLine seam = new SeamLine(piece, EdgeRole.CROTCH);
        Place hip = seam.at(LevelName.HIP, "centre back at the hip line");
        seam.swing(list, hip, seam.top("centre back waist"), mm / 2);
        seam.joinBeside(list, EdgeRole.WAIST, true);
    }
}
