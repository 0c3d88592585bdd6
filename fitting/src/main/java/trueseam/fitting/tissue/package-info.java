/**
 * The tissue procedure: the few things that hands do with a pattern, a pin, a pencil and a sheet of tissue. An alteration is
 * a list of {@link trueseam.fitting.tissue.Step steps}; {@link trueseam.fitting.tissue.Tissue} carries them out. The same
 * list is printed as the step sheet and played on the screen: there is no second description of what an alteration does.
 *
 * <p>The pattern only ever moves by a {@link trueseam.geometry.Motion}, so every traced edge is congruent to the original;
 * only joined edges can change length. Lengths are mm; {@code across} is positive to the right of the grainline,
 * {@code along} is positive towards the head.
 */
package trueseam.fitting.tissue;
