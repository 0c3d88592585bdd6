/**
 * The report: every figure of a fit as JSON, and a summary for the terminal.
 *
 * <p>Lengths in the JSON are mm in full precision, angles degrees where the name says so; keys keep their order. The shapes of the
 * file are this package's own records; nothing of the other rooms knows of them.
 */
package trueseam.output.report;
