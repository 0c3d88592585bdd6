/**
 * Ease: how much larger a garment is than the body in it.
 *
 * <p>Wearing ease is the room to move and may never be used up to avoid an alteration; design ease comes on top of it and
 * makes the style. All values are millimetres of the whole garment, never of a half or a quarter piece. The numbers are
 * the trade's, each with its source, in {@code wearing-ease.csv} and {@code design-ease.csv} beside this package's
 * classes; they are for woven cloth.
 */
package trueseam.garment.ease;
