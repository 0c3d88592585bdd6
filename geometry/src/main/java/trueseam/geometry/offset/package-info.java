/**
 * Lines at a distance beside a line: cutting lines beside stitching lines, and stitching lines within cutting lines.
 *
 * <p>Distances are millimetres. Beside a single path, positive is to the right of travel; around a piece, positive is
 * outwards whichever way the outline is walked. Required: closed chains for outlines. Guaranteed: every point of the result
 * lies at its distance to the stated tolerance, save at corners, which are mitred; no loops; around a piece, a simple closed
 * path. Not here: how wide an allowance should be.
 */
package trueseam.geometry.offset;
