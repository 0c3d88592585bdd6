package trueseam.fitting.alteration;

/** Which seams of a two-piece sleeve take a change of its girth (sources disagree). */
public enum SleeveSeams {
    /** Both: N/4 at each of four edges. */
    BOTH,
    /** The back seam alone: N/2 at each of two edges. */
    BACK
}
