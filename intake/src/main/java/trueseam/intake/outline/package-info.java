/**
 * From loose lines to pieces: copies of one line are taken once, ends that meet are joined, closed lines become outlines, and what lies or
 * is written in an outline goes with it. Where a second line runs beside the first all round, the outer one is the cutting line and the
 * inner one the stitching line; where it is alone, nobody can tell, and whoever knows is asked.
 */
package trueseam.intake.outline;
