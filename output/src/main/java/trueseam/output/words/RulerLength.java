package trueseam.output.words;

import trueseam.garment.length.LengthFormat;

/**
 * Lengths as they are set out with a ruler at one edge: to 1/32 in, or to half a millimetre.
 *
 * <p>The chart is shown in eighths or sixteenths as the user chose; the share of one edge is not, because a share that is a
 * sixteenth off at each of four edges is a quarter inch off round the body.
 *
 * @param show the user's unit
 */
public record RulerLength(LengthFormat show) {

    private static final int THIRTY_SECONDS = 32;
    private static final double INCH_MM = 25.4;

    /**
     * Shows a length without its sign.
     *
     * @param mm millimetres
     * @return for example {@code 9/32 in}, {@code 6.5 mm}; {@code less than 1/32 in} for what a pencil line hides
     */
    public String show(double mm) {
        long steps = Math.round(Math.abs(mm) / stepMm());
        return steps == 0 ? "less than " + written(1) : written(steps);
    }

    /**
     * Shows a change of length.
     *
     * @param mm millimetres, plus for a gain
     * @return with {@code +} or {@code -}; nothing before what a pencil line hides
     */
    public String showSigned(double mm) {
        if (isHidden(mm)) {
            return show(mm);
        }
        return (mm < 0 ? "-" : "+") + show(mm);
    }

    /**
     * Whether a length is too small to be set out.
     *
     * @param mm millimetres
     * @return true if it rounds to nothing
     */
    public boolean isHidden(double mm) {
        return Math.round(Math.abs(mm) / stepMm()) == 0;
    }

    /**
     * The finest step that is shown.
     *
     * @return mm
     */
    public double stepMm() {
        return switch (show.unit()) {
            case INCH -> INCH_MM / THIRTY_SECONDS;
            case CENTIMETRE, MILLIMETRE -> 0.5;
        };
    }

    private String written(long steps) {
        return switch (show.unit()) {
            case INCH -> fraction(steps) + " in";
            case CENTIMETRE -> decimal(steps * 5, 100) + " cm";
            case MILLIMETRE -> decimal(steps * 5, 10) + " mm";
        };
    }

    private static String fraction(long steps) {
        long whole = steps / THIRTY_SECONDS;
        long above = steps % THIRTY_SECONDS;
        long below = THIRTY_SECONDS;
        while (above != 0 && above % 2 == 0) {
            above /= 2;
            below /= 2;
        }
        if (above == 0) {
            return Long.toString(whole);
        }
        return (whole == 0 ? "" : whole + " ") + above + "/" + below;
    }

    private static String decimal(long of, long parts) {
        String rest = Long.toString(parts + of % parts).substring(1).replaceAll("0+$", "");
        return of / parts + (rest.isEmpty() ? "" : "." + rest);
    }
}
