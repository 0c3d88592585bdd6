package trueseam.garment.body;

/** Whose usual measures a body is held against. */
public enum Population {
    /** The surveyed women. */
    WOMEN,
    /** The surveyed men. */
    MEN,
    /** Both together: for a body of whom nothing else is known. */
    ALL
}
