package trueseam.output.steps;

import java.util.ArrayList;
import java.util.List;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.output.drawing.Canvas;
import trueseam.output.drawing.Dash;
import trueseam.output.drawing.Pen;
import trueseam.output.drawing.Shapes;

/** How things on the table are drawn on the step sheet. Sizes are mm on the page, whatever the scale of the drawing. */
final class TableSymbols {

    static final Pen KEPT = Pen.of(0.22);
    static final Pen CARRIED = Pen.of(0.75);
    static final Pen JOINED = Pen.of(0.5).with(Dash.DOTTED);
    static final Pen PATTERN = Pen.of(0.2).gray(0.62);
    static final Pen PATTERN_BEFORE = Pen.of(0.15).gray(0.55).with(Dash.SHORT_DASHED);
    static final double PAPER_GRAY = 0.93;
    private static final Pen MARK = Pen.of(0.28);
    private static final Pen ARROW = Pen.of(0.35);

    private static final double CROSS_MM = 1.1;
    private static final double MARK_LINE_MM = 2.4;
    private static final double PIN_MM = 1.25;
    private static final double NOTCH_LONG_MM = 2;
    private static final double NOTCH_APART_MM = 0.8;
    private static final double NOTCH_WIDE_MM = 0.3;

    /** Near the pin a longer arc would run out of the picture. */
    private static final double LARGEST_ARC_RAD = 0.6;

    private static final double HEAD_LONG_MM = 2;
    private static final double HEAD_WIDE_MM = 1.3;

    private TableSymbols() {}

    /** A pin from above: a ring with its point. */
    static void pin(Canvas canvas, Point at) {
        double mm = 1 / canvas.scale();
        canvas.fill(List.of(Shapes.circle(at, (PIN_MM + 0.35) * mm)), 1);
        canvas.stroke(Shapes.circle(at, PIN_MM * mm), Pen.of(0.4));
        canvas.fill(List.of(Shapes.circle(at, 0.55 * mm)), 0);
    }

    /** A mark: a cross whose long line is the one to be met. */
    static void mark(Canvas canvas, Point at, boolean level) {
        double mm = 1 / canvas.scale();
        Vec across = new Vec((level ? MARK_LINE_MM : CROSS_MM) * mm, 0);
        Vec along = new Vec(0, (level ? CROSS_MM : MARK_LINE_MM) * mm);
        canvas.line(at.minus(across), at.plus(across), MARK);
        canvas.line(at.minus(along), at.plus(along), MARK);
    }

    static void arrow(Canvas canvas, Point from, Point to) {
        Vec way = to.minus(from);
        double mm = 1 / canvas.scale();
        double head = Math.min(HEAD_LONG_MM * mm, way.length());
        canvas.line(from, to.minus(way.unit().times(head / 2)), ARROW);
        head(canvas, to, way.unit(), head, 0);
    }

    /** A notch as it is marked on tissue: a stroke across the line for each of its cuts. */
    static void notch(Canvas canvas, Point at, Vec outward, int cuts, double gray) {
        double mm = 1 / canvas.scale();
        Pen pen = Pen.of(NOTCH_WIDE_MM).gray(gray);
        for (int i = 0; i < cuts; i++) {
            Point middle = at.plus(outward.left().times((i - (cuts - 1) / 2.0) * NOTCH_APART_MM * mm));
            Vec half = outward.times(NOTCH_LONG_MM / 2 * mm);
            canvas.line(middle.minus(half), middle.plus(half), pen);
        }
    }

    /** The pattern's grainline, as grey as the pattern. */
    static void grain(Canvas canvas, Point from, Point to) {
        double head = HEAD_LONG_MM / canvas.scale();
        Vec way = to.minus(from).unit();
        canvas.line(from, to, PATTERN);
        head(canvas, to, way, head, PATTERN.gray());
        head(canvas, from, way.reversed(), head, PATTERN.gray());
    }

    /** Which way a pattern turns about a pin: an arc of that radius, as long as can be seen well. */
    static void turning(Canvas canvas, Point pin, Point from, double turnRad, double longMm) {
        double radius = from.distanceTo(pin);
        double mm = 1 / canvas.scale();
        double span = Math.min(longMm * mm / radius, LARGEST_ARC_RAD);
        double signed = Math.copySign(span, turnRad);
        double start = from.minus(pin).angle() - signed / 2;
        int n = 24;
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= n; i++) {
            points.add(pin.plus(Vec.atAngle(start + signed * i / n).times(radius)));
        }
        canvas.stroke(Path.through(points.subList(0, n).toArray(Point[]::new)), ARROW);
        Vec tangent = Vec.atAngle(start + signed).left().times(Math.signum(turnRad));
        head(canvas, points.get(n), tangent, HEAD_LONG_MM * mm, 0);
    }

    private static void head(Canvas canvas, Point tip, Vec way, double longDrawing, double gray) {
        Point back = tip.minus(way.times(longDrawing));
        Vec side = way.left().times(longDrawing * HEAD_WIDE_MM / HEAD_LONG_MM / 2);
        canvas.fill(List.of(Shapes.closed(tip, back.plus(side), back.minus(side))), gray);
    }
}
