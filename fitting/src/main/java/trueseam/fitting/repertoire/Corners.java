package trueseam.fitting.repertoire;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trueseam.fitting.alteration.AlterationException;
import trueseam.fitting.tissue.Place;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.PathPlace;
import trueseam.geometry.Point;

/**
 * The corners and places of a piece by their trade names, whichever way it lies. An outline is anticlockwise with y up; a piece may
 * be drawn with its centre left or right.
 */
final class Corners {

    private static final double SAME_PLACE_MM = 1e-6;

    final Piece piece;

    Corners(Piece piece) {
        this.piece = piece;
    }

    /** The corner where two edges meet, as a place on the first. */
    Place at(EdgeRole on, EdgeRole other, String word) {
        for (Edge edge : piece.edgesOf(on)) {
            for (Edge beside : piece.edgesOf(other)) {
                if (edge.path().start().isNear(beside.path().end(), SAME_PLACE_MM)) {
                    return Place.startOf(edge.name(), word);
                }
                if (edge.path().end().isNear(beside.path().start(), SAME_PLACE_MM)) {
                    return Place.endOf(piece, edge.name(), word);
                }
            }
        }
        throw new AlterationException(
                piece.name(),
                word,
                0,
                "no " + on.word() + " meets a " + other.word() + "; name the edges of the piece.");
    }

    Place neckPoint() {
        return at(EdgeRole.SHOULDER, EdgeRole.NECK, "neck point");
    }

    Place shoulderPoint() {
        return at(EdgeRole.ARMHOLE, EdgeRole.SHOULDER, "shoulder point");
    }

    Place underarm() {
        return at(EdgeRole.SIDE, EdgeRole.ARMHOLE, "underarm point");
    }

    Place sideWaist() {
        return at(EdgeRole.SIDE, EdgeRole.WAIST, "side waist");
    }

    /** On a skirt or bodice the waist at the centre, as a place on the waist line. */
    Place centreWaist() {
        EdgeRole centre = piece.kind().isTrouser() ? EdgeRole.CROTCH : EdgeRole.CENTRE;
        return at(EdgeRole.WAIST, centre, "waist at the " + centreWord());
    }

    Place centreNeck() {
        return at(EdgeRole.NECK, EdgeRole.CENTRE, "neck at the " + centreWord());
    }

    String centreWord() {
        return piece.kind().isBack() ? "centre back" : "centre front";
    }

    /** +1 if the side is to the right of the centre, else -1. */
    double outward() {
        Edge side = piece.only(EdgeRole.SIDE);
        return side.path().end().y() > side.path().start().y() ? 1 : -1;
    }

    /** Whether a place is where its edge begins. */
    boolean isStart(Place place) {
        return place.alongMm() <= SAME_PLACE_MM;
    }

    Edge edge(EdgeRole role) {
        return piece.only(role);
    }

    /** A place of an edge so far from one of its corners. */
    Place from(Place corner, double mm, String word) {
        double whole = piece.edge(corner.edge()).length();
        return new Place(corner.edge(), isStart(corner) ? Math.min(mm, whole) : Math.max(0, whole - mm), word);
    }

    /** Where a level crosses an edge. */
    Place onLevel(EdgeRole role, LevelName level, String word) {
        Edge edge = piece.only(role);
        OptionalDouble y = piece.level(level);
        Optional<PathPlace> place = y.isPresent() ? edge.path().atLevel(y.getAsDouble()) : Optional.empty();
        return place.map(p -> new Place(edge.name(), p.alongMm(), word))
                .orElseThrow(() -> new AlterationException(
                        piece.name(),
                        edge.name(),
                        0,
                        "the " + level.word() + " level does not cross this edge; mark the level on the piece."));
    }

    Point landmark(String name) {
        return piece.landmark(name)
                .orElseThrow(() -> new AlterationException(
                        piece.name(), name, 0, "the piece has no " + name + "; mark it on the piece."));
    }

    Optional<Dart.EdgeDart> dartOn(EdgeRole role) {
        return piece.firstOf(role).flatMap(edge -> {
            List<Dart.EdgeDart> darts = piece.dartsOn(edge.name());
            return darts.isEmpty() ? Optional.empty() : Optional.of(darts.get(0));
        });
    }
}
