/**
 * Walking a seam: one piece rolls along the edge of the other without slipping, as a dressmaker walks two paper edges from pin to pin,
 * and it shows where notches land and what is left over at the end.
 *
 * <p>Requires seams whose edges are there; the outlines may be altered or not. Guarantees equal lengths walked on both edges up to every
 * contact. Nothing is altered, and nothing is stretched: ease that is meant shows as length left over. Lengths are mm as sewn, darts
 * closed; y points up.
 */
package trueseam.fitting.walk;
