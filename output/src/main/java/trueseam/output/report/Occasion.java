package trueseam.output.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import trueseam.fitting.repertoire.Request;

/**
 * What the figures of a fit cannot tell by themselves, and a later fit wants to know of it.
 *
 * @param made the day of the fit, if known
 * @param worn whether its result was worn, or its trial garment tried on, and found right
 * @param standing the alterations by name that earlier patterns asked for
 */
public record Occasion(Optional<LocalDate> made, boolean worn, List<Request> standing) {

    /** Nothing is known. */
    public static final Occasion UNKNOWN = new Occasion(Optional.empty(), false, List.of());

    // Immutable.
    public Occasion {
        standing = List.copyOf(standing);
    }
}
