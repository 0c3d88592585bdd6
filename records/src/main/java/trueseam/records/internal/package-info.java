/**
 * The record book's SQL, the same for both databases. {@link trueseam.records.internal.Rows} is the one place that speaks to a
 * database: each of its statements is bound to one owner, and one that does not name the owner is refused.
 */
package trueseam.records.internal;
