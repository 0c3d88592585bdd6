package trueseam.geometry.convert;

import java.util.ArrayList;
import java.util.List;
import trueseam.geometry.Cubic;
import trueseam.geometry.GeometryException;
import trueseam.geometry.Line;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;

/**
 * A drawing's own placing of its lines, before they are millimetres on a table: scaled, turned, sheared, mirrored, shifted.
 * The numbers stand in the order of SVG's matrix: {@code x' = a x + c y + e, y' = b x + d y + f}. For moving a pattern use
 * {@link trueseam.geometry.Motion}, which cannot stretch.
 *
 * @param a x for each x
 * @param b y for each x
 * @param c x for each y
 * @param d y for each y
 * @param e shift to the right
 * @param f shift along y
 */
public record Affine(double a, double b, double c, double d, double e, double f) {

    /** Everything stays where it is. */
    public static final Affine NONE = new Affine(1, 0, 0, 1, 0, 0);

    /** What runs down runs up: between a drawing whose y grows downwards and a table whose y grows upwards. */
    public static final Affine UPSIDE_DOWN = new Affine(1, 0, 0, -1, 0, 0);

    // Refuses what is no number.
    // Throws GeometryException if a number is not finite
    public Affine {
        double sum = a + b + c + d + e + f;
        if (!(Math.abs(sum) <= Double.MAX_VALUE)) {
            throw new GeometryException("The matrix (" + a + " " + b + " " + c + " " + d + " " + e + " " + f
                    + ") holds what is no finite number.");
        }
    }

    /**
     * Lines made longer in the same proportion.
     *
     * @param factor how many times
     * @return the placing
     */
    public static Affine scale(double factor) {
        return new Affine(factor, 0, 0, factor, 0, 0);
    }

    /**
     * This placing, and then another.
     *
     * @param next what is done afterwards
     * @return both as one
     */
    public Affine then(Affine next) {
        return new Affine(
                next.a * a + next.c * b,
                next.b * a + next.d * b,
                next.a * c + next.c * d,
                next.b * c + next.d * d,
                next.a * e + next.c * f + next.e,
                next.b * e + next.d * f + next.f);
    }

    /**
     * Where a point comes to lie.
     *
     * @param p the point as drawn
     * @return the point as placed
     */
    public Point apply(Point p) {
        return new Point(a * p.x() + c * p.y() + e, b * p.x() + d * p.y() + f);
    }

    /**
     * Where a path comes to lie. Cubics stay cubics: their control points are placed.
     *
     * @param path the path as drawn
     * @return the path as placed
     */
    public Path apply(Path path) {
        List<Segment> placed = new ArrayList<>(path.segments().size());
        for (Segment s : path.segments()) {
            placed.add(
                    s instanceof Cubic k
                            ? new Cubic(apply(k.start()), apply(k.handle1()), apply(k.handle2()), apply(k.end()))
                            : new Line(apply(s.start()), apply(s.end())));
        }
        return Path.of(placed);
    }
}
