/**
 * The catalogue of alterations. Each yields tissue steps and nothing else; what they do to a piece is found out by carrying
 * the steps out. Amounts are mm, plus for larger; girths are totals round the body, shared over the cut edges here.
 *
 * <p>Sources: common practice unless a class says otherwise: width changes pivot one level above the change, pinned where
 * stitching lines cross; length changes slide along the grain; what is traced keeps its shape.
 */
package trueseam.fitting.alteration;
