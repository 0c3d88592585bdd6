package trueseam.fitting.alteration;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trueseam.fitting.tissue.Direction;
import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.StepList;
import trueseam.fitting.tissue.Stretch;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Point;

/** The side edge of a piece, or another that runs from top to bottom, and what lies beside it, whichever way the piece is turned on the paper. */
final class Flank {

    private static final double SAME_PLACE_MM = 1e-6;

    /** A line redrawn towards the side begins no farther away than this share of its edge. */
    private static final double FARTHEST_SHARE = 0.6;

    /** The same where the other end of that edge is redrawn too: some of it must stay between. */
    private static final double FARTHEST_OF_TWO = 0.4;

    final Piece piece;
    final Edge side;
    final boolean upwards;
    private final double farthest;

    Flank(Piece piece) {
        this(piece, piece.only(EdgeRole.SIDE), FARTHEST_SHARE);
    }

    private Flank(Piece piece, Edge edge, double farthest) {
        this.piece = piece;
        this.side = edge;
        this.farthest = farthest;
        this.upwards = side.path().end().y() > side.path().start().y();
    }

    /** Several edges of one piece that run from top to bottom. */
    static List<Flank> of(Piece piece, List<Edge> edges) {
        double farthest = edges.size() > 1 ? FARTHEST_OF_TWO : FARTHEST_SHARE;
        return edges.stream().map(edge -> new Flank(piece, edge, farthest)).toList();
    }

    /** +1 where the outside lies to the right. The outline is anticlockwise, so an upward side has its outside there. */
    double outward() {
        return upwards ? 1 : -1;
    }

    Place top(String word) {
        return upwards ? Place.endOf(piece, side.name(), word) : Place.startOf(side.name(), word);
    }

    Place bottom(String word) {
        return upwards ? Place.startOf(side.name(), word) : Place.endOf(piece, side.name(), word);
    }

    /** The raglan seam that begins at the top of this edge, if there is one. */
    Optional<Edge> raglan() {
        Point corner = top("").on(piece);
        return piece.edgesOf(EdgeRole.RAGLAN).stream()
                .filter(edge -> edge.path().start().isNear(corner, SAME_PLACE_MM)
                        || edge.path().end().isNear(corner, SAME_PLACE_MM))
                .findFirst();
    }

    /** The place of the side edge at a level; nothing where the level is missing or off the edge. */
    OptionalDouble alongAt(LevelName level) {
        OptionalDouble y = piece.level(level);
        if (y.isEmpty()) {
            return OptionalDouble.empty();
        }
        var place = side.path().atLevel(y.getAsDouble());
        return place.isPresent() ? OptionalDouble.of(place.get().alongMm()) : OptionalDouble.empty();
    }

    /** A level of the piece on the side edge, to be moved out by an amount. */
    SideLevel level(LevelName level, String word, String mark, double outMm) {
        double along = alongAt(level)
                .orElseThrow(() -> new AlterationException(
                        piece.name(),
                        side.name(),
                        outMm,
                        "the " + level.word() + " level does not cross this edge; mark the level on the piece."));
        return new SideLevel(new Place(side.name(), along, word), mark, outMm);
    }

    /** Traces the side edge between two places of it, in whichever order they come. */
    void trace(StepList list, double oneMm, double otherMm) {
        list.trace(side.name(), Math.min(oneMm, otherMm), Math.max(oneMm, otherMm));
    }

    /**
     * Joins the edge that meets the side at a corner: from the corner to the nearest dart, or well into the edge where
     * there is none. Corners and dart legs keep their angles.
     */
    void joinBeside(StepList list, EdgeRole role, boolean atTop) {
        Point corner = (atTop ? top("") : bottom("")).on(piece);
        for (Edge edge : piece.edgesOf(role)) {
            boolean starts = edge.path().start().isNear(corner, SAME_PLACE_MM);
            if (starts || edge.path().end().isNear(corner, SAME_PLACE_MM)) {
                Stretch gap = gapBeside(edge, starts);
                list.join(
                        edge.name(), gap.fromMm(), gap.toMm(), JoinForm.curve(Direction.AS_DRAWN, Direction.AS_DRAWN));
                return;
            }
        }
    }

    private Stretch gapBeside(Edge edge, boolean atStart) {
        List<Dart.EdgeDart> darts = piece.dartsOn(edge.name());
        double whole = edge.length();
        if (atStart) {
            double to = darts.isEmpty() ? whole * farthest : darts.get(0).fromMm();
            return new Stretch(edge.name(), 0, to);
        }
        double from = darts.isEmpty()
                ? whole * (1 - farthest)
                : darts.get(darts.size() - 1).toMm();
        return new Stretch(edge.name(), from, whole);
    }
}
