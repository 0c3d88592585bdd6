package trueseam.cloth.need;

import java.util.Optional;

/**
 * How much cloth of one width is needed.
 *
 * @param widthMm the width from selvage to selvage, mm
 * @param needed how much; empty where a piece does not fit
 * @param why why there is none; empty where there is one
 */
public record WidthNeed(double widthMm, Optional<Needed> needed, String why) {}
