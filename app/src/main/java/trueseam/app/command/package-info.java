/** The commands, one class each: read, call one room, show. */
package trueseam.app.command;
