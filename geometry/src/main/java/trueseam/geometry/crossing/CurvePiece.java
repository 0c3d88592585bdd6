package trueseam.geometry.crossing;

import trueseam.geometry.Cubic;

/** A part of a cubic as bare numbers, for halving: the eight coordinates of its control points and its parameters. */
record CurvePiece(
        double x0, double y0, double x1, double y1, double x2, double y2, double x3, double y3, double t0, double t1) {

    static CurvePiece of(Cubic c) {
        return new CurvePiece(
                c.start().x(),
                c.start().y(),
                c.handle1().x(),
                c.handle1().y(),
                c.handle2().x(),
                c.handle2().y(),
                c.end().x(),
                c.end().y(),
                0,
                1);
    }

    /** Half of it by de Casteljau's construction. */
    CurvePiece firstHalf() {
        double ax = (x0 + x1) / 2;
        double ay = (y0 + y1) / 2;
        double mx = (x1 + x2) / 2;
        double my = (y1 + y2) / 2;
        double bx = (ax + mx) / 2;
        double by = (ay + my) / 2;
        double cx = (mx + (x2 + x3) / 2) / 2;
        double cy = (my + (y2 + y3) / 2) / 2;
        return new CurvePiece(x0, y0, ax, ay, bx, by, (bx + cx) / 2, (by + cy) / 2, t0, (t0 + t1) / 2);
    }

    CurvePiece secondHalf() {
        double dx = (x2 + x3) / 2;
        double dy = (y2 + y3) / 2;
        double mx = (x1 + x2) / 2;
        double my = (y1 + y2) / 2;
        double cx = (mx + dx) / 2;
        double cy = (my + dy) / 2;
        double bx = ((x0 + x1) / 2 + mx) / 2;
        double by = ((y0 + y1) / 2 + my) / 2;
        return new CurvePiece((bx + cx) / 2, (by + cy) / 2, cx, cy, dx, dy, x3, y3, (t0 + t1) / 2, t1);
    }

    /** Sum of the sides of the control polygon: never less than the length of the piece. */
    double reach() {
        return Math.abs(x1 - x0)
                + Math.abs(y1 - y0)
                + Math.abs(x2 - x1)
                + Math.abs(y2 - y1)
                + Math.abs(x3 - x2)
                + Math.abs(y3 - y2);
    }

    boolean boxMeets(CurvePiece o, double slack) {
        return least(x0, x1, x2, x3) - slack <= most(o.x0, o.x1, o.x2, o.x3)
                && least(o.x0, o.x1, o.x2, o.x3) - slack <= most(x0, x1, x2, x3)
                && least(y0, y1, y2, y3) - slack <= most(o.y0, o.y1, o.y2, o.y3)
                && least(o.y0, o.y1, o.y2, o.y3) - slack <= most(y0, y1, y2, y3);
    }

    private static double least(double a, double b, double c, double d) {
        return Math.min(Math.min(a, b), Math.min(c, d));
    }

    private static double most(double a, double b, double c, double d) {
        return Math.max(Math.max(a, b), Math.max(c, d));
    }

    /**
     * Whether the other piece reaches into the strip along this piece's chord that holds this piece (its "fat line":
     * T. W. Sederberg and T. Nishita, "Curve intersection using Bezier clipping", Computer-Aided Design 22, 1990).
     */
    boolean stripMeets(CurvePiece o, double slack) {
        double ux = x3 - x0;
        double uy = y3 - y0;
        double length = Math.sqrt(ux * ux + uy * uy);
        if (!(length > 0)) {
            return true;
        }
        ux /= length;
        uy /= length;
        double own1 = ux * (y1 - y0) - uy * (x1 - x0);
        double own2 = ux * (y2 - y0) - uy * (x2 - x0);
        double a = ux * (o.y0 - y0) - uy * (o.x0 - x0);
        double b = ux * (o.y1 - y0) - uy * (o.x1 - x0);
        double c = ux * (o.y2 - y0) - uy * (o.x2 - x0);
        double d = ux * (o.y3 - y0) - uy * (o.x3 - x0);
        return least(a, b, c, d) - slack <= most(0, own1, own2, 0)
                && least(0, own1, own2, 0) - slack <= most(a, b, c, d);
    }

    /** Whether all of this lies before its end, and all of the next piece behind it, seen in their common direction. */
    boolean goesOnInto(CurvePiece next) {
        double ux = next.x3 - x0;
        double uy = next.y3 - y0;
        return advances(ux, uy) && next.advances(ux, uy);
    }

    private boolean advances(double ux, double uy) {
        return ux * (x1 - x0) + uy * (y1 - y0) >= 0
                && ux * (x2 - x1) + uy * (y2 - y1) > 0
                && ux * (x3 - x2) + uy * (y3 - y2) >= 0;
    }

    double chordAngle() {
        return Math.atan2(y3 - y0, x3 - x0);
    }

    /** The greatest turn of a side of the control polygon from the chord; no tangent turns farther. Infinite if unknown. */
    double spread() {
        double ux = x3 - x0;
        double uy = y3 - y0;
        return Math.max(
                turn(ux, uy, x1 - x0, y1 - y0),
                Math.max(turn(ux, uy, x2 - x1, y2 - y1), turn(ux, uy, x3 - x2, y3 - y2)));
    }

    private static double turn(double ux, double uy, double vx, double vy) {
        double dot = ux * vx + uy * vy;
        double cross = Math.abs(ux * vy - uy * vx);
        return vx == 0 && vy == 0 ? 0 : dot > 0 ? Math.atan(cross / dot) : Double.POSITIVE_INFINITY;
    }
}
