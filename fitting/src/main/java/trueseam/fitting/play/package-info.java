/**
 * Playing an alteration: what moves in each step of the tissue procedure, from where to where, so that a picture of any moment between
 * two steps can be drawn.
 *
 * <p>There is no second description of an alteration here: the scenes are those that {@code Tissue} plays. Between two of them paper
 * only turns about one point and slides, as it would in a hand. Lengths are mm, angles radians, y points up. No state.
 */
package trueseam.fitting.play;
