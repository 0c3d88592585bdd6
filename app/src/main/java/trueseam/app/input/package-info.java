/** What the user names on the command line (files, tables, lengths), turned into values or one clear sentence. */
package trueseam.app.input;
