package trueseam.intake.outline;

import java.util.List;
import trueseam.intake.drawing.Stroke;

/** The closed lines of a drawing, before anybody asks which of them are pieces. */
public final class Outlines {

    private Outlines() {}

    /**
     * Each line once, those whose ends meet joined, and closed where they close.
     *
     * @param strokes lines as drawn
     * @return the lines, closed ones among them
     */
    public static List<Stroke> joined(List<Stroke> strokes) {
        return Chains.of(strokes).lines();
    }
}
