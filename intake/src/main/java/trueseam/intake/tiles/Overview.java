package trueseam.intake.tiles;

import java.util.ArrayList;
import java.util.List;
import trueseam.geometry.Bounds;
import trueseam.geometry.Path;
import trueseam.intake.drawing.Stroke;

/** Whether a page shows the pattern once more, at a small scale: then it is no part of it. */
final class Overview {

    /** A small copy is not larger than this share of the pattern. */
    private static final double LARGEST = 0.7;

    private static final double ALIKE = 0.02;

    /** Smaller closed lines are letters and symbols, mm. */
    private static final double LEAST_MM = 15;

    private Overview() {}

    /** True if most of its closed lines are small copies of closed lines of the pattern, all at one scale. */
    static boolean isOne(Leaf leaf, List<Stroke> pattern) {
        List<Path> closed = leaf.lines().stream()
                .map(l -> l.stroke().path())
                .filter(p -> p.isClosed() && p.length() > LEAST_MM)
                .toList();
        List<Double> scales = new ArrayList<>();
        for (Path small : closed) {
            for (Stroke large : pattern) {
                double scale = scale(small, large.path());
                if (scale > 0) {
                    scales.add(scale);
                    break;
                }
            }
        }
        scales.sort(null);
        double middle = scales.isEmpty() ? 0 : scales.get(scales.size() / 2);
        long same =
                scales.stream().filter(s -> Math.abs(s / middle - 1) < ALIKE).count();
        return same > 0 && 2 * same > closed.size();
    }

    private static double scale(Path small, Path large) {
        double scale = small.length() / large.length();
        if (!large.isClosed() || scale > LARGEST) {
            return 0;
        }
        Bounds a = small.bounds();
        Bounds b = large.bounds();
        double area = Math.sqrt(Math.abs(small.signedArea() / large.signedArea()));
        boolean alike =
                isNear(a.width() / b.width(), scale) && isNear(a.height() / b.height(), scale) && isNear(area, scale);
        return alike ? scale : 0;
    }

    private static boolean isNear(double factor, double scale) {
        return Math.abs(factor / scale - 1) < ALIKE;
    }
}
