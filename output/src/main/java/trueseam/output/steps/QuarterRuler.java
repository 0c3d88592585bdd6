package trueseam.output.steps;

import trueseam.geometry.Bounds;
import trueseam.geometry.Point;
import trueseam.output.drawing.Canvas;
import trueseam.output.drawing.Lettering;
import trueseam.output.drawing.Pen;
import trueseam.output.drawing.Shapes;
import trueseam.output.sheet.SheetFlow;

/** A ruler and two test squares in quarter scale: what is 2 in and 50 mm on the practice pieces. */
final class QuarterRuler {

    private static final double INCH_MM = 25.4 * PracticeSheet.SCALE;
    private static final double CM_MM = 10 * PracticeSheet.SCALE;
    private static final int INCHES = 16;
    private static final int CENTIMETRES = 40;
    private static final double HIGH_MM = 12;
    private static final Pen LINE = Pen.of(0.3);
    private static final Pen FINE = Pen.of(0.15);
    private static final Lettering SMALL = Lettering.of(2.2);

    private QuarterRuler() {}

    static void draw(SheetFlow flow) {
        Canvas page = flow.page();
        double top = flow.y();
        square(page, new Point(flow.left(), top), 2 * INCH_MM, "2 in");
        square(page, new Point(flow.left() + 18, top), 5 * CM_MM, "50 mm");
        double x = flow.left() + 38;
        page.stroke(Shapes.rectangle(new Bounds(x, top - HIGH_MM, x + INCHES * INCH_MM, top)), LINE);
        for (int quarter = 1; quarter < 4 * INCHES; quarter++) {
            double at = x + quarter * INCH_MM / 4;
            double longMm = quarter % 4 == 0 ? 3 : quarter % 2 == 0 ? 2 : 1.2;
            page.line(new Point(at, top), new Point(at, top - longMm), FINE);
            if (quarter % 4 == 0) {
                page.text(String.valueOf(quarter / 4), new Point(at, top - 5.2), SMALL.centred());
            }
        }
        for (int cm = 1; cm <= CENTIMETRES; cm++) {
            double at = x + cm * CM_MM;
            page.line(new Point(at, top - HIGH_MM), new Point(at, top - HIGH_MM + (cm % 5 == 0 ? 3 : 1.5)), FINE);
            if (cm % 5 == 0 && cm < CENTIMETRES) {
                page.text(String.valueOf(cm), new Point(at, top - HIGH_MM + 3.6), SMALL.centred());
            }
        }
        flow.down(HIGH_MM + 3);
        flow.paragraph(
                "Ruler in quarter scale, inches above and centimetres below: cut it out. Test squares: the left one measures 1/2 in"
                        + " (12.7 mm) and the right one 12.5 mm on each side of the paper; they stand for 2 in and 50 mm. If they do"
                        + " not, print again at 100 %.",
                Lettering.of(2.65), 2);
    }

    private static void square(Canvas page, Point topLeft, double side, String words) {
        Bounds box = new Bounds(topLeft.x(), topLeft.y() - side, topLeft.x() + side, topLeft.y());
        page.stroke(Shapes.rectangle(box), LINE);
        page.text(words, box.centre(), SMALL.centred());
    }
}
