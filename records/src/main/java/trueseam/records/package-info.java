/**
 * The record book: people, patterns and fittings that last, in one file (SQLite) for one person or in a PostgreSQL database for a studio
 * or a school, with the same tables. {@link trueseam.records.RecordBook} opens it; a {@link trueseam.records.Drawer} is what one owner
 * has in it, behind one plain interface for each kind of thing. Times are milliseconds since 1970, lengths millimetres. What is changed
 * by several people at once carries a version, and a change of an old version is refused
 * ({@link trueseam.records.trouble.OutdatedException}). Every failure is a {@link trueseam.records.trouble.RecordBookException} with one
 * sentence, and nothing half-written. It computes no fit and knows no screens.
 */
package trueseam.records;
