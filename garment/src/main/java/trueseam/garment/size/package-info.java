/**
 * Size tables: what a pattern maker takes the body of each size to be.
 *
 * <p>All values are millimetres. A table's numbers are of bodies, not of the paper: a size 14 with a 36 in bust is drawn
 * larger by its ease.
 */
package trueseam.garment.size;
