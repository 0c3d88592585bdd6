/**
 * The guided reading of a trial garment in words: as plain text, as a document, as figures for export. Everything said comes from
 * {@code trueseam.fitting.trial}.
 */
package trueseam.output.trial;
