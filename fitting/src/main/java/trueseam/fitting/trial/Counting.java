package trueseam.fitting.trial;

/**
 * How what the pins take up at one place becomes the amount of an alteration. T is what is taken up (or let out) at one place.
 *
 * <pre>{@code
 *            left and right alike   one side only        across the centre
 *  ROUND            2 T             T on its half              T
 *  HALF               T             T on its half            T / 2
 *  SEAM             T / 2           T / 2 on its side        T / 2
 *  LENGTH             T             T on its side              T
 *  LIMB               T             T on its limb              T
 *  ONE_SIDE           -             T                          -
 * }</pre>
 *
 * Source: common practice; the shares of each alteration are those of its entry.
 */
public enum Counting {
    /** Round the body: what left and right take up is added. */
    ROUND("it counts round the whole body: left and right are added"),
    /** Across each half piece: as much on each half as is pinned out there, never added. */
    HALF("it counts on each half piece by itself: left and right are not added"),
    /** At a seam whose two edges both move by the whole amount: half of what is taken up belongs to each. */
    SEAM("front and back each get half of what the seam takes up"),
    /** Along the body: a length or a height is the same left and right and never added. */
    LENGTH("it is a length or a height: left and right are not added"),
    /** Of each sleeve or leg by itself. */
    LIMB("it counts on each sleeve or leg by itself"),
    /** Of one side that must be named. */
    ONE_SIDE("it counts on one side, which must be named");

    private final String words;

    Counting(String words) {
        this.words = words;
    }

    /**
     * How it counts.
     *
     * @return half a sentence
     */
    public String words() {
        return words;
    }

    /**
     * The amount of the alteration.
     *
     * @param takenMm what the pins take up, or let out, at one place, mm
     * @param at where they are
     * @return the amount as the entry counts it, without a sign, mm; with one side, the amount that the entry is given for that side
     * @throws PinnedException if it cannot be counted at that place
     */
    public double amountMm(double takenMm, PinnedAt at) {
        return switch (this) {
            // One side of a girth gets half of its shares, so that the side's own edges take T.
            case ROUND -> at == PinnedAt.CENTRE ? takenMm : 2 * takenMm;
            case HALF -> at == PinnedAt.CENTRE ? takenMm / 2 : takenMm;
            case SEAM -> takenMm / 2;
            case LENGTH, LIMB -> takenMm;
            case ONE_SIDE -> {
                if (at.side().isEmpty()) {
                    throw new PinnedException(
                            PinnedException.Field.SIDE, "Say which side: this change is for one side, left or right.");
                }
                yield takenMm;
            }
        };
    }
}
