/**
 * What one person needed on an earlier pattern: facts read back from the report of a fit, measure by measure and alteration by
 * alteration.
 *
 * <p>Amounts are mm, plus for larger. This package judges nothing: what agrees and what stays from pattern to pattern is found by
 * {@code trueseam.fitting.standing}.
 */
package trueseam.garment.earlier;
