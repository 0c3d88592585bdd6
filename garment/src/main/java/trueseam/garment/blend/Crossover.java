package trueseam.garment.blend;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import trueseam.geometry.Cubic;
import trueseam.geometry.Line;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.geometry.Vec;

/**
 * A line that goes over from one size's line to another's.
 *
 * <pre>{@code
 *    A(0)                 each point lies on the straight way from A(t) to B(t), t being the share
 *     |\                  of the length: a share w = 3t^2 - 2t^3 of it. w and its slope are 0 at the
 *     A  C  B             start, 1 and 0 at the end: the line leaves along A and arrives along B,
 *         \ |             and lies between them all the way.
 *          B(1)
 * }</pre>
 */
final class Crossover {

    /** How far the drawn curve may lie from the exact one, mm. */
    private static final double DRAWN_MM = 0.003;

    /** A line is straight within this. */
    private static final double STRAIGHT_MM = 1e-6;

    private static final double SAME_SHARE = 1e-7;

    private static final int DEEPEST = 8;

    private final Path a;
    private final Path b;
    private final List<Segment> drawn = new ArrayList<>();

    private Crossover(Path a, Path b) {
        this.a = a;
        this.b = b;
    }

    static Path of(Path a, Path b) {
        Crossover crossover = new Crossover(a, b);
        TreeSet<Double> knots = new TreeSet<>();
        knots.add(0.0);
        for (Path path : List.of(a, b)) {
            for (int i = 1; i < path.segments().size(); i++) {
                double t = path.startOf(i) / path.length();
                Double below = knots.floor(t);
                Double above = knots.ceiling(t);
                boolean fresh = t - below > SAME_SHARE && (above == null || above - t > SAME_SHARE);
                if (fresh && 1 - t > SAME_SHARE) {
                    knots.add(t);
                }
            }
        }
        knots.add(1.0);
        List<Double> all = new ArrayList<>(knots);
        for (int i = 1; i < all.size(); i++) {
            crossover.draw(all.get(i - 1), all.get(i), 0);
        }
        return crossover.straightened();
    }

    /** How far over it is at a share of the length. */
    private static double over(double t) {
        return t * t * (3 - 2 * t);
    }

    private static double slope(double t) {
        return 6 * t * (1 - t);
    }

    private Point at(double t) {
        return a.pointAt(t * a.length()).towards(b.pointAt(t * b.length()), over(t));
    }

    private Vec velocity(double t, Vec alongA, Vec alongB) {
        Vec between = b.pointAt(t * b.length()).minus(a.pointAt(t * a.length()));
        return alongA.times(a.length() * (1 - over(t)))
                .plus(alongB.times(b.length() * over(t)))
                .plus(between.times(slope(t)));
    }

    private void draw(double from, double to, int depth) {
        Path onA = a.part(from * a.length(), to * a.length());
        Path onB = b.part(from * b.length(), to * b.length());
        double third = (to - from) / 3;
        Cubic curve = Cubic.of(
                at(from),
                velocity(from, onA.startTangent(), onB.startTangent()).times(third),
                velocity(to, onA.endTangent(), onB.endTangent()).times(-third),
                at(to));
        double worst = 0;
        for (int i = 1; i < 6; i++) {
            double share = i / 6.0;
            worst = Math.max(worst, curve.at(share).distanceTo(at(from + share * (to - from))));
        }
        if (worst > DRAWN_MM && depth < DEEPEST) {
            double middle = (from + to) / 2;
            draw(from, middle, depth + 1);
            draw(middle, to, depth + 1);
        } else {
            drawn.add(curve);
        }
    }

    private Path straightened() {
        Path path = Path.of(drawn);
        Vec chord = path.end().minus(path.start());
        boolean straight = drawn.stream()
                .allMatch(s -> s instanceof Cubic c
                        && List.of(c.handle1(), c.handle2(), c.end()).stream()
                                .allMatch(p -> Math.abs(chord.unit().cross(p.minus(path.start()))) < STRAIGHT_MM));
        return straight && path.length() < chord.length() + STRAIGHT_MM
                ? Path.of(new Line(path.start(), path.end()))
                : path;
    }
}
