package trueseam.intake.nest;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import trueseam.geometry.Bounds;
import trueseam.geometry.Path;
import trueseam.geometry.PathPlace;
import trueseam.geometry.Point;
import trueseam.intake.drawing.Stroke;

/** Lines that several sizes share, such as a centre drawn once: each size takes the stretch of them that it closes on. */
final class Sharing {

    private static final double SHORT_MM = 20;

    private final List<Stroke> own;
    private final List<Stroke> shared;

    private Sharing(List<Stroke> own, List<Stroke> shared) {
        this.own = own;
        this.shared = shared;
    }

    /**
     * The lines of one size with what it shares with others.
     *
     * @param own its own lines
     * @param shared lines of no size
     * @return its own lines, and of the shared ones what lies between the places where its own end on them; those that none ends on whole
     */
    static List<Stroke> with(List<Stroke> own, List<Stroke> shared) {
        List<Stroke> all = new ArrayList<>(own);
        all.addAll(new Sharing(own, shared).taken());
        return all;
    }

    /** The line that both ends of a line lie on, or the two that meet: the rest of an outline that is drawn once for all sizes. */
    static List<Stroke> closing(Stroke line, List<Stroke> others) {
        List<Stroke> atStart = touching(line.path().start(), others);
        List<Stroke> atEnd = touching(line.path().end(), others);
        for (Stroke one : atStart) {
            if (atEnd.contains(one) && Ring.closes(one.path(), line.path())) {
                return List.of(one);
            }
        }
        for (Stroke one : atStart) {
            for (Stroke other : atEnd) {
                boolean rest = one.path().length() + other.path().length()
                        < line.path().length();
                if (!one.equals(other) && rest && meet(one, other)) {
                    return List.of(one, other);
                }
            }
        }
        return List.of();
    }

    private static List<Stroke> touching(Point p, List<Stroke> others) {
        return others.stream()
                .filter(s -> s.path().length() > SHORT_MM)
                .filter(s -> s.path().bounds().grown(1).meets(Bounds.of(p, p), 0))
                .filter(s -> s.path().nearest(p).point().isNear(p, Ring.TOUCH_MM))
                .toList();
    }

    private static boolean meet(Stroke a, Stroke b) {
        return List.of(a.path().start(), a.path().end()).stream()
                .anyMatch(p -> p.isNear(b.path().start(), Ring.TOUCH_MM)
                        || p.isNear(b.path().end(), Ring.TOUCH_MM));
    }

    private static List<Point> ends(List<Stroke> strokes) {
        List<Point> ends = new ArrayList<>();
        for (Stroke stroke : strokes) {
            if (!stroke.path().isClosed()) {
                ends.add(stroke.path().start());
                ends.add(stroke.path().end());
            }
        }
        return ends;
    }

    private List<Stroke> taken() {
        List<Point> ownEnds = ends(own);
        List<Stroke> taken = new ArrayList<>();
        for (Stroke stroke : shared) {
            if (stroke.path().isClosed() || stroke.path().length() < SHORT_MM) {
                taken.add(stroke);
            } else {
                taken.addAll(cut(stroke, ownEnds));
            }
        }
        return taken;
    }

    private List<Stroke> cut(Stroke stroke, List<Point> ownEnds) {
        Path path = stroke.path();
        TreeSet<Double> at = new TreeSet<>();
        for (Point p : ownEnds) {
            PathPlace place = path.nearest(p);
            boolean fresh = at.stream().noneMatch(other -> Math.abs(other - place.alongMm()) < Ring.TOUCH_MM);
            if (fresh && place.point().isNear(p, Ring.TOUCH_MM)) {
                at.add(place.alongMm());
            }
        }
        if (at.isEmpty()) {
            return List.of(stroke);
        }
        List<Double> places = new ArrayList<>(at);
        double first = places.get(0);
        double last = places.get(places.size() - 1);
        if (first > Ring.TOUCH_MM && goesOn(stroke, path.start())) {
            places.add(0, 0.0);
        }
        if (last < path.length() - Ring.TOUCH_MM && goesOn(stroke, path.end())) {
            places.add(path.length());
        }
        List<Stroke> parts = new ArrayList<>();
        for (int i = 1; i < places.size(); i++) {
            parts.add(new Stroke(
                    path.part(places.get(i - 1), places.get(i)), stroke.look(), stroke.layer(), stroke.label()));
        }
        return parts;
    }

    /** Another shared line begins where this one ends. */
    private boolean goesOn(Stroke stroke, Point end) {
        return shared.stream()
                .filter(other -> !other.equals(stroke) && !other.path().isClosed())
                .anyMatch(other -> other.path().start().isNear(end, Ring.TOUCH_MM)
                        || other.path().end().isNear(end, Ring.TOUCH_MM));
    }
}
