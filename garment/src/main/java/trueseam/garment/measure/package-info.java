/**
 * The measures taken of a person: what each is called by the standards and in the workroom, how the tape runs, and how
 * exactly it can be measured.
 *
 * <p>A measure is of a body, never of a garment: the flat measures of a pattern have types of their own. Terms follow ISO
 * 8559, ASTM D5219, ASTM D5585 and EN 13402 as far as they could be confirmed; {@link
 * trueseam.garment.measure.Measure#termConfirmedBy} says by what. The texts are in {@code measures.csv} beside this
 * package's classes.
 */
package trueseam.garment.measure;
