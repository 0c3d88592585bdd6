package trueseam.output.print;

import trueseam.geometry.Bounds;
import trueseam.geometry.Point;
import trueseam.output.drawing.Canvas;
import trueseam.output.drawing.Lettering;
import trueseam.output.drawing.Pen;
import trueseam.output.drawing.Shapes;

/** The two squares that show whether a print has its true size: one of 50 mm and, to its right, one of 2 in. */
public final class TestSquares {

    /** Side of the metric test square, mm. */
    static final double SQUARE_MM = 50;

    /** Side of the test square of 2 in, mm. */
    static final double SQUARE_INCH_MM = 50.8;

    private static final Pen SQUARE = Pen.of(0.3);
    private static final double GAP_MM = 7;

    private TestSquares() {}

    /**
     * Draws both.
     *
     * @param canvas a page at full size
     * @param topLeft upper left corner of the left square
     * @return the room they take
     */
    public static Bounds draw(Canvas canvas, Point topLeft) {
        double top = topLeft.y();
        Bounds metric = new Bounds(topLeft.x(), top - SQUARE_MM, topLeft.x() + SQUARE_MM, top);
        Bounds inch =
                new Bounds(metric.maxX() + GAP_MM, top - SQUARE_INCH_MM, metric.maxX() + GAP_MM + SQUARE_INCH_MM, top);
        square(canvas, metric, "50 mm", 10, 5);
        square(canvas, inch, "2 in", 25.4 / 4, 8);
        return metric.with(inch);
    }

    private static void square(Canvas canvas, Bounds box, String words, double tick, int ticks) {
        canvas.stroke(Shapes.rectangle(box), SQUARE);
        for (int i = 1; i < ticks; i++) {
            double x = box.minX() + i * tick;
            double y = box.minY() + i * tick;
            canvas.line(new Point(x, box.minY()), new Point(x, box.minY() + 2), Pens.FINE);
            canvas.line(new Point(box.minX(), y), new Point(box.minX() + 2, y), Pens.FINE);
        }
        Point middle = box.centre();
        canvas.text(
                words,
                new Point(middle.x(), middle.y() - 1),
                Lettering.of(7).heavy().centred());
        canvas.text(
                "each side",
                new Point(middle.x(), middle.y() - 6),
                Lettering.of(3.4).centred());
    }
}
