package trueseam.fitting.alteration;

/** Which end of a sleeve cap moves when its seam is to be longer or shorter. */
public enum CapEnd {
    /** The underarm points go down or up; crown and length of the sleeve stay. */
    UNDERARM,
    /** The crown goes up or down; the underarm points stay. */
    CROWN
}
