package trueseam.geometry;

import java.util.Locale;

/** A pivot was asked to carry a point farther across than the circle about the pin reaches. Nothing is clamped. */
public class OutOfReachException extends GeometryException {

    private static final long serialVersionUID = 1L;

    private final transient Point pin;
    private final transient Point point;
    private final double wantedMm;
    private final double reachMm;

    /**
     * Holds the whole case.
     *
     * @param pin where the pin is
     * @param point the point that was to move
     * @param wantedMm the movement asked for, across the grain, mm
     * @param reachMm the largest movement possible in that direction, mm
     */
    public OutOfReachException(Point pin, Point point, double wantedMm, double reachMm) {
        super(String.format(
                Locale.ROOT,
                "%.1f mm wanted, %.1f mm reachable across the grain for the point (%.1f, %.1f) about the pin (%.1f, %.1f);"
                        + " share the change over more edges or take another size.",
                wantedMm,
                reachMm,
                point.x(),
                point.y(),
                pin.x(),
                pin.y()));
        this.pin = pin;
        this.point = point;
        this.wantedMm = wantedMm;
        this.reachMm = reachMm;
    }

    /**
     * The pin.
     *
     * @return where it is
     */
    public Point pin() {
        return pin;
    }

    /**
     * The point that was to move.
     *
     * @return where it was
     */
    public Point point() {
        return point;
    }

    /**
     * What was asked.
     *
     * @return mm across the grain
     */
    public double wantedMm() {
        return wantedMm;
    }

    /**
     * What is possible.
     *
     * @return the largest movement in that direction, mm
     */
    public double reachMm() {
        return reachMm;
    }
}
