package trueseam.fitting.truing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import trueseam.fitting.alteration.PieceWork;
import trueseam.fitting.tissue.AlteredPiece;
import trueseam.fitting.tissue.Run;
import trueseam.fitting.tissue.Step;
import trueseam.garment.pattern.EdgeRef;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;

/** Writes down the truing of an altered pattern. */
public final class Truing {

    /** Ends nearer than this are left: what walking the seams may still move keeps within the 0.5 mm that a trued pattern may show. */
    private static final double LEAVE_LEVEL_MM = 0.02;

    private Truing() {}

    /**
     * Compares where the ends of side seams were and are.
     *
     * @param original the pattern before
     * @param altered the pattern after
     * @param openings where pieces were cut and opened
     * @return every pair of ends that meet when sewn, with how far each went
     */
    public static List<LevelShift> levels(Pattern original, Pattern altered, List<Opening> openings) {
        List<LevelShift> shifts = new ArrayList<>();
        for (SeamEnds ends : SeamEnds.of(original)) {
            Piece first = original.piece(ends.first().piece());
            if (first.edge(ends.first().edge()).role() != EdgeRole.SIDE) {
                continue;
            }
            shifts.add(new LevelShift(
                    ends.seam(),
                    ends.word(),
                    ends.first(),
                    ends.firstCorner(altered).y()
                            - ends.firstCorner(original).y()
                            - opened(openings, ends.first(), ends.firstAtStart()),
                    ends.second(),
                    ends.secondCorner(altered).y()
                            - ends.secondCorner(original).y()
                            - opened(openings, ends.second(), ends.secondAtStart()),
                    ends));
        }
        return List.copyOf(shifts);
    }

    /** How far openings carried a corner up. */
    private static double opened(List<Opening> openings, EdgeRef ref, boolean atStart) {
        double up = 0;
        for (Opening opening : openings) {
            if (opening.before().name().equals(ref.piece())) {
                up += SeamEnds.corner(opening.after(), ref.edge(), atStart).y()
                        - SeamEnds.corner(opening.before(), ref.edge(), atStart).y();
            }
        }
        return up;
    }

    /**
     * Slides the two side edges of a seam so that front and back meet half way at the top. Where a dart divides one of them, the
     * parts above and below it slide by their own amounts and the dart takes the difference, so that the other end meets too; the
     * sewn lengths stay as they are.
     *
     * @param pieces the altered pieces
     * @param altered the altered pattern
     * @param levels what {@link #levels} found
     * @return the work; none where the ends are level
     */
    public static List<PieceWork> levelWork(List<AlteredPiece> pieces, Pattern altered, List<LevelShift> levels) {
        List<PieceWork> work = new ArrayList<>();
        for (int i = 0; i < levels.size(); i++) {
            for (int j = i + 1; j < levels.size(); j++) {
                LevelShift one = levels.get(i);
                LevelShift other = levels.get(j);
                boolean apart = Math.max(Math.abs(one.apartMm()), Math.abs(other.apartMm())) > LEAVE_LEVEL_MM;
                if (apart && one.seam().equals(other.seam()) && isCarried(pieces, one) && isCarried(pieces, other)) {
                    boolean firstIsTop = one.firstCorner(altered).y()
                            > other.firstCorner(altered).y();
                    level(altered, firstIsTop ? one : other, firstIsTop ? other : one, work);
                }
            }
        }
        return work;
    }

    private static void level(Pattern altered, LevelShift top, LevelShift bottom, List<PieceWork> work) {
        SideSlide first =
                new SideSlide(altered.piece(top.first().piece()), top.first().edge());
        SideSlide second =
                new SideSlide(altered.piece(top.second().piece()), top.second().edge());
        boolean divided = first.isDivided() || second.isDivided();
        // Undivided edges can only be slid whole: the two ends then share what is left.
        double atTop = divided ? top.apartMm() / 2 : (top.apartMm() + bottom.apartMm()) / 4;
        double rest = bottom.apartMm() - top.apartMm();
        double firstBelow = first.isDivided() ? rest / (second.isDivided() ? 2 : 1) : 0;
        double secondBelow = second.isDivided() ? rest - firstBelow : 0;
        work.add(first.work(-atTop, -atTop - firstBelow));
        work.add(second.work(atTop, atTop + secondBelow));
    }

    /** Only an edge that the alteration moved as a whole may be slid again. */
    private static boolean isCarried(List<AlteredPiece> pieces, LevelShift shift) {
        for (AlteredPiece piece : pieces) {
            for (Run run : piece.runs()) {
                boolean concerned = isOf(shift.first(), piece, run) || isOf(shift.second(), piece, run);
                if (concerned && run.isKept()) {
                    return false;
                }
            }
        }
        return true;
    }

    private static boolean isOf(EdgeRef ref, AlteredPiece piece, Run run) {
        return piece.now().name().equals(ref.piece()) && run.edge().equals(ref.edge());
    }

    /**
     * Draws smooth what the pivots bent.
     *
     * @param pieces the altered pieces
     * @return the work on each piece that has a bend to draw over
     */
    public static List<PieceWork> smoothingWork(List<AlteredPiece> pieces) {
        List<PieceWork> work = new ArrayList<>();
        for (AlteredPiece piece : pieces) {
            if (piece.isAltered()) {
                List<Step> steps = new Smoothing(piece).steps();
                if (!steps.isEmpty()) {
                    work.add(new PieceWork(piece.now().name(), steps));
                }
            }
        }
        return work;
    }

    /**
     * Gives seams back the little that smoothing took from their length.
     *
     * @param original the pattern before
     * @param altered the altered pattern
     * @param capEaseAsked whether a change of cap ease was asked for: then the armhole does not follow the cap
     * @param meantMm by how much an edge was made longer on purpose, mm
     * @return the work; none where every seam walks as before
     */
    public static List<PieceWork> walkWork(
            Pattern original, Pattern altered, boolean capEaseAsked, ToDoubleFunction<EdgeRef> meantMm) {
        return new WalkTruing(original, altered, capEaseAsked, meantMm).work();
    }
}
