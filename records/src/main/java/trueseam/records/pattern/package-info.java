/** Patterns, bought, drafted or on paper, and size tables of the owner's own. */
package trueseam.records.pattern;
