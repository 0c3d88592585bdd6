package trueseam.intake.drawing;

import java.util.List;

/**
 * How a line is drawn: sizes of a nest are often told apart by nothing else.
 *
 * @param colour as {@code #rrggbb}
 * @param widthMm its width, 0 for a hairline
 * @param dashMm lengths of dash and gap in turn, mm; empty for a solid line
 */
public record Look(String colour, double widthMm, List<Double> dashMm) {

    /** A plain black line. */
    public static final Look PLAIN = new Look("#000000", 0.25, List.of());

    /** Does not change. */
    public Look {
        dashMm = List.copyOf(dashMm);
    }
}
