/**
 * Pages that were printed to be taped together, put together again. Lengths in mm; a page has its origin at its lower left corner, y up; rows
 * are counted from the top, columns from the left.
 *
 * <p>What speaks for a layout: labels (A1, row 2 column 3, page 7 of 60), frames and marks that repeat, words at the edges that two pages
 * share, and above all the lines that run over an edge: where one page's line ends, another's must go on, at the same place in the same
 * direction, drawn alike. Lines decide; labels and the order in the file are proposals. What cannot be known is refused with a sentence, and
 * can be said. Requires that tiles are of one size and lie in a grid; it does not know of PDF.
 */
package trueseam.intake.tiles;
