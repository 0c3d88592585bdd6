/**
 * The pattern at full size: pieces laid out on sheets of paper, tiled where they are larger than a sheet, with everything that is
 * printed on a bought pattern, and the original line beside the altered one.
 *
 * <p>Axes and units: the layout is one large sheet in mm, y up, that the pages are windows of; pieces keep their own size and
 * direction, only shifted. Requires: pieces whose outlines are simple. Guarantees: full size to 0.0001 pt; every part of every
 * piece is on a page; the same pattern and options give the same bytes. It writes no files and knows no printers.
 */
package trueseam.output.print;
