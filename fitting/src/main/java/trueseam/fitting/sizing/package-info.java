/** Choosing the size of a bought pattern by the frame of the body, with the reason. Source of the rules: see {@link trueseam.fitting.sizing.SizeChoice}. */
package trueseam.fitting.sizing;
