/**
 * The fitting chart: for every measure the body, the paper, the need, the decision, the share of each edge, and what the finished
 * flat pattern measures; as a PDF to read and as CSV for a spreadsheet.
 *
 * <p>Figures come from the fit and from measuring its patterns; nothing is decided here. Lengths are mm inside and the user's
 * unit on paper.
 */
package trueseam.output.chart;
