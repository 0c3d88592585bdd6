/** The program's door: the command line. Nothing is computed here; every command is a call into the rooms, then showing. */
package trueseam.app;
