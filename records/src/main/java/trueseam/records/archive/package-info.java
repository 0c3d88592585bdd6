/**
 * Taking a record book, or all of one person in it, out as one file of open formats, and bringing it back into any record book: CSV for
 * people, days, readings and sittings, JSON for projects with all their states and for reports, SVG for patterns, a manifest with the
 * checksum of every file. What comes back equals what went out, row by row. What is brought back never takes the place of what is there,
 * and an archive with anything wrong is refused whole.
 */
package trueseam.records.archive;
