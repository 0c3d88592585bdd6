package trueseam.fitting.repertoire;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import trueseam.fitting.alteration.AlterationException;
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
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.Cubic;
import trueseam.geometry.Motion;
import trueseam.geometry.OutOfReachException;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.geometry.join.Joining;

/**
 * Neck, shoulder, armhole and side of a bodice or dress, whichever way the piece lies: its corners on each edge, and pencil and ruler
 * that count along an edge from a corner.
 */
final class UpperPart {

    static final Set<PieceKind> BACKS = EnumSet.of(PieceKind.BODICE_BACK, PieceKind.DRESS_BACK);
    static final Set<PieceKind> FRONTS = EnumSet.of(PieceKind.BODICE_FRONT, PieceKind.DRESS_FRONT);
    static final Set<PieceKind> ALL =
            EnumSet.of(PieceKind.BODICE_FRONT, PieceKind.BODICE_BACK, PieceKind.DRESS_FRONT, PieceKind.DRESS_BACK);

    /** A line drawn new may be so much flatter or fuller than the gentle one (handles so many times as long): ours. */
    private static final double FLATTEST = 0.3;

    private static final double FULLEST = 1.7;

    /** Where the line may change its length instead, it keeps more of its shape, so that truing has something left to take. */
    private static final double FLATTEST_FREE = 0.5;

    private static final double FULLEST_FREE = 1.5;

    final Piece piece;
    final Corners corners;
    final double out;
    private final StepList list;

    UpperPart(StepList list, Piece piece) {
        this.piece = piece;
        this.corners = new Corners(piece);
        this.out = corners.outward();
        this.list = list;
    }

    /** The shoulder point, on the armhole. */
    Place armholeTop() {
        return corners.at(EdgeRole.ARMHOLE, EdgeRole.SHOULDER, "shoulder point");
    }

    /** The underarm point, on the armhole. */
    Place armholeBase() {
        return corners.at(EdgeRole.ARMHOLE, EdgeRole.SIDE, "underarm point");
    }

    /** The shoulder point, on the shoulder. */
    Place shoulderTip() {
        return corners.at(EdgeRole.SHOULDER, EdgeRole.ARMHOLE, "shoulder point");
    }

    /** The neck point, on the shoulder. */
    Place shoulderNeck() {
        return corners.at(EdgeRole.SHOULDER, EdgeRole.NECK, "neck point");
    }

    /** The neck point, on the neck line. */
    Place neckTop() {
        return corners.at(EdgeRole.NECK, EdgeRole.SHOULDER, "neck point");
    }

    /** The neck at the centre, on the neck line. */
    Place neckCentre() {
        return corners.centreNeck();
    }

    /** The neck at the centre, on the centre. */
    Place centreTop() {
        return corners.at(EdgeRole.CENTRE, EdgeRole.NECK, "neck at the " + corners.centreWord());
    }

    /** Where the level half way down the armhole meets it; about where its notch is. */
    Place across() {
        return corners.onLevel(
                EdgeRole.ARMHOLE,
                LevelName.ACROSS,
                (piece.kind().isBack() ? "across back" : "across front") + " level at the armhole");
    }

    double length(Place corner) {
        return piece.edge(corner.edge()).length();
    }

    /** How far a place of an edge is from a corner of it, along the edge. */
    double from(Place corner, Place place) {
        return Math.abs(corner.alongMm() - place.alongMm());
    }

    Place at(Place corner, double mm, String word) {
        return corners.from(corner, mm, word);
    }

    /** Traces an edge between two distances from a corner of it. */
    void trace(Place corner, double nearMm, double farMm) {
        Stretch part = stretch(corner, nearMm, farMm);
        list.trace(part.edge(), part.fromMm(), part.toMm());
    }

    void traceWhole(Place corner) {
        trace(corner, 0, length(corner));
    }

    /** Joins over an edge between two distances from a corner of it. */
    void join(Place corner, double nearMm, double farMm, JoinForm form) {
        Stretch gap = stretch(corner, nearMm, farMm);
        list.join(gap.edge(), gap.fromMm(), gap.toMm(), form);
    }

    /**
     * Joins with a smooth curve of a given length between what is traced on either side, or says that there is none.
     *
     * @param near where the line lies that is traced nearer to the corner
     * @param far where the line lies that is traced farther from the corner
     */
    void joinOfLength(Place corner, double nearMm, double farMm, Motion near, Motion far, double lengthMm, double mm) {
        Stretch gap = stretch(corner, nearMm, farMm);
        Reach reach = reach(corner, gap, near, far, FLATTEST, FULLEST);
        if (!(reach.flatMm() <= lengthMm && lengthMm <= reach.fullMm())) {
            throw refusal(
                    gap.edge(),
                    mm,
                    "this line would have to be drawn too " + (lengthMm < reach.flatMm() ? "flat" : "full")
                            + " to keep its length so far from where it was; take less, or the next size.");
        }
        list.join(
                gap.edge(),
                gap.fromMm(),
                gap.toMm(),
                JoinForm.curveOfLength(Direction.AS_DRAWN, Direction.AS_DRAWN, lengthMm));
    }

    /** The same, but where the line would be too flat or too full it becomes longer or shorter instead. */
    void joinNearLength(Place corner, double nearMm, double farMm, Motion near, Motion far, double lengthMm) {
        Stretch gap = stretch(corner, nearMm, farMm);
        Reach reach = reach(corner, gap, near, far, FLATTEST_FREE, FULLEST_FREE);
        double drawn = Math.max(reach.flatMm(), Math.min(lengthMm, reach.fullMm()));
        list.join(
                gap.edge(),
                gap.fromMm(),
                gap.toMm(),
                JoinForm.curveOfLength(Direction.AS_DRAWN, Direction.AS_DRAWN, drawn));
    }

    /** The lengths of the flattest and the fullest line that may be drawn. */
    private record Reach(double flatMm, double fullMm) {}

    private Reach reach(Place corner, Stretch gap, Motion near, Motion far, double flattest, double fullest) {
        boolean forwards = corners.isStart(corner);
        Motion atStart = forwards ? near : far;
        Motion atEnd = forwards ? far : near;
        Path part = piece.edge(gap.edge()).path().part(gap.fromMm(), gap.toMm());
        Point a = atStart.apply(part.start());
        Point b = atEnd.apply(part.end());
        Vec leaving = atStart.apply(part.startTangent());
        Vec arriving = atEnd.apply(part.endTangent());
        return new Reach(shaped(a, leaving, b, arriving, flattest), shaped(a, leaving, b, arriving, fullest));
    }

    /** The length of the gentle curve with handles so many times as long. */
    private static double shaped(Point a, Vec leaving, Point b, Vec arriving, double times) {
        Cubic gentle = Joining.smooth(a, leaving, b, arriving);
        return Cubic.of(
                        a,
                        gentle.handle1().minus(a).times(times),
                        gentle.handle2().minus(b).times(times),
                        b)
                .length();
    }

    private Stretch stretch(Place corner, double nearMm, double farMm) {
        double whole = length(corner);
        return corners.isStart(corner)
                ? new Stretch(corner.edge(), nearMm, Math.min(farMm, whole))
                : new Stretch(corner.edge(), Math.max(0, whole - farMm), whole - nearMm);
    }

    /** How far from a corner the first dart of its edge begins; the whole edge where there is none. */
    double plainFrom(Place corner) {
        double whole = length(corner);
        double plain = whole;
        for (Dart.EdgeDart dart : piece.dartsOn(corner.edge())) {
            plain = Math.min(plain, corners.isStart(corner) ? dart.fromMm() : whole - dart.toMm());
        }
        return plain;
    }

    /** The direction of an edge away from a corner of it. */
    Vec leaving(Place corner) {
        Edge edge = piece.edge(corner.edge());
        return corners.isStart(corner)
                ? edge.path().startTangent()
                : edge.path().endTangent().reversed();
    }

    /**
     * Where two arcs struck with compasses cross: the crossing nearer to a point.
     *
     * @param one a centre and how far from it
     * @param other the other centre and how far from it
     * @return the crossing; nothing if they do not meet
     */
    static Optional<Point> struck(Arc one, Arc other, Point near) {
        Vec between = other.centre().minus(one.centre());
        double apart = between.length();
        double along = (apart * apart + one.mm() * one.mm() - other.mm() * other.mm()) / (2 * apart);
        double square = one.mm() * one.mm() - along * along;
        if (!(square >= 0)) {
            return Optional.empty();
        }
        Point foot = one.centre().plus(between.unit().times(along));
        Vec off = between.left().unit().times(Math.sqrt(square));
        Point left = foot.plus(off);
        Point right = foot.plus(off.reversed());
        return Optional.of(left.distanceTo(near) <= right.distanceTo(near) ? left : right);
    }

    /** The turn about a pin until a point is so much higher. */
    Motion turnedUp(Place pin, Place at, double upMm) {
        // A pivot along the grain is a pivot across it on a table turned by a quarter.
        Motion quarter = Motion.pivot(Point.ORIGIN, -Math.PI / 2);
        Point centre = pin.on(piece);
        try {
            Motion turned = Motion.pivotAcross(quarter.apply(centre), quarter.apply(at.on(piece)), upMm);
            return Motion.pivot(centre, turned.turnRad());
        } catch (OutOfReachException e) {
            throw refusal("shoulder", upMm, "the shoulder cannot turn so far; take less.");
        }
    }

    AlterationException refusal(String where, double mm, String sentence) {
        return new AlterationException(piece.name(), where, mm, sentence);
    }

    /** An arc about a point. */
    record Arc(Point centre, double mm) {}

    /** Darts sewn into an edge, the one nearest to a corner first. */
    List<Dart.EdgeDart> dartsFrom(Place corner) {
        List<Dart.EdgeDart> darts = piece.dartsOn(corner.edge());
        if (corners.isStart(corner)) {
            return darts;
        }
        List<Dart.EdgeDart> reversed = new ArrayList<>(darts);
        Collections.reverse(reversed);
        return reversed;
    }
}
