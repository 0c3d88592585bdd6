/**
 * Where a garment will be tight: its girth at every height against the body's, before and after the alterations.
 *
 * <p>Required: a fit. Guaranteed: the garment's girths are read on the flat pattern, the body's are the measures that were taken, at
 * heights that were taken too or, where none was, where the pattern marks the level. Between two measured girths the body is drawn in
 * smoothly and said to be; above the highest and below the lowest there is nothing. The least ease is that of the ease table. Not here:
 * what to do about it (the chart decides) and any drawing.
 */
package trueseam.fitting.profile;
