package trueseam.intake.tiles;

import java.util.ArrayList;
import java.util.List;
import trueseam.geometry.Bounds;
import trueseam.geometry.Path;
import trueseam.geometry.PathPlace;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/** Cuts a line along the sides of a rectangle and keeps what lies in it. */
final class Cut {

    /** A line on a side belongs to it, mm: the rounding of a file. */
    private static final double ON_MM = 0.02;

    private static final double SLIVER_MM = 1e-4;

    private Cut() {}

    static List<Path> within(Path path, Bounds lineBounds, Bounds box) {
        if (!lineBounds.meets(box, ON_MM)) {
            return List.of();
        }
        if (box.minX() - ON_MM <= lineBounds.minX()
                && lineBounds.maxX() <= box.maxX() + ON_MM
                && box.minY() - ON_MM <= lineBounds.minY()
                && lineBounds.maxY() <= box.maxY() + ON_MM) {
            return List.of(path);
        }
        List<Double> cuts = new ArrayList<>();
        cuts.add(0.0);
        cuts.add(path.length());
        for (double x : new double[] {box.minX(), box.maxX()}) {
            path.crossings(new Point(x, 0), new Vec(0, 1)).stream()
                    .map(PathPlace::alongMm)
                    .forEach(cuts::add);
        }
        for (double y : new double[] {box.minY(), box.maxY()}) {
            path.crossings(new Point(0, y), new Vec(1, 0)).stream()
                    .map(PathPlace::alongMm)
                    .forEach(cuts::add);
        }
        cuts.sort(null);
        List<Path> parts = new ArrayList<>();
        double begun = -1;
        double end = 0;
        for (int i = 1; i < cuts.size(); i++) {
            double from = cuts.get(i - 1);
            double to = Math.min(cuts.get(i), path.length());
            if (to - from < SLIVER_MM) {
                continue;
            }
            Point middle = path.pointAt((from + to) / 2);
            if (box.meets(Bounds.of(middle, middle), ON_MM)) {
                begun = begun < 0 ? from : begun;
                end = to;
            } else if (begun >= 0) {
                parts.add(path.part(begun, end));
                begun = -1;
            }
        }
        if (begun >= 0) {
            parts.add(path.part(begun, end));
        }
        return round(path, parts);
    }

    /** A closed line has no beginning: what is cut off before it and behind it is one part. */
    private static List<Path> round(Path path, List<Path> parts) {
        int last = parts.size() - 1;
        if (path.isClosed()
                && last > 0
                && parts.get(0).start().isNear(path.start(), 1e-9)
                && parts.get(last).end().isNear(path.end(), 1e-9)) {
            List<Path> joined = new ArrayList<>(parts.subList(1, last));
            joined.add(parts.get(last).then(parts.get(0)));
            return joined;
        }
        return parts;
    }
}
