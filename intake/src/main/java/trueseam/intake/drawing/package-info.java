/**
 * A drawing as anybody may have made it: lines at true scale in mm, y up, with look and layer, and what is written. Every reader of a file
 * format ({@code trueseam.intake.svg}, {@code .dxf}, {@code .pdf}, {@code .plot}) gives a {@link trueseam.intake.drawing.Drawing}; nothing in
 * it is named yet, unless the format itself names it (a block, a layer of a published convention).
 */
package trueseam.intake.drawing;
