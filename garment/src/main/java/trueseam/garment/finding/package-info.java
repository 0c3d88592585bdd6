/**
 * What was noticed about an input or a result: a sentence for the dressmaker, where it is about, and how grave it is.
 *
 * <p>A defective input or an unproved result is not an exception: it is the value plus a list of findings, so that one
 * bad line does not lose the whole file. This package holds nothing but that value.
 */
package trueseam.garment.finding;
