/**
 * Pattern pieces as files of the apparel convention (ASTM D6673) name them outright: boundary, corners, sew lines, notches, grain, mirror
 * line, lines inside, texts, in one size or several. Lengths in mm, y up. What the format does not carry (which edges are sewn together,
 * whether a boundary has seam allowance) is not guessed here.
 */
package trueseam.intake.apparel;
