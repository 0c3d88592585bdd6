package trueseam.fitting.alteration;

/** How a sleeve gets wider or narrower at the upper arm. Handbooks disagree; each way has its cost. */
public enum CapChoice {
    /** The cap seam keeps its length and the cap gets lower (or higher): the sleeve still fits its armhole. */
    KEEP_CAP_SEAM,
    /** The cap keeps its height and its seam gets longer (or shorter): there is more (or less) to ease in. */
    KEEP_CAP_HEIGHT
}
