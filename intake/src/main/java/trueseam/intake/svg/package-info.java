/**
 * Drawings that anybody made in any vector editor: SVG 1.1 and the geometry of SVG 2, brought to mm at true scale. Nested transforms, all
 * path commands, basic shapes, {@code use}, groups and layers, units and viewBox, styles by attribute, property and simple rules. Nothing
 * outside the file is read; size, depth and number of elements are bounded. What cannot be a line (pictures, patterns of fill) is left out
 * with a finding that names the element. Source: W3C, Scalable Vector Graphics (SVG) 1.1 (second edition).
 */
package trueseam.intake.svg;
