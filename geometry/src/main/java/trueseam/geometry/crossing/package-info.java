/**
 * Where lines cross or touch: two paths, or one path and itself. Places come back to 1e-9 mm; where two lines run
 * along each other the two ends of the shared stretch come back instead.
 *
 * <p>Lengths are millimetres. Required: any paths. Guaranteed: an answer or a refusal, never a search without end. Not
 * here: what a crossing means for a piece.
 */
package trueseam.geometry.crossing;
