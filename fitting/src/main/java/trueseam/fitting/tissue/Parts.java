package trueseam.fitting.tissue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.polygon.Region;

/**
 * The parts that a pattern was cut into, and where each lies. The first is what was never cut loose; each later one was cut out
 * of the part that held its outline, and lies at first where that part lay. Used by one thread, for one piece.
 */
final class Parts {

    /** How finely a curved outline is cut, mm; only for deciding what lies in a part and for the drawings. */
    private static final double FINE_MM = 0.05;

    /** A point so near to the scissors belongs to the part that was not cut loose. */
    private static final double ON_CUT_MM = 1e-3;

    private static final double SAME_PLACE_MM = 1e-6;

    private final Piece piece;
    private final double whole;
    private final List<Part> parts = new ArrayList<>();
    private int hand;

    /** A part: the stretch of the outline that it took with it, its paper, where it lies. */
    private static final class Part {
        final Step.Cut cut;
        final double from;
        final double to;
        final Path scissors;
        final Region paper;
        Motion pose;

        Part(Step.Cut cut, double from, double to, Path scissors, Region paper, Motion pose) {
            this.cut = cut;
            this.from = from;
            this.to = to;
            this.scissors = scissors;
            this.paper = paper;
            this.pose = pose;
        }
    }

    private Motion rest = Motion.NONE;

    Parts(Piece piece) {
        this.piece = piece;
        this.whole = piece.edges().stream().mapToDouble(Edge::length).sum();
    }

    /** Where the part in the hand lies. */
    Motion pose() {
        return hand == 0 ? rest : parts.get(hand - 1).pose;
    }

    void lie(Motion pose) {
        if (hand == 0) {
            rest = pose;
        } else {
            parts.get(hand - 1).pose = pose;
        }
    }

    /** Puts down what is in the hand; what was not cut loose is in the hand again, where it lay at first. */
    void layBack() {
        hand = 0;
        rest = Motion.NONE;
    }

    void cut(Step.Cut cut) {
        for (Part part : parts) {
            if (part.cut.part().equals(cut.part())) {
                throw new TissueException(
                        piece.name(), cut.part(), "a part of this name was cut before; names must differ.");
            }
        }
        double from = alongOutline(cut.from());
        double to = alongOutline(cut.to());
        double mm = to > from + SAME_PLACE_MM ? to - from : to - from + whole;
        Motion pose = poseAt((from + mm / 2) % whole);
        Path scissors = scissors(cut);
        Path outline = outline(from, mm).then(scissors.reversed());
        parts.add(new Part(cut, from, from + mm, scissors, Region.within(outline, FINE_MM), pose));
        hand = parts.size();
    }

    private Path scissors(Step.Cut cut) {
        List<Point> points = new ArrayList<>();
        points.add(cut.from().on(piece));
        cut.through().forEach(spot -> points.add(spot.at()));
        points.add(cut.to().on(piece));
        return Path.through(points.toArray(Point[]::new));
    }

    private double alongOutline(Place place) {
        double along = 0;
        for (Edge edge : piece.edges()) {
            if (edge.name().equals(place.edge())) {
                return along + Math.min(place.alongMm(), edge.length());
            }
            along += edge.length();
        }
        throw new TissueException(piece.name(), place.edge(), "the piece has no such edge to cut from.");
    }

    private Path outline(double from, double mm) {
        Path path = null;
        double along = 0;
        // Twice round: a part may hold the corner where the outline begins.
        for (int round = 0; round < 2; round++) {
            for (Edge edge : piece.edges()) {
                double a = Math.max(0, from - along);
                double b = Math.min(edge.length(), from + mm - along);
                if (b - a > SAME_PLACE_MM) {
                    Path part = edge.path().part(a, b);
                    path = path == null ? part : path.then(part);
                }
                along += edge.length();
            }
        }
        if (path == null) {
            throw new TissueException(piece.name(), "cut", "the part to be cut loose holds nothing of the outline.");
        }
        return path;
    }

    private boolean holds(Part part, double along) {
        return (part.from <= along && along <= part.to) || (part.from <= along + whole && along + whole <= part.to);
    }

    private Motion poseAt(double along) {
        Motion pose = rest;
        for (Part part : parts) {
            if (holds(part, along)) {
                pose = part.pose;
            }
        }
        return pose;
    }

    /** Refuses to trace what is not on the part in the hand. */
    void check(Stretch stretch) {
        if (parts.isEmpty()) {
            return;
        }
        double along = alongOutline(new Place(stretch.edge(), (stretch.fromMm() + stretch.toMm()) / 2, ""));
        int on = 0;
        for (int i = 0; i < parts.size(); i++) {
            if (holds(parts.get(i), along)) {
                on = i + 1;
            }
        }
        if (on != hand) {
            throw new TissueException(
                    piece.name(),
                    stretch.edge(),
                    "the line from " + stretch.fromMm() + " to " + stretch.toMm() + " mm is on "
                            + (on == 0
                                    ? "what was not cut loose"
                                    : parts.get(on - 1).cut.part())
                            + ", which is not in the hand.");
        }
    }

    boolean isCut() {
        return !parts.isEmpty();
    }

    /** Where the part lies that holds a point inside the piece; nothing if the point was not cut loose. */
    Optional<Motion> poseOf(Point p) {
        Optional<Motion> pose = Optional.empty();
        for (Part part : parts) {
            if (part.paper.contains(p) && part.scissors.nearest(p).point().distanceTo(p) > ON_CUT_MM) {
                pose = Optional.of(part.pose);
            }
        }
        return pose;
    }

    /** Every part as it lies now, what was not cut loose first. */
    List<Frame.Lying> lying() {
        if (parts.isEmpty()) {
            return List.of(new Frame.Lying(List.of(piece.outline()), rest, true));
        }
        Region left = Region.within(piece.outline(), FINE_MM);
        List<Region> papers = new ArrayList<>();
        for (Part part : parts) {
            left = left.difference(part.paper);
            papers.replaceAll(paper -> paper.difference(part.paper));
            papers.add(part.paper);
        }
        List<Frame.Lying> all = new ArrayList<>();
        all.add(new Frame.Lying(left.outlines(), rest, hand == 0));
        for (int i = 0; i < parts.size(); i++) {
            all.add(new Frame.Lying(papers.get(i).outlines(), parts.get(i).pose, hand == i + 1));
        }
        return List.copyOf(all);
    }
}
