package trueseam.output.drawing;

/** Which part of a line of text stands at its point. */
public enum Align {
    /** Its start. */
    LEFT,
    /** Its middle. */
    CENTRE,
    /** Its end. */
    RIGHT
}
