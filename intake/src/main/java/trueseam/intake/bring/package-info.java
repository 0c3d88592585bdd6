/**
 * From a drawing to a pattern: pieces are told apart, named, laid upright and given what a fit needs (edges, darts, notches, grain, fold,
 * levels, seams). What was guessed is said, each as a finding with how sure it is; the pattern file that comes of it can be corrected in any
 * text or vector editor, and brought again.
 */
package trueseam.intake.bring;
