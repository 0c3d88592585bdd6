package trueseam.fitting.repertoire;

import trueseam.fitting.alteration.AlterationException;
import trueseam.fitting.tissue.Spot;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Motion;
import trueseam.geometry.OutOfReachException;
import trueseam.geometry.Point;

/** How a part will swing, found beforehand by geometry where an amount depends on it. The tissue then does the same. */
final class Swing {

    private Swing() {}

    /** Turns about a hinge until a spot has moved so far along the grain: a pivot across it on a table turned by a quarter. */
    static Motion along(Piece piece, Spot hinge, Spot moved, double upMm) {
        Motion quarter = Motion.pivot(Point.ORIGIN, -Math.PI / 2);
        try {
            double turn = Motion.pivotAcross(quarter.apply(hinge.at()), quarter.apply(moved.at()), upMm)
                    .turnRad();
            return Motion.pivot(hinge.at(), turn);
        } catch (OutOfReachException e) {
            throw new AlterationException(
                    piece.name(), moved.word(), upMm, "it cannot be swung so far; take the next size.");
        }
    }
}
