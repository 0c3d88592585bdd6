/**
 * Strips for work on tissue: only what is taped onto a bought pattern, and what is folded or cut away from it, at full size on
 * a few sheets.
 *
 * <p>Axes and units: mm, y up; strips are turned to stand upright on the sheet. Requires: pieces whose cutting lines are
 * simple. Guarantees: the slivers together are where the old and the new cutting lines differ, less those thinner than {@link
 * trueseam.output.strips.Sliver#THINNEST_MM}; the same fit gives the same bytes. It moves no darts, notches or inner lines.
 */
package trueseam.output.strips;
