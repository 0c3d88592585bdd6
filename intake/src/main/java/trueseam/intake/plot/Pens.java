package trueseam.intake.plot;

import java.util.List;
import trueseam.intake.drawing.Look;

/** How the lines of a pen are shown. Which ink is in which pen is for the plotter to know: the colours only tell pens apart. */
final class Pens {

    private static final List<String> COLOURS =
            List.of("#808080", "#000000", "#ff0000", "#00a000", "#c0a000", "#0000ff", "#ff00ff", "#00c0c0");

    /** Dash and gap of the line types 1 to 6 as shares of the whole pattern. Source: HP-GL/2, LT. */
    private static final List<List<Double>> TYPES = List.of(
            List.of(0.0, 1.0),
            List.of(0.5, 0.5),
            List.of(0.7, 0.3),
            List.of(0.8, 0.1, 0.0, 0.1),
            List.of(0.7, 0.1, 0.1, 0.1),
            List.of(0.5, 0.1, 0.1, 0.1, 0.1, 0.1));

    /** The whole pattern is a share of a sheet that is not known here. */
    private static final double PATTERN_MM = 20;

    private Pens() {}

    static Look look(int pen, int lineType, double widthMm) {
        String colour = COLOURS.get(pen < COLOURS.size() ? pen : 1 + (pen - 1) % (COLOURS.size() - 1));
        List<Double> dashes = 1 <= lineType && lineType <= TYPES.size() ? TYPES.get(lineType - 1) : List.of();
        return new Look(
                colour, widthMm, dashes.stream().map(d -> d * PATTERN_MM).toList());
    }
}
