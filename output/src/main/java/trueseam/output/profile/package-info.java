/**
 * The ease profile as a picture, a table and sentences: where the garment will be tight, before and after the alterations.
 *
 * <p>The picture is SVG whose looks are all in classes, so that a page may colour it anew; the file for the folder brings its own
 * looks along. Lines are told apart by their dashes, areas by their hatching, not by colour alone. Nothing is reckoned here: the
 * numbers are those of {@code trueseam.fitting.profile}.
 */
package trueseam.output.profile;
