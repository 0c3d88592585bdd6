package trueseam.drafting;

import trueseam.geometry.Motion;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/** The cap of a dart: the cloth that, folded to one side, is caught in the seam and has to reach its line. */
final class DartCap {

    private DartCap() {}

    /**
     * The point of the cap on the fold of the dart. The edge beside the leg that the dart is folded on is mirrored at that
     * leg; where the mirror image meets the fold, the cap has its point.
     *
     * @param apex the dart's point
     * @param leg where the leg on which the dart comes to lie meets the edge
     * @param away direction in which the edge goes away from the dart there
     * @param halfTurnRad from that leg to the fold, anticlockwise positive
     * @return the point
     */
    static Point point(Point apex, Point leg, Vec away, double halfTurnRad) {
        Vec axis = apex.minus(leg).unit();
        Vec mirrored = axis.times(2 * axis.dot(away)).minus(away);
        Vec fold = Motion.pivot(apex, halfTurnRad).apply(leg).minus(apex);
        // leg + t mirrored lies on the fold: cross both sides with the fold.
        double t = apex.minus(leg).cross(fold) / mirrored.cross(fold);
        return leg.plus(mirrored.times(t));
    }
}
