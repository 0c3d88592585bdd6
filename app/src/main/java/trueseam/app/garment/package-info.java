/** The garments that the command line names, and the room that drafts each. */
package trueseam.app.garment;
