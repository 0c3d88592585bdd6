/**
 * Whether a drawing is at true scale: printed dimensions (a test square, a ruler, a dimension line) against what is drawn, and the correction
 * that the user confirms. Lengths in mm, each direction by itself: a printer may stretch one. It judges only what is written with its unit and
 * stands by itself or with words such as "test square"; it corrects nothing unasked.
 */
package trueseam.intake.scale;
