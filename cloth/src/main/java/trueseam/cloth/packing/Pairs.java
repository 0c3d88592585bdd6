package trueseam.cloth.packing;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicReferenceArray;

/** How every two forms lie in each other. Found when first asked for, and shared by all pairs that are turned alike. */
final class Pairs {

    /** Cells across the longer side of a no-fit region where there are few kinds of shapes, and where there are many. */
    private static final int FINE = 24;

    private static final int COARSE = 20;
    private static final int MANY = 1000;

    private final List<Form> forms;
    private final int grid;
    private final AtomicReferenceArray<Pair> known;
    private final Map<Key, NoFitField> fields = new ConcurrentHashMap<>();

    Pairs(List<Form> forms) {
        this.forms = List.copyOf(forms);
        known = new AtomicReferenceArray<>(forms.size() * forms.size());
        grid = forms.size() * (long) forms.size() > 16 * MANY ? COARSE : FINE;
    }

    Pair of(int a, int b) {
        int at = a * forms.size() + b;
        Pair pair = known.getPlain(at);
        if (pair == null) {
            pair = find(forms.get(a), forms.get(b));
            known.set(at, pair);
        }
        return pair;
    }

    private Pair find(Form a, Form b) {
        double turnA = a.way.turnDegrees();
        double turnB = b.way.turnDegrees();
        if (a.kind <= b.kind) {
            return new Pair(field(a, b), Polygon.cos(turnA), -Polygon.sin(turnA), a, b);
        }
        return new Pair(field(b, a), -Polygon.cos(turnB), Polygon.sin(turnB), a, b);
    }

    /** The field of b against a, seen with a turned back upright. */
    private NoFitField field(Form a, Form b) {
        double apart = b.way.turnDegrees() - a.way.turnDegrees();
        long milli = Math.floorMod(Math.round(apart * 1000), 360_000L);
        return fields.computeIfAbsent(
                new Key(a.kind, b.kind, milli),
                k -> new NoFitField(
                        NoFit.of(a.polygon.turned(-a.way.turnDegrees()), b.polygon.turned(-a.way.turnDegrees())),
                        grid));
    }

    private record Key(int kindA, int kindB, long milliDegrees) {}

    /** One pair: the field, and the turn that brings a displacement of the second against the first into it. */
    static final class Pair {
        private final NoFitField field;

        /** The side of a square as large as the smaller of the two. */
        private final double smaller;

        private final double scale;
        private final double c;
        private final double s;

        Pair(NoFitField field, double c, double s, Form a, Form b) {
            this.field = field;
            this.c = c;
            this.s = s;
            double areaA = a.polygon.signedArea();
            double areaB = b.polygon.signedArea();
            smaller = Math.sqrt(Math.min(areaA, areaB));
            scale = smaller * Math.cbrt(areaA * areaB);
        }

        /**
         * What so deep an overlap costs. Large shapes cost more, so that they find their places first and small ones go between them; and a
         * small shape that lies deep in a large one costs hardly more than one that half lies in it.
         */
        double loss(double depth) {
            return scale * depth / (depth + smaller);
        }

        double depth(double dx, double dy) {
            return field.depth(c * dx - s * dy, s * dx + c * dy);
        }

        /** The depth, and the shortest way out of the second against the first. */
        double wayOut(double dx, double dy, double[] way) {
            double depth = field.wayOut(c * dx - s * dy, s * dx + c * dy, way);
            double wx = way[0];
            double wy = way[1];
            way[0] = c * wx + s * wy;
            way[1] = -s * wx + c * wy;
            return depth;
        }
    }
}
