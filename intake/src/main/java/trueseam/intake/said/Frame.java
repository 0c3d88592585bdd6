package trueseam.intake.said;

import trueseam.geometry.Bounds;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/**
 * Where a piece lies in its drawing and how large it is, by which it is known again.
 *
 * @param right of the drawing's origin, mm: the left end of its outline
 * @param up from the drawing's origin, mm: the lower end of its outline
 * @param wide how wide its outline is, mm
 * @param high how high its outline is, mm
 */
public record Frame(double right, double up, double wide, double high) {

    /** A drawing that was saved again by another program differs by less; two pieces by more. */
    private static final double SAME_MM = 2;

    /**
     * The frame of an outline.
     *
     * @param outline the outermost line as drawn
     * @return its frame
     */
    public static Frame of(Path outline) {
        Bounds bounds = outline.bounds();
        return new Frame(bounds.minX(), bounds.minY(), bounds.width(), bounds.height());
    }

    /**
     * A point as it is told.
     *
     * @param drawn the point in the drawing
     * @return the point in this frame
     */
    public Point told(Point drawn) {
        return new Point(drawn.x() - right, drawn.y() - up);
    }

    /**
     * A line as it is told.
     *
     * @param drawn the line in the drawing
     * @return the line in this frame
     */
    public Path told(Path drawn) {
        return drawn.moved(Motion.slide(new Vec(-right, -up)));
    }

    /**
     * A point as it is drawn.
     *
     * @param told the point in this frame
     * @return the point in the drawing
     */
    public Point drawn(Point told) {
        return new Point(told.x() + right, told.y() + up);
    }

    /**
     * Whether it is of the same size.
     *
     * @param other another frame
     * @return true within 2 mm
     */
    public boolean isAsLarge(Frame other) {
        return Math.abs(wide - other.wide) < SAME_MM && Math.abs(high - other.high) < SAME_MM;
    }

    /**
     * Whether it lies at the same place and is of the same size.
     *
     * @param other another frame
     * @return true within 2 mm
     */
    public boolean isSame(Frame other) {
        return isAsLarge(other) && Math.abs(right - other.right) < SAME_MM && Math.abs(up - other.up) < SAME_MM;
    }
}
