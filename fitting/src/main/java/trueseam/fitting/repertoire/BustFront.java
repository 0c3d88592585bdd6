package trueseam.fitting.repertoire;

import java.util.Optional;
import trueseam.fitting.alteration.AlterationException;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Spot;
import trueseam.fitting.tissue.StepList;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Landmark;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/** A front with its bust point, and where the dart that is sewn into its side seam opens. */
final class BustFront {

    /** A dart ends 1/2 to 1 in short of the bust point (common practice; [ECOURSE] 1/2 in). */
    private static final double SHORT_OF_BUST_MM = 19.05;

    private static final double NEW_DART_BELOW_MM = 25.4;

    final Piece piece;
    final Corners corners;
    final Spot bust;

    /** Name of the side edge. */
    final String side;

    final double sideMm;

    /** Whether the side edge runs up: then the piece's outside lies to the right. */
    final boolean up;

    BustFront(Piece piece) {
        this.piece = piece;
        this.corners = new Corners(piece);
        this.bust = new Spot(corners.landmark(Landmark.BUST_POINT), "bust point");
        this.side = corners.edge(EdgeRole.SIDE).name();
        this.sideMm = piece.edge(side).length();
        this.up = corners.outward() > 0;
    }

    Optional<Dart.EdgeDart> sideDart() {
        return corners.dartOn(EdgeRole.SIDE);
    }

    /** The dart of the side seam, where an alteration cannot do without. */
    Dart.EdgeDart neededSideDart(double mm) {
        return sideDart()
                .orElseThrow(() -> new AlterationException(
                        piece.name(),
                        side,
                        mm,
                        "there is no dart in the side seam to take what is folded out; mark it."));
    }

    Place upperLeg(Dart.EdgeDart dart) {
        return new Place(side, up ? dart.toMm() : dart.fromMm(), "upper leg of the side dart");
    }

    Place lowerLeg(Dart.EdgeDart dart) {
        return new Place(side, up ? dart.fromMm() : dart.toMm(), "lower leg of the side dart");
    }

    /** The underarm point as a place on the armhole. */
    Place underarmOnArmhole() {
        return corners.at(EdgeRole.ARMHOLE, EdgeRole.SIDE, "underarm point");
    }

    /** The waist dart of a dress. */
    Optional<Dart.DiamondDart> diamond() {
        for (Dart dart : piece.darts()) {
            if (dart instanceof Dart.DiamondDart d) {
                return Optional.of(d);
            }
        }
        return Optional.empty();
    }

    /** Where a side dart is begun on a side seam that has none: an inch below the bust point. */
    Place sideBelowBust(double mm) {
        double y = bust.at().y() - NEW_DART_BELOW_MM;
        return new Place(side, onLevel(EdgeRole.SIDE, y, mm), "side seam below the bust");
    }

    private double onLevel(EdgeRole role, double y, double mm) {
        Edge edge = corners.edge(role);
        return edge.path()
                .atLevel(y)
                .orElseThrow(() -> new AlterationException(
                        piece.name(), edge.name(), mm, "this edge does not lie beside the bust; mark the bust point."))
                .alongMm();
    }

    /** The place of a lower edge straight under a point. */
    Place under(EdgeRole role, Point p, double mm) {
        Edge edge = corners.edge(role);
        return edge.path().crossings(p, new Vec(0, 1)).stream()
                .findFirst()
                .map(place ->
                        new Place(edge.name(), place.alongMm(), edge.role().word() + " under the bust"))
                .orElseThrow(() -> new AlterationException(
                        piece.name(), edge.name(), mm, "this edge does not lie under the bust; mark the bust point."));
    }

    /** Where a dart made from a place of the outline points to: short of the bust point. */
    Point dartPointFrom(Place place) {
        Point from = place.on(piece);
        double whole = from.distanceTo(bust.at());
        return from.towards(bust.at(), Math.max(0.5, 1 - SHORT_OF_BUST_MM / whole));
    }

    /** The lower end of the side seam. */
    Place bottomOfSide() {
        return up ? Place.startOf(side, "lower end of the side") : Place.endOf(piece, side, "lower end of the side");
    }

    /** The corner of a lower edge at the side. */
    Place bottomCornerAtSide(String edge) {
        return corners.at(piece.edge(edge).role(), EdgeRole.SIDE, "lower end of the side");
    }

    void traceWhole(StepList list, EdgeRole role) {
        String edge = corners.edge(role).name();
        list.trace(edge, 0, piece.edge(edge).length());
    }
}
