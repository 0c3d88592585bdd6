package trueseam.fitting.repertoire;

import trueseam.fitting.alteration.AlterationException;
import trueseam.fitting.tissue.Direction;
import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Spot;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.fitting.tissue.Until;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.Point;

/**
 * A wedge from an edge of a front to the bust point, to be folded out: as wide as is pinned, half of it to either side of its middle
 * line.
 *
 * <pre>{@code
 *     inner  outer      Both legs run from the bust point. Where the edge crosses them slantwise it
 *        \    /         jogs when the wedge is folded out, and is drawn smooth again.
 *         \  /
 *         bust
 * }</pre>
 */
final class Wedge {

    /** How far to either side of the folded wedge the edge is drawn new. */
    private static final double BLEND_MM = 22;

    private final BustFront front;
    private final Place middle;
    private final Path path;
    private final double turnRad;
    private final Place first;
    private final Place second;

    Wedge(BustFront front, Place middle, double mm) {
        this.front = front;
        this.middle = middle;
        this.path = front.piece.edge(middle.edge()).path();
        Point at = middle.on(front.piece);
        if (!(0 < mm && mm < at.distanceTo(front.bust.at()) / 3)) {
            throw new AlterationException(
                    front.piece.name(),
                    middle.word(),
                    mm,
                    "a wedge can only be folded out, and no wider than a third of its length; make the dart larger instead.");
        }
        this.turnRad = mm / at.distanceTo(front.bust.at());
        this.first = leg(-1);
        this.second = leg(1);
    }

    /** The place where the edge crosses a leg: found by halving, walking away from the middle to one side. */
    private Place leg(int direction) {
        double near = middle.alongMm();
        double far = near + direction * reach();
        for (int i = 0; i < 60; i++) {
            double at = (near + far) / 2;
            if (Math.abs(angleTo(path.pointAt(at))) < turnRad / 2) {
                near = at;
            } else {
                far = at;
            }
        }
        return new Place(middle.edge(), near, "edge of the wedge on the " + middle.word());
    }

    private double reach() {
        double beside = Math.min(middle.alongMm(), path.length() - middle.alongMm()) - BLEND_MM;
        return Math.max(1, beside);
    }

    private double angleTo(Point p) {
        return middle.on(front.piece).minus(front.bust.at()).angleTo(p.minus(front.bust.at()));
    }

    /** The edge of the wedge that lies nearer to a corner: the one on the part that is swung. */
    Place edgeTowards(Place corner) {
        return corner.alongMm() < middle.alongMm() ? first : second;
    }

    /** Swings the part in the hand over the wedge and traces the edge from there to the corner. */
    void close(StepList list, Place corner) {
        Place moved = edgeTowards(corner);
        Point from = moved.on(front.piece);
        double turn = angleTo(from) > 0 ? -turnRad : turnRad;
        Point to = Motion.pivot(front.bust.at(), turn).apply(from);
        Spot spot = new Spot(from, moved.word());
        boolean across = Math.abs(to.x() - from.x()) > Math.abs(to.y() - from.y());
        list.add(new Step.Spread(
                front.bust,
                across
                        ? new Until.MovesAcross(spot, to.x() - from.x())
                        : new Until.MovesAlong(spot, to.y() - from.y())));
        double beyond = moved.equals(first) ? first.alongMm() - BLEND_MM : second.alongMm() + BLEND_MM;
        list.trace(new Place(moved.edge(), beyond, ""), corner);
    }

    void join(StepList list) {
        list.join(
                middle.edge(),
                first.alongMm() - BLEND_MM,
                second.alongMm() + BLEND_MM,
                JoinForm.curve(Direction.AS_DRAWN, Direction.AS_DRAWN));
    }
}
