/**
 * The lines of a piece as path text, for a picture that is drawn by whoever shows it: true curves, mm, y downwards as on a screen.
 *
 * <p>Nothing here is read back (the pattern file is for that), and nothing is decided about ink, width or colour.
 */
package trueseam.output.picture;
