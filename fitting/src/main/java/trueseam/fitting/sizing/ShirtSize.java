package trueseam.fitting.sizing;

import trueseam.garment.body.Body;
import trueseam.garment.handbook.BetweenSizes;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.measure.Measure;

/**
 * The size of a man's shirt: the bare neck and half an inch [ND1921]. Shirts are sized by half inches (common practice).
 *
 * @param neckMm the bare neck, mm
 * @param sizeMm the neck size of the shirt, mm, a multiple of half an inch
 * @param reason in a sentence or two
 */
public record ShirtSize(double neckMm, double sizeMm, String reason) {

    /** What a collar is larger than the neck in it: 1/2 in. Source: ND1921. */
    public static final double COLLAR_EASE_MM = 12.7;

    private static final double STEP_MM = 12.7;

    /** A neck this near to a size is of that size: 1/16 in, half of what a tape shows on so short a girth. */
    private static final double ON_A_SIZE_MM = 1.5875;

    /**
     * Chooses a shirt by the neck.
     *
     * @param body the person
     * @param between what to do between two sizes
     * @param show how lengths are written in the reason
     * @return the size
     * @throws NoSizeException if the neck was not measured
     */
    public static ShirtSize of(Body body, BetweenSizes between, LengthFormat show) {
        double neckMm = body.value(Measure.NECK_GIRTH)
                .orElseThrow(() -> new NoSizeException("shirts", body.label(), Measure.NECK_GIRTH.term()))
                .mm();
        double wanted = neckMm + COLLAR_EASE_MM;
        double below = STEP_MM * Math.floor(wanted / STEP_MM + 1e-9);
        double above = below + STEP_MM;
        boolean isBetween = wanted - below > ON_A_SIZE_MM && above - wanted > ON_A_SIZE_MM;
        BetweenSizes way = isBetween ? between : BetweenSizes.NEAREST;
        double size = way.isLarger(wanted - below, above - wanted, false) ? above : below;
        String reason = "The bare neck is " + show.show(neckMm) + "; with " + show.show(COLLAR_EASE_MM)
                + " for the collar that is " + show.show(wanted) + " (The New Dressmaker, 1921)."
                + (isBetween ? " Between two sizes: " + between.answer().whole() + "." : "");
        return new ShirtSize(neckMm, size, reason);
    }

    /**
     * What the size is called.
     *
     * @return inches, such as {@code 15 1/2}
     */
    public String label() {
        return LengthFormat.inches(8).number(sizeMm);
    }
}
