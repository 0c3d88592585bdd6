/**
 * Truing: after the alterations, ends that meet when sewn are brought to one level, and what the pivots bent is drawn smooth again.
 * Truing too is a list of tissue steps. Rules: common practice (front and back meet at about 180 degrees across a seam; edges
 * are blended over about an inch at the side).
 */
package trueseam.fitting.truing;
