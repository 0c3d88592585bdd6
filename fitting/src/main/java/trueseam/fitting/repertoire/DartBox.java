package trueseam.fitting.repertoire;

import java.util.List;
import trueseam.fitting.alteration.AlterationException;
import trueseam.fitting.tissue.Direction;
import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Spot;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.fitting.tissue.Until;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.geometry.join.Joining;

/**
 * A box cut round a dart that is sewn into an edge, to be slid or turned with the dart in it; the edge beside it is drawn new.
 *
 * <pre>{@code
 *    ------+         The box goes down: the edge above it is drawn longer, the edge below
 *    <   box|        shorter, so that the edge is as long as it was.
 *    ------+
 * }</pre>
 */
final class DartBox {

    /** How much of the edge beside the dart goes with the box. */
    private static final double MARGIN_MM = 8;

    /** How much of the edge beside the box is drawn new, besides the way that it goes. */
    private static final double BLEND_MM = 14;

    /** A dart that would turn farther is made anew in another place. */
    private static final double MOST_TURN_RAD = Math.toRadians(20);

    /** How far a box may settle across its edge, mm, and in how many tries to either side it is looked for. */
    private static final double SETTLE_MM = 8;

    private static final int SETTLE_TRIES = 16;

    private static final double SETTLED_MM = 1e-6;

    private final Piece piece;
    private final Dart.EdgeDart dart;
    private final Edge edge;
    private final Point nearFrom;
    private final Point nearTo;

    /**
     * @param nearFrom the inner corner of the box on the side of the dart's first leg
     * @param nearTo the inner corner on the side of its second leg
     */
    DartBox(Piece piece, Dart.EdgeDart dart, Point nearFrom, Point nearTo) {
        this.piece = piece;
        this.dart = dart;
        this.edge = piece.edge(dart.edge());
        this.nearFrom = nearFrom;
        this.nearTo = nearTo;
    }

    /** Slides the box across and along the grain, and a little across its edge so that the edge keeps its length. */
    Motion slide(StepList list, double acrossMm, double alongMm) {
        double reach = Math.hypot(acrossMm, alongMm) + BLEND_MM;
        cut(list, reach, acrossMm + alongMm);
        Motion slid = Motion.slide(new Vec(acrossMm, alongMm));
        Vec settled = settled(slid, reach);
        list.add(new Step.Slide(acrossMm + settled.x(), alongMm + settled.y()));
        Motion lies = slid.then(Motion.slide(settled));
        close(list, reach, longer(lies, reach));
        return lies;
    }

    /** Turns the box about the middle of the dart's mouth until its point has gone so far. */
    Motion turn(StepList list, double acrossMm, double alongMm) {
        Point mouth = middle();
        double mm = acrossMm == 0 ? alongMm : acrossMm;
        if (Math.abs(mm) > mouth.distanceTo(dart.apex()) * Math.sin(MOST_TURN_RAD)) {
            throw new AlterationException(
                    piece.name(), dart.name(), mm, "the dart would turn too far; move it as a whole instead.");
        }
        cut(list, BLEND_MM, mm);
        Spot point = new Spot(dart.apex(), "point of the " + dart.name());
        list.add(new Step.Spread(
                new Spot(mouth, "middle of the dart's mouth"),
                acrossMm == 0 ? new Until.MovesAlong(point, alongMm) : new Until.MovesAcross(point, acrossMm)));
        Motion turned = turned(mouth, dart.apex(), acrossMm, alongMm);
        Vec settled = settled(turned, BLEND_MM);
        list.add(new Step.Slide(settled.x(), settled.y()));
        Motion lies = turned.then(Motion.slide(settled));
        close(list, BLEND_MM, longer(lies, BLEND_MM));
        return lies;
    }

    /** The smaller turn about a point that takes another so far across or along the grain. */
    private static Motion turned(Point about, Point point, double acrossMm, double alongMm) {
        Vec arm = point.minus(about);
        double is = Math.atan2(arm.y(), arm.x());
        double best = 0;
        if (acrossMm == 0) {
            double up = Math.asin((arm.y() + alongMm) / arm.length());
            best = arm.x() >= 0 ? up - is : Math.PI - up - is;
        } else {
            double across = Math.acos((arm.x() + acrossMm) / arm.length());
            best = arm.y() >= 0 ? across - is : -across - is;
        }
        return Motion.pivot(about, Math.atan2(Math.sin(best), Math.cos(best)));
    }

    /** How far the box goes across its edge so that the edge is as long as it was: found by trying, then by halving. */
    private Vec settled(Motion moved, double reach) {
        Path path = edge.path();
        Vec along = path.pointAt(dart.toMm()).minus(path.pointAt(dart.fromMm()));
        Vec free = Math.abs(along.y()) > Math.abs(along.x()) ? new Vec(1, 0) : new Vec(0, 1);
        double best = 0;
        double least = Math.abs(longer(moved, reach));
        for (int i = -SETTLE_TRIES; i < SETTLE_TRIES; i++) {
            double lo = i * SETTLE_MM / SETTLE_TRIES;
            double hi = (i + 1) * SETTLE_MM / SETTLE_TRIES;
            double atLo = longer(moved.then(Motion.slide(free.times(lo))), reach);
            double atHi = longer(moved.then(Motion.slide(free.times(hi))), reach);
            if (atLo * atHi <= 0) {
                double root = root(moved, reach, free, lo, hi, atLo);
                if (least > SETTLED_MM || Math.abs(root) < Math.abs(best)) {
                    best = root;
                    least = 0;
                }
            } else if (Math.abs(atHi) < least) {
                best = hi;
                least = Math.abs(atHi);
            }
        }
        return free.times(best);
    }

    private double root(Motion moved, double reach, Vec free, double from, double to, double atFrom) {
        double lo = from;
        double hi = to;
        for (int i = 0; i < 40; i++) {
            double mid = (lo + hi) / 2;
            if (longer(moved.then(Motion.slide(free.times(mid))), reach) * atFrom > 0) {
                lo = mid;
            } else {
                hi = mid;
            }
        }
        return (lo + hi) / 2;
    }

    /** By how much the gentle lines on either side of the box are longer than the edge was there. */
    private double longer(Motion moved, double reach) {
        Path path = edge.path();
        double from = dart.fromMm() - MARGIN_MM;
        double to = dart.toMm() + MARGIN_MM;
        return Joining.smooth(
                                path.pointAt(from - reach),
                                path.tangentAt(from - reach),
                                moved.apply(path.pointAt(from)),
                                moved.apply(path.tangentAt(from)))
                        .length()
                + Joining.smooth(
                                moved.apply(path.pointAt(to)),
                                moved.apply(path.tangentAt(to)),
                                path.pointAt(to + reach),
                                path.tangentAt(to + reach))
                        .length()
                - 2 * reach;
    }

    Point middle() {
        return edge.path().pointAt(dart.fromMm()).towards(edge.path().pointAt(dart.toMm()), 0.5);
    }

    private void cut(StepList list, double reach, double askedMm) {
        if (dart.fromMm() - MARGIN_MM - reach < 1 || dart.toMm() + MARGIN_MM + reach > edge.length() - 1) {
            throw new AlterationException(
                    piece.name(),
                    dart.name(),
                    askedMm,
                    "the dart would come too near the end of its seam; aim it anew instead of moving it.");
        }
        Place from = new Place(edge.name(), dart.fromMm() - MARGIN_MM, "edge of the box round the dart");
        Place to = new Place(edge.name(), dart.toMm() + MARGIN_MM, "edge of the box round the dart");
        Place held = new Place(edge.name(), (dart.fromMm() + dart.toMm()) / 2, "dart");
        list.cut(
                "box round the " + dart.name(),
                from,
                List.of(
                        new Spot(nearFrom, "one inner corner of the box"),
                        new Spot(nearTo, "other inner corner of the box")),
                to,
                held);
    }

    /** What the edge is still too long goes into the dart. */
    private void close(StepList list, double reach, double longerMm) {
        double from = dart.fromMm() - MARGIN_MM;
        double to = dart.toMm() + MARGIN_MM;
        list.trace(edge.name(), from, to);
        JoinForm form = JoinForm.curve(Direction.AS_DRAWN, Direction.AS_DRAWN);
        list.join(edge.name(), from - reach, from, form);
        list.join(edge.name(), to, to + reach, form);
        if (Math.abs(longerMm) > SETTLED_MM) {
            list.add(new Step.Remark(Step.Inside.DART_LEGS, dart.name(), longerMm / 2, 0));
        }
    }
}
