package trueseam.intake.apparel;

import trueseam.geometry.Point;

/**
 * A point of a piece that moves from size to size.
 *
 * @param at where it is in the sample size, mm
 * @param rule number of its rule in the table of rules that travels beside the file
 */
public record GradePoint(Point at, int rule) {}
