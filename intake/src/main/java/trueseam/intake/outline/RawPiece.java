package trueseam.intake.outline;

import java.util.List;
import java.util.Optional;
import trueseam.geometry.Path;
import trueseam.intake.drawing.Caption;
import trueseam.intake.drawing.Stroke;

/**
 * A piece of a drawing before anything is named.
 *
 * @param label a name of its own in the file, or empty
 * @param outer its outermost closed line
 * @param inner a second closed line that runs beside the outer one all round, with how far apart they are
 * @param inside the other lines in it
 * @param captions what is written in it
 */
public record RawPiece(
        String label, Stroke outer, Optional<Beside> inner, List<Stroke> inside, List<Caption> captions) {

    /** Does not change. */
    public RawPiece {
        inside = List.copyOf(inside);
        captions = List.copyOf(captions);
    }

    /**
     * A line beside the outer one.
     *
     * @param line the inner line
     * @param leastMm how near the two come
     * @param mostMm how far apart they are at most
     */
    public record Beside(Path line, double leastMm, double mostMm) {}
}
