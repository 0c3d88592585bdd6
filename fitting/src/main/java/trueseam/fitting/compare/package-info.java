/**
 * Comparing a body with a pattern: by the size table (the ease is already in the paper) or by the flat pattern (body + ease against
 * what the tape reads on the paper), and deciding which differences matter.
 *
 * <p>Lengths are mm; a need is plus where the garment must get larger.
 */
package trueseam.fitting.compare;
