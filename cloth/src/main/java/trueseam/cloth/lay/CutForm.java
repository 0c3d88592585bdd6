package trueseam.cloth.lay;

/** How much of a piece is laid. */
public enum CutForm {
    /** As it is drawn. */
    DRAWN,
    /** Half, at the fold of the cloth. */
    AT_FOLD,
    /** Drawn as half and laid whole: its other half is drawn on the other side of its fold. */
    OPENED
}
