package trueseam.garment.body;

/**
 * The proportions that figures are drawn by, to look at a body's own against; nobody has to have them. The height is seven and a half
 * heads; half of it is at the hip line, the armpits halve the upper half, the knees the lower [WSC306] [MULTI].
 *
 * @param statureMm the height, mm, above zero
 */
public record IdealFigure(double statureMm) {

    private static final double HEADS = 7.5;

    /**
     * Checks the height.
     *
     * @param statureMm as of the record
     * @throws IllegalArgumentException when it is not above zero
     */
    public IdealFigure {
        if (!(statureMm > 0) || Double.isInfinite(statureMm)) {
            throw new IllegalArgumentException("nobody is " + statureMm + " mm high");
        }
    }

    /**
     * Crown to chin.
     *
     * @return mm
     */
    public double headMm() {
        return statureMm / HEADS;
    }

    /**
     * The hip line above the floor.
     *
     * @return mm
     */
    public double hipMm() {
        return statureMm / 2;
    }

    /**
     * The armpits above the floor.
     *
     * @return mm
     */
    public double armpitMm() {
        return statureMm * 3 / 4;
    }

    /**
     * The knees above the floor.
     *
     * @return mm
     */
    public double kneeMm() {
        return statureMm / 4;
    }
}
