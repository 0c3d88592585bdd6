package trueseam.fitting.profile;

/** How it is known at which height of the body a girth lies. */
public enum HeightFrom {
    /** By lengths that were taken on this body. */
    BODY,
    /** By where such a girth is taken, in itself or as common practice says: the zero of the scale, or half way between others. */
    DEFINITION,
    /** Not taken on the body: the height at which the altered pattern marks the level. */
    PATTERN,
    /** By the lengths taken it would lie above the underarm, where nothing goes round: the height at which the pattern marks it. */
    PATTERN_FOR_TOO_HIGH;

    /**
     * Whether each pattern is compared at its own mark.
     *
     * @return false where the body says the height
     */
    public boolean isOfPattern() {
        return this == PATTERN || this == PATTERN_FOR_TOO_HIGH;
    }
}
