/**
 * Tables as a spreadsheet saves them: what body, size and survey files have in common.
 *
 * <p>Cells are parted by comma, semicolon or tab, whichever the header line shows; cells may be quoted; lines that start
 * with {@code #} are remarks, of which {@code # name: value} before the header is kept. Text is UTF-8. This package knows
 * nothing of measures.
 */
package trueseam.intake.sheet;
