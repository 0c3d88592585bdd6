/**
 * One person's measures: every reading with its date and side, and what they come to.
 *
 * <p>All values are millimetres. A body is a value and never changes; a new reading makes a new body. Where a measure was
 * read more than once on its latest date the readings are averaged, as the standards for measuring people do, and a
 * spread above the measuring error is a finding. Every value says whether it was taped, comes from a table, stands in for
 * another measure, or was estimated; nothing is filled in silently.
 */
package trueseam.garment.body;
