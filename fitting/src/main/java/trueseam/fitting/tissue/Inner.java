package trueseam.fitting.tissue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.Grain;
import trueseam.garment.pattern.Landmark;
import trueseam.garment.pattern.Level;
import trueseam.garment.pattern.Marking;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Motion;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/**
 * What lies inside the outline, on its way through a list of steps: where each point comes to lie, and what is marked anew. Also what is
 * written on the piece: how often it is cut, and on which fold.
 */
final class Inner {

    private final Piece piece;
    private final Parts parts;
    private final List<Copied> copied = new ArrayList<>();
    private final List<Step.Remark> remarks = new ArrayList<>();
    private final List<Step.NewDart> newDarts = new ArrayList<>();
    private final List<Step.Unfold> unfolded = new ArrayList<>();

    /** The marks below a level that were copied and where the pattern lay. */
    private record Copied(double belowY, Motion motion) {}

    Inner(Piece piece, Parts parts) {
        this.piece = piece;
        this.parts = parts;
    }

    void copiedBelow(double y, Motion motion) {
        copied.add(new Copied(y, motion));
    }

    void remarked(Step.Remark remark) {
        boolean known =
                switch (remark.kind()) {
                    case LANDMARK -> piece.landmark(remark.name()).isPresent();
                    case DART_POINT, DART_LEGS ->
                        piece.darts().stream().anyMatch(dart -> dart.name().equals(remark.name()));
                    case LEVEL ->
                        piece.levels().stream()
                                .anyMatch(level -> level.name().word().equals(remark.name()));
                    case MARKING ->
                        piece.markings().stream()
                                .anyMatch(marking -> marking.name().equals(remark.name()));
                    case NOTCH ->
                        piece.notches().stream()
                                        .filter(notch -> notch.edge().equals(remark.name()))
                                        .count()
                                == 1;
                };
        if (!known) {
            throw new TissueException(
                    piece.name(), remark.name(), "there is no such mark inside the piece to move; mark it first.");
        }
        remarks.add(remark);
    }

    void newDart(Step.NewDart dart) {
        newDarts.add(dart);
    }

    List<Step.NewDart> newDarts() {
        return List.copyOf(newDarts);
    }

    void unfolded(Step.Unfold unfold) {
        if (piece.fold().filter(unfold.edge()::equals).isEmpty()) {
            throw new TissueException(piece.name(), unfold.edge(), "this edge does not lie on a fold.");
        }
        unfolded.add(unfold);
    }

    /** Off its fold a piece is cut twice where it was cut once. */
    int cutCount() {
        return unfolded.isEmpty() ? piece.cutCount() : 2 * piece.cutCount();
    }

    Optional<String> fold() {
        return unfolded.isEmpty() ? piece.fold() : Optional.empty();
    }

    /** The edges, with the allowance of a seam where the fold was. */
    List<Edge> seamed(List<Edge> edges) {
        List<Edge> all = new ArrayList<>(edges);
        for (Step.Unfold unfold : unfolded) {
            all.replaceAll(edge -> edge.name().equals(unfold.edge())
                    ? new Edge(edge.name(), edge.role(), edge.path(), unfold.allowanceMm())
                    : edge);
        }
        return all;
    }

    boolean isParted() {
        return !copied.isEmpty() || parts.isCut();
    }

    /** Whether the pattern was parted along a level only: then a dart's point keeps its height. */
    boolean isOnlySlid() {
        return !parts.isCut();
    }

    Motion motionAt(Point p) {
        Optional<Motion> part = parts.poseOf(p);
        if (part.isPresent()) {
            return part.get();
        }
        Motion motion = Motion.NONE;
        for (Copied c : copied) {
            if (p.y() < c.belowY()) {
                motion = c.motion();
            }
        }
        return motion;
    }

    Point at(Point p) {
        return motionAt(p).apply(p);
    }

    Landmark landmark(Landmark landmark) {
        return new Landmark(landmark.name(), at(landmark.at()).plus(anew(Step.Inside.LANDMARK, landmark.name())));
    }

    Level level(Level level) {
        return new Level(
                level.name(),
                at(new Point(0, level.y())).y()
                        + anew(Step.Inside.LEVEL, level.name().word()).y());
    }

    /** A buttonhole stays square to the centre, as the grain stays upright: only its place follows the paper. */
    Marking marking(Marking marking) {
        Vec anew = anew(Step.Inside.MARKING, marking.name());
        Motion motion = motionAt(marking.path().start());
        if (marking.is(Marking.BUTTONHOLE)) {
            Point middle = marking.path().pointAt(marking.path().length() / 2);
            motion = Motion.slide(motion.apply(middle).minus(middle));
        }
        return new Marking(marking.name(), marking.path().moved(motion).moved(Motion.slide(anew)));
    }

    /** How far the notch of an edge is marked along it from where it would be. */
    double notch(String edge) {
        return anew(Step.Inside.NOTCH, edge).x();
    }

    /** How far the point of a dart is marked from where it would lie. */
    Vec dartPoint(String dart) {
        return anew(Step.Inside.DART_POINT, dart);
    }

    /** How far each leg of a dart is marked outwards. */
    double dartLegs(String dart) {
        return anew(Step.Inside.DART_LEGS, dart).x();
    }

    private Vec anew(Step.Inside kind, String name) {
        Vec by = Vec.ZERO;
        for (Step.Remark remark : remarks) {
            if (remark.kind() == kind && remark.name().equals(name)) {
                by = by.plus(new Vec(remark.acrossMm(), remark.alongMm()));
            }
        }
        return by;
    }

    /** The grain stays upright whatever is cut: only its height and its place across follow the paper. */
    Grain grain() {
        Grain grain = piece.grain();
        if (!parts.isCut()) {
            return new Grain(at(grain.from()), at(grain.to()));
        }
        Point from = at(grain.from());
        Point to = at(grain.to());
        Vec along = grain.to().minus(grain.from()).unit();
        return new Grain(from, from.plus(along.times(to.minus(from).dot(along))));
    }
}
