package trueseam.intake.outline;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import trueseam.geometry.Cubic;
import trueseam.geometry.Line;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.geometry.Vec;
import trueseam.intake.drawing.Stroke;

/**
 * Outlines of loose lines. Ends that lie together are one place; lines that lead nowhere are set aside; what is left falls into parts that hang
 * together, and of each part the outside is walked, always taking the way farthest to the right, so that lines across a piece stay inside it.
 * Lines of one look are tried by themselves first: a stitching line that touches the cutting line at the fold is still its own outline.
 */
final class Loops {

    /** A direction is looked at over so much of a line: ends drawn by hand hook. */
    private static final double LOOK_MM = 2;

    /** Outlines within each other are found one after the other; lines that must be looked at more often than this are no outlines but hatching. */
    private static final int MOST_LOOKED = 200_000;

    private final double joinMm;

    private Loops(double joinMm) {
        this.joinMm = joinMm;
    }

    /**
     * What came of it.
     *
     * @param closed outlines
     * @param open the lines that are part of none
     */
    record Found(List<Stroke> closed, List<Stroke> open) {}

    static Found of(List<Stroke> strokes, double joinMm) {
        Loops loops = new Loops(joinMm);
        List<Stroke> closed = new ArrayList<>();
        Set<Stroke> left = same();
        left.addAll(strokes);
        Map<String, List<Stroke>> byLook = new LinkedHashMap<>();
        for (Stroke stroke : strokes) {
            byLook.computeIfAbsent(stroke.layer() + stroke.look(), k -> new ArrayList<>())
                    .add(stroke);
        }
        for (List<Stroke> alike : byLook.values()) {
            loops.take(alike, closed, left);
        }
        loops.take(strokes.stream().filter(left::contains).toList(), closed, left);
        return new Found(
                closed, loops.chains(strokes.stream().filter(left::contains).toList()));
    }

    private static boolean isFlat(Stroke stroke) {
        return Math.abs(stroke.path().signedArea()) < 0.5 * stroke.path().length();
    }

    /** Lines of one look that go on into each other and meet no third one are one line. */
    private List<Stroke> chains(List<Stroke> open) {
        List<Stroke> all = new ArrayList<>(open);
        boolean joined = true;
        while (joined) {
            joined = false;
            List<Point> places = new ArrayList<>();
            Map<Long, List<Integer>> grid = new HashMap<>();
            Map<Integer, List<Integer>> meeting = new LinkedHashMap<>();
            for (int i = 0; i < all.size(); i++) {
                for (Point end :
                        List.of(all.get(i).path().start(), all.get(i).path().end())) {
                    meeting.computeIfAbsent(place(places, grid, end), k -> new ArrayList<>())
                            .add(i);
                }
            }
            Set<Integer> taken = new HashSet<>();
            List<Stroke> next = new ArrayList<>();
            for (Map.Entry<Integer, List<Integer>> at : meeting.entrySet()) {
                List<Integer> two = alike(all, at.getValue());
                if (two.size() == 2
                        && !two.get(0).equals(two.get(1))
                        && !taken.contains(two.get(0))
                        && !taken.contains(two.get(1))) {
                    taken.addAll(two);
                    next.add(onward(all.get(two.get(0)), all.get(two.get(1)), places.get(at.getKey())));
                    joined = true;
                }
            }
            for (int i = 0; i < all.size(); i++) {
                if (!taken.contains(i)) {
                    next.add(all.get(i));
                }
            }
            all = next;
        }
        return all;
    }

    /** Those of the lines that meet at a place which look like just one other of them. */
    private static List<Integer> alike(List<Stroke> all, List<Integer> meeting) {
        Map<List<Object>, List<Integer>> byLook = new LinkedHashMap<>();
        for (int i : meeting) {
            byLook.computeIfAbsent(List.of(all.get(i).look(), all.get(i).layer()), k -> new ArrayList<>())
                    .add(i);
        }
        return byLook.values().stream()
                .filter(same -> same.size() == 2)
                .findFirst()
                .orElse(List.of());
    }

    private Stroke onward(Stroke a, Stroke b, Point meeting) {
        Path first =
                a.path().end().isNear(meeting, joinMm) ? a.path() : a.path().reversed();
        Path second =
                b.path().start().isNear(meeting, joinMm) ? b.path() : b.path().reversed();
        Stroke longer = a.path().length() >= b.path().length() ? a : b;
        return new Stroke(endingAt(first, second.start()).then(second), longer.look(), longer.layer(), longer.label());
    }

    private record Way(Stroke stroke, boolean forward, int from, int to) {

        Path path() {
            return forward ? stroke.path() : stroke.path().reversed();
        }
    }

    /** A set in which only the very same line is the same: comparing long lines point by point takes long. */
    private static Set<Stroke> same() {
        return Collections.newSetFromMap(new IdentityHashMap<>());
    }

    private void take(List<Stroke> strokes, List<Stroke> closed, Set<Stroke> left) {
        boolean found = true;
        List<Stroke> rest = new ArrayList<>(strokes);
        for (long looked = 0; found && !rest.isEmpty() && looked <= MOST_LOOKED; looked += rest.size()) {
            found = false;
            Set<Stroke> gone = same();
            for (Collection<Way> part : parts(rest)) {
                Optional<List<Way>> outside = outside(part);
                Optional<Stroke> outline = outside.map(Loops::joined);
                if (outline.isPresent() && isFlat(outline.get())) {
                    // There and back on the same way: a line drawn twice, or a mark along another line.
                    outside.get().forEach(way -> gone.add(way.stroke));
                    found = true;
                } else if (outside.isPresent()) {
                    closed.add(outline.get());
                    outside.get().forEach(way -> {
                        left.remove(way.stroke);
                        gone.add(way.stroke);
                    });
                    found = true;
                }
            }
            rest.removeIf(gone::contains);
        }
    }

    /** Parts that hang together, without lines that lead nowhere. */
    private Collection<List<Way>> parts(List<Stroke> strokes) {
        List<Point> places = new ArrayList<>();
        List<Way> ways = new ArrayList<>();
        Map<Long, List<Integer>> grid = new HashMap<>();
        for (Stroke stroke : strokes) {
            ways.add(new Way(
                    stroke,
                    true,
                    place(places, grid, stroke.path().start()),
                    place(places, grid, stroke.path().end())));
        }
        ways = withoutLooseEnds(ways, places.size());
        int[] part = new int[places.size()];
        for (int i = 0; i < part.length; i++) {
            part[i] = i;
        }
        for (Way way : ways) {
            part[root(part, way.from)] = root(part, way.to);
        }
        Map<Integer, List<Way>> parts = new TreeMap<>();
        for (Way way : ways) {
            parts.computeIfAbsent(root(part, way.from), k -> new ArrayList<>()).add(way);
        }
        return parts.values();
    }

    /** A line with a loose end leads nowhere, and without it perhaps the next one does: each is looked at as often as lines meet at it. */
    private static List<Way> withoutLooseEnds(List<Way> ways, int places) {
        List<List<Way>> at = new ArrayList<>();
        for (int i = 0; i < places; i++) {
            at.add(new ArrayList<>());
        }
        Set<Way> gone = Collections.newSetFromMap(new IdentityHashMap<>());
        int[] ends = new int[places];
        for (Way way : ways) {
            if (way.from == way.to) {
                gone.add(way);
            } else {
                at.get(way.from).add(way);
                at.get(way.to).add(way);
                ends[way.from]++;
                ends[way.to]++;
            }
        }
        Deque<Integer> loose = new ArrayDeque<>();
        for (int i = 0; i < places; i++) {
            if (ends[i] == 1) {
                loose.add(i);
            }
        }
        while (!loose.isEmpty()) {
            int place = loose.remove();
            for (Way way : at.get(place)) {
                if (gone.add(way)) {
                    int other = way.from == place ? way.to : way.from;
                    ends[place]--;
                    ends[other]--;
                    if (ends[other] == 1) {
                        loose.add(other);
                    }
                }
            }
        }
        return ways.stream().filter(way -> !gone.contains(way)).toList();
    }

    private static int root(int[] part, int i) {
        int at = i;
        while (part[at] != at) {
            part[at] = part[part[at]];
            at = part[at];
        }
        return at;
    }

    private int place(List<Point> places, Map<Long, List<Integer>> grid, Point p) {
        long x = Math.round(p.x() / joinMm);
        long y = Math.round(p.y() / joinMm);
        for (long dx = -1; dx <= 1; dx++) {
            for (long dy = -1; dy <= 1; dy++) {
                for (int at : grid.getOrDefault(cell(x + dx, y + dy), List.of())) {
                    if (places.get(at).isNear(p, joinMm)) {
                        return at;
                    }
                }
            }
        }
        places.add(p);
        grid.computeIfAbsent(cell(x, y), k -> new ArrayList<>()).add(places.size() - 1);
        return places.size() - 1;
    }

    private static long cell(long x, long y) {
        return x * 4_000_037L + y;
    }

    /** The outside of a part, anticlockwise; nothing if it cannot be walked round. */
    private static Optional<List<Way>> outside(Collection<Way> part) {
        Map<Integer, List<Way>> from = new HashMap<>();
        for (Way way : part) {
            Way back = new Way(way.stroke, false, way.to, way.from);
            from.computeIfAbsent(way.from, k -> new ArrayList<>()).add(way);
            from.computeIfAbsent(back.from, k -> new ArrayList<>()).add(back);
        }
        Way first = lowest(part, from);
        List<Way> walked = new ArrayList<>();
        Set<Stroke> seen = same();
        Way at = first;
        while (walked.size() <= 2 * part.size()) {
            if (!seen.add(at.stroke)) {
                return Optional.empty();
            }
            walked.add(at);
            if (at.to == first.from) {
                return Optional.of(walked);
            }
            at = rightmost(at, from.get(at.to));
        }
        return Optional.empty();
    }

    /** The line with the lowest point, walked to the right there. */
    private static Way lowest(Collection<Way> part, Map<Integer, List<Way>> from) {
        Way best = null;
        double low = Double.POSITIVE_INFINITY;
        double along = 0;
        for (Way way : part) {
            Path path = way.stroke.path();
            if (path.bounds().minY() >= low) {
                continue;
            }
            int n = Math.max(8, (int) Math.min(400, path.length() / 3));
            for (int i = 0; i <= n; i++) {
                double mm = path.length() * i / n;
                double y = path.pointAt(mm).y();
                if (y < low) {
                    low = y;
                    best = way;
                    along = mm;
                }
            }
        }
        Path path = best.path();
        double length = path.length();
        if (along > 1e-9 && along < length - 1e-9) {
            boolean right = path.tangentAt(along).x() > 0;
            return right ? best : new Way(best.stroke, false, best.to, best.from);
        }
        int corner = along <= 1e-9 ? best.from : best.to;
        return rightmost(Math.PI, from.get(corner));
    }

    private static Way rightmost(Way arriving, List<Way> leaving) {
        Path path = arriving.path();
        Vec back = path.pointAt(Math.max(0, path.length() - LOOK_MM)).minus(path.end());
        List<Way> others = leaving.stream()
                .filter(way -> !(way.to == arriving.from && way.stroke.equals(arriving.stroke)))
                .toList();
        return others.isEmpty() ? arriving : rightmost(back.angle(), others);
    }

    /** The first way met when turning left from a direction. */
    private static Way rightmost(double backRad, List<Way> leaving) {
        return leaving.stream()
                .min(Comparator.comparingDouble(way -> {
                    Path path = way.path();
                    Vec out = path.pointAt(Math.min(path.length(), LOOK_MM)).minus(path.start());
                    double left = Math.IEEEremainder(out.angle() - backRad, 2 * Math.PI);
                    return left <= 1e-6 ? left + 2 * Math.PI : left;
                }))
                .orElseThrow();
    }

    private static Stroke joined(List<Way> ways) {
        List<Segment> all = new ArrayList<>();
        Point begin = ways.get(0).path().start();
        for (int i = 0; i < ways.size(); i++) {
            Point next = i + 1 < ways.size() ? ways.get(i + 1).path().start() : begin;
            all.addAll(endingAt(ways.get(i).path(), next).segments());
        }
        Stroke longest = ways.stream()
                .map(Way::stroke)
                .max(Comparator.comparingDouble(s -> s.path().length()))
                .orElseThrow();
        return new Stroke(Path.of(all), longest.look(), longest.layer(), longest.label());
    }

    /** The same line with its last point put where the next one begins. */
    static Path endingAt(Path path, Point end) {
        List<Segment> segments = new ArrayList<>(path.segments());
        Segment last = segments.remove(segments.size() - 1);
        if (last instanceof Cubic c) {
            segments.add(new Cubic(c.start(), c.handle1(), c.handle2(), end));
        } else if (!last.start().isNear(end, 1e-9)) {
            segments.add(new Line(last.start(), end));
        }
        return segments.isEmpty() ? path : Path.of(segments);
    }
}
