package trueseam.geometry;

/**
 * The upright rectangle that something lies in.
 *
 * @param minX left, mm
 * @param minY bottom, mm
 * @param maxX right, mm
 * @param maxY top, mm
 */
public record Bounds(double minX, double minY, double maxX, double maxY) {

    // Refuses a rectangle turned inside out.
    // Throws GeometryException if a side is negative or not a number
    public Bounds {
        if (!(minX <= maxX && minY <= maxY)) {
            throw new GeometryException(
                    "Bounds from (" + minX + ", " + minY + ") to (" + maxX + ", " + maxY + ") are turned inside out.");
        }
    }

    /**
     * The rectangle spanned by two points.
     *
     * @param a one corner
     * @param b the opposite corner
     * @return the bounds of both
     */
    public static Bounds of(Point a, Point b) {
        return new Bounds(
                Math.min(a.x(), b.x()), Math.min(a.y(), b.y()), Math.max(a.x(), b.x()), Math.max(a.y(), b.y()));
    }

    /**
     * The rectangle around both.
     *
     * @param o the other
     * @return the smallest bounds that hold both
     */
    public Bounds with(Bounds o) {
        return new Bounds(
                Math.min(minX, o.minX), Math.min(minY, o.minY), Math.max(maxX, o.maxX), Math.max(maxY, o.maxY));
    }

    /**
     * The rectangle around this and a point.
     *
     * @param p the point
     * @return the smallest bounds that hold both
     */
    public Bounds with(Point p) {
        return with(of(p, p));
    }

    /**
     * This with a margin on every side.
     *
     * @param marginMm margin, mm; negative shrinks
     * @return the grown bounds
     */
    public Bounds grown(double marginMm) {
        return new Bounds(minX - marginMm, minY - marginMm, maxX + marginMm, maxY + marginMm);
    }

    /**
     * Whether the rectangles touch or overlap.
     *
     * @param o the other
     * @param toleranceMm how far apart still counts, mm
     * @return true if they meet
     */
    public boolean meets(Bounds o, double toleranceMm) {
        return minX - toleranceMm <= o.maxX
                && o.minX - toleranceMm <= maxX
                && minY - toleranceMm <= o.maxY
                && o.minY - toleranceMm <= maxY;
    }

    /**
     * Extent across.
     *
     * @return mm
     */
    public double width() {
        return maxX - minX;
    }

    /**
     * Extent up and down.
     *
     * @return mm
     */
    public double height() {
        return maxY - minY;
    }

    /**
     * The middle.
     *
     * @return centre point
     */
    public Point centre() {
        return new Point((minX + maxX) / 2, (minY + maxY) / 2);
    }
}
