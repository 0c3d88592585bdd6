/**
 * Closed outlines as areas: whether an outline is simple, what two pieces share, what lies inside.
 *
 * <p>Curves are flattened to a stated tolerance and handed to the JTS Topology Suite (OverlayNG); what comes back has
 * straight strokes only. Outer outlines come back anticlockwise, holes clockwise. Required: closed paths. Guaranteed:
 * areas within tolerance times length of outline. Not here: offsets, and anything that must keep its curves.
 */
package trueseam.geometry.polygon;
