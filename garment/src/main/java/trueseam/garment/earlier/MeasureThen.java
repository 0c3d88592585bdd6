package trueseam.garment.earlier;

import trueseam.garment.measure.Measure;

/**
 * What one measure came to on an earlier pattern.
 *
 * <pre>{@code
 *   drawn for        made for          A pattern in a size is drawn for a figure; altered, it is made for another.
 *      |--- changed ---->|             Both are BODY measures: the pattern's ease is in neither.
 * }</pre>
 *
 * @param measure the measure
 * @param bodyMm what the tape read on the body then, mm
 * @param drawnForMm the body measure that the pattern was drawn for in its size, mm: the size table's, or flat pattern less ease
 * @param changedMm by how much the finished pattern was changed there in all, mm, whoever or whatever changed it
 * @param settled how that came about
 * @param leftUpToMm the difference that the rule then left alone, mm
 */
public record MeasureThen(
        Measure measure, double bodyMm, double drawnForMm, double changedMm, Settled settled, double leftUpToMm) {

    /** How the amount of a measure came about. */
    public enum Settled {
        /** A rule altered it by what the tape asked for. */
        ALTERED,
        /** A rule left the difference alone. */
        LEFT,
        /** The dressmaker decided, with the tape or against it. */
        DECIDED,
        /** It was taken from still earlier patterns: no evidence of its own until worn. */
        STANDING,
        /** It was left for the trial garment, or another measure decided for it: no evidence. */
        OPEN
    }

    /**
     * The body measure that the finished pattern was made for.
     *
     * @return mm, without ease
     */
    public double madeForMm() {
        return drawnForMm + changedMm;
    }
}
