package trueseam.intake.drawing;

import trueseam.geometry.Point;

/**
 * Something written in a drawing.
 *
 * @param text what
 * @param at where it begins, mm, y up
 * @param heightMm how tall its letters are
 * @param layer as of a stroke
 */
public record Caption(String text, Point at, double heightMm, String layer) {}
