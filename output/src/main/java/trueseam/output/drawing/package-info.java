/**
 * Drawing on paper: pages in mm with y up, lines, areas, lettering, layers, and figures that are drawn once and shown on many
 * pages.
 *
 * <p>Requires: finite coordinates; lengths in mm, angles in radians, greys from 0 (black) to 1 (white). Guarantees: curves are
 * written as the cubics they are, to 0.0001 pt; one embedded font; nothing is asked of the machine's own fonts; the same
 * drawing gives the same bytes. It knows nothing of what is drawn. It does not lay out tables.
 */
package trueseam.output.drawing;
