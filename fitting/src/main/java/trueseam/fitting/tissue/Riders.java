package trueseam.fitting.tissue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.Landmark;
import trueseam.garment.pattern.Level;
import trueseam.garment.pattern.Marking;
import trueseam.garment.pattern.Notch;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/** Carries over what rides on the outline or lies inside: darts, notches, landmarks, levels, grain. */
final class Riders {

    private static final double SAME_PLACE_MM = 1e-6;

    private final Piece piece;
    private final List<Carried> carried;
    private final Inner inner;

    /** A part of the new outline: the old stretch it stands for, its motion if traced, its place on the new edge. */
    record Carried(Stretch old, Optional<Motion> motion, double newFromMm, double newMm) {}

    Riders(Piece piece, List<Carried> carried, Inner inner) {
        this.piece = piece;
        this.carried = List.copyOf(carried);
        this.inner = inner;
    }

    Piece ridingOn(List<Edge> edges) {
        List<Dart> darts = new ArrayList<>();
        for (Dart dart : piece.darts()) {
            darts.add(dart instanceof Dart.EdgeDart d ? edgeDart(d, edges) : diamond((Dart.DiamondDart) dart));
        }
        for (Step.NewDart dart : inner.newDarts()) {
            darts.add(made(dart, edges));
        }
        List<Notch> notches = new ArrayList<>();
        for (Notch notch : piece.notches()) {
            notches.add(new Notch(
                    notch.edge(), newPlace(notch.edge(), notch.atMm()) + inner.notch(notch.edge()), notch.kind()));
        }
        List<Landmark> landmarks = new ArrayList<>();
        for (Landmark landmark : piece.landmarks()) {
            landmarks.add(inner.landmark(landmark));
        }
        List<Level> levels = new ArrayList<>();
        for (Level level : piece.levels()) {
            levels.add(inner.level(level));
        }
        List<Marking> markings = new ArrayList<>();
        for (Marking marking : piece.markings()) {
            markings.add(inner.marking(marking));
        }
        return new Piece(
                piece.name(),
                piece.kind(),
                inner.cutCount(),
                inner.fold(),
                inner.seamed(edges),
                darts,
                notches,
                landmarks,
                levels,
                markings,
                inner.grain());
    }

    /** A waist dart with two points goes across as a whole, and only its upper point goes up or down. */
    private Dart diamond(Dart.DiamondDart d) {
        Vec by = inner.dartPoint(d.name());
        Vec across = new Vec(by.x(), 0);
        Vec wider = new Vec(inner.dartLegs(d.name()), 0);
        Motion ofLeft = inner.motionAt(d.left());
        Motion ofRight = inner.motionAt(d.right());
        if (!ofLeft.equals(ofRight)) {
            return parted(d, ofLeft, ofRight, by);
        }
        return new Dart.DiamondDart(
                d.name(),
                inner.at(d.top()).plus(by),
                inner.at(d.bottom()).plus(across),
                inner.at(d.left()).plus(across).plus(wider.times(-1)),
                inner.at(d.right()).plus(across).plus(wider));
    }

    /** A dart that was cut through takes what opened: its ends lie in the middle, the upper one as high as its paper lies. */
    private Dart parted(Dart.DiamondDart d, Motion ofLeft, Motion ofRight, Vec by) {
        Vec across = new Vec(by.x(), 0);
        Vec wider = new Vec(inner.dartLegs(d.name()), 0);
        Point top = ofLeft.apply(d.top()).towards(ofRight.apply(d.top()), 0.5);
        Point bottom = ofLeft.apply(d.bottom()).towards(ofRight.apply(d.bottom()), 0.5);
        return new Dart.DiamondDart(
                d.name(),
                new Point(top.x(), inner.at(d.top()).y()).plus(by),
                bottom.plus(across),
                ofLeft.apply(d.left()).plus(across).plus(wider.times(-1)),
                ofRight.apply(d.right()).plus(across).plus(wider));
    }

    /** A dart goes with its edge as a whole, point included, unless the pattern was parted between mouth and point. */
    private Dart edgeDart(Dart.EdgeDart d, List<Edge> edges) {
        Carried on = carrying(d);
        if (on.motion().isEmpty()) {
            return redrawn(d, on, edges);
        }
        Motion motion = on.motion().get();
        double wider = inner.dartLegs(d.name());
        double from = on.newFromMm() + d.fromMm() - on.old().fromMm() - wider;
        double to = on.newFromMm() + d.toMm() - on.old().fromMm() + wider;
        Vec anew = inner.dartPoint(d.name());
        Motion ofPoint = inner.motionAt(d.apex());
        boolean parted = inner.isParted() && !ofPoint.equals(motion);
        if (!parted && anew.equals(Vec.ZERO) && wider == 0) {
            return new Dart.EdgeDart(d.name(), d.edge(), from, to, motion.apply(d.apex()));
        }
        Path path = drawn(d.edge(), edges).path();
        Point a = path.pointAt(from);
        Point b = path.pointAt(to);
        Point wanted = (parted ? ofPoint : motion).apply(d.apex()).plus(anew);
        if (!inner.isOnlySlid() || !anew.equals(Vec.ZERO) || wider != 0) {
            return new Dart.EdgeDart(d.name(), d.edge(), from, to, evenLegged(a, b, wanted));
        }
        // Slid apart: the point stays at its height, on the dart's own middle line, so that the legs stay equal.
        Point middle = a.towards(b, 0.5);
        Vec axis = b.minus(a).left().unit();
        double height = wanted.y() - middle.y();
        return new Dart.EdgeDart(d.name(), d.edge(), from, to, middle.plus(axis.times(height / axis.y())));
    }

    /** The point nearest to the wanted one from which both legs are of one length. */
    private static Point evenLegged(Point a, Point b, Point wanted) {
        Vec axis = b.minus(a).left().unit();
        Point middle = a.towards(b, 0.5);
        return middle.plus(axis.times(wanted.minus(middle).dot(axis)));
    }

    /** A dart whose mouth was drawn new keeps its point as nearly as equal legs allow. */
    private Dart redrawn(Dart.EdgeDart d, Carried on, List<Edge> edges) {
        double wider = inner.dartLegs(d.name());
        double from = on.newFromMm() - wider;
        double to = on.newFromMm() + on.newMm() + wider;
        Path path = drawn(d.edge(), edges).path();
        Point wanted = inner.at(d.apex()).plus(inner.dartPoint(d.name()));
        return new Dart.EdgeDart(
                d.name(), d.edge(), from, to, evenLegged(path.pointAt(from), path.pointAt(to), wanted));
    }

    private Dart made(Step.NewDart dart, List<Edge> edges) {
        for (Carried c : carried) {
            if (c.old().equals(dart.mouth()) && c.motion().isEmpty()) {
                Path path = drawn(dart.mouth().edge(), edges).path();
                double to = c.newFromMm() + c.newMm();
                Point wanted = inner.at(dart.point().at());
                return new Dart.EdgeDart(
                        dart.name(),
                        dart.mouth().edge(),
                        c.newFromMm(),
                        to,
                        evenLegged(path.pointAt(c.newFromMm()), path.pointAt(to), wanted));
            }
        }
        throw new TissueException(
                piece.name(), dart.name(), "no opening was joined where the dart is to be made; join the gap first.");
    }

    private static Edge drawn(String name, List<Edge> edges) {
        for (Edge edge : edges) {
            if (edge.name().equals(name)) {
                return edge;
            }
        }
        throw new IllegalStateException("edge " + name + " is not drawn");
    }

    private Carried carrying(Dart.EdgeDart d) {
        for (Carried c : carried) {
            boolean holds = c.old().edge().equals(d.edge())
                    && c.old().fromMm() <= d.fromMm() + SAME_PLACE_MM
                    && d.toMm() <= c.old().toMm() + SAME_PLACE_MM;
            boolean isMouth = holds
                    && c.old().fromMm() >= d.fromMm() - SAME_PLACE_MM
                    && c.old().toMm() <= d.toMm() + SAME_PLACE_MM;
            if (holds && (c.motion().isPresent() || isMouth)) {
                return c;
            }
        }
        throw new TissueException(
                piece.name(),
                d.name(),
                "the line that the dart is sewn into is cut or drawn new across its mouth; alter beside the dart.");
    }

    private double newPlace(String edge, double atMm) {
        double best = 0;
        for (Carried c : carried) {
            if (!c.old().edge().equals(edge)) {
                continue;
            }
            boolean within =
                    c.old().fromMm() - SAME_PLACE_MM <= atMm && atMm <= c.old().toMm() + SAME_PLACE_MM;
            if (within && c.motion().isPresent()) {
                return Math.max(0, c.newFromMm() + atMm - c.old().fromMm());
            }
            if (within && c.old().lengthMm() > 0) {
                // Drawn new: the same share of the way, to be walked again by truing.
                best = c.newFromMm()
                        + c.newMm() * (atMm - c.old().fromMm()) / c.old().lengthMm();
            }
        }
        return best;
    }
}
