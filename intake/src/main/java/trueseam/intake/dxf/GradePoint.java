package trueseam.intake.dxf;

import trueseam.geometry.Point;

/**
 * A point of a piece that moves from size to size.
 *
 * @param at where it is in the sample size, mm
 * @param rule number of its rule in the {@link RuleTable}
 */
public record GradePoint(Point at, int rule) {}
