/**
 * Words that several sheets share: lengths as fine as a ruler, measures with workroom label and standard term, origins of a
 * measure.
 *
 * <p>Lengths come in as mm. Nothing is measured or decided here.
 */
package trueseam.output.words;
