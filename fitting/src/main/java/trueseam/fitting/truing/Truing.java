package trueseam.fitting.truing;

import java.util.ArrayList;
import java.util.List;
import trueseam.fitting.alteration.PieceWork;
import trueseam.fitting.tissue.AlteredPiece;
import trueseam.fitting.tissue.Direction;
import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.Run;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRef;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;

/** Writes down the truing of an altered pattern. */
public final class Truing {

    /** Ends nearer than this are left: half of the 0.5 mm that a trued pattern may show. */
    private static final double LEAVE_LEVEL_MM = 0.25;

    /** How much of the edge beside is drawn new into a levelled corner. */
    private static final double BESIDE_MM = 40;

    private Truing() {}

    /**
     * Compares where the ends of side seams were and are.
     *
     * @param original the pattern before
     * @param altered the pattern after
     * @return every pair of ends that meet when sewn, with how far each went
     */
    public static List<LevelShift> levels(Pattern original, Pattern altered) {
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
                    ends.firstCorner(altered).y() - ends.firstCorner(original).y(),
                    ends.second(),
                    ends.secondCorner(altered).y() - ends.secondCorner(original).y()));
        }
        return List.copyOf(shifts);
    }

    /**
     * Slides the two side edges of a seam so that front and back meet half way.
     *
     * @param pieces the altered pieces
     * @param altered the altered pattern
     * @param levels what {@link #levels} found
     * @return the work; none where the ends are level
     */
    public static List<PieceWork> levelWork(List<AlteredPiece> pieces, Pattern altered, List<LevelShift> levels) {
        List<PieceWork> work = new ArrayList<>();
        for (int i = 0; i < levels.size(); i++) {
            LevelShift one = levels.get(i);
            for (int j = i + 1; j < levels.size(); j++) {
                LevelShift other = levels.get(j);
                if (one.seam().equals(other.seam()) && isCarried(pieces, one) && isCarried(pieces, other)) {
                    double apart = (one.apartMm() + other.apartMm()) / 2;
                    if (Math.max(Math.abs(one.apartMm()), Math.abs(other.apartMm())) > LEAVE_LEVEL_MM) {
                        work.add(slide(
                                altered.piece(one.first().piece()), one.first().edge(), -apart / 2));
                        work.add(slide(
                                altered.piece(one.second().piece()),
                                one.second().edge(),
                                apart / 2));
                    }
                }
            }
        }
        return work;
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

    private static PieceWork slide(Piece piece, String side, double upMm) {
        StepList list = new StepList(piece);
        list.add(new Step.Slide(0, upMm));
        list.trace(side, 0, piece.edge(side).length());
        joinBeside(list, piece, SeamEnds.beside(piece, side, true), false);
        joinBeside(list, piece, SeamEnds.beside(piece, side, false), true);
        return new PieceWork(piece.name(), list.finished());
    }

    private static void joinBeside(StepList list, Piece piece, Edge edge, boolean atItsStart) {
        double whole = edge.length();
        double reach = Math.min(BESIDE_MM, whole / 3);
        double from = atItsStart ? 0 : whole - reach;
        double to = atItsStart ? reach : whole;
        for (Dart.EdgeDart dart : piece.dartsOn(edge.name())) {
            if (atItsStart) {
                to = Math.min(to, dart.fromMm());
            } else {
                from = Math.max(from, dart.toMm());
            }
        }
        list.join(edge.name(), from, to, JoinForm.curve(Direction.AS_DRAWN, Direction.AS_DRAWN));
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
}
