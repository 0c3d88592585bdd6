/**
 * What somebody who knows a pattern says about its drawing, where she knows better than what is proposed: which piece it is, which edge is
 * which, what is sewn to what. Plain values: {@link trueseam.intake.said.Corrections} holds them all. Places on a piece are told in its own
 * frame as it was drawn: mm to the right of the left end of its outline, and mm up from the lower end; so a piece that is moved on its sheet
 * keeps what was said about it. What is not said is as proposed.
 */
package trueseam.intake.said;
