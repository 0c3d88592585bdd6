package trueseam.fitting.tissue;

/** When a pivot stops. */
public sealed interface Until {

    /**
     * When a place is as far across the grain as a mark.
     *
     * @param place the place of the pattern
     * @param mark the mark's name
     */
    record MeetsAcross(Place place, String mark) implements Until {}

    /**
     * When a place is as high along the grain as a mark.
     *
     * @param place the place of the pattern
     * @param mark the mark's name
     */
    record MeetsAlong(Place place, String mark) implements Until {}

    /** When the pattern's grainline stands upright again. */
    record GrainUpright() implements Until {}
}
