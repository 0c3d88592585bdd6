package trueseam.garment.body;

/**
 * What the readings of one measure come to.
 *
 * @param mm their mean, mm
 * @param spreadMm the largest less the smallest of them, mm; 0 for a single one
 * @param readings how many were averaged, at least 1
 * @param origin where the value comes from
 * @param note what a reader must know about it, or empty
 */
public record BodyValue(double mm, double spreadMm, int readings, Origin origin, String note) {}
