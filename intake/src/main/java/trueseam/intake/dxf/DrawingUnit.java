package trueseam.intake.dxf;

/**
 * How long one unit of a file is, and how that was known.
 *
 * @param mm length of one unit, mm
 * @param name for messages, such as {@code inches}
 * @param basis how it was known
 */
public record DrawingUnit(double mm, String name, Basis basis) {

    /** How a unit was known, surest first. */
    public enum Basis {
        /** The user said it. */
        ASKED,
        /** A text in the file says it, as the apparel convention has it: {@code Units: METRIC}. */
        WRITTEN,
        /** The header of the file says it ($INSUNITS). */
        HEADER,
        /** The header says metric or English only ($MEASUREMENT): mm or inches were taken. */
        METRIC_OR_ENGLISH,
        /** The file does not say it: mm were taken. */
        ASSUMED
    }
}
