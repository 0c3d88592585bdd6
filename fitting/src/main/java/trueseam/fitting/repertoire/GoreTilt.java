package trueseam.fitting.repertoire;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import trueseam.fitting.alteration.PieceWork;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.PieceKind;

/**
 * Tilts the waist of half a skirt from nothing at one end to the whole amount at the other, over as many gores as there are: each
 * gore takes what its place between centre and side gives it, and the seams between are drawn anew, both edges of one length.
 *
 * <pre>{@code
 *      ______.------.      one hip higher: up at the side, to nothing at the centre;
 *     |     | |      |     sway-back: down at the centre, to nothing at the side
 *     |     | |      |
 * }</pre>
 */
final class GoreTilt {

    private GoreTilt() {}

    /** Raises the waist at the side, to nothing at the centres, front and back alike. */
    static List<PieceWork> raiseSide(Pattern pattern, double mm) {
        List<List<GoreMove>> halves = new ArrayList<>();
        for (List<Gore> half : Gore.halves(pattern, Gore.SKIRTS::contains)) {
            List<GoreMove> moves = new ArrayList<>();
            double width = width(half);
            double before = 0;
            for (Gore gore : half) {
                double after = before + gore.waistWidth();
                moves.add(new GoreMove(
                        gore,
                        gore.top(gore.inner()),
                        mm * before / width,
                        gore.top(gore.outer()),
                        mm * after / width,
                        0));
                before = after;
            }
            halves.add(moves);
        }
        double sideMm = 0;
        for (List<GoreMove> half : halves) {
            GoreMove last = half.get(half.size() - 1);
            sideMm = Math.max(sideMm, last.gentleMm(last.gore().outer()));
        }
        List<PieceWork> work = new ArrayList<>();
        for (List<GoreMove> half : halves) {
            work.addAll(work(half, OptionalDouble.of(sideMm), false));
        }
        return work;
    }

    /** Raises the waist at the centre, to nothing at the side; the side seam stays as it is. */
    static List<PieceWork> raiseCentre(Pattern pattern, Predicate<PieceKind> which, double mm) {
        List<PieceWork> work = new ArrayList<>();
        for (List<Gore> half : Gore.halves(pattern, which)) {
            List<GoreMove> moves = new ArrayList<>();
            double width = width(half);
            double before = 0;
            for (Gore gore : half) {
                double after = before + gore.waistWidth();
                double innerUp = mm * (1 - before / width);
                double outerUp = mm * (1 - after / width);
                // Beside the side seam the pin is at the side, which stays; elsewhere at the seam towards the centre.
                moves.add(
                        gore.isAtSide()
                                ? new GoreMove(gore, gore.top(gore.outer()), 0, gore.top(gore.inner()), innerUp, 0)
                                : new GoreMove(
                                        gore, gore.top(gore.inner()), innerUp, gore.top(gore.outer()), outerUp, 0));
                before = after;
            }
            work.addAll(work(moves, OptionalDouble.empty(), true));
        }
        return work;
    }

    private static double width(List<Gore> half) {
        return half.stream().mapToDouble(Gore::waistWidth).sum();
    }

    /** Both edges of a seam between gores get the length of the one that needs more. */
    private static List<PieceWork> work(List<GoreMove> half, OptionalDouble sideMm, boolean centreMoves) {
        Map<SeamLine, OptionalDouble> seamMm = new HashMap<>();
        for (int i = 1; i < half.size(); i++) {
            GoreMove one = half.get(i - 1);
            GoreMove other = half.get(i);
            double mm = Math.max(
                    one.gentleMm(one.gore().outer()),
                    other.gentleMm(other.gore().inner()));
            seamMm.put(one.gore().outer(), OptionalDouble.of(mm));
            seamMm.put(other.gore().inner(), OptionalDouble.of(mm));
        }
        List<PieceWork> work = new ArrayList<>();
        for (GoreMove move : half) {
            Gore gore = move.gore();
            StepList list = new StepList(gore.piece());
            move.slideAndPivot(list);
            move.traceWaist(list);
            for (SeamLine seam : List.of(gore.inner(), gore.outer())) {
                move.join(
                        list,
                        seam,
                        seam.edge.role() == EdgeRole.SIDE ? sideMm : seamMm.getOrDefault(seam, OptionalDouble.empty()));
            }
            if (centreMoves && gore.isAtCentre()) {
                list.add(new Step.Straighten(gore.inner().edge.name()));
            }
            work.add(new PieceWork(gore.piece().name(), list.finished()));
        }
        return work;
    }
}
