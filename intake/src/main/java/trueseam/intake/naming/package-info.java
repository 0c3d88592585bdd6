/**
 * What the lines of a drawing are: from a closed outline without names to a proposal which piece it is and which edge is which. An outline
 * is a {@link trueseam.intake.naming.Outline} at true scale in mm, y up, walked anticlockwise, turned in any way and perhaps the other
 * hand of the pair; a {@link trueseam.intake.naming.Proposal} says how it is laid upright and names its edges, each with a confidence.
 * It proposes; whoever knows the pattern confirms.
 */
package trueseam.intake.naming;
