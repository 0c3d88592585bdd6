package trueseam.fitting.follow;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trueseam.fitting.alteration.PieceWork;
import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.fitting.tissue.Stretch;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRef;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;
import trueseam.garment.pattern.Seam;
import trueseam.geometry.Path;
import trueseam.geometry.Point;

/**
 * Facings and linings: they take the same changes at the same places as the piece that they face or line ([DM1911]). A facing lies on
 * its piece with a part of the same outline, and is drawn anew by tracing the altered piece; its free edge keeps its shape between new
 * ends. A lining has the outline of its piece.
 */
public final class Facings {

    /** How nearly an edge of a facing lies on the outline of its piece, mm. */
    private static final double ON_MM = 0.5;

    /** A line nearer to where it was than this is not drawn anew. */
    private static final double SAME_MM = 1e-6;

    private Facings() {}

    /**
     * The work on the facings of pieces that were altered.
     *
     * @param original the pattern before
     * @param altered the pattern after, facings not yet
     * @return the work; none where nothing that is faced was altered
     */
    public static List<PieceWork> work(Pattern original, Pattern altered) {
        List<PieceWork> work = new ArrayList<>();
        for (Piece facing : original.pieces()) {
            if (facing.kind() == PieceKind.FACING) {
                facedBy(original, facing).ifPresent(faced -> {
                    StepList list = drawnAnew(facing, original.piece(faced), altered.piece(faced));
                    if (!list.isEmpty()) {
                        work.add(new PieceWork(facing.name(), list.finished()));
                    }
                });
            }
        }
        return work;
    }

    /**
     * The piece that a lining lines.
     *
     * @param pattern the pattern before anything was altered
     * @param lining a piece
     * @return the piece of the same outline; nothing if it is no lining or lines nothing here
     */
    public static Optional<Piece> linedBy(Pattern pattern, Piece lining) {
        if (lining.kind() != PieceKind.LINING) {
            return Optional.empty();
        }
        return pattern.pieces().stream()
                .filter(piece -> piece.kind() != PieceKind.LINING
                        && piece.edges().equals(lining.edges())
                        && piece.darts().equals(lining.darts()))
                .findFirst();
    }

    private static Optional<String> facedBy(Pattern pattern, Piece facing) {
        for (Seam seam : pattern.seams()) {
            for (EdgeRef ref : seam.second()) {
                if (ref.piece().equals(facing.name()) && seam.first().size() == 1) {
                    return Optional.of(seam.first().get(0).piece());
                }
            }
        }
        return Optional.empty();
    }

    private static StepList drawnAnew(Piece facing, Piece before, Piece after) {
        StepList list = new StepList(facing);
        Folded folded = new Folded(before, after);
        boolean moved = false;
        for (Edge edge : facing.edges()) {
            Stretch whole = new Stretch(edge.name(), 0, edge.length());
            Optional<Path> line = shared(edge, before, folded);
            if (line.isPresent()) {
                moved |= !isSame(line.get(), edge.path());
                list.add(new Step.TraceOver(after.name(), whole, line.get()));
            } else {
                list.join(edge.name(), 0, edge.length(), JoinForm.REFIT);
            }
        }
        return moved ? list : new StepList(facing);
    }

    private static boolean isSame(Path one, Path other) {
        return one.start().isNear(other.start(), SAME_MM)
                && one.end().isNear(other.end(), SAME_MM)
                && Math.abs(one.length() - other.length()) <= SAME_MM;
    }

    /** The line of the altered piece where this edge lies on it: from the same end, over the same length. */
    private static Optional<Path> shared(Edge edge, Piece before, Folded after) {
        for (Edge faced : before.edgesOf(edge.role())) {
            double from = on(faced.path(), edge.path().start());
            double to = on(faced.path(), edge.path().end());
            double middle = on(faced.path(), edge.path().pointAt(edge.length() / 2));
            if (from >= 0 && to > from && middle >= 0) {
                Path now = after.path(faced);
                boolean atStart = from <= ON_MM;
                boolean atEnd = to >= faced.length() - ON_MM;
                double length = to - from;
                if (atStart && atEnd) {
                    return Optional.of(now);
                }
                double start = atStart ? 0 : atEnd ? now.length() - length : from * now.length() / faced.length();
                return Optional.of(now.part(Math.max(0, start), Math.min(now.length(), start + length)));
            }
        }
        return Optional.empty();
    }

    private static double on(Path path, Point p) {
        var place = path.nearest(p);
        return place.point().distanceTo(p) <= ON_MM ? place.alongMm() : -1;
    }
}
