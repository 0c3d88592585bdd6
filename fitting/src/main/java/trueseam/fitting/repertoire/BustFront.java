package trueseam.fitting.repertoire;

import java.util.Optional;
import trueseam.fitting.alteration.AlterationException;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Spot;
import trueseam.fitting.tissue.StepList;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Landmark;
import trueseam.garment.pattern.Piece;

/** A front with its bust point, and where the dart that is sewn into its side seam opens. */
final class BustFront {

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

    /** Traces an edge from a place to a corner of it, or between two places. */
    static void trace(StepList list, Place one, Place other) {
        list.trace(one.edge(), Math.min(one.alongMm(), other.alongMm()), Math.max(one.alongMm(), other.alongMm()));
    }

    void traceWhole(StepList list, EdgeRole role) {
        String edge = corners.edge(role).name();
        list.trace(edge, 0, piece.edge(edge).length());
    }
}
