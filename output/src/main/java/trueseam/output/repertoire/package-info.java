/** The list of alterations, for the screen, as a document and as JSON: made from the entries of the repertoire and nothing else. */
package trueseam.output.repertoire;
