/**
 * Strips for work on tissue: only what is taped into or onto a bought pattern, and guides for what is folded out or cut away
 * from it, at full size on a few sheets.
 *
 * <p>A change of length is one insert or one tuck across the piece; what then still differs at the edges is cut into slivers.
 *
 * <p>Axes and units: mm, y up; strips are turned to stand upright on the sheet. Requires: pieces whose outlines are simple; for
 * others page one says that there are no strips. Guarantees: the tissue cut apart or folded at its lines, and what is taped on,
 * less what is cut away, is the altered piece, but for slivers thinner than {@link
 * trueseam.output.strips.Sliver#THINNEST_MM}; the same fit gives the same bytes. It moves no darts, notches or inner lines.
 */
package trueseam.output.strips;
