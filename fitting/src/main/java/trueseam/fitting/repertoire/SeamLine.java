package trueseam.fitting.repertoire;

import java.util.List;
import java.util.OptionalDouble;
import trueseam.fitting.alteration.AlterationException;
import trueseam.fitting.tissue.Direction;
import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.fitting.tissue.Until;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.PathPlace;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.geometry.join.Joining;

/**
 * A seam that runs down the body, such as a side seam, an inseam or a crotch seam, whichever way its piece lies: its places from the
 * top, and the pivots that bring it out or in, each pinned at the place above.
 */
final class SeamLine {

    private static final double SAME_PLACE_MM = 1e-6;

    /** A line redrawn towards a corner begins no farther away than this share of its edge: the middle stays. */
    private static final double FARTHEST_SHARE = 0.4;

    final Piece piece;
    final Edge edge;
    private final boolean upwards;

    SeamLine(Piece piece, EdgeRole role) {
        this(piece, piece.only(role));
    }

    SeamLine(Piece piece, Edge edge) {
        this.piece = piece;
        this.edge = edge;
        this.upwards = edge.path().end().y() > edge.path().start().y();
    }

    /** +1 where the outside lies to the right. The outline is anticlockwise, so an upward edge has its outside there. */
    double outward() {
        return upwards ? 1 : -1;
    }

    Place top(String word) {
        return upwards ? Place.endOf(piece, edge.name(), word) : Place.startOf(edge.name(), word);
    }

    Place bottom(String word) {
        return upwards ? Place.startOf(edge.name(), word) : Place.endOf(piece, edge.name(), word);
    }

    /** Where a marked level crosses it. */
    Place at(LevelName level, String word) {
        OptionalDouble y = piece.level(level);
        if (y.isEmpty()) {
            throw new AlterationException(
                    piece.name(), level.word() + " level", 0, "the piece has no such level; mark it on the piece.");
        }
        return atHeight(y.getAsDouble(), word);
    }

    Place atHeight(double y, String word) {
        double along = edge.path()
                .atLevel(y)
                .map(PathPlace::alongMm)
                .orElseThrow(() -> new AlterationException(
                        piece.name(),
                        edge.name(),
                        0,
                        "the line through the " + word
                                + " does not cross this edge; mark the levels of the piece anew."));
        return new Place(edge.name(), along, word);
    }

    /** So far from the bottom, along the seam. */
    Place aboveBottom(double mm, String word) {
        return new Place(edge.name(), upwards ? mm : edge.length() - mm, word);
    }

    Place between(Place one, Place other, double share, String word) {
        return new Place(edge.name(), one.alongMm() + share * (other.alongMm() - one.alongMm()), word);
    }

    /** The direction upwards along it at a place. */
    Vec upwardsAt(Place place) {
        Path path = edge.path();
        Vec tangent =
                place.alongMm() >= path.length() - SAME_PLACE_MM ? path.endTangent() : path.tangentAt(place.alongMm());
        return upwards ? tangent : tangent.times(-1);
    }

    /** Pins the pattern, pivots it until a place has come out so far from where it lay at first, and traces between. */
    void swing(StepList list, Place pin, Place moved, double outMm) {
        String mark = moved.word() + " mark";
        list.add(new Step.Mark(mark, moved, outward() * outMm, 0));
        list.add(new Step.Pin(pin));
        list.add(new Step.Pivot(new Until.MeetsAcross(moved, mark)));
        list.trace(pin, moved);
    }

    /** Pins the pattern, lets it hang straight again, traces down to the lower end, and joins what meets it there. */
    void hang(StepList list, Place pin, EdgeRole below) {
        list.add(new Step.Pin(pin));
        list.add(new Step.Pivot(new Until.GrainUpright()));
        list.trace(pin, bottom(""));
        joinBeside(list, below, false);
    }

    /** Joins the edge that meets this one at its upper or lower end: from the corner to the nearest dart, or well into the edge. */
    void joinBeside(StepList list, EdgeRole role, boolean atTop) {
        Point corner = (atTop ? top("") : bottom("")).on(piece);
        for (Edge beside : piece.edgesOf(role)) {
            boolean starts = beside.path().start().isNear(corner, SAME_PLACE_MM);
            if (starts || beside.path().end().isNear(corner, SAME_PLACE_MM)) {
                List<Dart.EdgeDart> darts = piece.dartsOn(beside.name());
                double whole = beside.length();
                double reach = whole * FARTHEST_SHARE;
                double from = starts
                        ? 0
                        : darts.isEmpty()
                                ? whole - reach
                                : darts.get(darts.size() - 1).toMm();
                double to =
                        !starts ? whole : darts.isEmpty() ? reach : darts.get(0).fromMm();
                list.join(beside.name(), from, to, JoinForm.curve(Direction.AS_DRAWN, Direction.AS_DRAWN));
                return;
            }
        }
    }

    /** How far inside the line of its direction at a place that stays the end of it comes to lie that swings; minus is outside: hollow. */
    double bulgeMm(Place stays, Place swings, Motion swing) {
        Vec reach = swing.apply(swings.on(piece)).minus(stays.on(piece));
        return outward() * upwardsAt(stays).unit().cross(reach);
    }

    /** How long the gentle line is from a place that stays up to one that swings. */
    double gentleMm(Place stays, Place swings, Motion swing) {
        return Joining.smooth(
                        stays.on(piece),
                        upwardsAt(stays),
                        swing.apply(swings.on(piece)),
                        swing.apply(upwardsAt(swings)))
                .length();
    }
}
