/**
 * The step sheet: every step of every alteration in words and as a small drawing, a row of drawings a piece. Both are made from
 * the steps that the engine carried out and from nothing else, so the sheet says what was done.
 *
 * <p>Lengths are mm, y up, as in {@link trueseam.fitting.tissue}. Drawings are not to the scale of the pattern and enlarge
 * nothing without saying by how much.
 */
package trueseam.output.steps;
