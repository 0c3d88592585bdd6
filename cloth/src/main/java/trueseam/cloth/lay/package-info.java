/** The pieces of a pattern laid on cloth: which, how often, how they may lie, and where they came to lie. */
package trueseam.cloth.lay;
