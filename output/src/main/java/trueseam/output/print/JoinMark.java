package trueseam.output.print;

import trueseam.geometry.Point;

/**
 * A diamond that two neighbouring pages both show, on the line where they meet.
 *
 * @param label written beside it on both pages, for example {@code 7a}
 * @param at its middle, on the sheet
 * @param upright whether the line where they meet is upright
 */
public record JoinMark(String label, Point at, boolean upright) {}
