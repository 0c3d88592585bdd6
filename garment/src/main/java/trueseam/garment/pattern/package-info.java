/**
 * A sewing pattern: pieces, edges, darts, notches, landmarks, grain and the seams that join them. It knows nothing of how
 * a piece is altered, stored or shown.
 *
 * <p>The stitching line is the master: a {@link trueseam.garment.pattern.Piece} is the closed chain of its stitching
 * edges, walked anticlockwise, so that the outside lies to the right of travel; the cutting line is derived from it.
 * Lengths are mm, y points up to the head, and the grain is vertical. Half pieces on a fold are stored as halves.
 */
package trueseam.garment.pattern;
