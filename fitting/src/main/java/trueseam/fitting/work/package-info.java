/**
 * Working a pattern: alterations in their order, then truing, each as tissue steps on each piece, with everything that was done
 * written down as chapters of the step sheet.
 *
 * <p>No state: the same pattern and the same alterations give the same result.
 */
package trueseam.fitting.work;
