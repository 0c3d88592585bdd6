package trueseam.geometry.crossing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import trueseam.geometry.Bounds;
import trueseam.geometry.Cubic;
import trueseam.geometry.GeometryException;
import trueseam.geometry.Path;
import trueseam.geometry.PathPlace;
import trueseam.geometry.Segment;

/**
 * Finds where paths cross. Strokes whose bounds do not meet are passed over; two lines, and a line and a curve, are
 * solved in closed form; two curves are halved until their directions differ, then Newton finishes.
 *
 * <p>Law: {@code between(a, b)} and {@code between(b, a)} hold the same places.
 */
public final class Crossings {

    /** Points nearer than this are one point: the accuracy promised. */
    static final double SAME_POINT_MM = 1e-9;

    /** Meetings nearer than this along both paths are one, found from both strokes of a corner. */
    private static final double SAME_MEETING_MM = Path.CHAIN_MM;

    private Crossings() {}

    /**
     * Where two paths cross, touch or begin and end to run along each other.
     *
     * @param a the first path
     * @param b the second path
     * @return the places in order along the first path, each once
     * @throws GeometryException if two curves run along each other so nearly that no place can be told
     */
    public static List<Crossing> between(Path a, Path b) {
        Bounds[] boxesA = boxes(a);
        Bounds[] boxesB = boxes(b);
        List<Crossing> found = new ArrayList<>();
        for (int i = 0; i < boxesA.length; i++) {
            for (int k = 0; k < boxesB.length; k++) {
                if (boxesA[i].meets(boxesB[k], SAME_POINT_MM)) {
                    for (Meeting m : StrokePair.meetings(
                            a.segments().get(i), b.segments().get(k))) {
                        found.add(crossing(m, a, i, b, k));
                    }
                }
            }
        }
        return tidy(found, a, b);
    }

    /**
     * Where a path crosses or touches itself. Where one stroke ends and the next begins, and where a closed path ends on
     * its start, is no crossing.
     *
     * @param path the path
     * @return the places, the earlier along the path first in each, in order; empty for a simple path
     * @throws GeometryException if two curves run along each other so nearly that no place can be told
     */
    public static List<Crossing> ofItself(Path path) {
        Bounds[] boxes = boxes(path);
        List<Crossing> found = new ArrayList<>();
        for (int i = 0; i < boxes.length; i++) {
            if (path.segments().get(i) instanceof Cubic c) {
                List<Double> twice = c.selfCrossing();
                if (!twice.isEmpty() && !isWholeLoop(path, i, twice)) {
                    found.add(crossing(new Meeting(Crossing.Kind.POINT, twice.get(0), twice.get(1)), path, i, path, i));
                }
            }
            for (int k = i + 1; k < boxes.length; k++) {
                if (boxes[i].meets(boxes[k], SAME_POINT_MM)) {
                    for (Meeting m : StrokePair.meetings(
                            path.segments().get(i), path.segments().get(k))) {
                        Crossing c = crossing(m, path, i, path, k);
                        if (!isJoint(c, path)) {
                            found.add(c);
                        }
                    }
                }
            }
        }
        return tidy(found, path, path);
    }

    private static boolean isWholeLoop(Path path, int stroke, List<Double> twice) {
        return path.segments().size() == 1 && stroke == 0 && twice.get(0) <= 1e-9 && twice.get(1) >= 1 - 1e-9;
    }

    /** Whether the two places are one place of the path: a joint of two strokes, or the closing point. */
    private static boolean isJoint(Crossing c, Path path) {
        if (c.kind() != Crossing.Kind.POINT) {
            return false; // strokes that fold back on each other share more than their joint
        }
        double apart = c.onSecond().alongMm() - c.onFirst().alongMm();
        return Math.abs(apart) <= SAME_MEETING_MM || (path.isClosed() && apart >= path.length() - SAME_MEETING_MM);
    }

    private static Bounds[] boxes(Path path) {
        Bounds[] boxes = new Bounds[path.segments().size()];
        for (int i = 0; i < boxes.length; i++) {
            Segment s = path.segments().get(i);
            boxes[i] = Bounds.of(s.start(), s.end());
            if (s instanceof Cubic c) { // the box of the handles holds the curve and costs no roots
                boxes[i] = boxes[i].with(Bounds.of(c.handle1(), c.handle2()));
            }
        }
        return boxes;
    }

    private static Crossing crossing(Meeting m, Path a, int i, Path b, int k) {
        return new Crossing(m.kind(), place(a, i, m.t()), place(b, k, m.u()));
    }

    private static PathPlace place(Path path, int stroke, double t) {
        Segment s = path.segments().get(stroke);
        double along = t == 1 ? path.startOf(stroke + 1) : path.startOf(stroke) + s.lengthTo(t);
        return new PathPlace(along, s.at(t));
    }

    /** In order along the first path, each once; stretches that go on over a corner become one. */
    private static List<Crossing> tidy(List<Crossing> found, Path a, Path b) {
        if (found.size() < 2) {
            return List.copyOf(found);
        }
        found.sort(Comparator.comparingDouble((Crossing c) -> c.onFirst().alongMm())
                .thenComparing(c -> c.kind() == Crossing.Kind.SHARED_TO ? 0 : 1));
        List<Crossing> kept = new ArrayList<>();
        for (Crossing c : found) {
            int same = indexOfSame(kept, c, a, b);
            if (same < 0) {
                kept.add(c);
                continue;
            }
            Crossing.Kind before = kept.get(same).kind();
            if (before == Crossing.Kind.SHARED_TO && c.kind() == Crossing.Kind.SHARED_FROM) {
                kept.remove(same); // one stretch ends where the next begins: they are one
            } else if (before == Crossing.Kind.POINT) {
                kept.set(same, c); // an end of a stretch says more than a point
            } else if (before != c.kind() && c.kind() != Crossing.Kind.POINT) {
                kept.add(c);
            }
        }
        return List.copyOf(kept);
    }

    private static int indexOfSame(List<Crossing> kept, Crossing c, Path a, Path b) {
        for (int i = kept.size() - 1; i >= 0; i--) {
            if (isSame(kept.get(i).onFirst(), c.onFirst(), a)
                    && isSame(kept.get(i).onSecond(), c.onSecond(), b)) {
                return i;
            }
        }
        return -1;
    }

    private static boolean isSame(PathPlace p, PathPlace q, Path path) {
        double apart = Math.abs(p.alongMm() - q.alongMm());
        return apart <= SAME_MEETING_MM || (path.isClosed() && apart >= path.length() - SAME_MEETING_MM);
    }
}
