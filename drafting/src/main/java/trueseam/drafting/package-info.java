/**
 * Fitting shells drafted from a body or a size: bodice with its sleeve, skirt, trousers, and a dress or top without
 * waist seam. They show what a plain pattern of that size measures, and are the test garments of the program.
 *
 * <p>Start with {@link trueseam.drafting.Shells}; {@link trueseam.drafting.PanelledShells} has the same in panels, gores, yoke and
 * two-piece sleeve. A {@link trueseam.drafting.DraftFigure} is the complete set of measures
 * that a draft needs; what a body lacks is estimated and says so. {@link trueseam.drafting.DraftEase} is the ease.
 *
 * <p>Lengths are mm, x to the right, y up to the head, grain upright. The centre of an upper piece or skirt is the line x
 * = 0 and its side seam lies to the right; trousers have their side seam to the right too. Outlines are stitching lines
 * and run anticlockwise.
 *
 * <p>Guaranteed: measured flat, a draft gives the figure's measure and its ease within 0.1 mm at bust or chest, waist, hip,
 * across front and back, back waist length, front length over the bust, shoulder, neck base, upper arm, elbow, wrist, arm
 * length, body rise, both crotch lengths, knee, inside leg and the chosen lengths of skirt and dress; its seams walk within 0.01 mm; darts close;
 * corners that meet when sewn run smooth within a degree; outlines are simple. A figure that cannot be drafted so is
 * refused with the reason ({@link trueseam.drafting.DraftException}); nothing is clamped to make it pass.
 *
 * <p>Not here: a chosen trouser length (trousers are drafted to the inside leg and shortened at their lines), the front
 * neck point to waist (the neck base girth decides how deep the front neck is), and the armhole depth as measured: where
 * the arm needs it the armhole is made deeper, so that the sleeve cap is not too low.
 *
 * <p>The construction is our own: curves between measured points, with the unknowns (dart angle, cap height, crotch
 * extension) solved until the flat draft measures right. Files and altering are not known here.
 */
package trueseam.drafting;
