/**
 * Size tables in files: those that ship with the program, each with its source, and the user's own.
 *
 * <p>A table is taken whole or not at all: a missing or unreadable cell is refused with its line, since a wrong size
 * would be cut wrong.
 */
package trueseam.intake.size;
