/**
 * The project's own pattern file: an SVG drawing that any browser or vector editor opens at true scale, with {@code data-}
 * attributes that say what each line is. Described in docs/pattern-file.md.
 *
 * <p>In the file, one user unit is one millimetre and y grows downwards; in a {@link trueseam.garment.pattern.Piece} y
 * points up. So the coordinates of a piece are written with y negated, which is exact, and the piece is placed on the sheet
 * by the transform of its group alone, which is not read back.
 *
 * <p>Guaranteed: what is written reads back as an equal pattern, numbers to the last bit, for pieces walked anticlockwise.
 * What an editor adds is passed over; what a person changed in it is kept. Reading either gives a pattern, with findings
 * about what was missing or doubtful, or refuses in one sentence. Nothing outside the text is ever fetched.
 *
 * <p>Not here: drawings of other origin, cutting lines without stitching lines, printing.
 */
package trueseam.intake.patternfile;
