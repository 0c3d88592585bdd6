package trueseam.intake.tiles;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import trueseam.geometry.Bounds;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.intake.drawing.Caption;
import trueseam.intake.drawing.Look;

/**
 * How far it may be from a page to the next, by what is printed on them, the likeliest first: words that two pages share at their edges,
 * marks, frames, the room that the lines take, the paper. Each direction by itself.
 */
final class Distances {

    /** Overlaps and margins that are usual, mm (common practice). */
    private static final double[] USUAL_MM = {5, 6.35, 10, 12, 12.7, 15, 19.05, 20, 25, 25.4};

    private static final double SAME_MM = 0.02;

    /** A line that is long enough not to be a symbol, mm. */
    private static final double LONG_MM = 60;

    /** The page below may be so many pages on in the file. */
    private static final int NEIGHBOURS = 25;

    private final List<Leaf> leaves;
    private final Bounds window;
    private final Furniture furniture;

    Distances(List<Leaf> leaves, Bounds window, Furniture furniture) {
        this.leaves = leaves;
        this.window = window;
        this.furniture = furniture;
    }

    /**
     * Distances, the likeliest first.
     *
     * @param mm the distances
     * @param sure how many of the first are printed or drawn; the others are guesses, for the lines to decide between
     */
    record Found(List<Double> mm, int sure) {}

    /**
     * In one direction.
     *
     * @param right whether to the right; else down
     * @param overlapMm the overlap that was said
     * @return mm, each once, and how many of the first are sure
     */
    Found of(boolean right, OptionalDouble overlapMm) {
        Page first = leaves.get(0).page();
        double paper = right ? first.widthMm() : first.heightMm();
        List<Double> rooms = new ArrayList<>();
        furniture.frames().forEach(f -> rooms.add(size(f, right)));
        rooms.add(size(window, right));
        rooms.add(paper);
        List<Double> found = new ArrayList<>();
        if (overlapMm.isPresent()) {
            rooms.forEach(room -> add(found, room - overlapMm.getAsDouble(), paper));
            return new Found(found, found.size());
        }
        sameLines(right).forEach(mm -> add(found, mm, paper));
        shared(right).forEach(mm -> add(found, mm, paper));
        MarkPairs marks = MarkPairs.of(furniture.marks(), right);
        marks.sure().forEach(mm -> add(found, mm, paper));
        int sure = found.size();
        marks.perhaps().forEach(mm -> add(found, mm, paper));
        rooms.forEach(room -> add(found, room, paper));
        for (double usual : USUAL_MM) {
            rooms.forEach(room -> add(found, room - usual, paper));
        }
        slid(right).forEach(mm -> add(found, mm, paper));
        return new Found(found, sure);
    }

    private static double size(Bounds box, boolean right) {
        return right ? box.width() : box.height();
    }

    private static void add(List<Double> found, double mm, double paper) {
        if (mm > paper / 2 && mm <= paper + SAME_MM && found.stream().noneMatch(f -> Math.abs(f - mm) < SAME_MM)) {
            found.add(mm);
        }
    }

    private record Drawn(int strokes, long lengthTenths, Look look) {}

    /** Files that have the whole drawing on every page, behind a window, have each line at many pages: it moves by the distance. */
    private List<Double> sameLines(boolean right) {
        List<Map<Drawn, Point>> starts = new ArrayList<>();
        for (Leaf leaf : leaves) {
            Map<Drawn, Point> once = new HashMap<>();
            Set<Drawn> twice = new HashSet<>();
            for (Inked line : leaf.page().lines()) {
                Path path = line.stroke().path();
                if (path.length() > LONG_MM && !furniture.holds(line)) {
                    Drawn drawn = new Drawn(
                            path.segments().size(),
                            Math.round(path.length() * 10),
                            line.stroke().look());
                    if (once.put(drawn, path.start()) != null) {
                        twice.add(drawn);
                    }
                }
            }
            once.keySet().removeAll(twice);
            starts.add(once);
        }
        Map<Long, List<Double>> votes = new HashMap<>();
        for (int i = 0; i < starts.size(); i++) {
            for (int j = i + 1; j < Math.min(starts.size(), i + NEIGHBOURS); j++) {
                Map<Drawn, Point> other = starts.get(j);
                starts.get(i).forEach((drawn, p) -> {
                    Point q = other.get(drawn);
                    if (q != null && Math.abs(right ? p.y() - q.y() : p.x() - q.x()) < 0.5) {
                        double mm = Math.abs(right ? p.x() - q.x() : p.y() - q.y());
                        votes.computeIfAbsent(Math.round(mm * 10), k -> new ArrayList<>())
                                .add(mm);
                    }
                });
            }
        }
        return mostOften(votes.values());
    }

    /** The means of what was found three times and more, the most often found first. */
    private static List<Double> mostOften(Collection<List<Double>> votes) {
        return votes.stream()
                .filter(v -> v.size() >= 3)
                .sorted(Comparator.comparingInt(v -> -v.size()))
                .map(v -> v.stream().mapToDouble(d -> d).average().orElseThrow())
                .limit(3)
                .toList();
    }

    private record Move(long rightTenths, long upTenths) {}

    /** Words that stand on just two pages, at the right edge of one and the left of the other. */
    private List<Double> shared(boolean right) {
        Map<String, Map<Integer, List<Point>>> texts = new LinkedHashMap<>();
        for (int i = 0; i < leaves.size(); i++) {
            for (Caption caption : leaves.get(i).page().captions()) {
                texts.computeIfAbsent(caption.text(), t -> new LinkedHashMap<>())
                        .computeIfAbsent(i, p -> new ArrayList<>())
                        .add(caption.at());
            }
        }
        Map<Move, List<Double>> votes = new HashMap<>();
        for (Map<Integer, List<Point>> on : texts.values()) {
            if (on.size() == 2) {
                List<List<Point>> two = new ArrayList<>(on.values());
                for (Point a : two.get(0)) {
                    for (Point b : two.get(1)) {
                        double across = Math.abs(a.x() - b.x());
                        double along = Math.abs(a.y() - b.y());
                        if ((right ? along : across) < 0.5) {
                            Move move = new Move(Math.round(across * 10), Math.round(along * 10));
                            votes.computeIfAbsent(move, m -> new ArrayList<>()).add(right ? across : along);
                        }
                    }
                }
            }
        }
        return mostOften(votes.values());
    }

    /**
     * Overlaps by the lines: an end at the right edge of a page is followed along its height into another page; where lines lie there, so
     * wide may the overlap be. True neighbours all say the same.
     */
    private List<Double> slid(boolean right) {
        Map<Long, List<Double>> votes = new HashMap<>();
        double far = right ? window.maxX() : window.minY();
        for (int i = 0; i < Math.min(leaves.size(), 24); i++) {
            List<Crossing> ends = leaves.get(i).over(right, far, right ? -1 : 1);
            for (int j = 0; j < Math.min(leaves.size(), 24); j++) {
                if (i != j && !ends.isEmpty()) {
                    for (double mm : new Slide(leaves.get(j), window, right).overlaps(ends)) {
                        votes.computeIfAbsent(Math.round(mm * 5), k -> new ArrayList<>())
                                .add(mm);
                    }
                }
            }
        }
        double room = size(window, right);
        return votes.values().stream()
                .filter(v -> v.size() >= 2)
                .sorted(Comparator.comparingInt(v -> -v.size()))
                .limit(4)
                .map(v -> room
                        - v.stream()
                                .mapToDouble(d -> d)
                                .sorted()
                                .skip(v.size() / 2)
                                .findFirst()
                                .orElseThrow())
                .toList();
    }
}
