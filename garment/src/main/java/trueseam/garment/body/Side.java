package trueseam.garment.body;

/** Which side of the body a reading is of. */
public enum Side {
    /** The whole body, or one side taken for both. */
    BOTH,
    /** The wearer's left. */
    LEFT,
    /** The wearer's right. */
    RIGHT
}
