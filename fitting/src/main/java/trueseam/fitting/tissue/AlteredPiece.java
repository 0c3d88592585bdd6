package trueseam.fitting.tissue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Motion;

/**
 * A piece on its way through several alterations: what it was, what it is, and for every part of its outline now, which
 * line of the original was traced there and how the pattern lay in all.
 *
 * @param original the piece before anything was altered
 * @param now the piece after the work so far
 * @param runs the outline of {@code now} in order
 */
public record AlteredPiece(Piece original, Piece now, List<Run> runs) {

    private static final double NOTHING_MM = 1e-9;

    // Immutable.
    public AlteredPiece {
        runs = List.copyOf(runs);
    }

    /**
     * A piece that nothing was done to yet.
     *
     * @param piece the piece
     * @return the piece, all kept
     */
    public static AlteredPiece of(Piece piece) {
        List<Run> runs = new ArrayList<>();
        for (Edge edge : piece.edges()) {
            Stretch whole = new Stretch(edge.name(), 0, edge.length());
            runs.add(new Run(edge.name(), 0, edge.length(), Optional.of(new Run.Origin(whole, Motion.NONE))));
        }
        return new AlteredPiece(piece, piece, runs);
    }

    /**
     * Does more work on the piece.
     *
     * @param steps a finished list for the piece as it is now
     * @return the piece after them
     * @throws TissueException if the steps cannot be carried out
     */
    public AlteredPiece then(List<Step> steps) {
        Worked worked = Tissue.work(now, steps);
        List<Run> composed = new ArrayList<>();
        for (Run run : worked.runs()) {
            if (run.origin().isEmpty()) {
                composed.add(run);
            } else {
                compose(run, run.origin().get(), composed);
            }
        }
        return new AlteredPiece(original, worked.piece(), merged(composed));
    }

    /** A traced part may run over several earlier runs: each keeps its own origin, moved once more. */
    private void compose(Run run, Run.Origin origin, List<Run> composed) {
        Stretch traced = origin.stretch();
        for (Run earlier : runs) {
            if (!earlier.edge().equals(traced.edge())) {
                continue;
            }
            double from = Math.max(earlier.fromMm(), traced.fromMm());
            double to = Math.min(earlier.toMm(), traced.toMm());
            if (to - from <= NOTHING_MM) {
                continue;
            }
            double shift = run.fromMm() - traced.fromMm();
            composed.add(new Run(
                    run.edge(), from + shift, to + shift, earlier.origin().map(first -> {
                        double back = first.stretch().fromMm() - earlier.fromMm();
                        Stretch part = new Stretch(first.stretch().edge(), from + back, to + back);
                        return new Run.Origin(part, first.motion().then(origin.motion()));
                    })));
        }
    }

    /** Neighbours of one origin and one motion are one run again. */
    private static List<Run> merged(List<Run> runs) {
        List<Run> out = new ArrayList<>();
        for (Run run : runs) {
            Run last = out.isEmpty() ? null : out.get(out.size() - 1);
            if (last != null && last.edge().equals(run.edge()) && continues(last, run)) {
                out.set(out.size() - 1, join(last, run));
            } else {
                out.add(run);
            }
        }
        return out;
    }

    private static boolean continues(Run last, Run run) {
        if (last.isDrawn() || run.isDrawn()) {
            return last.isDrawn() && run.isDrawn();
        }
        Run.Origin a = last.origin().get();
        Run.Origin b = run.origin().get();
        return a.motion().equals(b.motion())
                && a.stretch().edge().equals(b.stretch().edge())
                && Math.abs(a.stretch().toMm() - b.stretch().fromMm()) <= NOTHING_MM;
    }

    private static Run join(Run last, Run run) {
        return new Run(
                last.edge(),
                last.fromMm(),
                run.toMm(),
                last.origin()
                        .map(a -> new Run.Origin(
                                new Stretch(
                                        a.stretch().edge(),
                                        a.stretch().fromMm(),
                                        run.origin().orElseThrow().stretch().toMm()),
                                a.motion())));
    }

    /**
     * Whether anything of the outline is not where it was.
     *
     * @return true if the piece was altered
     */
    public boolean isAltered() {
        for (Run run : runs) {
            if (!run.isKept()) {
                return true;
            }
        }
        return false;
    }
}
