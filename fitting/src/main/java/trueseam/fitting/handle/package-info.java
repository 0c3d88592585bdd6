/**
 * Taking hold of a pattern: the places of the altered outline that a measure can be dragged by, and what becomes of the whole fit when
 * one is dragged.
 *
 * <p>A drag is nothing but the dressmaker's own decision about one measure, worked anew from the original: the pieces pivot and slide as
 * for any other fit, and every proof is made again. Lengths are mm, y points up. No state: the same drag gives the same fit.
 */
package trueseam.fitting.handle;
