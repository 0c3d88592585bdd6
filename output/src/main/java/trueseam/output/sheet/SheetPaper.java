package trueseam.output.sheet;

/** The paper that sheets to read are printed on. */
public enum SheetPaper {
    /** ISO 216 A4. */
    A4(210, 297),
    /** ANSI A, US Letter: 8 1/2 by 11 in. */
    LETTER(215.9, 279.4);

    private final double widthMm;
    private final double heightMm;

    SheetPaper(double widthMm, double heightMm) {
        this.widthMm = widthMm;
        this.heightMm = heightMm;
    }

    /**
     * The short side.
     *
     * @return mm
     */
    public double widthMm() {
        return widthMm;
    }

    /**
     * The long side.
     *
     * @return mm
     */
    public double heightMm() {
        return heightMm;
    }
}
