package trueseam.output.drawing;

/**
 * How text is set.
 *
 * @param sizeMm size of the type, mm; capitals are about 0.7 of it, lines stand about 1.2 apart; 10 pt is 3.53 mm
 * @param bold whether it is heavier than usual
 * @param gray from 0, black, to 1, white
 * @param align which part stands at the point
 * @param turnRad how far its line is turned anticlockwise about the point, radians
 * @param onWhite whether white paper is laid under it first, so that lines do not cross it
 */
public record Lettering(double sizeMm, boolean bold, double gray, Align align, double turnRad, boolean onWhite) {

    /** From one base line to the next, as a share of the size. */
    public static final double LEADING = 1.25;

    // Letters of no size cannot be read.
    public Lettering {
        if (!(sizeMm > 0)) {
            throw new IllegalArgumentException("sizeMm is not above 0: " + sizeMm);
        }
        Gray.check(gray);
    }

    /**
     * Plain black letters, set to the right of their point.
     *
     * @param sizeMm size of the type, mm
     * @return the lettering
     */
    public static Lettering of(double sizeMm) {
        return new Lettering(sizeMm, false, 0, Align.LEFT, 0, false);
    }

    /**
     * This, heavier.
     *
     * @return the lettering
     */
    public Lettering heavy() {
        return new Lettering(sizeMm, true, gray, align, turnRad, onWhite);
    }

    /**
     * This in another grey.
     *
     * @param shade from 0, black, to 1, white
     * @return the lettering
     */
    public Lettering shaded(double shade) {
        return new Lettering(sizeMm, bold, shade, align, turnRad, onWhite);
    }

    /**
     * This with its middle at the point.
     *
     * @return the lettering
     */
    public Lettering centred() {
        return new Lettering(sizeMm, bold, gray, Align.CENTRE, turnRad, onWhite);
    }

    /**
     * This with its end at the point.
     *
     * @return the lettering
     */
    public Lettering endingThere() {
        return new Lettering(sizeMm, bold, gray, Align.RIGHT, turnRad, onWhite);
    }

    /**
     * This along a turned line.
     *
     * @param rad anticlockwise, radians
     * @return the lettering
     */
    public Lettering turned(double rad) {
        return new Lettering(sizeMm, bold, gray, align, rad, onWhite);
    }

    /**
     * This in another size.
     *
     * @param mm size of the type, mm
     * @return the lettering
     */
    public Lettering sized(double mm) {
        return new Lettering(mm, bold, gray, align, turnRad, onWhite);
    }

    /**
     * This with white paper under it.
     *
     * @return the lettering
     */
    public Lettering backed() {
        return new Lettering(sizeMm, bold, gray, align, turnRad, true);
    }

    /**
     * From one base line to the next.
     *
     * @return mm
     */
    public double lineMm() {
        return sizeMm * LEADING;
    }
}
