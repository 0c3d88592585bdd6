package trueseam.output.drawing;

/**
 * A line as drawn.
 *
 * @param widthMm thickness, mm, above 0
 * @param dash how it is broken
 * @param gray from 0, black, to 1, white
 */
public record Pen(double widthMm, Dash dash, double gray) {

    // A line of no width cannot be seen, and a grey beyond black or white does not exist.
    public Pen {
        if (!(widthMm > 0)) {
            throw new IllegalArgumentException("widthMm is not above 0: " + widthMm);
        }
        Gray.check(gray);
    }

    /**
     * An unbroken black line.
     *
     * @param widthMm thickness, mm
     * @return the pen
     */
    public static Pen of(double widthMm) {
        return new Pen(widthMm, Dash.SOLID, 0);
    }

    /**
     * This pen with a broken line.
     *
     * @param broken how
     * @return the pen
     */
    public Pen with(Dash broken) {
        return new Pen(widthMm, broken, gray);
    }

    /**
     * This pen in another grey.
     *
     * @param shade from 0, black, to 1, white
     * @return the pen
     */
    public Pen gray(double shade) {
        return new Pen(widthMm, dash, shade);
    }
}
