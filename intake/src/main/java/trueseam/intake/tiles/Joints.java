package trueseam.intake.tiles;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import trueseam.geometry.Cubic;
import trueseam.geometry.Line;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.intake.drawing.Stroke;

/** Joins what pages show of lines, so that each line is whole again and there once. One sheet, one thread. */
final class Joints {

    /** Ends that lie farther apart are not the same line's, mm. */
    private static final double NEAR_MM = 0.6;

    /** Straight on, as a cosine. */
    private static final double ONWARD = 0.9;

    /** Two straight parts are one straight line if its middle moves by less than this, mm. */
    private static final double STRAIGHT_MM = 0.01;

    private static final double SAME_MM = 0.05;

    /** An end of another line must be so much nearer to be taken, mm. */
    private static final double OTHER_MM = 0.1;

    private record Near(Part.End a, Part.End b, double apart) {}

    private final List<Part> parts;
    private final Map<Integer, Integer> onward = new HashMap<>();
    private int open;
    private double widest;

    private Joints(List<Part> parts) {
        this.parts = parts;
    }

    /**
     * Lines that are whole.
     *
     * @param strokes the lines
     * @param joins how many times two parts were joined
     * @param widestMm how far apart two joined ends lay at most
     * @param open how many ends at edges were joined with nothing
     */
    record Joined(List<Stroke> strokes, int joins, double widestMm, int open) {}

    static Joined of(List<Part> parts) {
        Joints joints = new Joints(once(parts));
        joints.link();
        List<Stroke> strokes = joints.chains();
        return new Joined(strokes, joints.onward.size() / 2, joints.widest, joints.open);
    }

    /** A line along an edge is on both pages. */
    private static List<Part> once(List<Part> parts) {
        List<Part> once = new ArrayList<>();
        List<Part> along = new ArrayList<>();
        for (Part part : parts) {
            boolean copy = part.along() && along.stream().anyMatch(other -> isCopy(part, other));
            if (!copy) {
                once.add(part);
                if (part.along()) {
                    along.add(part);
                }
            }
        }
        return once;
    }

    private static boolean isCopy(Part a, Part b) {
        Path p = a.path();
        Path q = b.path();
        boolean sameWay = p.start().isNear(q.start(), SAME_MM) && p.end().isNear(q.end(), SAME_MM);
        boolean otherWay = p.start().isNear(q.end(), SAME_MM) && p.end().isNear(q.start(), SAME_MM);
        return a.leaf() != b.leaf() && a.of().look().equals(b.of().look()) && (sameWay || otherWay);
    }

    private static int key(Part.End end) {
        return 2 * end.number() + (end.last() ? 1 : 0);
    }

    private void link() {
        Map<Long, List<Part.End>> grid = new HashMap<>();
        List<Part.End> ends = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            Part part = parts.get(i);
            if (part.mayGoOn(false)) {
                ends.add(new Part.End(part, i, false));
            }
            if (part.mayGoOn(true)) {
                ends.add(new Part.End(part, i, true));
            }
        }
        List<Near> near = new ArrayList<>();
        for (Part.End end : ends) {
            long x = Math.round(end.at().x());
            long y = Math.round(end.at().y());
            for (long dx = -1; dx <= 1; dx++) {
                for (long dy = -1; dy <= 1; dy++) {
                    for (Part.End other : grid.getOrDefault(square(x + dx, y + dy), List.of())) {
                        double apart = end.at().distanceTo(other.at());
                        if (apart <= NEAR_MM && fit(end, other)) {
                            near.add(new Near(end, other, apart));
                        }
                    }
                }
            }
            grid.computeIfAbsent(square(x, y), k -> new ArrayList<>()).add(end);
        }
        near.sort(Comparator.comparingDouble(n -> n.apart + (isOneLine(n) ? 0 : OTHER_MM)));
        for (Near pair : near) {
            if (!onward.containsKey(key(pair.a)) && !onward.containsKey(key(pair.b))) {
                onward.put(key(pair.a), key(pair.b));
                onward.put(key(pair.b), key(pair.a));
                widest = Math.max(widest, pair.apart);
            }
        }
        open = (int) ends.stream()
                .filter(e -> !onward.containsKey(key(e)) && e.isCut())
                .count();
    }

    /**
     * Where a file has whole lines behind its windows, both parts are of lines that are alike: of two that run together, as cutting and
     * stitching line do on a fold, each goes on in itself.
     */
    private static boolean isOneLine(Near near) {
        Path a = near.a.part().of().path();
        Path b = near.b.part().of().path();
        return a.segments().size() == b.segments().size() && Math.abs(a.length() - b.length()) < SAME_MM;
    }

    private static long square(long x, long y) {
        return x * 4_000_037L + y;
    }

    private static boolean fit(Part.End a, Part.End b) {
        return a.part().leaf() != b.part().leaf()
                && a.part().of().look().equals(b.part().of().look())
                && a.part().of().layer().equals(b.part().of().layer())
                && a.outward().dot(b.outward()) < -ONWARD;
    }

    private List<Stroke> chains() {
        List<Stroke> strokes = new ArrayList<>();
        Set<Integer> done = new HashSet<>();
        for (int pass = 0; pass < 2; pass++) {
            // First those with a beginning; what is left goes round.
            for (int i = 0; i < parts.size(); i++) {
                int start = 2 * i;
                if (pass == 0 && onward.containsKey(start) && onward.containsKey(start + 1)) {
                    continue;
                }
                if (!done.contains(i)) {
                    int first = pass == 0 && onward.containsKey(start) ? start + 1 : start;
                    strokes.add(walk(first, done));
                }
            }
        }
        return strokes;
    }

    private Stroke walk(int first, Set<Integer> done) {
        List<Segment> whole = new ArrayList<>();
        int at = first;
        boolean round = false;
        while (true) {
            int part = at / 2;
            done.add(part);
            Path path = at % 2 == 0
                    ? parts.get(part).path()
                    : parts.get(part).path().reversed();
            append(whole, path.segments());
            int far = at % 2 == 0 ? at + 1 : at - 1;
            Integer next = onward.get(far);
            if (next == null) {
                break;
            }
            if (done.contains(next / 2)) {
                round = next == first;
                break;
            }
            at = next;
        }
        if (round && whole.size() > 1) {
            Point start = whole.get(0).start();
            Segment last = whole.remove(whole.size() - 1);
            whole.add(last instanceof Line l && l.start().isNear(start, 1e-9) ? l : ending(last, start));
        }
        return parts.get(first / 2).with(Path.of(whole));
    }

    private static void append(List<Segment> whole, List<Segment> more) {
        if (whole.isEmpty()) {
            whole.addAll(more);
            return;
        }
        Segment last = whole.remove(whole.size() - 1);
        Segment next = more.get(0);
        if (last instanceof Line a && next instanceof Line b) {
            Line both = new Line(a.start(), b.end());
            if (both.length() > 0 && off(both, a.end()) < STRAIGHT_MM && off(both, b.start()) < STRAIGHT_MM) {
                whole.add(both);
                whole.addAll(more.subList(1, more.size()));
                return;
            }
        }
        Point meeting = last.end().towards(next.start(), 0.5);
        whole.add(ending(last, meeting));
        whole.add(beginning(next, meeting));
        whole.addAll(more.subList(1, more.size()));
    }

    private static double off(Line line, Point p) {
        return Math.abs(line.tangent(0).cross(p.minus(line.start())));
    }

    private static Segment ending(Segment s, Point end) {
        return s instanceof Cubic c ? new Cubic(c.start(), c.handle1(), c.handle2(), end) : new Line(s.start(), end);
    }

    private static Segment beginning(Segment s, Point start) {
        return s instanceof Cubic c ? new Cubic(start, c.handle1(), c.handle2(), c.end()) : new Line(start, s.end());
    }
}
