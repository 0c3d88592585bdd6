package trueseam.output.drawing;

import java.util.List;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/**
 * The symbols of printed patterns. Sizes are mm on the page, also in a scaled view.
 *
 * <p>Source: common practice of home patterns (double-ended arrow: grain; bent double arrow: place on the fold; double line:
 * lengthen or shorten here; crossed circle: bust or hip point; notches: one in front, two at the back).
 */
public final class PatternSymbols {

    /** How far a notch stands out from the cutting line, mm. */
    public static final double NOTCH_HIGH_MM = 4.5;

    private static final double NOTCH_WIDE_MM = 5;
    private static final double ARROW_LONG_MM = 5;
    private static final double ARROW_WIDE_MM = 3;

    private PatternSymbols() {}

    /**
     * The grainline: an arrow with two heads.
     *
     * @param canvas drawn on
     * @param from one end
     * @param to the other end
     * @param pen its line
     */
    public static void grain(Canvas canvas, Point from, Point to, Pen pen) {
        canvas.line(from, to, pen);
        arrowHead(canvas, to, to.minus(from).unit(), pen.gray());
        arrowHead(canvas, from, from.minus(to).unit(), pen.gray());
    }

    /**
     * Place on the fold: an arrow bent twice, both heads at the fold.
     *
     * @param canvas drawn on
     * @param from one head, on the fold
     * @param to the other head, on the fold
     * @param inwards from the fold into the piece, in the direction and as far in mm as the arrow lies
     * @param pen its line
     */
    public static void fold(Canvas canvas, Point from, Point to, Vec inwards, Pen pen) {
        canvas.stroke(Path.through(from, from.plus(inwards), to.plus(inwards), to), pen);
        Vec out = inwards.reversed().unit();
        arrowHead(canvas, from, out, pen.gray());
        arrowHead(canvas, to, out, pen.gray());
    }

    /**
     * The head of an arrow.
     *
     * @param canvas drawn on
     * @param tip where it points
     * @param direction in which it points, unit vector
     * @param gray from 0, black, to 1, white
     */
    public static void arrowHead(Canvas canvas, Point tip, Vec direction, double gray) {
        double mm = 1 / canvas.scale();
        Point back = tip.minus(direction.times(ARROW_LONG_MM * mm));
        Vec side = direction.left().times(ARROW_WIDE_MM / 2 * mm);
        canvas.fill(List.of(Shapes.closed(tip, back.plus(side), back.minus(side))), gray);
    }

    /**
     * Notches, side by side: triangles that stand out from the cutting line.
     *
     * @param canvas drawn on
     * @param at their middle, on the cutting line
     * @param outwards away from the piece, unit vector
     * @param count how many
     * @param pen their line
     */
    public static void notch(Canvas canvas, Point at, Vec outwards, int count, Pen pen) {
        double mm = 1 / canvas.scale();
        Vec along = outwards.right();
        for (int i = 0; i < count; i++) {
            Point middle = at.plus(along.times((i - (count - 1) / 2.0) * NOTCH_WIDE_MM * mm));
            Vec half = along.times(NOTCH_WIDE_MM / 2 * mm);
            Path triangle = Path.through(
                    middle.minus(half), middle.plus(outwards.times(NOTCH_HIGH_MM * mm)), middle.plus(half));
            canvas.stroke(triangle, pen);
        }
    }

    /**
     * A point of the body: a crossed circle.
     *
     * @param canvas drawn on
     * @param at the point
     * @param pen its line
     */
    public static void crossedCircle(Canvas canvas, Point at, Pen pen) {
        double radius = 3 / canvas.scale();
        canvas.stroke(Shapes.circle(at, radius), pen);
        for (Vec arm : List.of(new Vec(radius * 1.5, 0), new Vec(0, radius * 1.5))) {
            canvas.line(at.minus(arm), at.plus(arm), pen);
        }
    }

    /**
     * A dot, as where a dart ends.
     *
     * @param canvas drawn on
     * @param at its middle
     */
    public static void dot(Canvas canvas, Point at) {
        canvas.fill(List.of(Shapes.circle(at, 0.9 / canvas.scale())), 0);
    }

    /**
     * Lengthen or shorten here: a double line.
     *
     * @param canvas drawn on
     * @param from one end of the upper line, which is the line itself
     * @param to its other end
     * @param pen its lines
     */
    public static void lengthen(Canvas canvas, Point from, Point to, Pen pen) {
        Vec apart = to.minus(from).unit().right().times(2 / canvas.scale());
        canvas.line(from, to, pen);
        canvas.line(from.plus(apart), to.plus(apart), pen);
    }

    /**
     * The angle at which letters along a direction stand upright.
     *
     * @param along the direction
     * @return radians, above -90 and up to 90 degrees
     */
    public static double readable(Vec along) {
        double angle = along.angle();
        // A hair under the vertical counts as the vertical: upright lines read from the right, all alike.
        if (angle > Math.PI / 2 + 1e-3) {
            return angle - Math.PI;
        }
        if (angle <= -Math.PI / 2 + 1e-3) {
            return angle + Math.PI;
        }
        return angle;
    }
}
