/**
 * Patterns of several sizes in one drawing, the one nested in the other as they are sold: which sizes there are and by what they are told
 * apart (layers, colours, dashes, line widths, or nothing but that each outline lies round the next), and the drawing of one of them, with
 * the lines that all sizes share. Requires a drawing at true scale; names no piece and no edge.
 */
package trueseam.intake.nest;
