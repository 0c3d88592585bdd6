/**
 * Drawings in PDF files, brought to mm at true scale: lines with their look and layer, and what is written. One sheet of any size at a time;
 * a page that is only a picture is refused, since a picture has no lines. Source: ISO 32000-1 (1 user unit is 1/72 in unless the page says
 * another).
 */
package trueseam.intake.pdf;
