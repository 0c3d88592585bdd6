package trueseam.intake.apparel;

import java.util.OptionalDouble;
import trueseam.geometry.Point;

/**
 * A notch as the file has it.
 *
 * @param at where the file puts it, mm
 * @param alongMm place on the boundary that is nearest to it, mm from the start of the boundary
 * @param offMm how far from the boundary the file puts it, mm
 * @param kind what it looks like
 * @param depthMm how deep it is cut, if the file says it (as remembered: z of its point)
 * @param widthMm how wide it is at the edge, if the file says it (as remembered: thickness of its point)
 * @param angleRad its direction, anticlockwise from the x axis, if the file says it
 */
public record ApparelNotch(
        Point at,
        double alongMm,
        double offMm,
        Kind kind,
        OptionalDouble depthMm,
        OptionalDouble widthMm,
        OptionalDouble angleRad) {

    /** What a notch looks like, by its layer. All but the first from memory. */
    public enum Kind {
        /** Layer 4: a V or a slit. */
        PLAIN,
        /** Layer 80. */
        T,
        /** Layer 81. */
        CASTLE,
        /** Layer 82. */
        CHECK,
        /** Layer 83. */
        U
    }
}
