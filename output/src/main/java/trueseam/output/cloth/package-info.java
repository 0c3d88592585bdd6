/** A layout of pieces on cloth as a sheet to pin by, as a picture and as figures. */
package trueseam.output.cloth;
