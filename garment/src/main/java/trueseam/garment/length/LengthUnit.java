package trueseam.garment.length;

/** The units in which lengths are read and shown. */
public enum LengthUnit {
    /** The inch, 25.4 mm exactly. */
    INCH(25.4, "in"),
    /** The centimetre, 10 mm. */
    CENTIMETRE(10.0, "cm"),
    /** The millimetre, the unit inside the program. */
    MILLIMETRE(1.0, "mm");

    private final double mm;
    private final String sign;

    LengthUnit(double mm, String sign) {
        this.mm = mm;
        this.sign = sign;
    }

    /**
     * How long one of this unit is.
     *
     * @return millimetres
     */
    public double mm() {
        return mm;
    }

    /**
     * The short sign written after a number.
     *
     * @return {@code in}, {@code cm} or {@code mm}
     */
    public String sign() {
        return sign;
    }
}
