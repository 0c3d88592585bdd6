package trueseam.intake.tiles;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import trueseam.geometry.Bounds;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/** What pages show of the pattern: the window that most lines are seen through, else as far as lines reach. */
final class Window {

    /** Two pages that reach equally far were cut there, mm. */
    private static final double EQUALLY_MM = 0.1;

    /** A line that leaves flatter than this sine runs along the side. */
    private static final double RUNS_OFF = 0.1;

    private Window() {}

    static Bounds of(List<Leaf> leaves) {
        Page first = leaves.get(0).page();
        Map<List<Long>, Integer> windows = new HashMap<>();
        Map<List<Long>, Bounds> exact = new HashMap<>();
        int lines = 0;
        for (Leaf leaf : leaves) {
            for (Inked line : leaf.lines()) {
                Bounds v = line.visible();
                List<Long> key = List.of(
                        Math.round(v.minX() * 5),
                        Math.round(v.minY() * 5),
                        Math.round(v.maxX() * 5),
                        Math.round(v.maxY() * 5));
                windows.merge(key, 1, Integer::sum);
                exact.putIfAbsent(key, v);
                lines++;
            }
        }
        for (Map.Entry<List<Long>, Integer> window : windows.entrySet()) {
            Bounds v = exact.get(window.getKey());
            boolean smaller = v.width() < first.widthMm() - 1 || v.height() < first.heightMm() - 1;
            if (window.getValue() > lines / 2 && smaller) {
                return v;
            }
        }
        return reached(leaves);
    }

    private static Bounds reached(List<Leaf> leaves) {
        Page first = leaves.get(0).page();
        if (leaves.stream().allMatch(l -> l.lines().isEmpty())) {
            return new Bounds(0, 0, first.widthMm(), first.heightMm());
        }
        Reach toLeft = Reach.of(leaves, new Vec(-1, 0));
        Reach toRight = Reach.of(leaves, new Vec(1, 0));
        Reach toLow = Reach.of(leaves, new Vec(0, -1));
        Reach toHigh = Reach.of(leaves, new Vec(0, 1));
        return new Bounds(
                -toLeft.nearOrAs(toRight, first.widthMm()),
                -toLow.nearOrAs(toHigh, first.heightMm()),
                toRight.farOrAs(toLeft, first.widthMm()),
                toHigh.farOrAs(toLow, first.heightMm()));
    }

    /**
     * How far lines reach to one side.
     *
     * @param mm the farthest place where lines of at least two pages end, else the farthest of all; to the left and down counted backwards
     * @param cut whether lines of two pages end there
     */
    private record Reach(double mm, boolean cut) {

        /** A single page that reaches farther than two others has something else there. */
        static Reach of(List<Leaf> leaves, Vec side) {
            List<Double> ends = new ArrayList<>();
            double farthest = Double.NEGATIVE_INFINITY;
            for (Leaf leaf : leaves) {
                double end = Double.NEGATIVE_INFINITY;
                for (Inked line : leaf.lines()) {
                    farthest = Math.max(farthest, side(line.seen(), side));
                    end = Math.max(end, end(line, side));
                }
                ends.add(end);
            }
            ends.sort(Collections.reverseOrder());
            for (int i = 1; i < ends.size(); i++) {
                if (ends.get(i - 1) - ends.get(i) < EQUALLY_MM) {
                    return new Reach(ends.get(i - 1), true);
                }
            }
            return new Reach(farthest, false);
        }

        private static double side(Bounds box, Vec side) {
            double x = side.x() > 0 ? box.maxX() : -box.minX();
            double y = side.y() > 0 ? box.maxY() : -box.minY();
            return side.x() != 0 ? x : y;
        }

        /** How far it runs before it is cut off or ends; a line along the side says nothing. */
        private static double end(Inked line, Vec side) {
            double seen = side(line.seen(), side);
            if (side(line.bounds(), side) > seen + EQUALLY_MM) {
                return seen;
            }
            Path path = line.stroke().path();
            double end = Double.NEGATIVE_INFINITY;
            if (!path.isClosed() && path.length() > 0) {
                if (path.endTangent().dot(side) > RUNS_OFF) {
                    end = path.end().minus(Point.ORIGIN).dot(side);
                }
                if (path.startTangent().reversed().dot(side) > RUNS_OFF) {
                    end = Math.max(end, path.start().minus(Point.ORIGIN).dot(side));
                }
            }
            return end;
        }

        /** To the right and up. Where no line happens to run off a side, the margin there is as on the other side. */
        double farOrAs(Reach near, double paperMm) {
            return cut || !near.cut ? mm : Math.max(mm, paperMm + near.mm);
        }

        /** To the left and down, the same. */
        double nearOrAs(Reach far, double paperMm) {
            return cut || !far.cut ? mm : Math.max(mm, far.mm - paperMm);
        }
    }
}
