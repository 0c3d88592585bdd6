package trueseam.fitting.repertoire;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import trueseam.fitting.alteration.AlterationException;
import trueseam.fitting.alteration.PieceWork;
import trueseam.fitting.tissue.Spot;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.fitting.tissue.Until;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.PieceKind;

/**
 * Full abdomen and large seat where front or back are in gores: what {@link UpperSwing} does to a piece with darts. Above the hip line
 * the gore at the side swings about the hip of the side seam, so that its waist comes up and out; the waist of the gores towards the
 * centre tilts up as much more; and the seam between takes what a dart would take.
 *
 * <pre>{@code
 *     ______.  .---.W      the centre rises, the side goes out a little at the waist,
 *    |      | /     \      the seam beside the centre gore takes what a dart would
 *    |      |/-------H     cut along the hip line to the hinge at the side
 *    |      ||       |
 * }</pre>
 */
final class GoreSwing {

    /** How exactly both edges of a seam are made one length before they are drawn, mm: finer than any seam is walked. */
    private static final double SAME_LENGTH_MM = 1e-6;

    /** How far from its share of the amount a waist may be tilted so that its seam gets the length of the other edge, mm. */
    private static final double REACH_MM = 15;

    private GoreSwing() {}

    /**
     * Writes the steps down.
     *
     * @param upMm how far the waist rises at the centre, mm
     * @param wideMm how far the side goes out from the hip down, mm
     */
    static List<PieceWork> work(Pattern pattern, Predicate<PieceKind> which, double upMm, double wideMm) {
        List<PieceWork> work = new ArrayList<>();
        for (List<Gore> half : Gore.halves(pattern, which)) {
            work.addAll(half(half, upMm, wideMm));
        }
        return work;
    }

    private static List<PieceWork> half(List<Gore> half, double upMm, double wideMm) {
        List<PieceWork> work = new ArrayList<>();
        double width = half.stream().mapToDouble(Gore::waistWidth).sum();
        Gore last = half.get(half.size() - 1);
        double up = upMm * last.waistWidth() / width;
        GoreMove move = new GoreMove(
                last,
                last.hip(last.outer()),
                0,
                last.top(last.inner()),
                up,
                last.outer().outward() * wideMm);
        move.requireHolds(last.outer(), upMm);
        move.requireHolds(last.inner(), upMm);
        double seamMm = move.gentleMm(last.inner());
        work.add(atSide(move, wideMm, seamMm));
        double covered = last.waistWidth();
        for (int i = half.size() - 2; i >= 0; i--) {
            Gore gore = half.get(i);
            covered += gore.waistWidth();
            double innerUp = upMm * covered / width;
            double outerUp = upMm * (covered - gore.waistWidth()) / width;
            GoreMove tilt = outerOfLength(gore, innerUp, outerUp, seamMm, upMm);
            tilt.requireHolds(gore.outer(), upMm);
            double innerMm = tilt.gentleMm(gore.inner());
            work.add(towardsCentre(tilt, seamMm, innerMm));
            seamMm = innerMm;
        }
        return work;
    }

    /** The side from the hip down slides out; above the hip the gore swings, and its waist is traced. */
    private static PieceWork atSide(GoreMove move, double wideMm, double seamMm) {
        Gore gore = move.gore();
        StepList list = new StepList(gore.piece());
        if (wideMm != 0) {
            list.add(new Step.Slide(gore.outer().outward() * wideMm, 0));
            list.trace(gore.outer().bottom(""), move.pin());
            gore.outer().joinBeside(list, EdgeRole.HEM, false);
            list.add(new Step.LayBack());
        }
        list.cut("upper part", gore.hip(gore.inner()), List.of(), move.pin(), gore.top(gore.inner()));
        list.add(new Step.Spread(
                Spot.of(gore.piece(), move.pin()),
                new Until.MovesAlong(Spot.of(gore.piece(), move.moved()), move.movedUpMm())));
        if (wideMm != 0) {
            list.add(new Step.Slide(move.acrossMm(), 0));
        }
        list.trace(move.pin(), gore.outer().top(""));
        move.traceWaist(list);
        move.join(list, gore.inner(), OptionalDouble.of(seamMm));
        return new PieceWork(gore.piece().name(), list.finished());
    }

    private static PieceWork towardsCentre(GoreMove tilt, double outerMm, double innerMm) {
        Gore gore = tilt.gore();
        StepList list = new StepList(gore.piece());
        tilt.slideAndPivot(list);
        tilt.traceWaist(list);
        tilt.join(list, gore.outer(), OptionalDouble.of(outerMm));
        if (gore.isAtCentre()) {
            list.add(new Step.Straighten(gore.inner().edge.name()));
        } else {
            tilt.join(list, gore.inner(), OptionalDouble.of(innerMm));
        }
        return new PieceWork(gore.piece().name(), list.finished());
    }

    /** How the waist of a gore tilts so that its outer seam gets the length of what it is sewn to: found by halving. */
    private static GoreMove outerOfLength(Gore gore, double innerUp, double shareUp, double seamMm, double amountMm) {
        double low = shareUp - REACH_MM;
        double high = shareUp + REACH_MM;
        if (tilted(gore, innerUp, low).gentleMm(gore.outer()) > seamMm
                || tilted(gore, innerUp, high).gentleMm(gore.outer()) < seamMm) {
            throw new AlterationException(
                    gore.piece().name(),
                    gore.outer().edge.name(),
                    amountMm,
                    "the gore cannot be tilted so far; take less here and the rest at the side seams, or take the next size.");
        }
        while (high - low > SAME_LENGTH_MM) {
            double middle = (low + high) / 2;
            if (tilted(gore, innerUp, middle).gentleMm(gore.outer()) < seamMm) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return tilted(gore, innerUp, (low + high) / 2);
    }

    private static GoreMove tilted(Gore gore, double innerUp, double outerUp) {
        return new GoreMove(gore, gore.top(gore.inner()), innerUp, gore.top(gore.outer()), outerUp, 0);
    }
}
