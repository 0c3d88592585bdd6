package trueseam.intake.naming;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trueseam.geometry.Bounds;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.convert.Mirror;

/**
 * An outline laid in one way: turned, and perhaps on its other face. Its stretches between corners are looked at one by one and in runs.
 *
 * @param mirrored whether it lies on its other face (mirrored left to right before it was turned)
 * @param turn how it was turned
 * @param line the outline as it lies, anticlockwise, beginning at its first corner
 * @param corners places of the corners along it, mm, the first one 0
 */
record Laid(boolean mirrored, Motion turn, Path line, List<Double> corners) {

    /** No edge has more stretches: one with two darts has three. */
    static final int LONGEST_RUN = 5;

    static Laid of(Path line, List<Double> corners, boolean mirrored, double turnRad) {
        Path from = begunAt(line, corners.get(0));
        List<Double> places = new ArrayList<>();
        for (double corner : corners) {
            places.add(corner - corners.get(0));
        }
        if (mirrored) {
            double around = from.length();
            from = Mirror.of(from).reversed();
            List<Double> back = new ArrayList<>();
            back.add(0.0);
            for (int i = places.size() - 1; i >= 1; i--) {
                back.add(around - places.get(i));
            }
            places = back;
        }
        Motion turn = Motion.pivot(Point.ORIGIN, turnRad);
        return new Laid(mirrored, turn, from.moved(turn), List.copyOf(places));
    }

    private static Path begunAt(Path line, double mm) {
        return mm <= 1e-9 ? line : line.part(mm, line.length()).then(line.part(0, mm));
    }

    int stretches() {
        return corners.size();
    }

    /** The part of the outline from one corner over so many stretches. */
    Path run(int first, int count) {
        int n = corners.size();
        double from = corners.get(first);
        int last = (first + count) % n;
        double to = last == 0 ? line.length() : corners.get(last);
        if (first + count <= n) {
            return line.part(from, to);
        }
        return line.part(from, line.length()).then(line.part(0, corners.get(last)));
    }

    /** What was said of each stretch, by its middle; the outline's own line was begun at a corner, and perhaps turned over. */
    List<Optional<SaidStretch>> said(List<SaidStretch> said, double begunAtMm) {
        List<Optional<SaidStretch>> all = new ArrayList<>();
        double around = line.length();
        for (int i = 0; i < corners.size(); i++) {
            double to = i + 1 < corners.size() ? corners.get(i + 1) : around;
            double middle = (corners.get(i) + to) / 2;
            double at = (begunAtMm + (mirrored ? around - middle : middle)) % around;
            all.add(said.stream().filter(s -> s.holds(at, around)).findFirst());
        }
        return all;
    }

    /** All runs up to the longest: by first stretch, then by count less one. */
    List<List<EdgeShape>> shapes() {
        Bounds bounds = line.bounds();
        double around = line.length();
        List<List<EdgeShape>> all = new ArrayList<>();
        int n = stretches();
        for (int first = 0; first < n; first++) {
            List<EdgeShape> runs = new ArrayList<>();
            for (int count = 1; count <= Math.min(LONGEST_RUN, n - 1); count++) {
                runs.add(EdgeShape.of(run(first, count), around, bounds));
            }
            all.add(runs);
        }
        return all;
    }
}
