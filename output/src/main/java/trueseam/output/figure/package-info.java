/**
 * The person, drawn: a standing figure from the front and from the back, with the way of the tape for every measure.
 *
 * <p>It is our own drawing, made from numbers and not from a picture: heights and breadths of the median woman and man of the
 * public survey in {@code data/bodies}, changed by the person's own measures as far as they are known. The body is a stack of
 * level ovals (trunk, legs) and of ovals square to the arm; the tape runs on them, so what is seen and what goes round behind
 * follows from the form. Seen from a little above, so that a level tape sags in front and its far side shows above it.
 *
 * <p>Lengths are mm, heights over the floor; x to the wearer's left, y up, z forward. It draws proportions and is no measuring
 * instrument: nothing may be measured from it. Colours come from the classes of the page that shows it.
 */
package trueseam.output.figure;
