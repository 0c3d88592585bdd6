package trueseam.fitting.compare;

import trueseam.garment.measure.Measure;
import trueseam.garment.measure.MeasureKind;

/** Which differences are left alone. */
public enum Rule {
    /** Half an inch or less is left alone, wherever it is: common practice. */
    HALF_INCH,
    /**
     * A quarter inch in a girth or a long length, an eighth in a width or a short length (common practice): the finer rule for
     * fitted garments.
     */
    FINE;

    /** 1/2 in. */
    public static final double HALF_INCH_MM = 12.7;

    private static final double FINE_MM = 6;
    private static final double FINE_SHORT_MM = 3;

    /**
     * The largest difference that is left alone.
     *
     * @param measure the measure
     * @param looseness 1 for fitted, 1.5 for semi-fitted, 2 for loose garments; only the finer rule grows with it
     * @return mm
     */
    public double leaveMm(Measure measure, double looseness) {
        return switch (this) {
            case HALF_INCH -> HALF_INCH_MM;
            case FINE -> looseness * (isShort(measure) ? FINE_SHORT_MM : FINE_MM);
        };
    }

    private static boolean isShort(Measure measure) {
        return measure.kind() == MeasureKind.WIDTH
                || measure == Measure.SHOULDER_LENGTH
                || measure == Measure.WRIST_GIRTH;
    }

    /**
     * What the rule is called in a reason.
     *
     * @return a few words
     */
    public String word() {
        return switch (this) {
            case HALF_INCH -> "the half-inch rule";
            case FINE -> "the finer rule";
        };
    }
}
