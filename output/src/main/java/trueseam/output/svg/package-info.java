/** Writes drawings as SVG 1.1, element by element. What is drawn and how it looks is decided where it is drawn. */
package trueseam.output.svg;
