/**
 * What handbooks answer differently, as questions that the dressmaker answers: the least ease at bust, waist and hip, what to do
 * between two sizes, where the hip line lies, how deep a trouser hem is.
 *
 * <p>Every answer carries its reason and its source; the first answer of a question is what is done when nothing is said. Lengths are
 * millimetres of the whole garment. What concerns one alteration only is not here: those are the ways of an entry of the repertoire.
 */
package trueseam.garment.handbook;
