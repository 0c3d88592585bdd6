package trueseam.garment.ease;

/** The kinds of garment whose wearing ease differs. */
public enum GarmentKind {
    /** A waist-length top with its sleeve. */
    BODICE,
    /** A dress or a hip-length top without waist seam, with its sleeve. */
    DRESS,
    /** A skirt. */
    SKIRT,
    /** Trousers. */
    TROUSERS
}
