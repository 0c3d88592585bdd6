package trueseam.fitting.repertoire;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import trueseam.fitting.alteration.HemChoice;
import trueseam.fitting.alteration.PanelChoice;
import trueseam.fitting.alteration.PanelGirth;
import trueseam.fitting.alteration.PieceWork;
import trueseam.fitting.alteration.SideGirth;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.PieceKind;

/** Waist and hip of a skirt, each alone or together, at the side seams or by the darts. */
final class SkirtGirth {

    static final Set<PieceKind> SKIRTS = EnumSet.of(PieceKind.SKIRT_FRONT, PieceKind.SKIRT_BACK);

    static final Entry WAIST = Entry.named("skirt waist", Family.SKIRT, Stage.WIDTH, Gore.SKIRTS)
            .solvedFor(Measure.WAIST_GIRTH)
            .folds("the waist of the skirt cuts in or slides down while the hip fits")
            .amount("makes the waist larger", "makes the waist smaller")
            .moves(
                    "the side seams from the waist to the hip, or the legs of the waist darts; in gores the seams between them")
            .sharing(
                    "N/4 on each of four side edges; or N/(2k) on each dart, with k darts in a half; in gores N/2k over k seams")
            .pin("hip point")
            .stays(Stay.all(EdgeRole.SIDE), Stay.all(EdgeRole.HEM), Stay.all(EdgeRole.CENTRE), Stay.all(EdgeRole.PANEL))
            .alsoStays("the hip")
            .lengthens(EdgeRole.WAIST)
            .trued("the waist at the side; the waistband changes by the whole amount")
            .source("common practice; shares [CWU17]; example of a total [SSH]")
            .amounts(25.4, 50.8)
            .variant(
                    "side seams",
                    "when the figure is straighter or more hollow at the side than the pattern",
                    (pattern, mm) -> girth(pattern, mm, 0, HemChoice.CARRIED, PanelChoice.SIDE_SEAMS))
            .variant(
                    "darts",
                    "when the side seam fits and the darts stand full or strain; keeps the side seam as it is; in gores the"
                            + " seams between them hold what darts hold",
                    SkirtGirth::waistInside)
            .written();

    static final Entry HIP = Entry.named("skirt hip", Family.SKIRT, Stage.WIDTH, Gore.SKIRTS)
            .solvedFor(Measure.HIP_GIRTH)
            .folds("lines across at the hip; the skirt rides up and folds below the waist")
            .amount("makes the hip larger", "makes the hip smaller")
            .moves("the side seams from the waist to the hem")
            .sharing("N/4 on each of four side edges; in gores N/2k over all k seams")
            .pin("side waist; below the hip the side hangs straight")
            .stays(
                    Stay.all(EdgeRole.SIDE),
                    Stay.all(EdgeRole.WAIST),
                    Stay.all(EdgeRole.CENTRE),
                    Stay.all(EdgeRole.PANEL))
            .trued("the hem at the side; the hem sweep changes with the hip, or is let back")
            .source("common practice")
            .amounts(25.4, 50.8)
            .variant(
                    "hem carried",
                    "the usual way: the side keeps its slant and the hem takes the whole amount too",
                    (pattern, mm) -> girth(pattern, 0, mm, HemChoice.CARRIED, PanelChoice.ALL_SEAMS))
            .variant(
                    "old hem",
                    "where the hem must keep its sweep: below the hip the side is let back to the old hem",
                    (pattern, mm) -> girth(pattern, 0, mm, HemChoice.LET_BACK, PanelChoice.ALL_SEAMS))
            .written();

    static final Entry BOTH = Entry.named("skirt waist and hip", Family.SKIRT, Stage.WIDTH, Gore.SKIRTS)
            .calledForBy(Measure.WAIST_GIRTH, Measure.HIP_GIRTH)
            .folds("tight or loose alike at waist, hip and hem")
            .amount("makes the whole skirt wider", "makes the whole skirt narrower")
            .moves("the side seams as a whole")
            .sharing("N/4 on each of four side edges; in gores N/2k over all k seams")
            .pin("none: the pattern slides across the grain")
            .stays(Stay.all(EdgeRole.SIDE), Stay.all(EdgeRole.CENTRE), Stay.all(EdgeRole.PANEL))
            .alsoStays("the shape of the side")
            .lengthens(EdgeRole.WAIST)
            .trued("waist and hem at the side; the waistband changes by the whole amount")
            .source("common practice")
            .amounts(25.4, 50.8)
            .doneBy((pattern, mm) -> girth(pattern, mm, mm, HemChoice.CARRIED, PanelChoice.ALL_SEAMS));

    static final Entry ONE_LARGER = Entry.named("one hip larger", Family.SKIRT, Stage.WIDTH, Gore.SKIRTS)
            .calledForBy(Measure.HIP_GIRTH)
            .folds("lines across at one hip only; the hem swings to that side")
            .amount("makes this side larger at the hip", "makes this side smaller at the hip")
            .moves("the side seam of one side, from the waist to the hem")
            .sharing("N/2 on each of the two edges of one side; the other side takes nothing")
            .pin("side waist; below the hip the side hangs straight")
            .stays(
                    Stay.all(EdgeRole.SIDE),
                    Stay.all(EdgeRole.WAIST),
                    Stay.all(EdgeRole.CENTRE),
                    Stay.all(EdgeRole.PANEL))
            .alsoStays("the other side; the pieces can no longer be cut double")
            .trued("the hem at this side")
            .source("common practice")
            .amounts(12.7, 25.4)
            // What two edges of one side share, four edges would share of twice the amount.
            .doneBy((pattern, mm) -> girth(pattern, 0, 2 * mm, HemChoice.CARRIED, PanelChoice.SIDE_SEAMS));

    private SkirtGirth() {}

    private static List<PieceWork> girth(
            Pattern pattern, double waistMm, double hipMm, HemChoice hem, PanelChoice seams) {
        return PanelGirth.isPanelled(pattern)
                ? new PanelGirth(0, waistMm, hipMm, hem, seams).work(pattern)
                : new SideGirth(0, waistMm, hipMm, hem).work(pattern);
    }

    private static List<PieceWork> waistInside(Pattern pattern, double mm) {
        return PanelGirth.isPanelled(pattern)
                ? girth(pattern, mm, 0, HemChoice.CARRIED, PanelChoice.PANEL_SEAMS)
                : WaistDarts.on(SKIRTS).work(pattern, mm);
    }
}
