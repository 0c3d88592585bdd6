/** Tables that ship inside a room beside the class that reads them: measures, eases, and what the rooms to the right know. */
package trueseam.garment.table;
