package trueseam.output.print;

/** The lines that can be printed or left out. */
public enum PrintedLine {
    /** Where it is sewn. */
    STITCHING,
    /** Where it is cut: the stitching line with the allowances. */
    CUTTING,
    /** The outline as bought. Printed as a fine broken grey line where it differs from the altered outline. */
    ORIGINAL,
    /** The outline as altered. */
    ALTERED
}
