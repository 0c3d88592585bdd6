/**
 * Files that were brought or made: patterns, reports, pictures. They lie in the database itself and not in a folder beside it: a change
 * and the file it needs are kept or lost together, one file is the whole backup, and a school's database needs no shared folder. A file
 * is named by what is in it, for each owner apart, so that nobody can find out what others have.
 */
package trueseam.records.file;
