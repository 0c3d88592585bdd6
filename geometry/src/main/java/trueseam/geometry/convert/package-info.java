/**
 * Bringing lines in from elsewhere and writing them out: quadratic curves, circular and elliptical arcs, stretched or
 * mirrored drawings, and the path data of SVG (Scalable Vector Graphics 1.1, second edition, chapter 8).
 *
 * <p>Quadratic curves are kept exactly, arcs to 1e-6 mm. Coordinates are taken as they stand, in millimetres; turning a
 * drawing whose y runs down is an {@link trueseam.geometry.convert.Affine} of the caller's choice. Not here: XML, units,
 * styles.
 */
package trueseam.geometry.convert;
