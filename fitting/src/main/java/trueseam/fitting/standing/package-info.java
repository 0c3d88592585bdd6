/**
 * Standing alterations: what one person needed on earlier patterns, per measure and per named alteration, proposed for a new pattern
 * with the evidence.
 *
 * <p>What stays from pattern to pattern is the difference between the body and the figure that a pattern is drawn for, not the amount:
 * in another size the amount is another. So every earlier amount is first turned into the body measure that the finished pattern was
 * made for; those are held against each other; and what is proposed for a new pattern is what its own draft figure lacks of it. An
 * alteration for which the body has no measure (a sway-back) keeps its amount.
 *
 * <p>Rules. Common practice: a dressmaker writes down what she always alters and starts the next pattern from it; measures are retaken
 * every six months (Texas E-372). Derived here: earlier patterns agree when they lie within the measuring error of each other (ISO 20685
 * groups); two that agree are proposed, one alone is only told; what contradicts is shown and never averaged in; what was itself taken
 * from earlier patterns counts once it was worn.
 *
 * <p>No state, no clock: the day is passed in. The order in which evidence is given does not matter.
 */
package trueseam.fitting.standing;
