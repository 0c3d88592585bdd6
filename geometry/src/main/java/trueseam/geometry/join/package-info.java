/**
 * Drawing a new line between two ends that an alteration left apart: the curve that a dressmaker would rule in by eye
 * or with a curved ruler, leaving one end in its direction and arriving at the other in its own.
 *
 * <p>Lengths are millimetres, directions vectors of any length above zero, x to the right and y up. Required: two
 * different points. Guaranteed: the ends and end directions asked for; a length, where asked for, within 1e-9 mm; no loop
 * where a length is asked for. Not here: which ends are to be joined, and whether the result suits the garment.
 */
package trueseam.geometry.join;
