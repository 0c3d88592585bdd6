/**
 * Measuring the flat pattern with tape and ruler, as a dressmaker does: on the stitching line, darts folded out, half pieces
 * counted double. Source of the way each measure is taken: shared knowledge of the trade as collected from handbooks
 * (stitching lines, not cutting lines; dart intake left out; half pieces count double): common practice.
 *
 * <p>Lengths are mm. Nothing is altered here, and no body is known.
 */
package trueseam.garment.flat;
